package cornerbook.app.desk.store;

import cornerbook.app.book.rack.KeptRack;
import cornerbook.app.book.rack.KeptSet;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One rack: what lies there, and how it is named and placed.
 *
 * @param form as the rack is, or as it was typed and refused
 */
public record RackPage(Shelves shelves, KeptRack kept, RackForm form) {
    public String picture() {
        return shelves.picture(kept.rack());
    }

    /** The sets that lie there, by place. */
    public List<KeptSet> lying() {
        return kept.rack().places().stream()
                .flatMap(place -> shelves.lyingAt(place).stream())
                .toList();
    }

    public @Nullable LocalDate since(KeptSet set) {
        return shelves.since(set);
    }
}
