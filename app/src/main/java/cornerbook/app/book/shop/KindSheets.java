package cornerbook.app.book.shop;

import cornerbook.app.book.store.Transactions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The data sheets of kinds of cars that the shop keeps, each by its name. They are no readings: one may be replaced. */
public final class KindSheets {
    private final Transactions store;

    public KindSheets(Transactions store) {
        this.store = store;
    }

    /** The texts of all sheets, by name. */
    public List<String> list() {
        return store.read(handle -> handle.select("select sheet from kind_sheet order by name")
                .mapTo(String.class)
                .list());
    }

    public Optional<String> find(String name) {
        return store.read(handle -> handle.select("select sheet from kind_sheet where name = ?", name)
                .mapTo(String.class)
                .findFirst());
    }

    /**
     * Keeps sheets, all of them or none, each in place of the one of its name.
     *
     * @param sheets their texts, by name
     */
    public void put(Map<String, String> sheets) {
        store.write(handle -> {
            sheets.forEach((name, sheet) -> {
                remove(handle, name);
                insert(handle, name, sheet);
            });
            return sheets;
        });
    }

    /**
     * Keeps a changed sheet in place of the one that it was made from.
     *
     * @param was name of that one; empty for a new sheet
     */
    public void change(String was, String name, String sheet) {
        store.write(handle -> {
            remove(handle, was);
            remove(handle, name);
            return insert(handle, name, sheet);
        });
    }

    public void remove(String name) {
        store.write(handle -> remove(handle, name));
    }

    private static int insert(Handle handle, String name, String sheet) {
        return handle.execute("insert into kind_sheet (name, sheet) values (?, ?)", name, sheet);
    }

    private static int remove(Handle handle, String name) {
        return handle.execute("delete from kind_sheet where name = ?", name);
    }
}
