package cornerbook.app.desk.wheel;

import cornerbook.app.desk.asked.Slot;
import cornerbook.app.judge.Judged;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.wheelplan.judge.SetPlan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One wheel: whose it is, where it lies, where it ran and where it goes.
 *
 * @param last null when it never ran
 * @param next the corner that the wheel plan has for it when its set goes on; null without a plan
 * @param tread what was read last, outer first
 */
public record WheelPage(
        CarHistory history,
        WheelSet set,
        Wheel wheel,
        @Nullable Corner last,
        @Nullable Corner next,
        List<Optional<Reading>> tread) {
    public WheelPage {
        tread = List.copyOf(tread);
    }

    /** As it was written: "5.2 mm". */
    public List<String> depths() {
        return tread.stream()
                .map(read -> read.map(Reading::asWritten).orElse("–"))
                .toList();
    }

    List<OptionalDouble> depthsMm() {
        return tread.stream()
                .map(read ->
                        read.map(reading -> OptionalDouble.of(reading.value())).orElseGet(OptionalDouble::empty))
                .toList();
    }

    static WheelPage of(CarHistory history, String tag, Assessor assessor) {
        return of(history, tag, plans(history, assessor));
    }

    /** With the {@link #plans plans} of its car, which all its wheels share. */
    static WheelPage of(CarHistory history, String tag, List<SetPlan> plans) {
        var visits = history.visits();
        var last = last(visits, tag);
        return new WheelPage(
                history,
                history.findSetOf(tag).orElseThrow(),
                history.findWheel(tag).orElseThrow(),
                last.orElse(null),
                next(tag, plans).orElse(null),
                tread(visits, tag));
    }

    private static Optional<Corner> last(List<Visit> visits, String tag) {
        return visits.reversed().stream()
                .flatMap(visit -> Stream.of(visit.leftOn(), visit.arrivedOn()))
                .flatMap(wheelAt -> cornerOf(wheelAt, tag).stream())
                .findFirst();
    }

    /** Where it was put on at the last visit, as it is recorded; empty when it is not on the car. */
    Optional<Corner> on() {
        return history.visits().isEmpty()
                ? Optional.empty()
                : cornerOf(history.visits().getLast().leftOn(), wheel.tag());
    }

    /** Where it ran before it was put there. */
    @Nullable
    Corner before() {
        var visits = history.visits();
        var earlier = visits.subList(0, visits.size() - 1);
        return cornerOf(visits.getLast().arrivedOn(), wheel.tag())
                .or(() -> last(earlier, wheel.tag()))
                .orElse(null);
    }

    /** What goes on at the last visit, and what waits for its season; none where it cannot be judged. */
    static List<SetPlan> plans(CarHistory history, Assessor assessor) {
        if (history.visits().isEmpty()) {
            return List.of();
        }
        var visitId = history.visits().getLast().id();
        return plans(history, visitId, assessor);
    }

    /** The same at a visit. */
    static List<SetPlan> plans(CarHistory history, String visitId, Assessor assessor) {
        return Judged.of(
                        "visit " + visitId,
                        () -> Stream.of(assessor.plan(history, visitId), assessor.planStored(history, visitId))
                                .flatMap(Optional::stream)
                                .toList())
                .orElse(List.of());
    }

    private static Optional<Corner> next(String tag, List<SetPlan> plans) {
        return plans.stream()
                .map(SetPlan::plan)
                .flatMap(plan -> cornerOf(plan.wheelAt(), tag).stream())
                .findFirst();
    }

    private static Optional<Corner> cornerOf(Map<Corner, String> wheelAt, String tag) {
        return wheelAt.entrySet().stream()
                .filter(entry -> entry.getValue().equals(tag))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private static List<Optional<Reading>> tread(List<Visit> visits, String tag) {
        return Stream.of(Spot.OUTER, Spot.CENTRE, Spot.INNER)
                .map(spot -> visits.reversed().stream()
                        .flatMap(visit -> Stream.of(Corner.values())
                                .flatMap(corner ->
                                        new Slot(Measure.TREAD_DEPTH, corner, tag, spot).findIn(visit).stream()))
                        .findFirst())
                .toList();
    }
}
