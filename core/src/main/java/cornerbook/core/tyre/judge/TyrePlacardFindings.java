package cornerbook.core.tyre.judge;

import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.ServiceDescription;
import cornerbook.core.tyre.SizeComparison;
import cornerbook.core.tyre.SpeedSymbol;
import cornerbook.core.tyre.TyreSize;
import cornerbook.core.tyre.judge.SidewallSaid.Ground;
import cornerbook.core.tyre.judge.SidewallSaid.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Findings on tyres that are not as the placard asks: load index, speed symbol, and the way of one turn. */
public final class TyrePlacardFindings {
    /** Makers' tyres differ by as much from their size; common practice, no source. */
    static final double LARGER_PERCENT = 1.5;

    private static final double SHOWN_KMH = 100;

    private final WheelSet set;
    private final Vehicle vehicle;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Said> notJudged = new ArrayList<>();

    private TyrePlacardFindings(WheelSet set, Vehicle vehicle) {
        this.set = set;
        this.vehicle = vehicle;
    }

    /** One finding for each corner with too low an index or symbol, and for each axle with another size. */
    public static Judgement judge(Case given) {
        return Judgement.together(given.spans().stream()
                .map(span -> new TyrePlacardFindings(span.set(), given.vehicle())
                        .judge(
                                span.wheelAt(),
                                span.role() == SetSpan.Role.GOING_ON ? FittedWheels.toldTogether(given) : Set.of(),
                                span.role() == SetSpan.Role.GOING_ON && FittedWheels.swapped(given))));
    }

    /**
     * Of one set.
     *
     * @param told axles whose sizes are a finding of their own
     * @param swapped whether each tyre serves where it belongs, on the other axle
     */
    private Judgement judge(Map<Corner, String> wheelAt, Set<Axle> told, boolean swapped) {
        var sized = new TreeMap<Axle, SizeComparison>();
        for (var corner : Corner.values()) {
            var wheel = set.wheels().stream()
                    .filter(each -> each.tag().equals(wheelAt.get(corner)))
                    .findFirst();
            if (wheel.isPresent()) {
                var asked = vehicle.axle(corner.axle());
                var tyre = wheel.get().tyre();
                try {
                    var fitted = TyreSize.parse(tyre.size());
                    var placard = TyreSize.parse(asked.tyreSize());
                    // The findings on load say that a temporary spare is not judged.
                    if (!fitted.temporary()) {
                        if (!swapped) {
                            service(corner, wheel.get(), asked, placard, fitted);
                        }
                        var comparison = SizeComparison.of(placard, fitted, SHOWN_KMH);
                        if (comparison.diameterMm() != 0) {
                            sized.putIfAbsent(corner.axle(), comparison);
                        }
                    }
                } catch (IllegalArgumentException e) {
                    notJudged.add(new SidewallSaid.PlacardUnread(wheel.get().tag(), Refused.said(e)));
                }
            }
        }
        sized.keySet().removeAll(told);
        sized.forEach(this::size);
        return new Judgement(findings, notJudged);
    }

    private static Optional<ServiceDescription> read(@Nullable Integer loadIndex, @Nullable String speedSymbol) {
        if (loadIndex == null || speedSymbol == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(new ServiceDescription(new LoadIndex(loadIndex), SpeedSymbol.parse(speedSymbol)));
        } catch (IllegalArgumentException unread) {
            // The findings on load say so.
            return Optional.empty();
        }
    }

    private void service(Corner corner, Wheel wheel, AxleSpecification axle, TyreSize placard, TyreSize size) {
        var tyre = wheel.tyre();
        var fitted = read(tyre.loadIndex(), tyre.speedSymbol());
        var asked = read(axle.loadIndex(), axle.speedSymbol());
        if (fitted.isEmpty() || asked.isEmpty()) {
            return;
        }
        if (size.sharesTables(placard)) {
            service(corner, wheel, new Described(placard, asked.get()), new Described(size, fitted.get()));
        } else {
            notJudged.add(new SidewallSaid.OtherTables(wheel.tag(), tyre.size(), axle.tyreSize()));
        }
    }

    private record Described(TyreSize size, ServiceDescription service) {
        Optional<Double> findCapacityKg() {
            return size.findCapacityKg(service.loadIndex());
        }

        int index() {
            return service.loadIndex().number();
        }

        SpeedSymbol symbol() {
            return service.speedSymbol();
        }
    }

