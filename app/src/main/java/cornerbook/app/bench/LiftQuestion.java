package cornerbook.app.bench;

import cornerbook.core.corner.Corner;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.CarMass;
import cornerbook.core.lift.LiftPoint;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.lift.LiftStack;
import cornerbook.core.lift.PartOff;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Whether the arms go under a car, and what each carries. */
final class LiftQuestion {
    private static final Pattern PART = Pattern.compile("([^=]+)=([^@]+)@(.+)");
    private static final double USUAL_TRACK_MM = 1600;
    private static final String POINTS = "Lift points: the vehicle maker's first. ";

    static final Question QUESTION = new Question(
            "lift",
            "Lift",
            "Whether the arms of a hoist go under a car, and what each of them carries.",
            List.of(),
            List.of(
                    new Group(
                            "stack",
                            "Does the arm go under?",
                            POINTS + "Look at each pad before the wheels leave the ground, and rock the car.",
                            List.of(
                                    Ask.quantity(
                                            "point-height",
                                            "Lift point",
                                            "mm",
                                            "height of the lift point",
                                            "Floor to the lift point."),
                                    Ask.quantity(
                                            "clearance",
                                            "Clearance",
                                            "mm",
                                            "clearance on the arm's way",
                                            "Floor to the car's lowest part over the arm's way."),
                                    Ask.quantity(
                                            "arm-height",
                                            "Arm",
                                            "mm",
                                            "height of the arm",
                                            "Floor to the top of the lowered arm, without adapter."),
                                    Ask.quantity(
                                            "adapter-height",
                                            "Adapter",
                                            "mm",
                                            "height of the adapter",
                                            "What the lowest adapter adds; 0 if not given."),
                                    Ask.quantity(
                                            "blocks",
                                            "Blocks",
                                            "mm",
                                            "height of the blocks",
                                            "Blocks that are under the wheels already; 0 if not given.")),
                            List.of("point-height", "clearance", "arm-height"),
                            LiftQuestion::stack),
                    new Group(
                            "loads",
                            "What does each arm carry?",
                            POINTS + "The plates of arm and hoist outrank every number here.",
                            List.of(
                                    Ask.quantity(
                                            "front", "Front axle", "kg", "front axle load", "Load of the front axle."),
                                    Ask.quantity("rear", "Rear axle", "kg", "rear axle load", "Load of the rear axle."),
                                    Ask.quantity(
                                            "wheelbase", "Wheelbase", "mm", "wheelbase", "Front axle to rear axle."),
                                    Ask.quantity(
                                            "points-front",
                                            "Front points",
                                            "mm",
                                            "lift point",
                                            "Front lift points, behind the front axle."),
                                    Ask.quantity(
                                            "points-rear",
                                            "Rear points",
                                            "mm",
                                            "",
                                            "Rear lift points, behind the front axle."),
                                    Ask.quantity(
                                            "points-width",
                                            "Points apart",
                                            "mm",
                                            "",
                                            "Left to right lift points; the rear ones alike if not given otherwise."),
                                    Ask.quantity(
                                            "points-rear-width",
                                            "Rear points apart",
                                            "mm",
                                            "",
                                            "Left to right rear lift points, where they are wider or narrower."),
                                    Ask.words(
                                            "points",
                                            "Points one by one",
                                            "LF 650 750; RF 700 -740; LR 2150 745; RR 2150 -745",
                                            "lift points",
                                            "Each lift point, as LF 650 750: behind the front axle and left of the centre, to the right negative; in place of the three above."),
                                    Ask.quantity(
                                            "arm-rating",
                                            "Rating of an arm",
                                            "kg",
                                            "rating of an arm",
                                            "Rating on the plate of one arm."),
                                    Ask.quantity(
                                            "hoist-rating",
                                            "Rating of the hoist",
                                            "kg",
                                            "rating of the hoist",
                                            "Rating on the plate of the hoist."),
                                    Ask.number(
                                            "left-share",
                                            "Left side",
                                            "%",
                                            "left share of the load",
                                            "Share of the load on the left wheels; 50 if not given."),
                                    Ask.quantity(
                                            "track",
                                            "Track",
                                            "mm",
                                            "track",
                                            "Left wheels to right wheels; 1600 mm if not given."),
                                    Ask.quantity(
                                            "wheels-off",
                                            "Wheels off, each",
                                            "kg",
                                            "mass of the front wheels",
                                            "All four wheels are off, each of this mass; on if not given."),
                                    new Ask(
                                            "off",
                                            "Parts off",
                                            new Ask.Several("drive battery=450 kg@1500 mm", 3),
                                            "A part that is off: its mass, and where it was behind the front axle. May be repeated.",
                                            "part off")),
                            List.of(
                                    "front",
                                    "rear",
                                    "wheelbase",
                                    "points-front",
                                    "points-rear",
                                    "points-width",
                                    "arm-rating",
                                    "hoist-rating"),
                            LiftQuestion::arms)),
            "nothing to compute, expected --front with the loads, or --point-height with the heights",
            "cornerbook lift --front 1050 --rear 1150 --wheelbase 2800 --points-front 650 --points-rear 2150 --points-width 1500 --arm-rating 1000 --hoist-rating 4000 --off \"drive battery=450 kg@1500 mm\"");

