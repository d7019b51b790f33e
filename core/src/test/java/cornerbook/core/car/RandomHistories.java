package cornerbook.core.car;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.brake.fluid.FluidChange;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.CarHeights;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.WheelFastener;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.DifferenceLimits;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** Invented cars with plausible visits: wear as a car wears, gauges that err as gauges do, now and then nothing read. */
public final class RandomHistories {
    private static final double[] NEW_DEPTHS = {7.5, 8, 9.4};

    private final SplittableRandom random;
    private final Map<String, Double> depthMm = new HashMap<>();
    private final Map<String, Double> thicknessMm = new HashMap<>();
    private int ids;

    public RandomHistories(SplittableRandom random) {
        this.random = random;
    }

    /** A car whose visits keep the rules, with one visit at least. */
    public CarHistory next(String id) {
        depthMm.clear();
        thicknessMm.clear();
        boolean allSeason = random.nextInt(6) == 0;
        var sets = allSeason
                ? List.of(set(SeasonKind.ALL_SEASON, "A-"))
                : List.of(set(SeasonKind.SUMMER, "S-"), set(SeasonKind.WINTER, "W-"));
        var vehicle = vehicle(id);
        var visits = new ArrayList<Visit>();
        double kmPerDay = 10 + 90 * random.nextDouble();
        double odometerKm = 5_000 + 150_000 * random.nextDouble();
        double wear = 0.6 + random.nextDouble();
        var date = LocalDate.of(2021, 4, 10).plusDays(random.nextInt(400));
        var on = sets.get(random.nextInt(sets.size()));
        int count = 1 + random.nextInt(5);
        var standing = at(on);
        for (int v = 0; v < count; v++) {
            var off = on;
            on = sets.get((sets.indexOf(on) + 1) % sets.size());
            var fitted = random.nextInt(8) == 0 ? standing : at(on);
            if (fitted.equals(standing)) {
                on = off;
            }
            boolean thorough = random.nextInt(5) > 0;
            visits.add(new Visit(
                    id + "-v" + v,
                    date,
                    odometerKm,
                    standing,
                    random.nextInt(12) == 0 ? Map.of() : fitted,
                    readings(standing, fitted, thorough),
                    new JobCard(
                            null,
                            List.of(),
                            null,
                            random.nextInt(10) == 0 ? date.plusDays(random.nextInt(300)) : null,
                            List.of()),
                    Set.of()));
            standing = fitted;
            int days = 120 + random.nextInt(120);
            double km = days * kmPerDay * (0.7 + 0.6 * random.nextDouble());
            run(standing, km / 1000, wear);
            date = date.plusDays(days);
            odometerKm = Math.round(odometerKm + km);
        }
        return new CarHistory(vehicle, new Customer("c-" + id, "Invented Person", null, null), sets, visits);
    }

    private void run(Map<Corner, String> standing, double thousandKm, double wear) {
        standing.forEach((corner, tag) -> {
            for (var spot : Spot.values()) {
                depthMm.merge(tag + spot, -thousandKm * 0.17 * wear * (0.9 + 0.2 * random.nextDouble()), Double::sum);
            }
        });
        thicknessMm.replaceAll(
                (part, mm) -> Math.max(1, mm - thousandKm * (part.startsWith("disc") ? 0.008 : 0.08) * wear));
    }

