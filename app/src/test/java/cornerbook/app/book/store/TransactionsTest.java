package cornerbook.app.book.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.shop.ShopRules;
import java.nio.file.Path;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What one ledger asks of another is one transaction with whoever asks. */
class TransactionsTest {
    @AutoClose
    private BookFile store;

    @BeforeEach
    void open(@TempDir Path folder) {
        store = BookFile.open(folder);
    }

    @Test
    void whatAnotherLedgerDidIsTakenBackWithTheTransaction() {
        assertThatThrownBy(() -> store.write(handle -> {
                    var rules = new ShopRules(Transactions.within(handle));
                    rules.askSecondCheck(true);
                    assertThat(rules.asksSecondCheck())
                            .as("seen by who goes on")
                            .isTrue();
                    throw new BookException(new StoreSaid.FileDamaged());
                }))
                .isInstanceOf(BookException.class);
        assertThat(new ShopRules(store).asksSecondCheck()).isFalse();
    }

    @Test
    void aTransactionOfItsOwnInsideAnotherIsRefused() {
        assertThatThrownBy(() -> store.write(handle -> new ShopRules(store).asksSecondCheck()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("inside another");
        assertThat(new ShopRules(store).asksSecondCheck())
                .as("the store goes on")
                .isFalse();
    }
}