    private void service(Corner corner, Wheel wheel, Described asked, Described fitted) {
        var axleLoadKg = vehicle.axle(corner.axle()).axleLoadKg();
        // What carries less than half of the axle's load is a finding of its own.
        boolean carriesHalf = axleLoadKg == null
                || fitted.findCapacityKg().filter(kg -> kg < axleLoadKg / 2).isEmpty();
        if (fitted.index() < asked.index() && carriesHalf) {
            add(
                    corner,
                    wheel,
                    Verdict.SPENT,
                    new SidewallSaid.LowLoadIndex(wheel.tag(), corner, fitted.index(), asked.index()),
                    new SidewallSaid.LowLoadIndexPlain(corner),
                    asked,
                    fitted,
                    Ground.LOAD_INDEX_RULE);
        }
        double fittedKmh = fitted.symbol().highestKmh();
        if (fittedKmh < asked.symbol().highestKmh()) {
            boolean winter = set.season() == SeasonKind.WINTER;
            add(
                    corner,
                    wheel,
                    winter ? Verdict.HOLDS : Verdict.SPENT,
                    new SidewallSaid.LowSpeedSymbol(
                            wheel.tag(),
                            corner,
                            fitted.symbol().name(),
                            asked.symbol().name()),
                    winter
                            ? new SidewallSaid.SlowWinterTyre(corner, kmh(fittedKmh))
                            : new SidewallSaid.TooSlow(corner, kmh(fittedKmh)),
                    asked,
                    fitted,
                    Ground.SPEED_SYMBOL_RULE);
        }
    }

    private void add(
            Corner corner,
            Wheel wheel,
            Verdict verdict,
            Said title,
            Said plainWords,
            Described asked,
            Described fitted,
            Said source) {
        findings.add(new Finding(
                        new Subject(Subject.Part.TYRE_LOAD, corner, wheel.tag(), set.id()),
                        verdict,
                        title,
                        plainWords,
                        null,
                        null,
                        verdict == Verdict.HOLDS ? 1 : 0,
                        List.of(
                                described(Label.TYRE, fitted, Ground.SIDEWALL_TABLES),
                                described(Label.PLACARD_ASKS, asked, Ground.PLACARD)),
                        source)
                .todo(Todo.Action.FIT_ANOTHER_WHEEL));
    }

    private static Evidence described(Label what, Described described, Ground source) {
        return new Evidence(
                what,
                new SidewallSaid.ServiceAllows(
                        described.service().toString(),
                        described
                                .findCapacityKg()
                                .map(kg -> Amount.of(kg, "kg"))
                                .orElse(null),
                        kmh(described.symbol().highestKmh())),
                source);
    }

    private static Amount kmh(double speedKmh) {
        return Amount.of(speedKmh, "km/h");
    }

    /** The speedometer must never show less than the true speed, so that only a larger tyre is put right. */
    private void size(Axle axle, SizeComparison comparison) {
        boolean larger = comparison.circumferencePercent() > LARGER_PERCENT;
        findings.add(new Finding(
                        new Subject(Subject.Part.WHEEL_FIT, null, null, set.id()),
                        larger ? Verdict.SPENT : Verdict.HOLDS,
                        new SidewallSaid.OtherSize(
                                axle,
                                comparison.other().toString(),
                                comparison.placard().toString(),
                                percent(comparison.circumferencePercent())),
                        larger
                                ? new SidewallSaid.Larger(axle)
                                : new SidewallSaid.OtherSizePlain(axle, kmh(SHOWN_KMH), kmh(comparison.trueKmh())),
                        null,
                        null,
                        larger ? 0 : 1,
                        List.of(
                                new Evidence(
                                        Label.OVERALL_DIAMETER,
                                        new SidewallSaid.Diameters(
                                                new Amount(comparison.other().overallDiameterMm(), "mm", 0),
                                                new Amount(comparison.placard().overallDiameterMm(), "mm", 0)),
                                        Said.verbatim("UN R30, 6.1.2: D = d + 2 S Ra/100")),
                                new Evidence(
                                        Label.TRUE_SPEED,
                                        new SidewallSaid.RealWhenShown(
                                                new Amount(comparison.trueKmh(), "km/h", 1), kmh(SHOWN_KMH)),
                                        Ground.SHOWN_BY_DIAMETERS),
                                new Evidence(Label.LARGER_BY_AT_MOST, percent(LARGER_PERCENT), Ground.MAKERS_DIFFER)),
                        Ground.SPEEDOMETER_RULE)
                .todo(Todo.Action.FIT_ANOTHER_WHEEL));
    }

    private static Margin percent(double percent) {
        return new Margin(percent, "%", 1, true);
    }
}
