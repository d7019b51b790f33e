package cornerbook.app.cli;

import cornerbook.core.fastener.ClampLoad;
import cornerbook.core.fastener.FrictionBand;
import cornerbook.core.fastener.MetricThread;
import cornerbook.core.fastener.PropertyClass;
import cornerbook.core.fastener.SeatFace;
import cornerbook.core.fastener.ShortForm;
import cornerbook.core.fastener.ThreadState;
import cornerbook.core.fastener.TighteningOrder;
import cornerbook.core.fastener.TorqueBar;
import cornerbook.core.fastener.WrenchCalibration;
import cornerbook.core.fastener.WrenchScale;
import cornerbook.core.fastener.WrenchSetting;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** What to set on the wrench, and what the torque does to the fastener. */
@CommandLine.Command(
        name = "torque",
        description = "What to set on the torque wrench, and what a torque does to a wheel fastener.",
        footer = {
            "%nQuantities carry their unit: \"98 lbf·ft\", \"6 in\"; a bare number is in N·m or mm.",
            "Example: cornerbook torque \"98 lbf·ft\" --adapter \"6 in\" --length \"18 in\" --thread M14x1.5 --class 10.9 --count 5"
        })
final class Torque extends CalculatorVerb {
    @CommandLine.Parameters(
            paramLabel = "TORQUE",
            converter = Unit.Torque.class,
            description = "Torque that the vehicle's maker asks at the fastener.")
    private double torqueNm;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable AdapterOptions adapter;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable ScaleOptions scale;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable FastenerOptions fastener;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable BarOptions bar;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable CalibrationOptions calibration;

    @CommandLine.Option(
            names = "--count",
            paramLabel = "N",
            description = "Fasteners per wheel, 3 to 10: prints their order.")
    private @Nullable Integer count;

    Torque(PrintWriter out) {
        super(out);
    }

