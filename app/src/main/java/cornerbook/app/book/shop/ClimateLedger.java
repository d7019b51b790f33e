package cornerbook.app.book.shop;

import cornerbook.app.book.store.BookStore;
import cornerbook.core.season.Climate;
import java.util.Optional;

/** The climate of the shop's place. */
public final class ClimateLedger {
    private final BookStore store;

    public ClimateLedger(BookStore store) {
        this.store = store;
    }

    /** Empty until somebody has entered it. */
    public Optional<Climate> find() {
        return store.read(handle -> new ClimateTable(handle).find());
    }

    /** The shop's place has this climate now. */
    public void put(Climate climate) {
        store.write(handle -> {
            new ClimateTable(handle).replace(climate);
            return null;
        });
    }

    /** The climate of the shop's place is not known any longer. */
    public void remove() {
        store.write(handle -> {
            new ClimateTable(handle).remove();
            return null;
        });
    }
}
