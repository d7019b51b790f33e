package cornerbook.app.demo;

import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.WheelFastener;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The parts that the invented cars are put together from. */
final class CastParts {
    /** No car wears all four corners alike: left front and right rear go a little faster. */
    private static final Map<Corner, Double> CORNER_FACTORS =
            Map.of(Corner.LF, 1.05, Corner.RF, 0.96, Corner.LR, 0.97, Corner.RR, 1.04);

    /** Behind these cars the sensors' numbers lie closer, or they would not suffice. */
    private static final int SENSORS_OF_OWN_LETTER = 0x1000;

    private CastParts() {}

    static Vehicle vehicle(
            int number,
            String name,
            String plate,
            DriveLayout drive,
            boolean electric,
            AxleSpecification front,
            AxleSpecification rear,
            WheelFastener fastener,
            TwelveVoltBattery battery) {
        return new Vehicle(
                vehicleId(number),
                name,
                plate,
                null,
                drive,
                electric,
                "CA-QC",
                front,
                rear,
                fastener,
                battery,
                BrakeFluid.DOT_4,
                VehicleDetails.NOT_KNOWN);
    }

    static String vehicleId(int number) {
        return DemoShop.CAR_ID_BEGINS + twoDigits(number);
    }

    /** Telephone numbers from the range kept for fiction, addresses under the domain kept for examples. */
    static Customer person(int number, String name) {
        return new Customer(
                "demo-customer-" + twoDigits(number),
                name,
                "+1 819 555 01" + twoDigits(number),
                "customer" + twoDigits(number) + "@example.com");
    }

    static AxleSpecification axleWithDrums(
            double loadKg, String size, int loadIndex, double placardKpa, DrumBrake drum) {
        return new AxleSpecification(
                loadKg, size, loadIndex, "H", placardKpa, new BrakeSpecification(drum, false, BrakeDetails.NOT_KNOWN));
    }

    static AxleSpecification axle(double loadKg, String size, int loadIndex, double placardKpa, Caliper caliper) {
        return new AxleSpecification(
                loadKg,
                size,
                loadIndex,
                "H",
                placardKpa,
                new BrakeSpecification(caliper, caliper == Caliper.SLIDING, 11, 3, 26, 24, 0.05, 0.015));
    }

    static WheelFastener nuts(double torqueNm) {
        return new WheelFastener("M12×1.5", 5, Seat.CONE, torqueNm, 80);
    }

    static WheelFastener bolts(double torqueNm) {
        return new WheelFastener("M14×1.5", 5, Seat.BALL, torqueNm, 80);
    }

    static TwelveVoltBattery agm(double capacityAh, double crankingA, LocalDate today, int ageMonths) {
        return new TwelveVoltBattery(
                Chemistry.AGM, capacityAh, crankingA, RatingStandard.EN, today.minusMonths(ageMonths));
    }

    static TwelveVoltBattery flooded(double capacityAh, double crankingA, LocalDate today, int ageMonths) {
        return new TwelveVoltBattery(
                Chemistry.FLOODED, capacityAh, crankingA, RatingStandard.SAE, today.minusMonths(ageMonths));
    }

    static TwelveVoltBattery lithium(double capacityAh, LocalDate today, int ageMonths) {
        return new TwelveVoltBattery(Chemistry.LITHIUM, capacityAh, null, null, today.minusMonths(ageMonths), 13.1);
    }

    static Tyre tyre(String model, String size, int loadIndex, boolean directional, double newDepthMm) {
        return new Tyre(model, size, loadIndex, "H", null, directional, !directional, newDepthMm);
    }

    static Map<Corner, Double> wear(double frontMmPer1000Km, double rearMmPer1000Km) {
        Map<Corner, Double> wear = new EnumMap<>(Corner.class);
        CORNER_FACTORS.forEach((corner, factor) ->
                wear.put(corner, factor * (corner.axle() == Axle.FRONT ? frontMmPer1000Km : rearMmPer1000Km)));
        return wear;
    }

    static List<WheelSet> summerAndWinter(
            int number, LocalDate today, String size, int loadIndex, double summerMm, double winterMm) {
        Tyre summer = tyre("Velmora Brise 4", size, loadIndex, false, summerMm);
        Tyre winter = tyre("Isgrim Tapis 2", size, loadIndex, false, winterMm);
        return List.of(
                set(number, SeasonKind.SUMMER, summer, summer, today, 48),
                set(number, SeasonKind.WINTER, winter, winter, today, 43));
    }

    /** Four wheels in the order of the corners, made {@code ageMonths} ago. */
    static WheelSet set(int number, SeasonKind season, Tyre front, Tyre rear, LocalDate today, int ageMonths) {
        String letter = season.name().substring(0, 1);
        List<Wheel> wheels = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            int position = wheels.size() + 1;
            Tyre tyre = corner.axle() == Axle.FRONT ? front : rear;
            wheels.add(new Wheel(
                    twoDigits(number) + letter + position,
                    withIdentification(tyre, season, today.minusMonths(ageMonths)),
                    sensorId(number, letter.charAt(0), position)));
        }
        String place = season == SeasonKind.ALL_SEASON ? null : "Rack " + letter + ", bay " + number;
        return new WheelSet("demo-" + twoDigits(number) + "-" + letter, season, place, wheels);
    }

    /** Eight hexadecimal digits, as sensors have them; for as many cars as these digits can tell apart. */
    private static String sensorId(int number, char letter, int position) {
        long id = number < SENSORS_OF_OWN_LETTER
                ? 0x3C00_0000L + number * 0x1_0000L + letter * 0x100L + position * 0x11L
                : 0x8000_0000L + number * 0x10L + (letter == 'W' ? 5 : 0) + position;
        return "%08X".formatted(id & 0xFFFF_FFFFL);
    }

    /** A tyre identification number of thirteen symbols, as 49 CFR 574.5 lays it out: plant, six symbols, week and year. */
    private static Tyre withIdentification(Tyre tyre, SeasonKind season, LocalDate madeOn) {
        String number = "1YY"
                + (season == SeasonKind.WINTER ? "WN" : "TR")
                + "BCDE"
                + twoDigits(madeOn.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR))
                + twoDigits(madeOn.get(IsoFields.WEEK_BASED_YEAR) % 100);
        return new Tyre(
                tyre.model(),
                tyre.size(),
                tyre.loadIndex(),
                tyre.speedSymbol(),
                number,
                tyre.directional(),
                tyre.asymmetric(),
                tyre.newDepthMm());
    }

    private static String twoDigits(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }
}
