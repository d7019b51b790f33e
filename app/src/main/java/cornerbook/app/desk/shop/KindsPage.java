package cornerbook.app.desk.shop;

import cornerbook.app.exchange.KindFile;
import java.util.List;

/**
 * The data sheets that the shop keeps, and one that is added or changed.
 *
 * @param cars what cars of the book are called, each kind once
 * @param file text of that one, as typed
 * @param errors what cannot stand in it, one sentence each
 */
public record KindsPage(List<KindFile.Kind> kinds, List<String> cars, String file, List<Fault> errors) {
    public KindsPage {
        kinds = List.copyOf(kinds);
        cars = List.copyOf(cars);
        errors = List.copyOf(errors);
    }

    /**
     * Something that cannot stand.
     *
     * @param where in the file; empty where it is about the whole
     */
    public record Fault(String where, String sentence) {}
}