    private LiftQuestion() {}

    private static List<Part> stack(Given given) {
        if (!given.any("point-height", "clearance", "arm-height", "adapter-height", "blocks")) {
            return List.of();
        }
        var heights = LiftStack.of(
                given.quantity("point-height"),
                given.quantity("clearance"),
                given.quantity("arm-height"),
                given.quantity("adapter-height", 0),
                given.quantity("blocks", 0));
        var shown = given.shown();
        return List.of(new Part(
                "stack",
                List.of(
                        heights.goesUnder()
                                ? "The arm goes under, with %s to spare".formatted(shown.show(heights.spareMm(), "mm"))
                                : "The arm does not go under; blocks needed: %s"
                                        .formatted(shown.show(heights.neededMm(), "mm"))),
                heights));
    }

    private static List<Part> arms(Given given) {
        if (!given.any(
                "front",
                "rear",
                "wheelbase",
                "points-front",
                "points-rear",
                "points-width",
                "points",
                "arm-rating",
                "hoist-rating")) {
            return List.of();
        }
        double wheelbaseMm = given.quantity("wheelbase");
        var off = new ArrayList<PartOff>();
        if (given.any("wheels-off")) {
            off.addAll(PartOff.wheels(given.quantity("wheels-off"), wheelbaseMm));
        }
        given.several("off").forEach(text -> off.add(part(given, text)));
        double armKg = given.quantity("arm-rating");
        double hoistKg = given.quantity("hoist-rating");
        if (armKg > hoistKg) {
            throw new IllegalArgumentException(
                    "rating of the hoist is %.0f kg, below the %.0f kg of one of its arms: read both plates again"
                            .formatted(hoistKg, armKg));
        }
        var loads = ArmLoads.of(
                new CarMass(
                        given.quantity("front"),
                        given.quantity("rear"),
                        wheelbaseMm,
                        given.number("left-share", 50) / 100,
                        given.quantity("track", USUAL_TRACK_MM)),
                points(given),
                off,
                armKg,
                hoistKg);
        var shown = given.shown();
        var lines = new ArrayList<String>();
        for (var corner : Corner.values()) {
            var arm = loads.arm(corner);
            lines.add("Arm %s: %s, at most %s when the pads do not bear evenly: %.0f %% of its rating"
                    .formatted(
                            corner,
                            shown.show(arm.loadKg(), "kg"),
                            shown.show(arm.mostKg(), "kg"),
                            arm.shareOfRating() * 100));
        }
        lines.add("Hoist: %s, %.0f %% of its rating"
                .formatted(shown.show(loads.totalKg(), "kg"), loads.hoistShare() * 100));
        lines.add("Centre of gravity: %s behind the front axle, %s inside the lift points"
                .formatted(shown.show(loads.centreBehindFrontAxleMm(), "mm"), shown.show(loads.marginMm(), "mm")));
        return List.of(new Part("arms", lines, loads));
    }

    private static LiftPoints points(Given given) {
        if (given.any("points")) {
            var points = PointsOneByOne.parse(given.words("points"), given);
            if (given.any("points-front", "points-rear", "points-width") && !points.equals(pointsInPairs(given))) {
                throw new IllegalArgumentException(
                        "lift points one by one are not those of front, rear and width, expected one of the two");
            }
            return points;
        }
        return pointsInPairs(given);
    }

    private static LiftPoints pointsInPairs(Given given) {
        double frontMm = given.quantity("points-front");
        double rearMm = given.quantity("points-rear");
        double frontWidthMm = given.quantity("points-width");
        double rearWidthMm = given.quantity("points-rear-width", frontWidthMm);
        return new LiftPoints(
                new LiftPoint(frontMm, frontWidthMm / 2),
                new LiftPoint(frontMm, -frontWidthMm / 2),
                new LiftPoint(rearMm, rearWidthMm / 2),
                new LiftPoint(rearMm, -rearWidthMm / 2));
    }

    private static PartOff part(Given given, String text) {
        var match = PART.matcher(text);
        if (!match.matches()) {
            throw new IllegalArgumentException(
                    "part off is \"%s\", expected its name, mass and place as in drive battery=450 kg@1500 mm"
                            .formatted(text));
        }
        return new PartOff(
                cornerbook.core.say.Said.verbatim(match.group(1).strip()), given.quantity(match.group(2), "kg"), given.quantity(match.group(3), "mm"), 0);
    }
}
