package cornerbook.core.visit;

import cornerbook.core.corner.SeasonKind;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Looks up the limit that binds: the row of the place and season, else of the place, else of the house rule "*". */
final class LimitTable {
    private static final String ANYWHERE = "*";

    private final List<Limit> rows;

    LimitTable(List<Limit> rows) {
        this.rows = List.copyOf(rows);
    }

    Limit get(String jurisdiction, Limit.Kind kind, @Nullable SeasonKind season) {
        return find(jurisdiction, kind, season)
                .or(() -> find(jurisdiction, kind, null))
                .or(() -> find(ANYWHERE, kind, season))
                .or(() -> find(ANYWHERE, kind, null))
                .orElseThrow(() -> new NoSuchElementException("the limits file has no row %s %s %s and none for \"*\""
                        .formatted(jurisdiction, kind, season)));
    }

    private Optional<Limit> find(String jurisdiction, Limit.Kind kind, @Nullable SeasonKind season) {
        return rows.stream()
                .filter(row -> row.jurisdiction().equals(jurisdiction) && row.kind() == kind && row.season() == season)
                .findFirst();
    }
}
