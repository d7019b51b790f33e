package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Example;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.corner.Corner;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.CarMass;
import cornerbook.core.lift.DriveOver;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.lift.LiftPoint;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.lift.LiftRaise;
import cornerbook.core.lift.LiftSaid;
import cornerbook.core.lift.LiftStack;
import cornerbook.core.lift.PartOff;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether the arms go under a car, and what each carries. */
final class LiftQuestion {
    private static final Pattern PART = Pattern.compile("([^=]+)=([^@]+)@(.+)");
    static final Question QUESTION = new Question(
            "lift",
            Title.LIFT,
            Description.LIFT,
            List.of(),
            List.of(
                    new Group(
                            "stack",
                            Title.LIFT_STACK,
                            Note.LIFT_STACK,
                            List.of(
                                    Ask.quantity(
                                            "point-height",
                                            Label.LIFT_POINT_HEIGHT,
                                            "mm",
                                            LiftSaid.Part.HEIGHT_OF_POINT,
                                            Help.LIFT_POINT_HEIGHT),
                                    Ask.quantity(
                                            "clearance",
                                            Label.LIFT_CLEARANCE,
                                            "mm",
                                            LiftSaid.Part.CLEARANCE_ON_WAY,
                                            Help.LIFT_CLEARANCE),
                                    Ask.quantity(
                                            "arm-height",
                                            Label.LIFT_ARM_HEIGHT,
                                            "mm",
                                            LiftSaid.Part.HEIGHT_OF_ARM,
                                            Help.LIFT_ARM_HEIGHT),
                                    Ask.quantity(
                                            "adapter-height",
                                            Label.LIFT_ADAPTER_HEIGHT,
                                            "mm",
                                            LiftSaid.Part.HEIGHT_OF_ADAPTER,
                                            Help.LIFT_ADAPTER_HEIGHT),
                                    Ask.quantity(
                                            "blocks",
                                            Label.LIFT_BLOCKS,
                                            "mm",
                                            LiftSaid.Part.BLOCK_HEIGHT,
                                            Help.LIFT_BLOCKS),
                                    Ask.quantity(
                                            "drive-over",
                                            Label.LIFT_DRIVE_OVER,
                                            "mm",
                                            LiftSaid.Part.DRIVE_OVER_HEIGHT,
                                            Help.LIFT_DRIVE_OVER)),
                            List.of("point-height", "clearance", "arm-height"),
                            LiftQuestion::stack),
                    new Group(
                            "raise",
                            Title.LIFT_RAISE,
                            Note.LIFT_RAISE,
                            List.of(
                                    Ask.quantity(
                                            "raised",
                                            Label.LIFT_RAISED,
                                            "mm",
                                            LiftSaid.Part.RAISED_PADS,
                                            Help.LIFT_RAISED),
                                    Ask.quantity(
                                            "car-height",
                                            Label.LIFT_CAR_HEIGHT,
                                            "mm",
                                            LiftSaid.Part.CAR_HEIGHT,
                                            Help.LIFT_CAR_HEIGHT),
                                    Ask.quantity(
                                            "ceiling",
                                            Label.LIFT_CEILING,
                                            "mm",
                                            LiftSaid.Part.CEILING,
                                            Help.LIFT_CEILING)),
                            List.of("point-height", "raised", "car-height", "ceiling"),
                            LiftQuestion::raise),
                    new Group(
                            "loads",
                            Title.LIFT_LOADS,
                            Note.LIFT_LOADS,
                            List.of(
                                    Ask.quantity(
                                            "front",
                                            Label.LIFT_FRONT,
                                            "kg",
                                            LiftSaid.Part.FRONT_AXLE_LOAD,
                                            Help.LIFT_FRONT),
                                    Ask.quantity(
                                            "rear",
                                            Label.LIFT_REAR,
                                            "kg",
                                            LiftSaid.Part.REAR_AXLE_LOAD,
                                            Help.LIFT_REAR),
                                    Ask.quantity(
                                            "wheelbase",
                                            Label.LIFT_WHEELBASE,
                                            "mm",
                                            LiftSaid.Part.WHEELBASE,
                                            Help.LIFT_WHEELBASE),
                                    Ask.quantity(
                                            "points-front",
                                            Label.LIFT_POINTS_FRONT,
                                            "mm",
                                            LiftSaid.Part.POINT_BEHIND_FRONT_AXLE,
                                            Help.LIFT_POINTS_FRONT),
                                    Ask.quantity(
                                            "points-rear", Label.LIFT_POINTS_REAR, "mm", null, Help.LIFT_POINTS_REAR),
                                    Ask.quantity(
                                            "points-width",
                                            Label.LIFT_POINTS_WIDTH,
                                            "mm",
                                            LiftSaid.Part.POINT_LEFT_OF_CENTRE,
                                            Help.LIFT_POINTS_WIDTH),
                                    Ask.quantity(
                                            "points-rear-width",
                                            Label.LIFT_POINTS_REAR_WIDTH,
                                            "mm",
                                            null,
                                            Help.LIFT_POINTS_REAR_WIDTH),
                                    Ask.words(
                                            "points", Label.LIFT_POINTS,
                                            "LF 650 750; RF 700 -740; LR 2150 745; RR 2150 -745", Help.LIFT_POINTS),
                                    Ask.quantity(
                                            "arm-rating",
                                            Label.LIFT_ARM_RATING,
                                            "kg",
                                            LiftSaid.Part.ARM_RATING,
                                            Help.LIFT_ARM_RATING),
                                    Ask.quantity(
                                            "hoist-rating",
                                            Label.LIFT_HOIST_RATING,
                                            "kg",
                                            LiftSaid.Part.HOIST_RATING,
                                            Help.LIFT_HOIST_RATING),
                                    Ask.number(
                                            "left-share",
                                            Label.LIFT_LEFT_SHARE,
                                            "%",
                                            LiftSaid.Part.LEFT_SHARE,
                                            Help.LIFT_LEFT_SHARE),
                                    Ask.quantity(
                                            "track",
                                            Label.LIFT_TRACK,
                                            "mm",
                                            LiftSaid.Part.TRACK,
                                            new Otherwise(
                                                    Help.LIFT_TRACK, new Amount(CarMass.USUAL_TRACK_MM, "mm", 0))),
                                    Ask.quantity("wheels-off", Label.LIFT_WHEELS_OFF, "kg", null, Help.LIFT_WHEELS_OFF),
                                    new Ask(
                                            "off",
                                            Label.LIFT_OFF,
                                            new Ask.Several(Example.PART_OFF, 3),
                                            Help.LIFT_OFF,
                                            null)),
                            List.of("front", "rear", "hoist-rating"),
                            LiftQuestion::arms)),
            NothingAsked.LIFT,
            "cornerbook lift --front 1050 --rear 1150 --wheelbase 2800 --points-front 650 --points-rear 2150 --points-width 1500 --arm-rating 1000 --hoist-rating 4000 --off \"drive battery=450 kg@1500 mm\"");

