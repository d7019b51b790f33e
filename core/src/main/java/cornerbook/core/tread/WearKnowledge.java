package cornerbook.core.tread;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a book has learned about wear: for each drive layout and season kind over all tyre models, and for each tyre model
 * in it, pulled towards the former.
 */
public record WearKnowledge(List<Row> rows) {
    /** Nothing learned: the defaults serve. */
    public static final WearKnowledge NONE = new WearKnowledge(List.of());

    public WearKnowledge {
        rows = List.copyOf(rows);
    }

    /**
     * Learned from cars that are alike.
     *
     * @param tyreModel null for all models
     */
    public record Row(
            DriveLayout drive, SeasonKind season, @Nullable String tyreModel, LearnedWear learned) {
        /** Share of the prior's spread from which a standard error says that next to nothing was learned. */
        private static final double HARDLY_LESS = 0.9;

        /**
         * What the readings tell next to nothing of, so that it is still what it was before them: they are too few, too
         * much alike or contradict each other.
         */
        public List<WearParameter> open() {
            return Arrays.stream(WearParameter.values())
                    .filter(parameter ->
                            Objects.requireNonNull(learned.standardErrors().get(parameter))
                                    > HARDLY_LESS * parameter.spread(tyreModel != null))
                    .toList();
        }
    }

    /**
     * The same where other shops' cars were learned from as well; a row of none of the book's own cars is theirs. What they tell of a
     * tyre model that the book has not is as far from all models as it is there.
     */
    public Optional<Row> find(DriveLayout drive, SeasonKind season, @Nullable String tyreModel, WearKnowledge others) {
        var own = find(drive, season, tyreModel);
        if (own.isPresent() && Objects.equals(own.get().tyreModel(), tyreModel)) {
            return own;
        }
        var there = others.find(drive, season, tyreModel);
        if (there.isEmpty() || (own.isPresent() && there.get().tyreModel() == null)) {
            return own;
        }
        var expected = others.expected(
                drive, season, there.get(), own.map(row -> row.learned().parameters()));
        var learned = there.get().learned();
        return Optional.of(new Row(
                drive,
                season,
                there.get().tyreModel(),
                new LearnedWear(expected, learned.standardErrors(), 0, 0, learned.widening())));
    }

    /**
     * What is expected by one of these rows in a book of which something is known of all models.
     *
     * @param allHere of all models in the book
     */
    public WearParameters expected(DriveLayout drive, SeasonKind season, Row row, Optional<WearParameters> allHere) {
        var there = row.learned().parameters();
        var all = find(drive, season, null).map(each -> each.learned().parameters());
        return allHere.isPresent() && all.isPresent() && row.tyreModel() != null
                ? there.moved(all.get(), allHere.get())
                : there;
    }

    /** The row of the tyre model, else of all models; empty when no such car was ever read. */
    public Optional<Row> find(DriveLayout drive, SeasonKind season, @Nullable String tyreModel) {
        return rows.stream()
                .filter(row -> row.drive() == drive && row.season() == season)
                .filter(row -> row.tyreModel() == null || row.tyreModel().equals(tyreModel))
                .max(Comparator.comparing(row -> row.tyreModel() != null));
    }
}
