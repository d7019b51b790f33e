package cornerbook.app.desk.knowledge;

import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.KnowledgeOrigin;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What the numbers are that forecasts start from, now and beside other shops' knowledge, side by side. */
public final class NumberChanges {
    private static final double PERCENT = 100;
    private static final double USUAL_KM_PER_YEAR = 15_000;
    private static final double MONTHS = 12;

    private NumberChanges() {}

    /**
     * Numbers that belong together.
     *
     * @param origin where they come from as far as the others taught them
     */
    public record Group(Said about, KnowledgeOrigin origin, List<Change> changes) {
        public Group {
            changes = List.copyOf(changes);
        }
    }

    /** A number before and after. */
    public record Change(Said number, Said now, Said then) {}

    /** All that the others taught, and what it comes to in this book; of tyre models those that the book has. */
    public static List<Group> of(Knowledge now, Knowledge then) {
        var groups = new ArrayList<Group>();
        for (var drive : DriveLayout.values()) {
            for (var season : SeasonKind.values()) {
                addWear(now, then, drive, season, null, groups);
                then.wear().rows().stream()
                        .filter(row -> row.drive() == drive && row.season() == season)
                        .map(WearKnowledge.Row::tyreModel)
                        .filter(Objects::nonNull)
                        .forEach(model -> addWear(now, then, drive, season, model, groups));
            }
        }
        for (var season : SeasonKind.values()) {
            var origin = then.originOfDistance(season);
            if (origin != null) {
                groups.add(new Group(
                        new OthersPageSaid.DistanceIn(season),
                        origin,
                        List.of(new Change(
                                new OthersPageSaid.KmPerDay(), distance(now, season), distance(then, season)))));
            }
        }
        var origin = then.originOfSeizing();
        if (origin != null) {
            groups.add(new Group(
                    new OthersPageSaid.Pads(),
                    origin,
                    List.of(new Change(
                            new OthersPageSaid.OneYear(Amount.of(USUAL_KM_PER_YEAR, "km")),
                            chance(now.seizing()),
                            chance(then.seizing())))));
        }
        return groups;
    }

    private static void addWear(
            Knowledge now,
            Knowledge then,
            DriveLayout drive,
            SeasonKind season,
            @Nullable String model,
            List<Group> groups) {
        var origin = then.originOfWear(drive, season, model);
        var after = then.wear(drive, season, model);
        if (origin != null && after.isPresent()) {
            var before = now.wear(drive, season, model).map(WearKnowledge.Row::learned);
            groups.add(new Group(
                    new OthersPageSaid.WearOf(season, drive, model),
                    origin,
                    Arrays.stream(WearParameter.values())
                            .map(parameter -> new Change(
                                    parameter,
                                    before.map(learned -> number(parameter, learned))
                                            .orElseGet(() -> usual(parameter, drive)),
                                    number(parameter, after.get().learned())))
                            .toList()));
        }
    }

    private static Said usual(WearParameter parameter, DriveLayout drive) {
        return number(parameter, WearParameters.defaults(drive).of(parameter), parameter.spread(false));
    }

    private static Said number(WearParameter parameter, LearnedWear learned) {
        return number(
                parameter,
                learned.parameters().of(parameter),
                Objects.requireNonNull(learned.standardErrors().get(parameter)));
    }

    /** The error is on the parameter's own scale. */
    private static Said number(WearParameter parameter, double value, double error) {
        return new OthersPageSaid.WithSpread(
                switch (parameter) {
                    case READING_SD, VISIT_SD, NEW_DEPTH_SD -> new PlusMinus(value, value * error, "mm", 3);
                    case FRONT_RATE, REAR_RATE, SEASON_SD -> new PlusMinus(value, value * error, "mm/1000 km", 3);
                    case VEHICLE_SPREAD, CORNER_SPREAD, GROOVE_SPREAD ->
                        new PlusMinus(PERCENT * value, PERCENT * value * error, "%", 1);
                    case SLOWING -> new PlusMinus(value, error, "", 2);
                });
    }

    private static Said distance(Knowledge knowledge, SeasonKind season) {
        var distance = knowledge.distance(season);
        return new OthersPageSaid.WithSpread(new PlusMinus(distance.meanKm(), distance.carSdKm(), "km", 0));
    }

    private static Said chance(@Nullable LearnedSeizing seizing) {
        var hazard = seizing == null ? SeizingHazard.learn(List.of()) : seizing.hazard();
        var year = hazard.chance(SeizingExposure.usual(USUAL_KM_PER_YEAR, true), 0, MONTHS);
        return new OthersPageSaid.Chance(
                Amount.of(PERCENT * year.probability(), "%"),
                new Between(PERCENT * year.lower(), PERCENT * year.upper(), "%", 0));
    }
}