    private LiftQuestion() {}

    private static List<Part> stack(Given given) {
        // The lift point and the adapter are asked here, and used by the height under a ceiling too.
        boolean alone = !given.any("raised", "car-height", "ceiling");
        if (!given.any("clearance", "arm-height", "blocks", "drive-over")
                && !(alone && given.any("point-height", "adapter-height"))) {
            return List.of();
        }
        var heights = LiftStack.of(
                given.quantity("point-height"),
                given.quantity("clearance"),
                given.quantity("arm-height"),
                given.quantity("adapter-height", 0),
                given.quantity("blocks", 0));
        var parts = new ArrayList<Part>();
        parts.add(Part.of(
                "stack",
                heights,
                heights.goesUnder()
                        ? new AnswerSaid.ArmGoesUnder(given.told(heights.spareMm(), "mm"))
                        : new AnswerSaid.ArmStaysOut(given.told(heights.neededMm(), "mm"))));
        var driveOverMm = given.find("drive-over");
        if (driveOverMm != null) {
            var over = DriveOver.of(heights.clearanceMm(), driveOverMm);
            parts.add(Part.of(
                    "drive-over",
                    over,
                    new AnswerSaid.DrivesOver(given.told(Math.abs(over.spareMm()), "mm"), over.clears())));
        }
        return parts;
    }

