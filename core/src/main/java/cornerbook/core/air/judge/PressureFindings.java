package cornerbook.core.air.judge;

import cornerbook.core.air.LeakRate;
import cornerbook.core.air.PressureCurve;
import cornerbook.core.air.judge.PressureSaid.Ground;
import cornerbook.core.air.judge.PressureSaid.Label;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.UsedGauge;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Said;
import cornerbook.core.season.Climate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Findings on the air in each tyre: as found, and as set against the placard. */
public final class PressureFindings {
    /** Coldest morning where the climate of the place is not known. Common practice, no source. */
    private static final double COLD_MORNING_C = -20;

    private PressureFindings() {}

    /** The findings on the pressure at each corner. */
    public static Judgement judge(Case given) {
        var visit = given.visit();
        var readings = given.readings();
        var gauge = UsedGauge.of(visit);
        var findings = new ArrayList<Finding>();
        var notJudged = new ArrayList<Said>();
        for (var corner : Corner.values()) {
            var placardKpa = given.vehicle().axle(corner.axle()).placardPressureKpa();
            if (placardKpa == null) {
                continue;
            }
            var arrived = visit.arrivedOn().get(corner);
            var left = visit.leftOn().get(corner);
            var loss = arrived == null ? Optional.<AirLoss>empty() : AirLoss.find(arrived, given.visits());
            var leak = Optional.<Finding>empty();
            if (arrived != null) {
                leak = readings.ofWheel(Measure.PRESSURE_FOUND, arrived)
                        .filter(found -> gauge.kpa(found) < PressureCurve.WARNING_SHARE * placardKpa)
                        // Where a hole was found, nobody looks for the leak.
                        .filter(found -> readings.ofWheel(Measure.PUNCTURE, arrived)
                                .filter(hole -> Math.round(hole.value()) > 0)
                                .isEmpty())
                        .map(found -> foundLow(corner, arrived, arrived.equals(left), found, gauge, placardKpa, loss))
                        .or(() -> loss.filter(AirLoss::slowLeak)
                                .map(lost -> slowLeak(corner, arrived, lost, placardKpa, visit.date())));
                leak.ifPresent(findings::add);
            }
            if (left != null) {
                var set = readings.ofWheel(Measure.PRESSURE_SET, left);
                if (set.isPresent()) {
                    var finding = set(
                            given,
                            corner,
                            set.get(),
                            AirToSet.of(placardKpa, visit),
                            loss.filter(lost -> left.equals(arrived)));
                    // Air that was put into a leaking tyre is no good news.
                    if (finding.verdict() != Verdict.HOLDS || leak.isEmpty() || !left.equals(arrived)) {
                        findings.add(finding);
                    }
                } else {
                    notJudged.add(new PressureSaid.NotSet(corner, left));
                }
            }
        }
        return new Judgement(findings, notJudged);
    }

    /** Between what pressures each tyre is set, by the temperatures and the gauge of the visit. */
    public static List<ReadingLimit> limits(Case given) {
        return Arrays.stream(Corner.values())
                .flatMap(corner -> Stream.ofNullable(
                                given.vehicle().axle(corner.axle()).placardPressureKpa())
                        .map(placardKpa ->
                                AirToSet.of(placardKpa, given.visit()).limit(corner)))
                .toList();
    }

    private static Finding foundLow(
            Corner corner,
            String tag,
            boolean stays,
            Reading found,
            UsedGauge gauge,
            double placardKpa,
            Optional<AirLoss> loss) {
        double foundKpa = gauge.kpa(found);
        var evidence = new ArrayList<>(List.of(
                new Evidence(Label.FOUND, kpa(foundKpa), gauge.how(found)),
                new Evidence(
                        Label.WARNING_AT, kpa(PressureCurve.WARNING_SHARE * placardKpa), Ground.QUARTER_BELOW_COLD)));
        loss.map(AirLoss::evidence).ifPresent(evidence::add);
        return new Finding(
                        new Subject(Subject.Part.PRESSURE, corner, tag, null),
                        stays ? Verdict.SPENT : Verdict.RUNS_OUT,
                        new PressureSaid.CameLow(tag, kpa(foundKpa), kpa(placardKpa)),
                        new PressureSaid.CameLowPlain(corner),
                        null,
                        null,
                        Math.clamp(foundKpa / placardKpa, 0, 1),
                        evidence,
                        Ground.QUARTER_BELOW_RULE)
                .todo(Todo.Action.FIND_LEAK, stays ? Todo.When.NOW : Todo.When.BEFORE_FITTING);
    }

