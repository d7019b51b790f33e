package cornerbook.app.book.bay;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static java.util.stream.Collectors.toSet;

import cornerbook.app.book.shop.SheetStep;
import cornerbook.app.book.visit.VisitSaid;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureName;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What one person left open in one step of a visit for one reason. It is told in one line: as a whole where nothing of the step was
 * done, at the whole car or at a corner, else by the names of what is open.
 */
public final class LeftTogether {
    /** Fewer are told by their names. */
    private static final int FEWEST_IN_A_WHOLE = 2;

    /** A corner at which something was done; null for the whole car. */
    private record Done(@Nullable Corner corner) {}

    private record Why(SheetStep step, String person, String reason) {}

    private record AtCorner(@Nullable Corner corner, String wheelTag) {}

    private final SheetStep step;
    private final List<LeftOpen> all;
    private final List<LeftOpen> open;
    private final Set<Done> done;

    /**
     * Of one step.
     *
     * @param all that is open in it, whoever left it so and why
     * @param open what is told
     * @param done where something of it was done
     */
    private LeftTogether(SheetStep step, List<LeftOpen> all, List<LeftOpen> open, Set<Done> done) {
        this.step = step;
        this.all = all;
        this.open = open;
        this.done = done;
    }

    /**
     * A line for each, in the order in which they were first left open.
     *
     * @param told false for what was closed since, or is told otherwise
     */
    public static List<Said> lines(Visit visit, List<WorkTick> ticks, Predicate<LeftOpen> told, Reader reader) {
        var left = LeftOpen.of(visit, ticks);
        Map<Why, List<LeftOpen>> together = left.stream()
                .filter(told)
                .collect(groupingBy(
                        each -> new Why(
                                each.step(visit),
                                each.tick().person(),
                                Objects.requireNonNull(each.tick().reason())),
                        LinkedHashMap::new,
                        toList()));
        return together.entrySet().stream()
                .map(each -> {
                    var why = each.getKey();
                    var all = left.stream()
                            .filter(other -> other.step(visit) == why.step())
                            .toList();
                    var what =
                            new LeftTogether(why.step(), all, each.getValue(), done(visit, ticks, why.step())).what();
                    return (Said) new BaySaid.LeftOpen(
                            why.person(),
                            reader.begin(new BaySaid.NotDone(what)),
                            Departure.ended(reader.say(OpenReason.of(why.reason()))),
                            null);
                })
                .toList();
    }

    private static Set<Done> done(Visit visit, List<WorkTick> ticks, SheetStep step) {
        var read = new StandingReadings(visit)
                .all().stream()
                        .filter(reading -> !saysNotDone(reading))
                        .filter(reading -> SheetStep.ofReading(
                                        reading.measure(), Objects.requireNonNullElse(reading.wheelTag(), ""), visit)
                                == step)
                        .map(reading -> new Done(reading.corner()));
        var ticked = StandingTicks.of(ticks).on(visit.leftOn()).stream()
                .filter(WorkTick::done)
                .filter(tick -> SheetStep.ofTick(tick.tick()) == step)
                .map(tick -> new Done(null));
        var tight = visit.tightened().stream()
                .filter(corner -> step == SheetStep.TORQUE)
                .map(Done::new);
        return Stream.of(read, ticked, tight).flatMap(each -> each).collect(toSet());
    }

    private static boolean saysNotDone(Reading reading) {
        var scale = reading.measure().scale();
        return scale != null && scale.saysNotDone(reading.value());
    }

    private Listed what() {
        if (done.isEmpty() && open.size() == all.size() && measures(open) >= FEWEST_IN_A_WHOLE) {
            return Listed.commas(
                    List.of(new BaySaid.StepLeft(step, step == SheetStep.BRAKES ? told(corners(open)) : null)));
        }
        var whole = EnumSet.noneOf(Corner.class);
        corners(open).stream().filter(this::isWhole).forEach(whole::add);
        var items = new ArrayList<Said>();
        if (!whole.isEmpty()) {
            items.add(new BaySaid.StepLeft(step, told(whole)));
        }
        Map<Measure, List<LeftOpen.Place>> named = new LinkedHashMap<>();
        for (var each : open) {
            var place = each.place();
            if (place == null) {
                items.add(new VisitSaid.StepTicked(each.key()));
            } else if (place.corner() == null || !whole.contains(place.corner())) {
                named.computeIfAbsent(place.measure(), measure -> new ArrayList<>())
                        .add(place);
            }
        }
        named.forEach((measure, places) -> items.add(new BaySaid.ReadingLeft(new MeasureName(measure), where(places))));
        return Listed.commas(items);
    }

    private boolean isWhole(Corner corner) {
        var here = open.stream().filter(each -> each.corner() == corner).toList();
        return !done.contains(new Done(corner))
                && measures(here) >= FEWEST_IN_A_WHOLE
                && here.size()
                        == all.stream().filter(each -> each.corner() == corner).count();
    }

    private static long measures(List<LeftOpen> open) {
        return open.stream()
                .map(each -> each.place() == null ? each.key() : each.place().measure())
                .distinct()
                .count();
    }

    private static Set<Corner> corners(List<LeftOpen> open) {
        var corners = EnumSet.noneOf(Corner.class);
        open.stream().map(LeftOpen::corner).filter(Objects::nonNull).forEach(corners::add);
        return corners;
    }

    private static Listed told(Collection<Corner> corners) {
        return Listed.commas(
                corners.size() == Corner.values().length ? List.of(new BaySaid.AllCorners()) : List.copyOf(corners));
    }

    /** Null where the measure is of the whole car. */
    private @Nullable Listed where(List<LeftOpen.Place> places) {
        if (places.stream().allMatch(place -> place.corner() == null && place.spot() == null)) {
            return null;
        }
        Map<AtCorner, List<Spot>> spots = new LinkedHashMap<>();
        for (var place : places) {
            var here = spots.computeIfAbsent(new AtCorner(place.corner(), place.wheelTag()), at -> new ArrayList<>());
            if (place.spot() != null) {
                here.add(place.spot());
            }
        }
        var measure = places.getFirst().measure();
        boolean everySpot = spots.values().stream()
                .allMatch(each -> each.size() == measure.spots().size());
        return everySpot && !namesWheels() && spots.size() == Corner.values().length
                ? told(EnumSet.allOf(Corner.class))
                : Listed.commas(spots.entrySet().stream()
                        .map(each -> at(each.getKey(), each.getValue(), measure))
                        .toList());
    }

    /** Two sets are in hand while wheels are changed, so that the corner alone does not say which wheel. */
    private boolean namesWheels() {
        return step == SheetStep.OFF || step == SheetStep.ON;
    }

    private BaySaid.PlaceLeft at(AtCorner at, List<Spot> spots, Measure measure) {
        return new BaySaid.PlaceLeft(
                at.corner(),
                spots.size() == measure.spots().size() ? null : Listed.and(spots),
                namesWheels() ? at.wheelTag() : null);
    }
}
