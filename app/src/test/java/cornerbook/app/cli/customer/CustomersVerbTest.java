package cornerbook.app.cli.customer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.app.InEnglish;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.cli.print.Terminal;
import cornerbook.core.car.Customer;
import cornerbook.words.Reader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cards as RFC 6350 writes them. The people are invented. */
class CustomersVerbTest {
    private static final String CARDS = """
            BEGIN:VCARD
            VERSION:4.0
            FN:Ottilie Brandvik
            TEL:+1 418 555 0111
            LANG:fr
            END:VCARD
            BEGIN:VCARD
            VERSION:4.0
            FN:Per Sundal
            EMAIL:per@example.com
            END:VCARD
            BEGIN:VCARD
            VERSION:4.0
            FN:
            END:VCARD
            """.replace("\n", "\r\n");

    @TempDir
    private Path folder;

    private String run(String text) {
        var out = new StringWriter();
        var terminal = new Terminal(Reader.DEFAULT, new PrintWriter(out, true));
        new CustomersVerb(terminal, () -> EmptyBook.open(folder), file -> text).run();
        return out.toString();
    }

    private List<Customer> known() {
        try (var book = EmptyBook.open(folder)) {
            return book.cards().list();
        }
    }

    @Test
    void whoIsNewIsTakenOnceAndWhatWasMissingIsAdded() {
        assertThat(run(CARDS))
                .contains("2 customers new or completed, of 3 cards")
                .contains("Card 3: it has no name");
        assertThat(known())
                .extracting(Customer::name, Customer::phone, Customer::email, Customer::language)
                .containsExactly(
                        tuple("Ottilie Brandvik", "+1 418 555 0111", null, "fr"),
                        tuple("Per Sundal", null, "per@example.com", null));
        assertThat(run(CARDS)).contains("0 customers new or completed, of 3 cards");
        assertThat(known()).hasSize(2);

        assertThat(run(CARDS.replace("EMAIL:per@example.com", "EMAIL:PER@example.com\r\nTEL:+1 418 555 0122")))
                .contains("1 customer new or completed");
        assertThat(known()).extracting(Customer::phone).contains("+1 418 555 0122");
    }

    @Test
    void whoOnlyHasTheNameIsLeftAndTold() {
        run(CARDS);
        assertThat(run(CARDS.replace("EMAIL:per@example.com", "EMAIL:other@example.com")))
                .contains("Card 2, Per Sundal: left")
                .contains("0 customers new or completed");
        assertThat(known()).extracting(Customer::email).doesNotContain("other@example.com");
    }

    @Test
    void whatIsNoFileOfCardsIsOneSentenceAndChangesNothing() {
        assertThatThrownBy(() -> run("name,telephone\nPer,1"))
                .extracting(InEnglish::told)
                .asString()
                .contains("BEGIN:VCARD");
        assertThat(known()).isEmpty();
    }
}
