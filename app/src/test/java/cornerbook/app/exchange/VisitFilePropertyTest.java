package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeDetails.ParkingBrake;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelDetails;
import cornerbook.core.car.WheelSet;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.CarHeights;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.WheelFastener;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.DifferenceLimits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Whatever sound history is written reads back equal, to the last digit and with what people wrote. */
class VisitFilePropertyTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final int HISTORIES = 100;
    private static final long SEED = 20261125;

    /** Ways to write a value, by the measure's unit. */
    private static final Map<String, List<String>> SPELLINGS = Map.of(
            "mm", List.of("%.1f mm", "%.2f", "%.3f cm", "  %.1f  MM ", "%.3f in", "5/32 in"),
            "kPa", List.of("%.0f kPa", "%.2f bar", "%.1f psi", "%.1f"),
            "N·m", List.of("%.0f N·m", "%.0f Nm", "%.1f lbf·ft", "%.0f ft-lb"),
            "°C", List.of("%.0f °C", "-%.1f °C", "%.0f °F", "−%.0f C"),
            "V", List.of("%.2f V", "%.0f mV", "%.2f"),
            "A", List.of("%.0f A", "%.0f CCA"),
            "%", List.of("%.0f %%", "%.1f"),
            "studs", List.of("2 studs", "1"),
            "clicks", List.of("6 clicks", "5 crans", "7"));

    /** The highest that the rules let stand for this car. */
    private static double highest(Vehicle vehicle, Measure measure, @Nullable Corner corner) {
        return switch (measure) {
            case TREAD_DEPTH -> 9;
            case PAD_THICKNESS, PAD_THICKNESS_TRAILING -> brake(vehicle, corner).padNewMm();
            case DISC_THICKNESS -> brake(vehicle, corner).discNewMm();
            case LINING_THICKNESS ->
                brake(vehicle, corner).drum().map(drum -> drum.liningNewMm()).orElse(measure.highest());
            case HUB_DIAL_RADIUS -> 50;
            default -> measure.highest();
        };
    }

    private static BrakeSpecification brake(Vehicle vehicle, @Nullable Corner corner) {
        return vehicle.axle(Objects.requireNonNull(corner).axle()).brake();
    }

    private static boolean canBe(Vehicle vehicle, Measure measure) {
        return measure.carrier() != Measure.Carrier.CORNER
                || Stream.of(Axle.values()).allMatch(axle -> measure.isOn(vehicle, axle));
    }

    private final Random random = new Random(SEED);

    @Test
    void writtenHistoryReadsBackEqual() {
        for (int i = 0; i < HISTORIES; i++) {
            var history = history();

            var text = VisitFile.write(history);

            assertThat(VisitFile.read(text, TODAY)).as(text).isEqualTo(new VisitFile.Read(history));
        }
    }

    private CarHistory history() {
        var sets = new ArrayList<WheelSet>();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            sets.add(wheelSet(i));
        }
        var vehicle = vehicle();
        var visits = new ArrayList<Visit>();
        var date = TODAY.minusDays(random.nextInt(200));
        double odometerKm = between(1000, 300_000);
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            visits.addFirst(visit("V-" + i, date, odometerKm, sets, vehicle));
            date = date.minusDays(random.nextInt(400));
            odometerKm *= random.nextDouble();
        }
        return new CarHistory(vehicle, new Customer("C-1", word(), maybe(word()), maybe("a@b.example")), sets, visits);
    }

    private Vehicle vehicle() {
        boolean rated = random.nextBoolean();
        return new Vehicle(
                "CAR-" + random.nextInt(1000),
                word(),
                word(),
                maybe("1M8GDM9AXKP042788"),
                maybe(pick(DriveLayout.values())),
                maybe(random.nextBoolean()),
                pick("CA-QC", "FI", "*"),
                axle(),
                axle(),
                maybe(new WheelFastener(
                        "M14×1.5", 3 + random.nextInt(8), pick(Seat.values()), between(40, 400), between(10, 500))),
                maybe(new TwelveVoltBattery(
                        pick(Chemistry.values()),
                        between(5, 300),
                        rated ? (Double) between(100, 900) : null,
                        rated ? pick(RatingStandard.values()) : null,
                        maybe(TODAY.minusDays(random.nextInt(3000))),
                        maybe(between(10, 15)))),
                maybe(pick(BrakeFluid.values())),
                details());
    }

    private VehicleDetails details() {
        return random.nextInt(4) == 0
                ? VehicleDetails.NOT_KNOWN
                : new VehicleDetails(
                        new DifferenceLimits(
                                maybe(new AllWheelLimit(pick(AllWheelLimit.Kind.values()), between(0.1, 10))),
                                maybe(between(0.1, 10)),
                                maybe(random.nextBoolean())),
                        new CarUse(maybe(random.nextDouble()), maybe(random.nextBoolean()), maybe(random.nextDouble())),
                        new CarBody(
                                maybe(between(300, 8000)),
                                maybe(between(0.2, 0.8)),
                                maybe(between(1500, 5500)),
                                maybe(between(1000, 2200)),
                                new CarHeights(
                                        maybe(between(50, 1000)), maybe(between(50, 1000)), maybe(between(1000, 3500))),
                                maybe(between(5, 80)),
                                maybe(LiftPoints.symmetric(between(0, 900), between(1500, 2500), between(900, 1800)))),
                        new FluidChange(maybe(TODAY.minusDays(random.nextInt(2000))), maybe(between(0.5, 10))),
                        new PressureWarning(
                                maybe(pick(PressureWarning.Kind.values())),
                                maybe(pick(PressureWarning.Learning.values()))),
                        maybe(mounting()),
                        new VehicleDetails.Unseen(maybe(random.nextBoolean()), maybe(random.nextBoolean())),
                        maybe("Fjordling Volta (QX 1)"));
    }

    private Mounting mounting() {
        return new Mounting(
                5,
                between(80, 230),
                "M14X1.5",
                pick(Seat.values()),
                between(40, 180),
                between(-60, 80),
                between(3, 14));
    }

    private AxleSpecification axle() {
        double padNewMm = between(5, 20);
        double discNewMm = between(10, 40);
        double discMinimumMm = Math.max(1, discNewMm * random.nextDouble());
        boolean electric = random.nextBoolean();
        var parkingBrake = maybe(
                electric
                        ? pick(
                                ParkingBrake.MOTOR_ON_CALIPER,
                                ParkingBrake.MOTOR_PULLING_CABLES,
                                ParkingBrake.DRUM_IN_DISC)
                        : pick(ParkingBrake.NONE, ParkingBrake.CABLE, ParkingBrake.DRUM_IN_DISC));
        double drumNewMm = between(100, 100.25);
        return new AxleSpecification(
                maybe(between(500, 2000)),
                pick("225/55R18", "P245/45R19", "LT265/70R17"),
                maybe(50 + random.nextInt(76)),
                maybe(pick("T", "H", "Y")),
                maybe(between(180, 400)),
                random.nextInt(4) == 0
                        ? new BrakeSpecification(
                                new DrumBrake(drumNewMm, drumNewMm + between(0.5, 3), between(3, 6), between(1, 2)),
                                electric,
                                new BrakeDetails(parkingBrake, null, null, null, null))
                        : new BrakeSpecification(
                                pick(BrakeSpecification.Caliper.values()),
                                electric,
                                padNewMm,
                                padNewMm * random.nextDouble(),
                                discNewMm,
                                discMinimumMm,
                                between(0.005, 1),
                                between(0.001, 1),
                                new BrakeDetails(
                                        parkingBrake,
                                        maybe(between(discMinimumMm, discNewMm)),
                                        maybe(between(0.5, 50)),
                                        maybe(between(150, 500)),
                                        maybe(between(100, 800)),
                                        maybe(1 + random.nextInt(6)))));
    }

    private WheelSet wheelSet(int number) {
        var wheels = new ArrayList<Wheel>();
        for (var corner : Corner.values()) {
            wheels.add(new Wheel(
                    "W-" + number + corner,
                    new Tyre(
                            maybe(word()),
                            corner.axle() == Axle.FRONT ? "225/55R18" : "245/50R18",
                            maybe(50 + random.nextInt(76)),
                            maybe("V"),
                            maybe("1223"),
                            maybe(random.nextBoolean()),
                            maybe(random.nextBoolean()),
                            maybe(between(9, 20))),
                    maybe("0A1B2C3D"),
                    new WheelDetails(
                            maybe(mounting()), maybe("433 MHz"), maybe(TODAY.minusDays(random.nextInt(3000))))));
        }
        return new WheelSet("S-" + number, pick(SeasonKind.values()), maybe(word()), wheels);
    }

    private Visit visit(String id, LocalDate date, double odometerKm, List<WheelSet> sets, Vehicle vehicle) {
        var arrivedOn = wheelsOf(sets);
        var readings = new ArrayList<Reading>();
        for (var measure : Measure.values()) {
            for (int i = canBe(vehicle, measure) ? random.nextInt(4) : 0; i > 0; i--) {
                readings.add(reading("%s-%s-%d".formatted(id, measure, i), measure, vehicle, arrivedOn, readings));
            }
        }
        return new Visit(
                id,
                date,
                odometerKm,
                arrivedOn,
                random.nextBoolean() ? Map.of() : wheelsOf(sets),
                readings,
                new JobCard(
                        maybe(word()),
                        random.nextBoolean() ? List.of() : List.of(word(), word()),
                        maybe(word()),
                        maybe(date.plusDays(180)),
                        tools(date)),
                Set.of());
    }

    private List<ShopTool> tools(LocalDate date) {
        double lowest = between(30, 100);
        var heights = List.of(between(0, 300), between(0, 300));
        return Stream.of(ShopTool.Kind.values())
                .filter(kind -> random.nextBoolean())
                .map(kind -> new ShopTool(
                        "T-" + kind.ordinal(),
                        kind,
                        word(),
                        lowest,
                        between(500, 1500),
                        kind == ShopTool.Kind.HOIST ? 0 : between(-10, 10),
                        date.plusDays(random.nextInt(400) - 200),
                        kind == ShopTool.Kind.HOIST
                                ? new Hoist(
                                        4,
                                        new HoistRating(
                                                between(500, 6000),
                                                maybe(between(200, 2000)),
                                                maybe(between(200, 2000))),
                                        heights,
                                        maybe(between(200, 2000)),
                                        List.of(),
                                        maybe(between(5, 300)),
                                        maybe(between(1800, 10000)))
                                : null))
                .toList();
    }

    private Map<Corner, String> wheelsOf(List<WheelSet> sets) {
        var set = sets.get(random.nextInt(sets.size()));
        var wheelAt = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            wheelAt.put(corner, set.wheels().get(corner.ordinal()).tag());
        }
        return wheelAt;
    }

    private Reading reading(
            String id, Measure measure, Vehicle vehicle, Map<Corner, String> wheelAt, List<Reading> before) {
        var corner = measure.carrier() == Measure.Carrier.VEHICLE ? null : pick(Corner.values());
        var tag = measure.carrier() == Measure.Carrier.WHEEL ? wheelAt.get(corner) : null;
        var spot = measure.spots().isEmpty() ? null : pick(measure.spots().toArray(Spot[]::new));
        boolean correction = !before.isEmpty() && random.nextInt(5) == 0;
        double value;
        String asWritten;
        do {
            var scale = measure.scale();
            var spellings = scale == null ? SPELLINGS.getOrDefault(measure.unit(), List.of("%.2f")) : scale.words();
            asWritten = pick(spellings.toArray(String[]::new)).formatted(between(0, 300));
            value = WrittenReading.valueOf(measure, asWritten);
        } while (value < measure.lowest() || value > highest(vehicle, measure, corner));
        return new Reading(
                id,
                measure,
                corner,
                tag,
                spot,
                value,
                asWritten,
                correction ? before.getLast().id() : null,
                correction ? word() : null);
    }

    private String word() {
        return pick("Léa Ødegård", "shelf 4/B ~ left", "\"quoted\" \\ back", "line\nbreak", "冬タイヤ", "🚗 blue", "x");
    }

    private double between(double lowest, double highest) {
        return lowest + (highest - lowest) * random.nextDouble();
    }

    private <T> @Nullable T maybe(T value) {
        return random.nextBoolean() ? value : null;
    }

    @SafeVarargs
    private <T> T pick(T... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