    /** It runs out when the warning would come, set to the placard now. */
    private static Finding slowLeak(Corner corner, String tag, AirLoss leak, double placardKpa, LocalDate day) {
        var horizon = leak.reaches(placardKpa, PressureCurve.WARNING_SHARE * placardKpa, day);
        return new Finding(
                        new Subject(Subject.Part.PRESSURE, corner, tag, null),
                        Verdict.RUNS_OUT,
                        new PressureSaid.SlowLeak(tag, kpa(leak.rate().lossKpa())),
                        new PressureSaid.SlowLeakPlain(corner),
                        horizon,
                        null,
                        Math.clamp(leak.foundKpa() / placardKpa, 0, 1),
                        List.of(leak.evidence(), new Evidence(Label.WARNING_ABOUT, new Day(horizon), Ground.SET_NOW)),
                        new PressureSaid.LeakSource(kpa(LeakRate.USUAL_LOSS_KPA)))
                .todo(Todo.Action.FIND_LEAK);
    }

    private static Finding set(Case given, Corner corner, Reading set, AirToSet asked, Optional<AirLoss> loss) {
        var gauge = UsedGauge.of(given.visit());
        double placardKpa = asked.placardKpa();
        double setKpa = gauge.kpa(set);
        double differenceKpa = setKpa - asked.trueKpa();
        var limit = asked.limit(corner);
        boolean fits = limit.holds(set.value());
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(Label.SET, kpa(setKpa), gauge.how(set)));
        evidence.add(new Evidence(Label.PLACARD_COLD, kpa(placardKpa), Ground.SPECIFICATION));
        evidence.add(new Evidence(
                Label.TO_BE_SET,
                kpa(asked.trueKpa()),
                asked.warmed() ? new PressureSaid.ByGas(asked.from()) : Ground.TEMPERATURE_NOT_READ));
        given.readings()
                .ofVehicle(Measure.TYRE_TEMPERATURE)
                .ifPresent(temperature ->
                        evidence.addAll(coldestMorning(setKpa, temperature.value(), placardKpa, given.climate())));
        loss.map(AirLoss::evidence).ifPresent(evidence::add);
        return new Finding(
                        new Subject(Subject.Part.PRESSURE, corner, set.wheelTag(), null),
                        fits ? Verdict.HOLDS : Verdict.SPENT,
                        asked.warmed()
                                ? new PressureSaid.SetFor(corner, kpa(setKpa), kpa(asked.trueKpa()), kpa(placardKpa))
                                : new PressureSaid.SetAgainst(corner, kpa(setKpa), kpa(placardKpa)),
                        fits ? new PressureSaid.SetRight(corner) : new PressureSaid.SetWrong(corner),
                        null,
                        null,
                        fits ? 1 : Math.clamp(1 - Math.abs(differenceKpa) / asked.trueKpa(), 0, 1),
                        evidence,
                        limit.source())
                .todo(Todo.Action.SET_PRESSURE)
                .beforeLeaving();
    }

    /** Coldest morning of the place. */
    static double coldestC(@Nullable Climate climate) {
        return climate == null ? COLD_MORNING_C : climate.coldestMorningC();
    }

    private static List<Evidence> coldestMorning(
            double setKpa, double setAtC, double placardKpa, @Nullable Climate climate) {
        double coldestC = coldestC(climate);
        var curve = PressureCurve.atSeaLevel(setKpa, setAtC, placardKpa, coldestC);
        double coldKpa = curve.atKpa(coldestC);
        return List.of(
                new Evidence(
                        new PressureSaid.ToExpect(Amount.of(coldestC, "°C")),
                        kpa(coldKpa),
                        new PressureSaid.GasFrom(
                                Amount.of(setAtC, "°C"),
                                climate == null
                                        ? Ground.COLD_MORNING
                                        : new PressureSaid.ColdestOf(climate.citation()))),
                new Evidence(Label.ABOVE_WARNING, kpa(coldKpa - curve.warningKpa()), Ground.QUARTER_BELOW));
    }

    private static Amount kpa(double pressureKpa) {
        return Amount.of(pressureKpa, "kPa");
    }
}
