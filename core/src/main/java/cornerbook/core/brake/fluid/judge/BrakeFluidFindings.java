package cornerbook.core.brake.fluid.judge;

import cornerbook.core.say.Said;

import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.Dates;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finding on the brake fluid: its boiling point and water against the wet limits of its grade, and its age against the manufacturer's
 * interval.
 */
public final class BrakeFluidFindings {
    /** Water at which the wet boiling point of a grade is defined. Source: 49 CFR 571.116 S5.1.2, 3.70 % by mass. */
    private static final double WET_WATER_PERCENT = 3.7;

    private static final double MONTHS_PER_YEAR = 12;

    private final Vehicle vehicle;
    private final StandingReadings readings;
    private final List<Evidence> evidence = new ArrayList<>();
    private final List<String> titles = new ArrayList<>();
    private final List<String> words = new ArrayList<>();
    private Verdict verdict = Verdict.HOLDS;
    private double lifeLeft = 1;
    private @Nullable LocalDate due;

    private BrakeFluidFindings(Vehicle vehicle, StandingReadings readings) {
        this.vehicle = vehicle;
        this.readings = readings;
    }

    /**
     * The finding on the brake fluid; empty when nothing is known of it.
     *
     * @param visits earliest first, the one that is judged last
     */
    public static Optional<Finding> of(
            Vehicle vehicle, List<Visit> visits, LocalDate nextVisit, List<Said> notJudged) {
        return new BrakeFluidFindings(vehicle, new StandingReadings(visits.getLast()))
                .judge(visits, nextVisit, notJudged);
    }

    private Optional<Finding> judge(List<Visit> visits, LocalDate nextVisit, List<Said> notJudged) {
        if (isReplaced(readings)) {
            titles.add("new at this visit");
            evidence.add(new Evidence("replaced", "at this visit", "recorded"));
        } else {
            boilingPoint(notJudged);
            water();
        }
        age(visits, nextVisit, notJudged);
        if (titles.isEmpty()) {
            return Optional.empty();
        }
        if (verdict == Verdict.HOLDS) {
            words.add("The brake fluid is good.");
        }
        return Optional.of(
                new Finding(
                        new Subject(Subject.Part.BRAKE_FLUID, null, null, null),
                        verdict,
                        "Brake fluid " + String.join(", ", titles),
                        String.join(" ", words),
                        due,
                        null,
                        lifeLeft,
                        evidence,
                        "49 CFR 571.116 S5.1.2; that fluid in a car is changed below it: common practice, no source; interval: vehicle manufacturer"));
    }

    private void boilingPoint(List<Said> notJudged) {
        var measured = readings.ofVehicle(Measure.BRAKE_FLUID_BOILING_POINT);
        if (measured.isEmpty()) {
            notJudged.add(Said.verbatim("brake fluid: boiling point not measured"));
            return;
        }
        double boilsC = measured.get().value();
        var grade = vehicle.brakeFluid();
        if (grade == null) {
            notJudged.add(Said.verbatim("brake fluid: boils at %.0f °C, but the vehicle's specification names no grade to judge it by"
                    .formatted(boilsC)));
            return;
        }
        double wetC = grade.minimumWetBoilingPointC();
        double dryC = grade.minimumDryBoilingPointC();
        titles.add("boils at %.0f °C, %s minimum %.0f °C".formatted(boilsC, grade.label(), wetC));
        evidence.add(new Evidence("boiling point", "%.0f °C".formatted(boilsC), Evidence.howRead(measured.get())));
        evidence.add(new Evidence(
                "minimum, wet",
                "%.0f °C".formatted(wetC),
                "%s with 3.7 %% water, 49 CFR 571.116 S5.1.2".formatted(grade.label())));
        evidence.add(new Evidence(
                "minimum, new",
                "%.0f °C".formatted(dryC),
                "%s from a sealed container, 49 CFR 571.116 S5.1.1".formatted(grade.label())));
        lifeLeft = Math.clamp((boilsC - wetC) / (dryC - wetC), 0, 1);
        if (grade.boilsTooEarly(boilsC)) {
            tooWet();
        }
    }

    private void water() {
        readings.ofVehicle(Measure.BRAKE_FLUID_WATER).ifPresent(water -> {
            titles.add("%.1f %% water".formatted(water.value()));
            evidence.add(
                    new Evidence(
                            "water",
                            "%.1f %%, wet from %.1f %%".formatted(water.value(), WET_WATER_PERCENT),
                            "49 CFR 571.116 S5.1.2; a boiling test outranks a pen that measures conductivity: trade literature"));
            if (water.value() >= WET_WATER_PERCENT) {
                tooWet();
            }
        });
    }

    private void tooWet() {
        if (verdict != Verdict.SPENT) {
            words.add(
                    "The brake fluid has taken up too much water. It may boil when the brakes get hot, and the pedal then goes soft; it has to be changed now.");
        }
        verdict = Verdict.SPENT;
        lifeLeft = 0;
    }

    private void age(List<Visit> visits, LocalDate nextVisit, List<Said> notJudged) {
        var changedOn = lastChange(visits);
        var intervalYears = vehicle.details().fluidChange().intervalYears();
        if (changedOn == null || intervalYears == null) {
            notJudged.add(Said.verbatim("brake fluid: age, for %s not known"
                    .formatted(changedOn == null ? "the day of its last change is" : "the manufacturer's interval is")));
            return;
        }
        var today = visits.getLast().date();
        var dueOn = changedOn.plusMonths(Math.round(intervalYears * MONTHS_PER_YEAR));
        titles.add("due on %s".formatted(Dates.written(dueOn)));
        evidence.add(new Evidence("changed on", Dates.written(changedOn), "recorded"));
        evidence.add(new Evidence(
                "interval", "%.1f years".formatted(intervalYears), "vehicle manufacturer, as in the car's data"));
        if (!dueOn.isAfter(today)) {
            verdict = Verdict.SPENT;
            words.add("The brake fluid is older than the manufacturer allows; it has to be changed now.");
            lifeLeft = 0;
        } else if (dueOn.isBefore(nextVisit)) {
            verdict = verdict.graver(Verdict.RUNS_OUT);
            words.add("The brake fluid reaches the manufacturer's age before the next visit; have it changed.");
            due = dueOn;
        }
    }

    private @Nullable LocalDate lastChange(List<Visit> visits) {
        for (var visit : visits.reversed()) {
            if (isReplaced(new StandingReadings(visit))) {
                return visit.date();
            }
        }
        return vehicle.details().fluidChange().changedOn();
    }

    private static boolean isReplaced(StandingReadings readings) {
        return readings.ofVehicle(Measure.BRAKE_FLUID_REPLACED)
                .filter(reading -> Math.round(reading.value()) == 1)
                .isPresent();
    }
}
