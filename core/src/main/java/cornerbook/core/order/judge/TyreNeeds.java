package cornerbook.core.order.judge;

import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.order.Article;
import cornerbook.core.order.Need;
import cornerbook.core.order.OrderPart;
import cornerbook.core.tread.judge.AxlesHold;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadFindings;
import cornerbook.core.tread.judge.TreadForecaster;
import cornerbook.core.tyre.TyreSize;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Tyres by size and season. They are replaced by the axle, and all four where both axles are driven or nobody knows which are:
 * a new pair turns slower than a worn one, and what joins the axles takes the difference (common practice, no source; what the
 * vehicle's manufacturer allows outranks it). A set lasts with the chance of its forecast; tyres that are too old, or hurt past
 * repair, do not last.
 */
final class TyreNeeds {
    private static final int OF_AN_AXLE = 2;

    private TyreNeeds() {}

    static List<CarNeed> of(
            Case given, TreadForecaster forecaster, List<SetForecast> forecasts, List<Finding> findings) {
        return given.spans().stream()
                .flatMap(span -> ofSet(given, span, hold(given, span, forecaster, forecasts, findings)))
                .toList();
    }

    private static AxlesHold hold(
            Case given, SetSpan span, TreadForecaster forecaster, List<SetForecast> forecasts, List<Finding> findings) {
        var worn = forecasts.stream()
                .filter(forecast -> forecast.set().equals(span.set()))
                .findFirst()
                .map(forecast -> TreadFindings.axlesHold(given, forecaster, forecast))
                .orElse(new AxlesHold(1, 1, 1));
        var lost = EnumSet.noneOf(Axle.class);
        findings.stream()
                .filter(finding -> isPast(finding, span.from()))
                .forEach(finding -> lost.addAll(axles(finding.subject(), span)));
        return new AxlesHold(
                lost.contains(Axle.FRONT) ? 0 : worn.front(),
                lost.contains(Axle.REAR) ? 0 : worn.rear(),
                lost.isEmpty() ? worn.both() : 0);
    }

    /** Whether it asks for other tyres by the first day of the span. */
    private static boolean isPast(Finding finding, LocalDate day) {
        var part = finding.subject().part();
        var todo = finding.todo();
        var horizon = finding.horizon();
        return (part == Subject.Part.TYRE_AGE || part == Subject.Part.TYRE_DAMAGE)
                && todo != null
                && todo.action() == Todo.Action.REPLACE
                && (finding.verdict().compareTo(Verdict.SPENT) >= 0 || (horizon != null && !horizon.isAfter(day)));
    }

    /** The axles of the set that a finding is about; none when it is about other wheels. */
    private static Set<Axle> axles(Subject subject, SetSpan span) {
        var axles = EnumSet.noneOf(Axle.class);
        var tag = subject.wheelTag();
        span.wheelAt().forEach((corner, standing) -> {
            if (tag == null ? span.set().id().equals(subject.setId()) : tag.equals(standing) && isOf(span, tag)) {
                axles.add(corner.axle());
            }
        });
        return axles;
    }

    private static boolean isOf(SetSpan span, String tag) {
        return span.set().wheels().stream().map(Wheel::tag).anyMatch(tag::equals);
    }

    private static Stream<CarNeed> ofSet(Case given, SetSpan span, AxlesHold hold) {
        var front = size(span, Axle.FRONT);
        var rear = size(span, Axle.REAR);
        if (front.isEmpty() || rear.isEmpty()) {
            return Stream.empty();
        }
        var drive = given.vehicle().drive();
        boolean together = drive == null || drive == DriveLayout.ALL;
        double fails = 1 - hold.both();
        if (front.equals(rear)) {
            return Stream.of(need(
                    given,
                    span,
                    front.get(),
                    together
                            ? Need.of(2 * OF_AN_AXLE, fails)
                            : new Need(OF_AN_AXLE, hold.oneFails(), hold.bothFail())));
        }
        return Stream.of(
                need(given, span, front.get(), Need.of(OF_AN_AXLE, together ? fails : 1 - hold.front())),
                need(given, span, rear.get(), Need.of(OF_AN_AXLE, together ? fails : 1 - hold.rear())));
    }

    private static CarNeed need(Case given, SetSpan span, String size, Need need) {
        return new CarNeed(new Article(OrderPart.TYRE, span.set().season().name(), size), need, given.nextVisit());
    }

    /** The size on an axle, without what stands behind it; as it is written where it cannot be read. */
    private static Optional<String> size(SetSpan span, Axle axle) {
        return Stream.of(Corner.values())
                .filter(corner -> corner.axle() == axle)
                .flatMap(corner -> Optional.ofNullable(span.wheelAt().get(corner)).stream())
                .flatMap(tag ->
                        span.set().wheels().stream().filter(wheel -> wheel.tag().equals(tag)))
                .map(wheel -> wheel.tyre().size())
                .findFirst()
                .map(written -> TyreSize.find(written)
                        .map(read -> read.designation() + (read.commercial() ? "C" : ""))
                        .orElse(written));
    }
}