    private static final class AdapterOptions {
        @CommandLine.Option(
                names = "--length",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Wrench: middle of the grip to the middle of the drive.")
        private double lengthMm;

        @CommandLine.Option(
                names = "--adapter",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Adapter: middle of the drive to the middle of the fastener.")
        private double adapterMm;

        @CommandLine.Option(
                names = "--angle",
                paramLabel = "ANGLE",
                converter = Unit.Angle.class,
                description = "0 in line (the default), 90 square to the wrench, 180 pointing back.")
        private double angleDeg;
    }

    private static final class ScaleOptions {
        @CommandLine.Option(
                names = "--wrench-from",
                required = true,
                paramLabel = "TORQUE",
                converter = Unit.Torque.class,
                description = "Least torque on the wrench's scale.")
        private double fromNm;

        @CommandLine.Option(
                names = "--wrench-to",
                required = true,
                paramLabel = "TORQUE",
                converter = Unit.Torque.class,
                description = "Most torque on the wrench's scale.")
        private double toNm;
    }

    private static final class FastenerOptions {
        @CommandLine.Option(
                names = "--thread",
                required = true,
                paramLabel = "THREAD",
                description = "Thread, as M14x1.5.")
        private String thread = "";

        @CommandLine.Option(
                names = "--class",
                required = true,
                paramLabel = "CLASS",
                description = "Property class: 8.8, 10.9 or 12.9.")
        private String strength = "";

        @CommandLine.Option(
                names = "--seat-diameter",
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Mean diameter of the seat; 1.3 times the thread if not given.")
        private @Nullable Double seatMm;

        @CommandLine.Option(
                names = "--cone",
                paramLabel = "ANGLE",
                converter = Unit.Angle.class,
                description = "The seat is a cone of this included angle; flat if not given.")
        private @Nullable Double coneDeg;

        @CommandLine.Option(
                names = "--friction",
                arity = "2",
                paramLabel = "µ",
                description = "Least and most friction; 0.14 and 0.24 (clean and dry) if not given.")
        private double @Nullable [] friction;

        @CommandLine.Option(
                names = "--on-thread",
                paramLabel = "STATE",
                description = "What is on the thread: dry (if not given), oiled or anti-seize.")
        private String state = "dry";
    }

    private static final class BarOptions {
        @CommandLine.Option(
                names = "--bar",
                required = true,
                paramLabel = "TORQUE",
                converter = Unit.Torque.class,
                description = "Torque printed on the torque-limiting bar.")
        private double nominalNm;

        @CommandLine.Option(
                names = "--bar-spread",
                required = true,
                paramLabel = "PERCENT",
                description = "Its spread either way, as found by trial.")
        private double spreadPercent;
    }

    private static final class CalibrationOptions {
        @CommandLine.Option(
                names = "--calibrated",
                required = true,
                paramLabel = "DATE",
                description = "Day of the wrench's last calibration, year-month-day.")
        private LocalDate day = LocalDate.EPOCH;

        @CommandLine.Option(names = "--cycles", paramLabel = "N", description = "Clicks since then.")
        private int cycles;
    }

    @Override
    List<Part> parts() {
        var parts = new ArrayList<Part>();
        double settingNm = torqueNm;
        if (adapter != null) {
            var setting = WrenchSetting.of(torqueNm, adapter.lengthMm, adapter.adapterMm, adapter.angleDeg);
            settingNm = setting.settingNm();
            parts.add(new Part(
                    "setting",
                    List.of("Set the wrench to %s, so that the fastener gets %s"
                            .formatted(Unit.torque(settingNm), Unit.torque(torqueNm))),
                    setting));
        }
        if (scale != null) {
            new WrenchScale(scale.fromNm, scale.toNm).check(settingNm);
        }
        if (fastener != null) {
            parts.addAll(clampLoad(fastener));
        }
        if (count != null) {
            var order = TighteningOrder.of(count);
            var numbers = order.order().stream().map(String::valueOf).collect(Collectors.joining(" "));
            parts.add(new Part("order", List.of("Order, clockwise from the top: " + numbers), order));
        }
        if (bar != null) {
            var band = TorqueBar.of(torqueNm, bar.nominalNm, bar.spreadPercent);
            parts.add(new Part(
                    "bar",
                    List.of("Torque bar: ends between %s and %s"
                            .formatted(Unit.torque(band.leastNm()), Unit.torque(band.mostNm()))),
                    band));
        }
        if (calibration != null) {
            var due = WrenchCalibration.of(calibration.day, calibration.cycles, LocalDate.now(ZoneId.systemDefault()));
            parts.add(new Part(
                    "calibration",
                    List.of("Wrench calibration: due on %s or after %d cycles"
                            .formatted(due.dueOn(), due.cyclesLeft())),
                    due));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException(
                    "torque alone asks nothing, expected --adapter, --thread, --count, --bar or --calibrated with it");
        }
        return parts;
    }

    private List<Part> clampLoad(FastenerOptions options) {
        var thread = MetricThread.parse(options.thread);
        var strength = PropertyClass.parse(options.strength);
        double seatMm = options.seatMm == null ? SeatFace.usualMeanDiameterMm(thread) : options.seatMm;
        var seat = options.coneDeg == null ? new SeatFace(seatMm, 1) : SeatFace.cone(seatMm, options.coneDeg);
        var friction = options.friction == null
                ? FrictionBand.DRY
                : new FrictionBand(options.friction[0], options.friction[1]);
        var load = ClampLoad.of(thread, strength, seat, friction, torqueNm);
        var shortForm = ShortForm.of(thread, strength, ThreadState.parse(options.state), torqueNm);
        return List.of(
                new Part(
                        "clampLoad",
                        List.of(
                                "Clamp load of %s class %s, friction %s to %s: %.0f to %.0f kN, %.0f to %.0f %% of the proof load"
                                        .formatted(
                                                thread,
                                                strength,
                                                friction.lowest(),
                                                friction.highest(),
                                                load.leastN() / 1000,
                                                load.mostN() / 1000,
                                                load.leastShareOfProof() * 100,
                                                load.mostShareOfProof() * 100)),
                        load),
                new Part(
                        "shortForm",
                        List.of("By the short form, %s thread: %.0f to %.0f kN, up to %.0f %% of the proof load"
                                .formatted(
                                        shortForm.state().word(),
                                        shortForm.leastN() / 1000,
                                        shortForm.mostN() / 1000,
                                        shortForm.mostShareOfProof() * 100)),
                        shortForm));
    }
}
