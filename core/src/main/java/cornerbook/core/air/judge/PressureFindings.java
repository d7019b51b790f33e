package cornerbook.core.air.judge;

import cornerbook.core.say.Said;

import cornerbook.core.air.PressureCurve;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.UsedGauge;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.Climate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Findings on the air in each tyre: as found, and as set against the placard. */
public final class PressureFindings {
    /** How far the set pressure may lie from what was to be set. Common practice, no source. */
    private static final double SET_TOLERANCE_KPA = 10;

    /** Coldest morning where the climate of the place is not known. Common practice, no source. */
    private static final double COLD_MORNING_C = -20;

    private PressureFindings() {}

    /**
     * The findings on the pressure at each corner.
     *
     * @param visits until the one judged, which is the last
     */
    public static List<Finding> of(
            Vehicle vehicle,
            List<Visit> visits,
            StandingReadings readings,
            @Nullable Climate climate,
            List<Said> notJudged) {
        var visit = visits.getLast();
        var gauge = UsedGauge.of(visit);
        var findings = new ArrayList<Finding>();
        for (var corner : Corner.values()) {
            double placardKpa = vehicle.axle(corner.axle()).placardPressureKpa();
            var arrived = visit.arrivedOn().get(corner);
            var left = visit.leftOn().get(corner);
            var loss = arrived == null ? Optional.<AirLoss>empty() : AirLoss.find(arrived, visits);
            if (arrived != null) {
                loss.filter(AirLoss::slowLeak)
                        .ifPresent(leak -> findings.add(slowLeak(corner, arrived, leak, placardKpa, visit.date())));
                readings.ofWheel(Measure.PRESSURE_FOUND, arrived)
                        .filter(found -> gauge.kpa(found) < PressureCurve.WARNING_SHARE * placardKpa)
                        .ifPresent(found -> findings.add(
                                foundLow(corner, arrived, arrived.equals(left), found, gauge, placardKpa)));
            }
            if (left != null) {
                var set = readings.ofWheel(Measure.PRESSURE_SET, left);
                if (set.isPresent()) {
                    findings.add(set(
                            corner,
                            left,
                            set.get(),
                            gauge,
                            AirToSet.of(placardKpa, visit),
                            readings,
                            climate,
                            loss.filter(lost -> left.equals(arrived))));
                } else {
                    notJudged.add(Said.verbatim("%s pressure: not recorded as set on %s".formatted(corner, left)));
                }
            }
        }
        return findings;
    }

    private static Finding foundLow(
            Corner corner, String tag, boolean stays, Reading found, UsedGauge gauge, double placardKpa) {
        double foundKpa = gauge.kpa(found);
        return new Finding(
                new Subject(Subject.Part.PRESSURE, corner, tag, null),
                stays ? Verdict.SPENT : Verdict.RUNS_OUT,
                "%s came in at %.0f kPa, placard %.0f kPa: look for a leak".formatted(tag, foundKpa, placardKpa),
                "The tyre at %s came in far too low on air; the cause has to be found.".formatted(corner),
                null,
                null,
                Math.clamp(foundKpa / placardKpa, 0, 1),
                List.of(
                        new Evidence("found", "%.0f kPa".formatted(foundKpa), gauge.how(found)),
                        new Evidence(
                                "warning comes at",
                                "%.0f kPa".formatted(PressureCurve.WARNING_SHARE * placardKpa),
                                "25 % below the placard's cold pressure")),
                "49 CFR 571.138 S4.2: 25 % below the placard");
    }

