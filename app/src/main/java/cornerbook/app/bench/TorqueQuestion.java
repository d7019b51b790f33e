package cornerbook.app.bench;

import cornerbook.core.fastener.ClampLoad;
import cornerbook.core.fastener.FrictionBand;
import cornerbook.core.fastener.PropertyClass;
import cornerbook.core.fastener.ScrewThread;
import cornerbook.core.fastener.SeatFace;
import cornerbook.core.fastener.ShortForm;
import cornerbook.core.fastener.ThreadState;
import cornerbook.core.fastener.TighteningOrder;
import cornerbook.core.fastener.TorqueBar;
import cornerbook.core.fastener.WrenchCalibration;
import cornerbook.core.fastener.WrenchScale;
import cornerbook.core.fastener.WrenchSetting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What to set on the wrench, and what the torque does to the fastener. */
final class TorqueQuestion {
    private static final Pattern BETWEEN = Pattern.compile("\\s+(?:to\\s+)?|\\s*–\\s*");
    private static final double N_PER_KN = 1000;

    static final Question QUESTION = new Question(
            "torque",
            "Torque",
            "What to set on the torque wrench, and what a torque does to a wheel fastener.",
            List.of(Ask.quantity(
                    "torque",
                    "Torque asked",
                    "N·m",
                    "torque",
                    "Torque that the vehicle's maker asks at the fastener.")),
            List.of(
                    new Group(
                            "order",
                            "Order of tightening",
                            "On the ground, by hand first; a wrench that clicks without moving has not measured.",
                            List.of(Ask.number(
                                    "count",
                                    "Fasteners per wheel",
                                    "",
                                    "fasteners per wheel",
                                    "Fasteners per wheel, 3 to 10.")),
                            TorqueQuestion::order),
                    new Group(
                            "setting",
                            "Wrench with an adapter",
                            "",
                            List.of(
                                    Ask.quantity(
                                            "length",
                                            "Wrench",
                                            "mm",
                                            "wrench length",
                                            "Middle of the grip to the middle of the drive."),
                                    Ask.quantity(
                                            "adapter",
                                            "Adapter",
                                            "mm",
                                            "adapter length",
                                            "Middle of the drive to the middle of the fastener."),
                                    Ask.quantity(
                                            "angle",
                                            "Its angle",
                                            "°",
                                            "adapter angle",
                                            "0 in line (the default), 90 square to the wrench, 180 pointing back."),
                                    Ask.quantity(
                                            "wrench-from",
                                            "Scale from",
                                            "N·m",
                                            "bottom of the wrench's scale",
                                            "Least torque on the wrench's scale."),
                                    Ask.quantity(
                                            "wrench-to",
                                            "Scale to",
                                            "N·m",
                                            "top of the wrench's scale",
                                            "Most torque on the wrench's scale.")),
                            TorqueQuestion::setting),
                    new Group(
                            "clamp-load",
                            "Clamp load",
                            "The maker's torque holds for the thread that the maker names, clean and dry as a rule. Nothing here offers another one.",
                            List.of(
                                    Ask.words(
                                            "thread",
                                            "Thread",
                                            "M14×1.5",
                                            "thread",
                                            "Thread, as M14x1.5 or 1/2-20 UNF."),
                                    Ask.choice(
                                            "class",
                                            "Strength",
                                            Arrays.stream(PropertyClass.values())
                                                    .map(PropertyClass::toString)
                                                    .toList(),
                                            "property class",
                                            "Property class on the bolt's head, or the grade of an inch bolt."),
                                    Ask.choice(
                                            "on-thread",
                                            "On the thread",
                                            Arrays.stream(ThreadState.values())
                                                    .map(ThreadState::word)
                                                    .toList(),
                                            "state of the thread",
                                            "What is on the thread; dry if not given."),
                                    Ask.quantity(
                                            "seat-diameter",
                                            "Seat, mean",
                                            "mm",
                                            "mean diameter of the seat",
                                            "Mean diameter of the seat; 1.3 times the thread if not given."),
                                    Ask.quantity(
                                            "cone",
                                            "Cone",
                                            "°",
                                            "included angle of the cone",
                                            "The seat is a cone of this included angle; flat if not given."),
                                    Ask.quantity(
                                            "ball",
                                            "Ball",
                                            "mm",
                                            "radius of the ball seat",
                                            "The seat is a ball of this radius; flat if not given."),
                                    Ask.words(
                                            "friction",
                                            "Friction",
                                            "0.14 to 0.24",
                                            "friction",
                                            "Least and most friction; 0.14 and 0.24 (clean and dry) if not given.")),
                            TorqueQuestion::clampLoad),
                    new Group(
                            "bar",
                            "Torque bar on the impact wrench",
                            "",
                            List.of(
                                    Ask.quantity(
                                            "bar",
                                            "Printed on the bar",
                                            "N·m",
                                            "torque of the bar",
                                            "Torque printed on the torque-limiting bar."),
                                    Ask.number(
                                            "bar-spread",
                                            "Spread",
                                            "%",
                                            "spread of the bar",
                                            "Its spread either way, as found by trial.")),
                            TorqueQuestion::bar),
                    new Group(
                            "calibration",
                            "Calibration of the wrench",
                            "",
                            List.of(
                                    new Ask(
                                            "calibrated",
                                            "Calibrated on",
                                            new Ask.Day(),
                                            "Day of the wrench's last calibration, year-month-day.",
                                            "wrench was calibrated"),
                                    Ask.number(
                                            "cycles",
                                            "Clicks since",
                                            "",
                                            "cycles of the wrench",
                                            "Clicks since then; 0 if not given.")),
                            TorqueQuestion::calibration)),
            "torque alone asks nothing, expected --adapter, --thread, --count, --bar or --calibrated with it",
            "cornerbook torque \"98 lbf·ft\" --adapter \"6 in\" --length \"18 in\" --thread M14x1.5 --class 10.9 --count 5");

