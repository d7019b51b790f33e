package cornerbook.app.bench;

import cornerbook.core.torque.ScaleSetting;
import cornerbook.core.torque.TighteningOrder;
import cornerbook.core.torque.TorqueBar;
import cornerbook.core.torque.WrenchCalibration;
import cornerbook.core.torque.WrenchScale;
import cornerbook.core.torque.WrenchSetting;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What to set on the wrench, and what the torque does to the fastener. */
final class TorqueQuestion {
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
                            List.of("count"),
                            TorqueQuestion::order),
                    new Group(
                            "setting",
                            "Setting of the wrench",
                            "",
                            List.of(
                                    Ask.quantity(
                                            "length",
                                            "Wrench",
                                            "mm",
                                            "wrench length",
                                            "Middle of the grip to the middle of the drive; only with an adapter."),
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
                                            "Most torque on the wrench's scale."),
                                    Ask.quantity(
                                            "wrench-offset",
                                            "Wrench shows too much",
                                            "N·m",
                                            "offset of the wrench",
                                            "What the wrench shows too much against its calibration; 0 if not given.")),
                            List.of("torque", "length", "adapter"),
                            TorqueQuestion::setting),
                    ClampLoadGroup.GROUP,
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
                            List.of("torque", "bar", "bar-spread"),
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
                            List.of("calibrated"),
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
        boolean scale = given.any("wrench-from", "wrench-to", "wrench-offset");
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
            var onScale = ScaleSetting.of(
                    new WrenchScale(given.quantity("wrench-from"), given.quantity("wrench-to")),
                    settingNm,
                    given.quantity("wrench-offset", 0));
            parts.add(new Part(
                    "wrench",
                    List.of("To be read on this wrench: %s"
                            .formatted(given.shown().show(onScale.settingNm(), "N·m"))),
                    onScale));
        }
        return parts;
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
