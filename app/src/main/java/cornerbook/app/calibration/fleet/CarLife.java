package cornerbook.app.calibration.fleet;

import cornerbook.app.calibration.fleet.Calendar.Change;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.WheelFastener;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;

/**
 * The life of one car, day by day: two years and more before its first visit, the visits that the book has, and at least four
 * years after the last of them.
 */
final class CarLife {
    private static final int FIRST_YEAR = 2012;
    private static final int YEARS = 15;
    /** The first visit is one of these changes, counted from the first. */
    private static final int EARLIEST_VISIT = 8;

    private static final int FIRST_VISITS = 4;
    private static final int FEWEST_VISITS = 3;
    private static final int MOST_VISITS = 9;
    /** How much a season's distance is off the driver's usual one. Common practice, no source. */
    static final double SEASON_DISTANCE_SD = 0.15;

    static final double SEASON_WEAR_SD = 0.15;
    static final double STAYS_AT_HOME = 0.2;
    /**
     * Days differ log-normally by this: days above 100 km are then fewer than a fifth of the days driven and two fifths of all
     * km (Plötz and Sprei 2021, Transp. Res. D 101:103126, abstract).
     */
    static final double DAYS_DIFFER = 0.85;

    static final double NEW_DRIVER_EACH_SEASON = 0.12;
    /** No season of a {@link Calendar} is shorter. */
    private static final int SEASON_DAYS = 135;

    private final Scenario scenario;
    private final Dice dice;
    private final String id;
    private final Body body;
    private final Place place;
    private final Brakes brakes;
    private final Calendar calendar;
    private final int firstVisit;
    private final int visitCount;
    private final boolean rotates;
    private final double replacedBelowMm;
    private final Days days;
    private final int[] saltDaysUntil;
    private final Map<SeasonKind, Tread> current = new EnumMap<>(SeasonKind.class);
    private final Map<SeasonKind, Boolean> replaceNext = new EnumMap<>(SeasonKind.class);
    private final List<Tread> treads = new ArrayList<>();
    private final List<Visit> visits = new ArrayList<>();
    private final Map<String, List<Tread>> treadsAt = new HashMap<>();
    private final Map<String, List<Integer>> padsStickOn = new HashMap<>();
    private final double odometerStartKm;

    private Driver driver;
    private boolean anotherSinceVisit;
    private double[] workKjPerKm;
    private double[] brakeKjPerKm;

    private CarLife(Scenario scenario, long seed) {
        this.scenario = scenario;
        dice = new Dice(seed);
        id = "invented-" + Long.toHexString(seed);
        body = Body.any(dice.body());
        place = Place.any(dice.body());
        driver = Driver.any(dice.drivers());
        brakes = new Brakes(body, dice.brakes());
        calendar = Calendar.of(FIRST_YEAR, YEARS, dice.shop());
        firstVisit = EARLIEST_VISIT + dice.shop().nextInt(FIRST_VISITS);
        visitCount = dice.shop().nextInt(FEWEST_VISITS, MOST_VISITS + 1);
        rotates = dice.shop().nextDouble() < 0.35;
        double care = dice.shop().nextDouble();
        replacedBelowMm = care < 0.6 ? 3 + dice.shop().nextDouble() : care < 0.85 ? 1.8 : 0;
        odometerStartKm = 3000 + 100_000 * dice.shop().nextDouble();
        days = new Days(calendar.days());
        saltDaysUntil = new int[calendar.days()];
        workKjPerKm = new double[0];
        brakeKjPerKm = new double[0];
        drive(driver);
    }

    static SimulatedCar live(Scenario scenario, long seed) {
        var life = new CarLife(scenario, seed);
        life.saltTheRoads();
        life.firstTyres(SeasonKind.SUMMER);
        life.firstTyres(SeasonKind.WINTER);
        life.run();
        return new SimulatedCar(life.history(), new Truth(life.calendar, life.days, life.treadsAt, life.padsStickOn));
    }

    private void drive(Driver who) {
        driver = who;
        workKjPerKm = Arrays.stream(Corner.values())
                .mapToDouble(corner -> body.workKjPerKm(who, corner))
                .toArray();
        brakeKjPerKm = Arrays.stream(Corner.values())
                .mapToDouble(corner -> body.brakeKjPerKm(who, corner))
                .toArray();
    }

    private void saltTheRoads() {
        int salted = 0;
        for (int day = 0; day < saltDaysUntil.length; day++) {
            salted += dice.brakes().nextDouble() < place.salted(calendar.dayOfYear(day)) ? 1 : 0;
            saltDaysUntil[day] = salted;
        }
    }

    /** New at the change-over of their kind before the first visit, up to four years before it. */
    private void firstTyres(SeasonKind kind) {
        int latest = firstVisit;
        while (calendar.changes().get(latest).on() != kind) {
            latest--;
        }
        int change = latest - 2 * dice.shop().nextInt(5);
        fit(kind, calendar.changes().get(Math.max(0, change)).day());
    }

    private void fit(SeasonKind kind, int day) {
        int number = 1
                + (int) treads.stream()
                        .filter(tread -> tread.set().season() == kind)
                        .count();
        var tread = new Tread(id, number, kind, day, scenario, dice.tyres());
        treads.add(tread);
        current.put(kind, tread);
    }