    private TorqueQuestion() {}

    private static List<Part> order(Given given) {
        if (!given.any("count")) {
            return List.of();
        }
        var order = TighteningOrder.of(given.whole("count"));
        var numbers = order.order().stream().map(String::valueOf).collect(Collectors.joining(" "));
        return List.of(new Part("order", List.of("Order, places counted clockwise from the top: " + numbers), order));
    }

    private static List<Part> setting(Given given) {
        var parts = new ArrayList<Part>();
        boolean asked = given.any("length", "adapter", "angle");
        boolean scale = given.any("wrench-from", "wrench-to");
        if (!asked && !scale) {
            return parts;
        }
        double torqueNm = given.quantity("torque");
        double settingNm = torqueNm;
        if (asked) {
            var setting = WrenchSetting.of(
                    torqueNm, given.quantity("length"), given.quantity("adapter"), given.quantity("angle", 0));
            settingNm = setting.settingNm();
            parts.add(new Part(
                    "setting",
                    List.of("Set the wrench to %s, so that the fastener gets %s"
                            .formatted(
                                    given.shown().show(settingNm, "N·m"),
                                    given.shown().show(torqueNm, "N·m"))),
                    setting));
        }
        if (scale) {
            new WrenchScale(given.quantity("wrench-from"), given.quantity("wrench-to")).check(settingNm);
        }
        return parts;
    }

    private static List<Part> clampLoad(Given given) {
        if (!given.any("thread", "class", "on-thread", "seat-diameter", "cone", "ball", "friction")) {
            return List.of();
        }
        double torqueNm = given.quantity("torque");
        var thread = ScrewThread.parse(given.words("thread"));
        var strength = PropertyClass.parse(given.words("class"));
        var friction = given.findWords("friction").map(TorqueQuestion::friction).orElse(FrictionBand.DRY);
        var load = ClampLoad.of(thread, strength, seat(given, thread), friction, torqueNm);
        var state = given.findWords("on-thread").map(ThreadState::parse).orElse(ThreadState.DRY);
        var shortForm = ShortForm.of(thread, strength, state, torqueNm);
        return List.of(
                new Part(
                        "clampLoad",
                        List.of(
                                "Clamp load of %s %s, friction %s to %s: %.0f to %.0f kN, %.0f to %.0f %% of the proof load"
                                        .formatted(
                                                thread,
                                                strength.words(),
                                                friction.lowest(),
                                                friction.highest(),
                                                load.leastN() / N_PER_KN,
                                                load.mostN() / N_PER_KN,
                                                load.leastShareOfProof() * 100,
                                                load.mostShareOfProof() * 100)),
                        load),
                new Part(
                        "shortForm",
                        List.of("By the short form, %s thread: %.0f to %.0f kN, up to %.0f %% of the proof load"
                                .formatted(
                                        shortForm.state().word(),
                                        shortForm.leastN() / N_PER_KN,
                                        shortForm.mostN() / N_PER_KN,
                                        shortForm.mostShareOfProof() * 100)),
                        shortForm));
    }

    private static SeatFace seat(Given given, ScrewThread thread) {
        double meanMm = given.quantity("seat-diameter", SeatFace.usualMeanDiameterMm(thread));
        if (given.any("cone") && given.any("ball")) {
            throw new AskException("ball", "is given beside a cone, expected one of the two");
        }
        if (given.any("cone")) {
            return SeatFace.cone(meanMm, given.quantity("cone"));
        }
        return given.any("ball") ? SeatFace.ball(meanMm, given.quantity("ball")) : new SeatFace(meanMm, 1);
    }

    private static FrictionBand friction(String text) {
        var ends = BETWEEN.splitAsStream(text.replace(',', '.')).toList();
        try {
            return new FrictionBand(Double.parseDouble(ends.getFirst()), Double.parseDouble(ends.get(1)));
        } catch (NumberFormatException | IndexOutOfBoundsException e) {
            throw new IllegalArgumentException(
                    "friction is \"%s\", expected the least and the most as in 0.14 to 0.24".formatted(text), e);
        }
    }

    private static List<Part> bar(Given given) {
        if (!given.any("bar", "bar-spread")) {
            return List.of();
        }
        var band = TorqueBar.of(given.quantity("torque"), given.quantity("bar"), given.number("bar-spread"));
        return List.of(new Part(
                "bar",
                List.of("Torque bar: ends between %s and %s"
                        .formatted(
                                given.shown().show(band.leastNm(), "N·m"),
                                given.shown().show(band.mostNm(), "N·m"))),
                band));
    }

    private static List<Part> calibration(Given given) {
        if (!given.any("calibrated", "cycles")) {
            return List.of();
        }
        var cycles = given.findWhole("cycles");
        var due = WrenchCalibration.of(given.day("calibrated"), cycles == null ? 0 : cycles, given.today());
        return List.of(new Part(
                "calibration",
                List.of("Wrench calibration: due on %s or after %d cycles".formatted(due.dueOn(), due.cyclesLeft())),
                due));
    }
}
