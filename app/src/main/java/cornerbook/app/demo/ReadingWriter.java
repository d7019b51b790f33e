package cornerbook.app.demo;

import cornerbook.app.demo.CastMember.Trouble;
import cornerbook.core.air.GasLaw;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/** Takes the readings of one visit: the truth, with the error of the gauge, rounded as the gauge shows it. */
final class ReadingWriter {
    private static final int SNOWFLAKE = 2;
    private static final double TREAD_ERROR_MM = 0.045;
    /** Loss of a sound wheel between two visits: about a psi a month is the most that the trade press names. */
    private static final double LOSS_KPA = 18;

    private static final double LEAK_KPA = 85;
    /** Temperature outside when the tyres were set at the visit before. */
    private static final double LAST_SET_C = 7;

    /** The car one of whose sensors reads too much. */
    private static final int FAILING_SENSOR = 4;

    private static final double FAILING_SENSOR_KPA = 24;

    private final String visitId;
    private final CastMember member;
    private final CarTruth truth;
    private final RandomGenerator random;
    private final List<Reading> readings = new ArrayList<>();

    ReadingWriter(String visitId, CastMember member, CarTruth truth, RandomGenerator random) {
        this.visitId = visitId;
        this.member = member;
        this.truth = truth;
        this.random = random;
    }

    List<Reading> readings() {
        return List.copyOf(readings);
    }

    void tread(Map<Corner, String> fitted, Collection<Corner> corners) {
        for (Corner corner : corners) {
            String tag = fitted.get(corner);
            if (tag != null) {
                for (Spot groove : Spot.values()) {
                    double depth = truth.depthMm(tag, groove) + TREAD_ERROR_MM * CarTruth.bounded(random);
                    add(Measure.TREAD_DEPTH, corner, tag, groove, depth, 1);
                }
            }
        }
    }

    void pressureFound(Map<Corner, String> fitted, double tyreC, boolean leaking) {
        for (Corner corner : Corner.values()) {
            String tag = fitted.get(corner);
            if (tag != null) {
                boolean leak = leaking && member.trouble() == Trouble.SLOW_LEAK && corner == Corner.RF;
                double lost = (leak ? LEAK_KPA : LOSS_KPA) + 3 * CarTruth.bounded(random);
                add(Measure.PRESSURE_FOUND, corner, tag, null, airKeptSince(corner, tyreC) - lost, 0);
            }
        }
    }

    /** As the tyres are warmer than the air outside, more than the placard says. */
    void pressureSet(Map<Corner, String> fitted, double tyreC, double outsideC) {
        for (Corner corner : Corner.values()) {
            String tag = fitted.get(corner);
            if (tag != null) {
                double placardKpa = Objects.requireNonNull(
                        member.vehicle().axle(corner.axle()).placardPressureKpa());
                double set = Math.round(GasLaw.gaugePressureKpa(placardKpa, outsideC, tyreC)) + random.nextInt(5);
                add(Measure.PRESSURE_SET, corner, tag, null, set, 0);
            }
        }
    }

    /** The mountain and snowflake, on every tyre that is no summer tyre. */
    void winterMarks(Map<Corner, String> fitted) {
        var summer = member.sets().stream()
                .filter(set -> set.season() == SeasonKind.SUMMER)
                .flatMap(set -> set.wheels().stream())
                .map(Wheel::tag)
                .toList();
        fitted.forEach((corner, tag) -> {
            if (!summer.contains(tag)) {
                add(Measure.WINTER_MARK, corner, tag, null, SNOWFLAKE, 0);
            }
        });
    }

    /** What each wheel's sensor gives of what was set; one sensor of the shop's cars is failing. */
    void sensors(Map<Corner, String> fitted, double tyreC, boolean failing) {
        fitted.forEach((corner, tag) -> readings.stream()
                .filter(reading -> reading.measure() == Measure.PRESSURE_SET && tag.equals(reading.wheelTag()))
                .findFirst()
                .ifPresent(set -> {
                    boolean fails = failing && member.number() == FAILING_SENSOR && corner == Corner.RR;
                    double off = fails ? FAILING_SENSOR_KPA : (corner.ordinal() + member.number()) % 5 - 2;
                    add(Measure.SENSOR_PRESSURE, corner, tag, null, set.value() + off, 0);
                    add(Measure.SENSOR_TEMPERATURE, corner, tag, null, tyreC, 0);
                }));
    }

