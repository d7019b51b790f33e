package cornerbook.core.brake.fluid.judge;

import cornerbook.core.brake.fluid.judge.FluidSaid.Ground;
import cornerbook.core.brake.fluid.judge.FluidSaid.Label;
import cornerbook.core.brake.fluid.judge.FluidSaid.NotJudged;
import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finding on the brake fluid: its boiling point and water against the wet limits of its grade, and its age against the manufacturer's
 * interval.
 */
public final class BrakeFluidFindings {
    /** Water at which the wet boiling point of a grade is defined. Source: 49 CFR 571.116 S5.1.2, 3.70 % by mass. */
    private static final double WET_WATER_PERCENT = 3.7;

    private static final double MONTHS_PER_YEAR = 12;

    private final Case given;
    private final Vehicle vehicle;
    private final StandingReadings readings;
    private final List<Said> notJudged = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();
    private final List<Said> titles = new ArrayList<>();
    private final List<Said> words = new ArrayList<>();
    private Verdict verdict = Verdict.HOLDS;
    private double lifeLeft = 1;
    private @Nullable LocalDate due;

    private BrakeFluidFindings(Case given) {
        this.given = given;
        vehicle = given.vehicle();
        readings = given.readings();
    }

    /** The finding on the brake fluid; none when nothing is known of it. */
    public static Judgement judge(Case given) {
        return new BrakeFluidFindings(given).judge();
    }

    private Judgement judge() {
        if (isReplaced(readings)) {
            titles.add(new FluidSaid.NewAtThisVisit());
            evidence.add(
                    new Evidence(BrakeSaid.Label.REPLACED, BrakeSaid.Label.AT_THIS_VISIT, BrakeSaid.Ground.RECORDED));
        } else {
            boilingPoint();
            water();
        }
        age();
        if (titles.isEmpty()) {
            return Judgement.missing(notJudged);
        }
        if (verdict == Verdict.HOLDS) {
            words.add(new FluidSaid.Good());
        }
        return new Judgement(
                List.of(new Finding(
                                new Subject(Subject.Part.BRAKE_FLUID, null, null, null),
                                verdict,
                                new FluidSaid.Title(Listed.commas(titles)),
                                new Listed(words, Listed.Join.SENTENCES),
                                due,
                                null,
                                lifeLeft,
                                evidence,
                                Ground.FLUID)
                        .todo(Todo.Action.REPLACE)),
                notJudged);
    }

    private void boilingPoint() {
        var measured = readings.ofVehicle(Measure.BRAKE_FLUID_BOILING_POINT);
        if (measured.isEmpty()) {
            notJudged.add(NotJudged.BOILING_POINT);
            return;
        }
        double boilsC = measured.get().value();
        var grade = vehicle.brakeFluid();
        if (grade == null) {
            notJudged.add(new FluidSaid.NoGrade(celsius(boilsC)));
            return;
        }
        double wetC = grade.minimumWetBoilingPointC();
        double dryC = grade.minimumDryBoilingPointC();
        titles.add(new FluidSaid.BoilsAt(celsius(boilsC), grade.label(), celsius(wetC)));
        evidence.add(new Evidence(Label.BOILING_POINT, celsius(boilsC), Evidence.howRead(measured.get())));
        evidence.add(new Evidence(
                Label.MINIMUM_WET, celsius(wetC), new FluidSaid.OfWetGrade(grade.label(), percent(WET_WATER_PERCENT))));
        evidence.add(new Evidence(Label.MINIMUM_NEW, celsius(dryC), new FluidSaid.OfNewGrade(grade.label())));
        lifeLeft = Math.clamp((boilsC - wetC) / (dryC - wetC), 0, 1);
        if (grade.boilsTooEarly(boilsC)) {
            tooWet();
        }
    }

    private void water() {
        readings.ofVehicle(Measure.BRAKE_FLUID_WATER).ifPresent(water -> {
            titles.add(new FluidSaid.Water(percent(water.value())));
            evidence.add(new Evidence(
                    Label.WATER,
                    new FluidSaid.WetFrom(percent(water.value()), percent(WET_WATER_PERCENT)),
                    Ground.WATER));
            if (water.value() >= WET_WATER_PERCENT) {
                tooWet();
            }
        });
    }

    private void tooWet() {
        if (verdict != Verdict.SPENT) {
            words.add(new FluidSaid.TooWet());
        }
        verdict = Verdict.SPENT;
        lifeLeft = 0;
    }

    private void age() {
        var changedOn = lastChange();
        var intervalYears = vehicle.details().fluidChange().intervalYears();
        var today = given.visit().date();
        if (intervalYears == null && today.equals(changedOn)) {
            // Too old it cannot be on its first day, whatever its interval.
            return;
        }
        if (changedOn == null || intervalYears == null) {
            notJudged.add(changedOn == null ? NotJudged.AGE_WITHOUT_LAST_CHANGE : NotJudged.AGE_WITHOUT_INTERVAL);
            return;
        }
        var dueOn = changedOn.plusMonths(Math.round(intervalYears * MONTHS_PER_YEAR));
        titles.add(new FluidSaid.DueOn(dueOn));
        evidence.add(new Evidence(Label.CHANGED_ON, new Day(changedOn), BrakeSaid.Ground.RECORDED));
        evidence.add(new Evidence(
                Label.INTERVAL, new FluidSaid.Years(new Amount(intervalYears, "", 1)), Ground.MANUFACTURER));
        if (!dueOn.isAfter(today)) {
            verdict = Verdict.SPENT;
            words.add(new FluidSaid.TooOld());
            lifeLeft = 0;
        } else if (dueOn.isBefore(given.nextVisit())) {
            verdict = verdict.graver(Verdict.RUNS_OUT);
            words.add(new FluidSaid.DueBeforeNextVisit());
            due = dueOn;
        }
    }

    private @Nullable LocalDate lastChange() {
        for (int v = given.visits().size() - 1; v >= 0; v--) {
            if (isReplaced(given.readingsByVisit().get(v))) {
                return given.visits().get(v).date();
            }
        }
        return vehicle.details().fluidChange().changedOn();
    }

    private static Amount celsius(double temperatureC) {
        return Amount.of(temperatureC, "°C");
    }

    private static Amount percent(double share) {
        return new Amount(share, "%", 1);
    }

    private static boolean isReplaced(StandingReadings readings) {
        return readings.ofVehicle(Measure.BRAKE_FLUID_REPLACED)
                .filter(reading -> Math.round(reading.value()) == 1)
                .isPresent();
    }
}
