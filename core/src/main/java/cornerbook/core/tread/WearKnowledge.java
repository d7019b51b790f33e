package cornerbook.core.tread;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
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

    /** Learns from all sets of a book. */
    public static WearKnowledge learn(List<WearHistory> histories) {
        var rows = new ArrayList<Row>();
        for (var drive : DriveLayout.values()) {
            for (var season : SeasonKind.values()) {
                var alike = histories.stream()
                        .filter(history -> history.drive() == drive && history.season() == season)
                        .filter(history -> !history.readings().isEmpty())
                        .toList();
                if (!alike.isEmpty()) {
                    addRows(alike, rows);
                }
            }
        }
        return new WearKnowledge(rows);
    }

    private static void addRows(List<WearHistory> alike, List<Row> rows) {
        var drive = alike.getFirst().drive();
        var season = alike.getFirst().season();
        var prior = WearPrior.about(WearParameters.defaults(drive));
        var proportions = WearLearner.learn(alike, prior).parameters();
        var all = learn(alike, prior, proportions);
        rows.add(new Row(drive, season, null, all));
        var ofModel = alike.stream()
                .filter(history -> history.tyreModel() != null)
                .collect(Collectors.groupingBy(history -> Objects.requireNonNull(history.tyreModel())));
        ofModel.entrySet().stream()
                .sorted(Comparator.comparing(entry -> entry.getKey()))
                .forEach(entry -> rows.add(new Row(
                        drive,
                        season,
                        entry.getKey(),
                        learn(entry.getValue(), WearPrior.ofModel(all.parameters()), all.parameters()))));
    }

    /**
     * The slowing from the sets that came new alone, all else from all sets. A set that came used tells of it falsely: it has
     * little tread left because its car wears it fast, so that worn treads seem to wear faster.
     */
    private static LearnedWear learn(List<WearHistory> histories, WearPrior prior, WearParameters proportions) {
        var cameNew = histories.stream()
                .filter(history -> history.newDepths().stream().allMatch(NewDepth::known))
                .toList();
        var ofNew = WearLearner.learn(cameNew, prior, proportions);
        return WearLearner.learn(histories, prior.knowing(WearParameter.SLOWING, ofNew), proportions)
                .withErrorOf(WearParameter.SLOWING, ofNew);
    }

    /** The row of the tyre model, else of all models; empty when no such car was ever read. */
    public Optional<Row> find(DriveLayout drive, SeasonKind season, @Nullable String tyreModel) {
        return rows.stream()
                .filter(row -> row.drive() == drive && row.season() == season)
                .filter(row -> row.tyreModel() == null || row.tyreModel().equals(tyreModel))
                .max(Comparator.comparing(row -> row.tyreModel() != null));
    }
}
