package cornerbook.core.tread.learn;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** All wheel sets of a book, to learn from. */
public final class BookOfWear {
    private BookOfWear() {}

    /** Sets of cars that are alike, with where the search of their parameters begins. */
    private record Alike(
            DriveLayout drive,
            SeasonKind season,
            List<WearHistory> histories,
            List<WearHistory> believed,
            AlikeCars cars,
            WearPrior prior,
            double leastWidening,
            WearLearner.Place near) {
        static Alike of(DriveLayout drive, SeasonKind season, List<WearHistory> histories, WearKnowledge others) {
            var there = others.find(drive, season, null).map(WearKnowledge.Row::learned);
            var prior = there.map(learned -> WearPrior.ofOthers(learned.parameters(), learned, false))
                    .orElseGet(() -> WearPrior.about(WearParameters.defaults(drive)));
            var near = new WearLearner(AlikeCars.of(histories, prior.centre()), prior).maximise();
            var parameters = LearningScale.parameters(near.at());
            var believed = histories.stream()
                    .map(history -> history.believed(parameters))
                    .filter(history -> !history.readings().isEmpty())
                    .toList();
            return new Alike(
                    drive,
                    season,
                    histories,
                    believed,
                    AlikeCars.of(believed, parameters),
                    prior,
                    there.map(LearnedWear::widening).orElse(1.0),
                    near);
        }
    }

    /** Learns from all sets of a book, from what is usual. */
    public static WearKnowledge learn(List<WearHistory> histories) {
        return learn(histories, WearKnowledge.NONE);
    }

    /** Learns from all sets of a book, from what others' cars taught where they taught something. */
    public static WearKnowledge learn(List<WearHistory> histories, WearKnowledge others) {
        var kinds = new ArrayList<Alike>();
        for (var drive : DriveLayout.values()) {
            for (var season : SeasonKind.values()) {
                var alike = histories.stream()
                        .filter(history -> history.drive() == drive && history.season() == season)
                        .filter(history -> !history.readings().isEmpty())
                        .toList();
                if (!alike.isEmpty()) {
                    kinds.add(Alike.of(drive, season, alike, others));
                }
            }
        }
        var slowing = new Slowing();
        kinds.forEach(kind -> slowing.add(kind.cars.with(SetLikelihood::cameNew), kind.prior, kind.near));
        var found = slowing.find();
        var rows = new ArrayList<WearKnowledge.Row>();
        kinds.forEach(kind -> addRows(kind, others, found, rows));
        return new WearKnowledge(rows);
    }

    private static void addRows(Alike kind, WearKnowledge others, Slowing.Found slowing, List<WearKnowledge.Row> rows) {
        var drive = kind.drive;
        var season = kind.season;
        var alike = kind.histories;
        var all = learn(kind.cars, kind.prior, slowing, kind.near);
        double widening = Widening.of(alike, all.learned().parameters(), kind.leastWidening);
        rows.add(new WearKnowledge.Row(drive, season, null, all.learned().widenedBy(widening)));
        var learned = all.learned().parameters();
        var carsOfModels = AlikeCars.of(kind.believed, learned);
        alike.stream()
                .filter(history -> history.tyreModel() != null)
                .map(history -> Objects.requireNonNull(history.tyreModel()))
                .distinct()
                .sorted()
                .forEach(model -> {
                    var ofModel = carsOfModels.with(set -> model.equals(set.tyreModel()));
                    var row = learn(ofModel, priorOfModel(others, drive, season, model, learned), slowing, all.place());
                    var sets = alike.stream()
                            .filter(history -> model.equals(history.tyreModel()))
                            .toList();
                    rows.add(new WearKnowledge.Row(
                            drive,
                            season,
                            model,
                            row.learned()
                                    .widenedBy(Widening.of(sets, row.learned().parameters(), widening))));
                });
    }

    private static WearPrior priorOfModel(
            WearKnowledge others, DriveLayout drive, SeasonKind season, String model, WearParameters allHere) {
        return others.find(drive, season, model)
                .filter(row -> row.tyreModel() != null)
                .map(row -> WearPrior.ofOthers(
                        others.expected(drive, season, row, Optional.of(allHere)), row.learned(), true))
                .orElseGet(() -> WearPrior.ofModel(allHere));
    }

    private record Found(LearnedWear learned, WearLearner.Place place) {}

    /**
     * All but the slowing, which is known from the sets that came new alone, of all cars and models. A set that came used tells of it
     * falsely: it has little tread left because its car wears it fast, so that worn treads seem to wear faster.
     *
     * @param start near the maximum
     */
    private static Found learn(AlikeCars cars, WearPrior prior, Slowing.Found slowing, WearLearner.Place start) {
        var learner = new WearLearner(cars, prior.knowing(WearParameter.SLOWING, slowing.value()));
        var place = learner.maximise(start);
        return new Found(
                learner.learned(place)
                        .withError(
                                WearParameter.SLOWING,
                                Math.min(slowing.standardError(), prior.spread(WearParameter.SLOWING))),
                new WearLearner(cars, prior).withCurvature(place));
    }
}