    void wheelTorque(Map<Corner, String> fitted) {
        for (Corner corner : Corner.values()) {
            String tag = fitted.get(corner);
            if (tag != null) {
                double torque =
                        Objects.requireNonNull(member.vehicle().fastener()).torqueNm() + random.nextInt(4);
                add(Measure.WHEEL_TORQUE, corner, tag, null, torque, 0);
            }
        }
    }

    /** @param seasonsLeft seasons from the one just driven until the latest visit, that one counted */
    void brakes(int seasonsLeft) {
        readings.addAll(brakeWriter().found(seasonsLeft));
    }

    void brakesCleaned() {
        readings.addAll(brakeWriter().cleaned());
    }

    void newPads(Axle axle) {
        readings.addAll(brakeWriter().newPads(axle));
    }

    /** Tried when the car leaves, unless it has been told already. */
    void parkingBrake() {
        if (readings.stream().noneMatch(reading -> reading.measure() == Measure.PARKING_BRAKE_HOLDING)) {
            add(Measure.PARKING_BRAKE_HOLDING, null, null, null, 0, 0);
        }
    }

    private BrakeWriter brakeWriter() {
        return new BrakeWriter(visitId, readings.size(), member, truth, random);
    }

    void temperatures(double tyreC, double outsideC) {
        add(Measure.TYRE_TEMPERATURE, null, null, null, tyreC, 0);
        add(Measure.OUTSIDE_TEMPERATURE, null, null, null, outsideC, 0);
    }

    /** @param seasonsLeft seasons still to come before the latest visit */
    void batteryCheck(double temperatureC, int seasonsLeft) {
        TwelveVoltBattery battery = Objects.requireNonNull(member.vehicle().battery());
        boolean tired = member.trouble() == Trouble.TIRED_BATTERY;
        double restV = battery.chemistry() == Chemistry.LITHIUM ? 13.25 : tired ? 12.22 + 0.05 * seasonsLeft : 12.72;
        add(Measure.BATTERY_VOLTAGE, null, null, null, restV + 0.02 * CarTruth.bounded(random), 2);
        add(Measure.BATTERY_TEMPERATURE, null, null, null, temperatureC, 0);
        add(Measure.STANDBY_CURRENT, null, null, null, 70 + 10 * CarTruth.bounded(random), 0);
        Double rated = battery.ratedCrankingCurrentA();
        if (rated != null && !member.vehicle().electric()) {
            double health = 0.86 + 0.015 * seasonsLeft;
            add(Measure.BATTERY_CRANKING_CURRENT, null, null, null, rated * health + 4 * CarTruth.bounded(random), 0);
        }
        if (tired) {
            double capacityAh = battery.ratedCapacityAh() * (0.46 + 0.06 * seasonsLeft) + CarTruth.bounded(random);
            add(Measure.BATTERY_VOLTAGE_CHARGED, null, null, null, 12.74 + 0.02 * CarTruth.bounded(random), 2);
            add(Measure.BATTERY_CAPACITY, null, null, null, capacityAh, 0);
        }
    }

    void brakeFluid(int seasonsLeft) {
        double latestC = member.trouble() == Trouble.WET_BRAKE_FLUID ? 148 : 196;
        double boilingC = latestC + 7.0 * seasonsLeft + 2 * CarTruth.bounded(random);
        add(Measure.BRAKE_FLUID_BOILING_POINT, null, null, null, boilingC, 0);
    }

    /** Gauge pressure now of the air that was set to the placard's at the visit before; ideal gas, absolute. */
    private double airKeptSince(Corner corner, double tyreC) {
        double placardKpa =
                Objects.requireNonNull(member.vehicle().axle(corner.axle()).placardPressureKpa());
        return GasLaw.gaugePressureKpa(placardKpa, LAST_SET_C, tyreC);
    }

    private String nextId() {
        return visitId + "-r" + (readings.size() + 101);
    }

    private void add(
            Measure measure,
            @Nullable Corner corner,
            @Nullable String tag,
            @Nullable Spot spot,
            double value,
            int decimals) {
        double scale = Math.pow(10, decimals);
        long steps = Math.round(value * scale);
        String shown = BigDecimal.valueOf(steps, decimals).toPlainString();
        var words = measure.scale();
        String written = words == null ? shown + " " + measure.unit() : words.wordOf(value);
        readings.add(new Reading(nextId(), measure, corner, tag, spot, steps / scale, written, null, null));
    }
}