    private void run() {
        var kind = SeasonKind.WINTER;
        double seasonKm = 1;
        double seasonWear = 1;
        int change = 0;
        double odometer = odometerStartKm;
        int comesOn = -1;
        for (int day = 0; day < calendar.days(); day++) {
            if (change < calendar.changes().size()
                    && calendar.changes().get(change).day() == day) {
                kind = calendar.changes().get(change).on();
                change(change, odometer);
                seasonKm = Math.exp(SEASON_DISTANCE_SD * dice.days().nextGaussian());
                seasonWear = season(dice.seasons());
                comesOn = another(day, dice.drivers());
                change++;
            }
            if (day == comesOn) {
                drive(Driver.any(dice.drivers()));
                anotherSinceVisit = true;
            }
            double km = seasonKm * kmOfDay(dice.days());
            double biting = km * seasonWear * place.bite(calendar.dayOfYear(day));
            brakes.run(km, brakeKjPerKm, day > 0 && saltDaysUntil[day] > saltDaysUntil[day - 1]);
            odometer += km;
            days.keep(day, odometer, biting, kind, workKjPerKm);
            var tread = current.get(kind);
            if (tread != null && tread.bornDay() <= day) {
                days.wear(tread, day);
            }
        }
    }

    /** What a season wears against another; a new driver may come with it. Draws the same whatever is switched on. */
    private double season(RandomGenerator random) {
        double drawn = random.nextGaussian();
        boolean another = random.nextDouble() < NEW_DRIVER_EACH_SEASON;
        if (scenario.has(Effect.DRIVERS_CHANGE) && another) {
            drive(Driver.any(random));
        }
        return scenario.has(Effect.SEASONS_DIFFER) ? Math.exp(SEASON_WEAR_SD * drawn) : 1;
    }

    /** The day of the season that begins on which another driver comes who is told; before its begin where none does. */
    private int another(int day, RandomGenerator random) {
        if (!scenario.has(Effect.DRIVERS_CHANGE_AND_IT_IS_TOLD)) {
            return -1;
        }
        boolean another = random.nextDouble() < NEW_DRIVER_EACH_SEASON;
        int comesOn = day + random.nextInt(SEASON_DAYS);
        return another ? comesOn : -1;
    }

    private double kmOfDay(RandomGenerator random) {
        boolean atHome = random.nextDouble() < STAYS_AT_HOME;
        double drawn = Math.exp(DAYS_DIFFER * random.nextGaussian() - DAYS_DIFFER * DAYS_DIFFER / 2);
        return atHome ? 0 : driver.kmPerDay() / (1 - STAYS_AT_HOME) * drawn;
    }

    /** Wheels are changed; the book has it from the first visit to the last. */
    private void change(int number, double odometerKm) {
        Change change = calendar.changes().get(number);
        var fitted = current.get(change.on());
        if (rotates && fitted != null && fitted.bornDay() < change.day()) {
            fitted.rotate();
        }
        if (number < firstVisit || number >= firstVisit + visitCount) {
            return;
        }
        var visitId = "%s-v%s".formatted(id, number - firstVisit + 1);
        var sheet = new Sheet(visitId, scenario, dice);
        var cameOn = change.on() == SeasonKind.SUMMER ? SeasonKind.WINTER : SeasonKind.SUMMER;
        var off = Objects.requireNonNull(current.get(cameOn));
        replaceNext.put(cameOn, sheet.read(off) < replacedBelowMm);
        boolean replaced = replaceNext.getOrDefault(change.on(), false);
        if (replaced) {
            fit(change.on(), change.day());
            replaceNext.put(change.on(), false);
        }
        var on = Objects.requireNonNull(current.get(change.on()));
        if (replaced || number == firstVisit) {
            sheet.read(on);
        }
        if (anotherSinceVisit && number > firstVisit) {
            sheet.anotherDriver();
        }
        anotherSinceVisit = false;
        brakes.visit(sheet);
        treadsAt.put(visitId, List.of(off.copy(), on.copy()));
        padsStickOn.put(visitId, brakes.stickOn(change.day(), saltDaysUntil));
        visits.add(new Visit(
                visitId,
                calendar.date(change.day()),
                Math.rint(odometerKm),
                wheelAt(off),
                wheelAt(on),
                sheet.readings()));
    }

    private static Map<Corner, String> wheelAt(Tread tread) {
        var at = new EnumMap<Corner, String>(Corner.class);
        for (int tyre = 0; tyre < Corner.values().length; tyre++) {
            at.put(tread.cornerOf(tyre), tread.wheels().get(tyre).tag());
        }
        return at;
    }

    private CarHistory history() {
        var brake = new BrakeSpecification(Caliper.SLIDING, true, Pad.NEW_MM, 3, 26, 24, 0.05, 0.015);
        var axle = new AxleSpecification(1200, "225/55R18", 98, "H", 250, brake);
        return new CarHistory(
                new Vehicle(
                        id,
                        "Invented car",
                        "INV 000",
                        null,
                        body.drive(),
                        body.electric(),
                        "*",
                        axle,
                        axle,
                        new WheelFastener("M14×1.5", 5, Seat.CONE, 140, 80),
                        new TwelveVoltBattery(
                                Chemistry.AGM, 60, 600.0, RatingStandard.EN, LocalDate.of(FIRST_YEAR, 1, 1)),
                        BrakeFluid.DOT_4,
                        VehicleDetails.NOT_KNOWN),
                new Customer(id + "-owner", "Invented owner", null, null),
                treads.stream().map(Tread::set).toList(),
                visits);
    }
}
