package cornerbook.core.tyre.judge;

import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** An invented car whose tyres are put together for a test; it arrives on wheels and leaves on wheels. */
final class FittedCar {
    static final String SIZE = "225/55R18";

    private final List<WheelSet> sets = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Visit> before = new ArrayList<>();
    private Vehicle vehicle = drive(DriveLayout.FRONT, "CA-QC", SIZE, SIZE);
    private LocalDate day = Cars.AUTUMN;

    static Vehicle drive(DriveLayout drive, String place, String frontSize, String rearSize) {
        var car = Cars.vehicle();
        return new Vehicle(
                car.id(),
                car.name(),
                car.plate(),
                null,
                drive,
                true,
                place,
                axle(car.front(), frontSize),
                axle(car.rear(), rearSize),
                car.fastener(),
                car.battery(),
                car.brakeFluid(),
                car.details());
    }

    private static AxleSpecification axle(AxleSpecification axle, String size) {
        return new AxleSpecification(
                axle.axleLoadKg(), size, axle.loadIndex(), axle.speedSymbol(), axle.placardPressureKpa(), axle.brake());
    }

    static Tyre tyre(String model, String size, boolean directional) {
        return new Tyre(model, size, 98, "V", null, directional, false, 8.0);
    }

    static Wheel wheel(String tag, Tyre tyre) {
        return new Wheel(tag, tyre, null);
    }

    FittedCar on(Vehicle car) {
        vehicle = car;
        return this;
    }

    FittedCar day(int year, int month, int dayOfMonth) {
        day = LocalDate.of(year, month, dayOfMonth);
        return this;
    }

    FittedCar set(String id, SeasonKind season, Wheel... wheels) {
        sets.add(new WheelSet(id, season, null, List.of(wheels)));
        return this;
    }

    /** Four wheels of one size, tags A-LF to A-RR by the id. */
    FittedCar four(String id, SeasonKind season) {
        return set(
                id,
                season,
                List.of(Corner.values()).stream()
                        .map(corner -> wheel(id + "-" + corner, tyre("Invented tread", SIZE, false)))
                        .toArray(Wheel[]::new));
    }

    FittedCar read(Reading reading) {
        readings.add(reading);
        return this;
    }

    FittedCar ranOn(Map<Corner, String> wheelAt) {
        before.add(new Visit("v0", day.minusMonths(6), 40_000, wheelAt, wheelAt, List.of()));
        return this;
    }

    static Map<Corner, String> at(String leftFront, String rightFront, String leftRear, String rightRear) {
        return Map.of(Corner.LF, leftFront, Corner.RF, rightFront, Corner.LR, leftRear, Corner.RR, rightRear);
    }

    CarHistory history(Map<Corner, String> arrivedOn, Map<Corner, String> leftOn) {
        var visits = new ArrayList<>(before);
        visits.add(new Visit("v", day, 48_000, arrivedOn, leftOn, readings));
        return new CarHistory(vehicle, Cars.history().customer(), sets, visits);
    }

    /** The car as it leaves on these; it came on the same. */
    Case leaves(Map<Corner, String> wheelAt) {
        return leaves(before.isEmpty() ? wheelAt : before.getLast().leftOn(), wheelAt);
    }

    Case leaves(Map<Corner, String> arrivedOn, Map<Corner, String> leftOn) {
        return new Case(history(arrivedOn, leftOn), "v", LAWS, Knowledge.NONE, null);
    }

    /** The rows of these places as the limits file has them. */
    static final LimitTable LAWS = new LimitTable(rows());

    private static List<Limit> rows() {
        var rows = new ArrayList<>(Cars.LIMITS);
        rows.add(law("CA-QC", Limit.Kind.TREAD_LEGAL, 1.6, null, null));
        rows.add(law("CA-QC", Limit.Kind.WINTER_TYRES, 1, MonthDay.of(12, 1), MonthDay.of(3, 15)));
        rows.add(law("CA-QC", Limit.Kind.STUDS_FORBIDDEN, 1, MonthDay.of(5, 2), MonthDay.of(10, 14)));
        rows.add(law("AT", Limit.Kind.TREAD_LEGAL, 1.6, null, null));
        rows.add(law("AT", Limit.Kind.WINTER_TYRES_IN_WINTER_CONDITIONS, 2, MonthDay.of(11, 1), MonthDay.of(4, 15)));
        rows.add(law("CA-ON", Limit.Kind.STUDS_FORBIDDEN, 1, MonthDay.of(6, 1), MonthDay.of(8, 31)));
        rows.add(law("CA-ON", Limit.Kind.STUDS_FORBIDDEN_IN_PART, 1, MonthDay.of(9, 1), MonthDay.of(5, 31)));
        rows.add(law("US-VT", Limit.Kind.STUDS_ALLOWED, 1, null, null));
        return List.copyOf(rows);
    }

    private static Limit law(
            String place, Limit.Kind kind, double value, @Nullable MonthDay from, @Nullable MonthDay until) {
        return new Limit(place, kind, null, value, from, until, Said.verbatim("law of " + place));
    }
}
