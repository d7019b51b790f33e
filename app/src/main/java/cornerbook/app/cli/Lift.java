package cornerbook.app.cli;

import cornerbook.core.corner.Corner;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.CarMass;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.lift.LiftStack;
import cornerbook.core.lift.PartOff;
import cornerbook.core.quantity.Quantities;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Whether the arms go under a car, and what each carries. */
@CommandLine.Command(
        name = "lift",
        description = "Whether the arms of a hoist go under a car, and what each of them carries.",
        footer = {
            "%nQuantities carry their unit: \"2300 lb\", \"5.5 in\"; a bare number is in kg or mm.",
            "Example: cornerbook lift --front 1050 --rear 1150 --wheelbase 2800 --points-front 650 --points-rear 2150 --points-width 1500 --arm-rating 1000 --hoist-rating 4000 --off \"drive battery=450 kg@1500 mm\""
        })
final class Lift extends CalculatorVerb {
    private static final Pattern PART = Pattern.compile("([^=]+)=([^@]+)@(.+)");

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable LoadOptions load;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable StackOptions stack;

    Lift(PrintWriter out) {
        super(out);
    }

    private static final class LoadOptions {
        @CommandLine.Option(
                names = "--front",
                required = true,
                paramLabel = "MASS",
                converter = Unit.Mass.class,
                description = "Load of the front axle.")
        private double frontKg;

        @CommandLine.Option(
                names = "--rear",
                required = true,
                paramLabel = "MASS",
                converter = Unit.Mass.class,
                description = "Load of the rear axle.")
        private double rearKg;

        @CommandLine.Option(
                names = "--wheelbase",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Front axle to rear axle.")
        private double wheelbaseMm;

        @CommandLine.Option(
                names = "--points-front",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Front lift points, behind the front axle.")
        private double pointsFrontMm;

        @CommandLine.Option(
                names = "--points-rear",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Rear lift points, behind the front axle.")
        private double pointsRearMm;

        @CommandLine.Option(
                names = "--points-width",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Left to right lift points.")
        private double pointsWidthMm;

        @CommandLine.Option(
                names = "--arm-rating",
                required = true,
                paramLabel = "MASS",
                converter = Unit.Mass.class,
                description = "Rating on the plate of one arm.")
        private double armRatingKg;

        @CommandLine.Option(
                names = "--hoist-rating",
                required = true,
                paramLabel = "MASS",
                converter = Unit.Mass.class,
                description = "Rating on the plate of the hoist.")
        private double hoistRatingKg;

        @CommandLine.Option(
                names = "--left-share",
                paramLabel = "PERCENT",
                description = "Share of the load on the left wheels; 50 if not given.")
        private double leftPercent = 50;

        @CommandLine.Option(
                names = "--track",
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Left wheels to right wheels; 1600 mm if not given.")
        private double trackMm = 1600;

        @CommandLine.Option(
                names = "--wheels-off",
                paramLabel = "MASS",
                converter = Unit.Mass.class,
                description = "All four wheels are off, each of this mass.")
        private @Nullable Double wheelKg;

        @CommandLine.Option(
                names = "--off",
                paramLabel = "PART=MASS@LENGTH",
                description = "A part that is off: its mass, and where it was behind the front axle. May be repeated.")
        private List<String> off = new ArrayList<>();
    }

    private static final class StackOptions {
        @CommandLine.Option(
                names = "--point-height",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Floor to the lift point.")
        private double pointMm;

        @CommandLine.Option(
                names = "--clearance",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Floor to the car's lowest part over the arm's way.")
        private double clearanceMm;

        @CommandLine.Option(
                names = "--arm-height",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Floor to the top of the lowered arm, without adapter.")
        private double armMm;

        @CommandLine.Option(
                names = "--adapter-height",
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "What the lowest adapter adds.")
        private double adapterMm;

        @CommandLine.Option(
                names = "--blocks",
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Blocks that are under the wheels already.")
        private double blocksMm;
    }

    @Override
    List<Part> parts() {
        var parts = new ArrayList<Part>();
        if (stack != null) {
            var heights = LiftStack.of(stack.pointMm, stack.clearanceMm, stack.armMm, stack.adapterMm, stack.blocksMm);
            parts.add(new Part(
                    "stack",
                    List.of(
                            heights.goesUnder()
                                    ? "The arm goes under, with %s to spare".formatted(Unit.length(heights.spareMm()))
                                    : "The arm does not go under; blocks needed: %s"
                                            .formatted(Unit.length(heights.neededMm()))),
                    heights));
        }
        if (load != null) {
            parts.add(arms(load));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException(
                    "nothing to compute, expected --front with the loads, or --point-height with the heights");
        }
        return parts;
    }

    private static Part arms(LoadOptions options) {
        var off = new ArrayList<PartOff>();
        if (options.wheelKg != null) {
            off.addAll(PartOff.wheels(options.wheelKg, options.wheelbaseMm));
        }
        options.off.forEach(text -> off.add(part(text)));
        var loads = ArmLoads.of(
                new CarMass(
                        options.frontKg,
                        options.rearKg,
                        options.wheelbaseMm,
                        options.leftPercent / 100,
                        options.trackMm),
                LiftPoints.symmetric(options.pointsFrontMm, options.pointsRearMm, options.pointsWidthMm),
                off,
                options.armRatingKg,
                options.hoistRatingKg);
        var lines = new ArrayList<String>();
        for (var corner : Corner.values()) {
            var arm = loads.arm(corner);
            lines.add("Arm %s: %s, at most %.0f kg when the pads do not bear evenly: %.0f %% of its rating"
                    .formatted(corner, Unit.mass(arm.loadKg()), arm.mostKg(), arm.shareOfRating() * 100));
        }
        lines.add("Hoist: %s, %.0f %% of its rating".formatted(Unit.mass(loads.totalKg()), loads.hoistShare() * 100));
        lines.add("Centre of gravity: %s behind the front axle, %s inside the lift points"
                .formatted(Unit.length(loads.centreBehindFrontAxleMm()), Unit.length(loads.marginMm())));
        return new Part("arms", lines, loads);
    }

    private static PartOff part(String text) {
        var match = PART.matcher(text);
        if (!match.matches()) {
            throw new IllegalArgumentException(
                    "part off is \"%s\", expected its name, mass and place as in drive battery=450 kg@1500 mm"
                            .formatted(text));
        }
        return new PartOff(
                match.group(1).strip(),
                Quantities.parse(match.group(2), "kg"),
                Quantities.parse(match.group(3), "mm"),
                0);
    }
}
