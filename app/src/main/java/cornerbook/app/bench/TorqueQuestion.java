package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.torque.ScaleSetting;
import cornerbook.core.torque.TighteningOrder;
import cornerbook.core.torque.TorqueBar;
import cornerbook.core.torque.TorqueSaid;
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
            Title.TORQUE,
            Description.TORQUE,
            List.of(Ask.quantity("torque", Label.TORQUE_TORQUE, "N·m", TorqueSaid.Part.TORQUE, Help.TORQUE_TORQUE)),
            List.of(
                    new Group(
                            "order",
                            Title.TORQUE_ORDER,
                            Note.TORQUE_ORDER,
                            List.of(Ask.number(
                                    "count",
                                    Label.TORQUE_COUNT,
                                    "",
                                    TorqueSaid.Part.FASTENERS_PER_WHEEL,
                                    Help.TORQUE_COUNT)),
                            List.of("count"),
                            TorqueQuestion::order),
                    new Group(
                            "setting",
                            Title.TORQUE_SETTING,
                            null,
                            List.of(
                                    Ask.quantity(
                                            "length",
                                            Label.TORQUE_LENGTH,
                                            "mm",
                                            TorqueSaid.Part.WRENCH_LENGTH,
                                            Help.TORQUE_LENGTH),
                                    Ask.quantity(
                                            "adapter",
                                            Label.TORQUE_ADAPTER,
                                            "mm",
                                            TorqueSaid.Part.ADAPTER_LENGTH,
                                            Help.TORQUE_ADAPTER),
                                    Ask.quantity(
                                            "angle",
                                            Label.TORQUE_ANGLE,
                                            "°",
                                            TorqueSaid.Part.ADAPTER_ANGLE,
                                            Help.TORQUE_ANGLE),
                                    Ask.quantity(
                                            "wrench-from",
                                            Label.TORQUE_WRENCH_FROM,
                                            "N·m",
                                            TorqueSaid.Part.BOTTOM_OF_SCALE,
                                            Help.TORQUE_WRENCH_FROM),
                                    Ask.quantity(
                                            "wrench-to",
                                            Label.TORQUE_WRENCH_TO,
                                            "N·m",
                                            TorqueSaid.Part.TOP_OF_SCALE,
                                            Help.TORQUE_WRENCH_TO),
                                    Ask.quantity(
                                            "wrench-offset",
                                            Label.TORQUE_WRENCH_OFFSET,
                                            "N·m",
                                            TorqueSaid.Part.OFFSET_OF_WRENCH,
                                            Help.TORQUE_WRENCH_OFFSET)),
                            List.of("torque", "length", "adapter"),
                            TorqueQuestion::setting),
                    ClampLoadGroup.GROUP,
                    new Group(
                            "bar",
                            Title.TORQUE_BAR,
                            null,
                            List.of(
                                    Ask.quantity(
                                            "bar",
                                            Label.TORQUE_BAR,
                                            "N·m",
                                            TorqueSaid.Part.TORQUE_OF_BAR,
                                            Help.TORQUE_BAR),
                                    Ask.number(
                                            "bar-spread",
                                            Label.TORQUE_BAR_SPREAD,
                                            "%",
                                            TorqueSaid.Part.SPREAD_OF_BAR,
                                            Help.TORQUE_BAR_SPREAD)),
                            List.of("torque", "bar", "bar-spread"),
                            TorqueQuestion::bar),
                    new Group(
                            "calibration",
                            Title.TORQUE_CALIBRATION,
                            null,
                            List.of(
                                    new Ask(
                                            "calibrated",
                                            Label.TORQUE_CALIBRATED,
                                            new Ask.Day(),
                                            Help.TORQUE_CALIBRATED,
                                            null),
                                    Ask.number("cycles", Label.TORQUE_CYCLES, "", null, Help.TORQUE_CYCLES)),
                            List.of("calibrated"),
                            TorqueQuestion::calibration)),
            NothingAsked.TORQUE,
            "cornerbook torque \"98 lbf·ft\" --adapter \"6 in\" --length \"18 in\" --thread M14x1.5 --class 10.9 --count 5");

    private TorqueQuestion() {}

    private static List<Part> order(Given given) {
        if (!given.any("count")) {
            return List.of();
        }
        int count = given.whole("count");
        var order = given.at("count", () -> TighteningOrder.of(count));
        var numbers = order.order().stream().map(String::valueOf).collect(Collectors.joining(" "));
        return List.of(Part.of("order", order, new AnswerSaid.TighteningPlaces(numbers)));
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
            parts.add(Part.of(
                    "setting",
                    setting,
                    new AnswerSaid.SetWrench(given.told(settingNm, "N·m"), given.told(torqueNm, "N·m"))));
        }
        if (scale) {
            var onScale = ScaleSetting.of(
                    new WrenchScale(given.quantity("wrench-from"), given.quantity("wrench-to")),
                    settingNm,
                    given.quantity("wrench-offset", 0));
            parts.add(Part.of("wrench", onScale, new AnswerSaid.ReadOnWrench(given.told(onScale.settingNm(), "N·m"))));
        }
        return parts;
    }

    private static List<Part> bar(Given given) {
        if (!given.any("bar", "bar-spread")) {
            return List.of();
        }
        var band = TorqueBar.of(given.quantity("torque"), given.quantity("bar"), given.number("bar-spread"));
        return List.of(Part.of(
                "bar",
                band,
                new AnswerSaid.BarEnds(given.told(band.leastNm(), "N·m"), given.told(band.mostNm(), "N·m"))));
    }

    private static List<Part> calibration(Given given) {
        if (!given.any("calibrated", "cycles")) {
            return List.of();
        }
        var cycles = given.findWhole("cycles");
        var calibrated = given.day("calibrated");
        var due = given.at(
                "calibrated", () -> WrenchCalibration.of(calibrated, cycles == null ? 0 : cycles, given.today()));
        return List.of(Part.of("calibration", due, new AnswerSaid.WrenchDue(due.dueOn(), due.cyclesLeft())));
    }
}
