package cornerbook.core.visit;

import java.util.List;
import java.util.Optional;

/** Finding on the brake fluid: its measured boiling point against the wet minimum of its grade. */
final class BrakeFluidFindings {
    private BrakeFluidFindings() {}

    static Optional<Finding> of(Vehicle vehicle, CurrentReadings readings, List<String> notJudged) {
        var measured = readings.ofVehicle(Measure.BRAKE_FLUID_BOILING_POINT);
        if (measured.isEmpty()) {
            notJudged.add("brake fluid: boiling point not measured");
            return Optional.empty();
        }
        double boilsC = measured.get().value();
        var grade = vehicle.brakeFluid();
        if (grade == null) {
            notJudged.add("brake fluid: boils at %.0f °C, but the vehicle's specification names no grade to judge it by"
                    .formatted(boilsC));
            return Optional.empty();
        }
        double wetC = grade.minimumWetBoilingPointC();
        double dryC = grade.minimumDryBoilingPointC();
        boolean spent = grade.boilsTooEarly(boilsC);
        return Optional.of(new Finding(
                new Subject(Subject.Part.BRAKE_FLUID, null, null, null),
                spent ? Verdict.SPENT : Verdict.HOLDS,
                "Brake fluid boils at %.0f °C, %s minimum %.0f °C".formatted(boilsC, grade.label(), wetC),
                spent
                        ? "The brake fluid has taken up too much water. It may boil when the brakes get hot, and the pedal then goes soft; it has to be changed now."
                        : "The brake fluid boils late enough.",
                null,
                null,
                Math.clamp((boilsC - wetC) / (dryC - wetC), 0, 1),
                List.of(
                        new Evidence(
                                "boiling point",
                                "%.0f °C".formatted(boilsC),
                                "reading, written \"" + measured.get().asWritten() + "\""),
                        new Evidence(
                                "minimum, wet",
                                "%.0f °C".formatted(wetC),
                                "%s with 3.7 %% water, 49 CFR 571.116 S5.1.2".formatted(grade.label())),
                        new Evidence(
                                "minimum, new",
                                "%.0f °C".formatted(dryC),
                                "%s from a sealed container, 49 CFR 571.116 S5.1.1".formatted(grade.label()))),
                "49 CFR 571.116 S5.1.2; that fluid in a car is changed below it: common practice, no source"));
    }
}