    private List<Reading> readings(Map<Corner, String> arrived, Map<Corner, String> left, boolean thorough) {
        var readings = new ArrayList<Reading>();
        for (var wheels : arrived.equals(left) ? List.of(left) : List.of(arrived, left)) {
            wheels.forEach((corner, tag) -> {
                for (var spot : Spot.values()) {
                    double mm = depthMm.getOrDefault(tag + spot, 8.0) + 0.1 * random.nextGaussian();
                    readings.add(reading(Measure.TREAD_DEPTH, corner, tag, spot, Math.max(0, tenth(mm))));
                }
            });
        }
        readings.add(reading(Measure.TYRE_TEMPERATURE, null, null, null, 5 + random.nextInt(20)));
        arrived.forEach((corner, tag) ->
                readings.add(reading(Measure.PRESSURE_FOUND, corner, tag, null, 220 + random.nextInt(40))));
        left.forEach((corner, tag) -> {
            readings.add(reading(Measure.PRESSURE_SET, corner, tag, null, 250 + random.nextInt(6)));
            readings.add(reading(Measure.WHEEL_TORQUE, corner, tag, null, 140));
        });
        for (var corner : thorough ? Corner.values() : new Corner[0]) {
            for (var side : BrakeCorner.SIDES) {
                double mm = thicknessMm.computeIfAbsent("pad" + corner + side, part -> 7 + 4 * random.nextDouble());
                readings.add(reading(Measure.PAD_THICKNESS, corner, null, side, tenth(mm)));
                readings.add(reading(Measure.PAD_MOVEMENT, corner, null, side, random.nextInt(8) == 0 ? 1 : 0));
            }
            double mm = thicknessMm.computeIfAbsent("disc" + corner, part -> 26.4 + 1.5 * random.nextDouble());
            readings.add(reading(Measure.DISC_THICKNESS, corner, null, null, Math.round(100 * mm) / 100.0));
            if (random.nextBoolean()) {
                readings.add(reading(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null, null, 0));
            }
        }
        if (thorough) {
            readings.add(reading(Measure.BATTERY_VOLTAGE, null, null, null, 12.3 + 0.4 * random.nextDouble()));
            readings.add(reading(Measure.BATTERY_TEMPERATURE, null, null, null, random.nextInt(25)));
            readings.add(reading(Measure.BATTERY_CRANKING_CURRENT, null, null, null, 380 + random.nextInt(140)));
            readings.add(reading(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, 180 + random.nextInt(60)));
        }
        return readings;
    }

    private Reading reading(
            Measure measure, @Nullable Corner corner, @Nullable String tag, @Nullable Spot spot, double value) {
        return new Reading("r" + ids++, measure, corner, tag, spot, value, String.valueOf(value), null, null);
    }

    private static double tenth(double value) {
        return Math.round(10 * value) / 10.0;
    }

    private Vehicle vehicle(String id) {
        var plain = Cars.withBrake(
                random.nextInt(4) == 0 ? BrakeSpecification.Caliper.FIXED : BrakeSpecification.Caliper.SLIDING,
                random.nextBoolean());
        var differences = new DifferenceLimits(
                random.nextBoolean() ? new AllWheelLimit(AllWheelLimit.Kind.TREAD_DEPTH, 2.4) : null,
                random.nextBoolean() ? (Double) 1.5 : null,
                random.nextBoolean() ? (Boolean) random.nextBoolean() : null);
        var details = new VehicleDetails(
                differences,
                CarUse.USUAL,
                new CarBody(1740.0, 0.52, 2680.0, 1560.0, CarHeights.NOT_KNOWN, null, null),
                new FluidChange(LocalDate.of(2021, 2, 28), 3.0),
                PressureWarning.NOT_KNOWN,
                null);
        var front = plain.axle(Axle.FRONT);
        return new Vehicle(
                id,
                "Invented car",
                "INV 001",
                null,
                DriveLayout.values()[random.nextInt(DriveLayout.values().length)],
                random.nextInt(5) > 0,
                "CA-QC",
                front,
                plain.axle(Axle.REAR),
                new WheelFastener("M14×1.5", 5, Seat.CONE, 140, 80),
                random.nextInt(4) == 0
                        ? new TwelveVoltBattery(Chemistry.FLOODED, 60, null, null, null, 12.35)
                        : new TwelveVoltBattery(Chemistry.AGM, 60, 500.0, RatingStandard.EN, null),
                BrakeFluid.DOT_4,
                details);
    }

    private WheelSet set(SeasonKind season, String prefix) {
        double newMm = NEW_DEPTHS[random.nextInt(NEW_DEPTHS.length)];
        double usedMm = random.nextInt(3) == 0 ? 1.5 + 2 * random.nextDouble() : 0;
        boolean directional = random.nextInt(4) == 0;
        var wheels = new ArrayList<Wheel>();
        for (var corner : Corner.values()) {
            var tyre = new Tyre("Invented " + prefix + newMm, "225/55R18", 98, "V", null, directional, false, newMm);
            wheels.add(new Wheel(prefix + corner, tyre, null));
            for (var spot : Spot.values()) {
                depthMm.put(prefix + corner + spot, newMm - usedMm);
            }
        }
        return new WheelSet(season + "-set", season, null, wheels);
    }

    private Map<Corner, String> at(WheelSet set) {
        var tags = new ArrayList<>(set.wheels().stream().map(Wheel::tag).toList());
        boolean swapped =
                random.nextInt(4) == 0 && !set.wheels().getFirst().tyre().mayBeDirectional();
        var standing = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            standing.put(corner, tags.get(swapped ? (corner.ordinal() + 2) % 4 : corner.ordinal()));
        }
        return standing;
    }
}