    private static List<Part> raise(Given given) {
        if (!given.any("raised", "car-height", "ceiling")) {
            return List.of();
        }
        var raise = LiftRaise.of(
                given.quantity("point-height"),
                given.quantity("adapter-height", 0),
                given.quantity("raised"),
                given.quantity("car-height"),
                given.quantity("ceiling"));
        return List.of(Part.of(
                "raise",
                raise,
                new AnswerSaid.RaiseTo(
                        given.told(Math.floor(raise.padsMm()), "mm"),
                        given.told(Math.floor(raise.underMm()), "mm"),
                        raise.limited())));
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
        var points = points(given);
        double wheelbaseMm = points.isPresent() || given.any("off")
                ? given.quantity("wheelbase")
                : given.quantity("wheelbase", CarMass.USUAL_WHEELBASE_MM);
        var off = new ArrayList<PartOff>();
        if (given.any("wheels-off")) {
            double wheelKg = given.quantity("wheels-off");
            off.addAll(given.at("wheels-off", () -> PartOff.wheels(wheelKg, wheelbaseMm)));
        }
        off.addAll(given.several("off", text -> part(given, text)));
        var armKg = given.find("arm-rating");
        double hoistKg = given.quantity("hoist-rating");
        if (armKg != null && armKg > hoistKg) {
            throw AskException.refused(
                    "hoist-rating", new RefusalSaid.HoistBelowArm(Amount.of(hoistKg, "kg"), Amount.of(armKg, "kg")));
        }
        var loads = ArmLoads.of(
                new CarMass(
                        given.quantity("front"),
                        given.quantity("rear"),
                        wheelbaseMm,
                        given.number("left-share", 50) / 100,
                        given.quantity("track", CarMass.USUAL_TRACK_MM)),
                points.orElse(null),
                off,
                new HoistRating(hoistKg, armKg, armKg));
        var lines = new ArrayList<Said>();
        for (var corner : Corner.values()) {
            var arm = loads.arm(corner);
            lines.add(new AnswerSaid.ArmCarries(
                    corner,
                    given.told(arm.loadKg(), "kg"),
                    Amount.of(arm.share() * 100, "%"),
                    given.told(arm.mostKg(), "kg"),
                    Amount.of(arm.mostShare() * 100, "%")));
        }
        lines.add(new AnswerSaid.HoistCarries(
                given.told(loads.totalKg(), "kg"), Amount.of(loads.hoistShare() * 100, "%")));
        var marginMm = loads.marginMm();
        if (marginMm != null) {
            lines.add(new AnswerSaid.CentreOfGravity(
                    given.told(loads.centreBehindFrontAxleMm(), "mm"), given.told(marginMm, "mm")));
        }
        return List.of(new Part("arms", lines, loads));
    }

    /** Empty where nothing is given of them. */
    private static Optional<LiftPoints> points(Given given) {
        if (given.any("points")) {
            var points = given.reading("points", text -> PointsOneByOne.parse(text, given));
            if (given.any("points-front", "points-rear", "points-width") && !points.equals(pointsInPairs(given))) {
                throw AskException.refused("points", RefusalSaid.Plainly.POINTS_GIVEN_TWICE);
            }
            return Optional.of(points);
        }
        return given.any("points-front", "points-rear", "points-width", "points-rear-width")
                ? Optional.of(pointsInPairs(given))
                : Optional.empty();
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
            throw new Refused(new RefusalSaid.PartOffUnread(Quoted.of(text)));
        }
        return new PartOff(
                Said.verbatim(match.group(1).strip()),
                given.quantity(match.group(2), "kg"),
                given.quantity(match.group(3), "mm"),
                0);
    }

    /** Lift points that do not mirror each other, as "LF 650 750; RF 700 -740; LR 2150 745; RR 2150 -745". */
    private static final class PointsOneByOne {
        private static final String LENGTH = "([+\\-−]?\\d[\\d.,]*(?:\\s*(?:mm|cm|in|m))?)";
        private static final Pattern POINT =
                Pattern.compile("\\s*(LF|RF|LR|RR)\\s+" + LENGTH + "\\s+" + LENGTH + "\\s*", Pattern.CASE_INSENSITIVE);

        private PointsOneByOne() {}

        /**
         * The four points; a bare number is in the person's unit.
         *
         * @throws Refused when they are not four of that form
         */
        static LiftPoints parse(String text, Given given) {
            var points = new EnumMap<Corner, LiftPoint>(Corner.class);
            for (var part : text.split(";", -1)) {
                var match = POINT.matcher(part);
                if (!match.matches()) {
                    throw new Refused(new RefusalSaid.PointsUnread(Quoted.of(part)));
                }
                points.put(
                        Corner.valueOf(match.group(1).toUpperCase(Locale.ROOT)),
                        new LiftPoint(length(match, 2, given), length(match, 3, given)));
            }
            return new LiftPoints(
                    get(points, Corner.LF), get(points, Corner.RF), get(points, Corner.LR), get(points, Corner.RR));
        }

        private static LiftPoint get(Map<Corner, LiftPoint> points, Corner corner) {
            return Optional.ofNullable(points.get(corner))
                    .orElseThrow(() ->
                            new Refused(new RefusalSaid.PointsLack(corner, Listed.commas(List.of(Corner.values())))));
        }

        private static double length(Matcher match, int group, Given given) {
            return given.quantity(match.group(group), "mm");
        }
    }
}