    /** It runs out when the warning would come, set to the placard now. */
    private static Finding slowLeak(Corner corner, String tag, AirLoss leak, double placardKpa, LocalDate day) {
        var horizon = leak.reaches(placardKpa, PressureCurve.WARNING_SHARE * placardKpa, day);
        return new Finding(
                new Subject(Subject.Part.PRESSURE, corner, tag, null),
                Verdict.RUNS_OUT,
                "%s loses %.0f kPa in 30 days: a slow leak"
                        .formatted(tag, leak.rate().lossKpa()),
                "The tyre at %s loses air, more than the cold explains; the leak has to be found.".formatted(corner),
                horizon,
                null,
                Math.clamp(leak.foundKpa() / placardKpa, 0, 1),
                List.of(
                        leak.evidence(),
                        new Evidence(
                                "warning would come about",
                                horizon.toString(),
                                "set to the placard now, 25 % lost at this rate")),
                "ideal gas, volume constant; about 1 psi a month is usual (service literature), a leak from twice that is common practice, no source");
    }

    private static Finding set(
            Corner corner,
            String tag,
            Reading set,
            UsedGauge gauge,
            AirToSet asked,
            StandingReadings readings,
            @Nullable Climate climate,
            Optional<AirLoss> loss) {
        double placardKpa = asked.placardKpa();
        double setKpa = gauge.kpa(set);
        double differenceKpa = setKpa - asked.trueKpa();
        boolean fits = Math.abs(differenceKpa) <= SET_TOLERANCE_KPA;
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence("set", "%.0f kPa".formatted(setKpa), gauge.how(set)));
        evidence.add(new Evidence("placard, cold", "%.0f kPa".formatted(placardKpa), "vehicle's specification"));
        evidence.add(new Evidence(
                "to be set",
                "%.0f kPa".formatted(asked.trueKpa()),
                asked.warmed()
                        ? "ideal gas, absolute: %s".formatted(asked.from())
                        : "the placard's; temperature of the tyres or outside not read"));
        readings.ofVehicle(Measure.TYRE_TEMPERATURE)
                .ifPresent(temperature ->
                        evidence.addAll(coldestMorning(setKpa, temperature.value(), placardKpa, climate)));
        loss.map(AirLoss::evidence).ifPresent(evidence::add);
        return new Finding(
                new Subject(Subject.Part.PRESSURE, corner, tag, null),
                fits ? Verdict.HOLDS : Verdict.SPENT,
                asked.warmed()
                        ? "%s pressure set to %.0f kPa, asked %.0f kPa for the placard's %.0f kPa cold"
                                .formatted(corner, setKpa, asked.trueKpa(), placardKpa)
                        : "%s pressure set to %.0f kPa, placard %.0f kPa".formatted(corner, setKpa, placardKpa),
                fits
                        ? "The tyre pressure at %s is set as the placard asks.".formatted(corner)
                        : "The tyre pressure at %s is not what the placard asks; it has to be set again."
                                .formatted(corner),
                null,
                null,
                fits ? 1 : Math.clamp(1 - Math.abs(differenceKpa) / asked.trueKpa(), 0, 1),
                evidence,
                "vehicle placard; tolerance ±%.0f kPa common practice, no source".formatted(SET_TOLERANCE_KPA));
    }

    /** Coldest morning of the place. */
    public static double coldestC(@Nullable Climate climate) {
        return climate == null ? COLD_MORNING_C : climate.coldestMorningC();
    }

    private static List<Evidence> coldestMorning(
            double setKpa, double setAtC, double placardKpa, @Nullable Climate climate) {
        double coldestC = coldestC(climate);
        var curve = PressureCurve.atSeaLevel(setKpa, setAtC, placardKpa, coldestC);
        double coldKpa = curve.atKpa(coldestC);
        return List.of(
                new Evidence(
                        "to expect at %.0f °C".formatted(coldestC).replace('-', '−'),
                        "%.0f kPa".formatted(coldKpa),
                        "ideal gas from %.0f °C when set; %s"
                                .formatted(
                                        setAtC,
                                        climate == null
                                                ? "a cold morning, common practice, no source"
                                                : "coldest morning of " + climate.citation())),
                new Evidence(
                        "above the warning then",
                        "%.0f kPa".formatted(coldKpa - curve.warningKpa()),
                        "the warning comes at 25 % below the placard (49 CFR 571.138, S4.2)"));
    }
}
