package cornerbook.core.finding;

import cornerbook.core.changeover.WinterLaw;
import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Looks up the limit that binds: the row of the place and season, else of the place, else of the country that the place is a region
 * of (US-VT of US, ISO 3166-2), else of the house rule "*".
 */
public final class LimitTable {
    static final String ANYWHERE = "*";
    private static final String OF_COUNTRY = "-";

    private final List<Limit> rows;
    /** In their order. A car asks some hundred times, of a few hundred rows. */
    private final Map<Key, List<Limit>> rowsByKey;

    /** What a row is found by. */
    private record Key(String jurisdiction, Limit.Kind kind) {}

    public LimitTable(List<Limit> rows) {
        this.rows = List.copyOf(rows);
        rowsByKey = rows.stream().collect(Collectors.groupingBy(row -> new Key(row.jurisdiction(), row.kind())));
    }

    /** As the limits file has them. */
    public List<Limit> rows() {
        return rows;
    }

    /** The limit that binds on some day of the year; rows with dates count on every day. */
    public Limit get(String jurisdiction, Limit.Kind kind, @Nullable SeasonKind season) {
        return get(jurisdiction, kind, season, row -> true);
    }

    /** The limit that binds on some day from {@code first} to {@code last}; a row whose dates lie outside does not. */
    public Limit get(
            String jurisdiction, Limit.Kind kind, @Nullable SeasonKind season, LocalDate first, LocalDate last) {
        return get(jurisdiction, kind, season, row -> row.bindsWithin(first, last));
    }

    /** What the law of a place says for all seasons, whether or not it binds today; empty when no law is on file. */
    public Optional<Limit> findLaw(String jurisdiction, Limit.Kind kind) {
        return lawful(jurisdiction)
                .flatMap(place -> find(place, kind, null, row -> true).stream())
                .findFirst();
    }

    /** The law that asks for winter tyres on any road of a place; empty where there is none. */
    public Optional<WinterLaw> findWinterLaw(String jurisdiction) {
        return findLaw(jurisdiction, Limit.Kind.WINTER_TYRES).flatMap(LimitTable::winterLaw);
    }

    private static Optional<WinterLaw> winterLaw(Limit limit) {
        var from = limit.from();
        var until = limit.until();
        return from == null || until == null ? Optional.empty() : Optional.of(new WinterLaw(from, until));
    }

    /** The places that have a law on file, in the order of their codes. */
    public SortedSet<String> places() {
        return rows.stream()
                .map(Limit::jurisdiction)
                .filter(place -> !place.equals(ANYWHERE))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Where the law of a place stands: with itself, and with its country. */
    private static Stream<String> lawful(String place) {
        int region = place.indexOf(OF_COUNTRY);
        return region < 0 ? Stream.of(place) : Stream.of(place, place.substring(0, region));
    }

    private Limit get(String jurisdiction, Limit.Kind kind, @Nullable SeasonKind season, Predicate<Limit> binds) {
        return Stream.concat(lawful(jurisdiction), Stream.of(ANYWHERE))
                .flatMap(place -> find(place, kind, season, binds).or(() -> find(place, kind, null, binds)).stream())
                .findFirst()
                .orElseThrow(() -> new NoSuchElementException("the limits file has no row %s %s %s and none for \"*\""
                        .formatted(jurisdiction, kind, season)));
    }

    private Optional<Limit> find(
            String jurisdiction, Limit.Kind kind, @Nullable SeasonKind season, Predicate<Limit> binds) {
        return rowsByKey.getOrDefault(new Key(jurisdiction, kind), List.of()).stream()
                .filter(row -> row.season() == season)
                .filter(binds)
                .findFirst();
    }
}
