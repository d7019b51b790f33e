package cornerbook.app.demo;

import static cornerbook.app.demo.CastParts.agm;
import static cornerbook.app.demo.CastParts.axle;
import static cornerbook.app.demo.CastParts.bolts;
import static cornerbook.app.demo.CastParts.lithium;
import static cornerbook.app.demo.CastParts.nuts;
import static cornerbook.app.demo.CastParts.person;
import static cornerbook.app.demo.CastParts.set;
import static cornerbook.app.demo.CastParts.tyre;
import static cornerbook.app.demo.CastParts.vehicle;
import static cornerbook.app.demo.CastParts.wear;

import cornerbook.app.demo.CastMember.LatestVisit;
import cornerbook.app.demo.CastMember.Trouble;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Tyre;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.util.List;

/** The rear-drive and all-wheel-drive cars of the cast, as data. */
final class RearAndAllWheelDriveCars {
    private static final double PAD_MM = 9.6;

    private RearAndAllWheelDriveCars() {}

    /** Alignment out at the left front: the outer shoulder goes first there. */
    static CastMember lumen(LocalDate today) {
        AxleSpecification axle = axle(1320, "225/55R18", 98, 270, Caliper.SLIDING);
        return new CastMember(
                3,
                vehicle(
                        3,
                        "Nivaro Lumen, grey",
                        "QX 6652",
                        DriveLayout.ALL,
                        true,
                        axle,
                        axle,
                        nuts(150),
                        agm(70, 640, today, 34)),
                person(3, "Perline Vautrac"),
                CastParts.summerAndWinter(3, today, "225/55R18", 98, 8.1, 9.6),
                22_480,
                41,
                wear(0.14, 0.15),
                PAD_MM,
                Trouble.UNEVEN_SHOULDER,
                LatestVisit.FINISHED);
    }

    /** Drives much; the winter set has little left. */
    static CastMember ibex(LocalDate today) {
        AxleSpecification axle = axle(1400, "235/50R19", 103, 280, Caliper.SLIDING);
        return new CastMember(
                4,
                vehicle(
                        4,
                        "Tarnwick Ibex, green",
                        "QX 7720",
                        DriveLayout.ALL,
                        true,
                        axle,
                        axle,
                        nuts(160),
                        agm(70, 640, today, 40)),
                person(4, "Corvin Delasauge"),
                CastParts.summerAndWinter(4, today, "235/50R19", 103, 7.8, 8.2),
                54_300,
                44,
                wear(0.14, 0.15),
                PAD_MM,
                Trouble.NONE,
                LatestVisit.FINISHED);
    }

    /** Rear drive with wider tyres behind, which stay on their axle. */
    static CastMember arc(LocalDate today) {
        AxleSpecification front = axle(1080, "235/45R18", 94, 250, Caliper.FIXED);
        AxleSpecification rear = axle(1250, "255/45R18", 99, 270, Caliper.SLIDING);
        Tyre summerFront = tyre("Velmora Brise 4", "235/45R18", 94, false, 8.0);
        Tyre summerRear = tyre("Velmora Brise 4", "255/45R18", 99, false, 8.2);
        Tyre winterFront = tyre("Isgrim Tapis 2", "235/45R18", 94, false, 9.2);
        Tyre winterRear = tyre("Isgrim Tapis 2", "255/45R18", 99, false, 9.6);
        return new CastMember(
                5,
                vehicle(
                        5,
                        "Solenne Arc, black",
                        "QX 3308",
                        DriveLayout.REAR,
                        true,
                        front,
                        rear,
                        bolts(150),
                        agm(60, 560, today, 22)),
                person(5, "Mirko Halvesson"),
                List.of(
                        set(5, SeasonKind.SUMMER, summerFront, summerRear, today, 44),
                        set(5, SeasonKind.WINTER, winterFront, winterRear, today, 42)),
                15_620,
                35,
                wear(0.11, 0.16),
                PAD_MM,
                Trouble.NONE,
                LatestVisit.FINISHED);
    }

    /** Rear drive with a 12 V battery near its end. */
    static CastMember nine(LocalDate today) {
        AxleSpecification axle = axle(1240, "225/55R18", 98, 260, Caliper.SLIDING);
        return new CastMember(
                7,
                vehicle(
                        7,
                        "Kestrane Nine, silver",
                        "QX 2985",
                        DriveLayout.REAR,
                        true,
                        axle,
                        axle,
                        nuts(150),
                        agm(60, 540, today, 71)),
                person(7, "Thibert Osenne"),
                CastParts.summerAndWinter(7, today, "225/55R18", 98, 8.0, 9.4),
                48_770,
                37,
                wear(0.12, 0.16),
                PAD_MM,
                Trouble.TIRED_BATTERY,
                LatestVisit.FINISHED);
    }

    /** Front pads near their minimum. */
    static CastMember skua(LocalDate today) {
        AxleSpecification axle = axle(1380, "235/50R19", 103, 280, Caliper.SLIDING);
        return new CastMember(
                9,
                vehicle(
                        9,
                        "Pallune Skua, white",
                        "QX 9217",
                        DriveLayout.ALL,
                        true,
                        axle,
                        axle,
                        nuts(160),
                        agm(70, 640, today, 37)),
                person(9, "Baudry Kestelin"),
                CastParts.summerAndWinter(9, today, "235/50R19", 103, 7.8, 9.6),
                61_900,
                40,
                wear(0.13, 0.14),
                5.4,
                Trouble.NONE,
                LatestVisit.FINISHED);
    }

    /** A lithium 12 V battery; this season's visit is still awaited. */
    static CastMember otter(LocalDate today) {
        AxleSpecification axle = axle(1200, "225/55R18", 98, 260, Caliper.FIXED);
        return new CastMember(
                12,
                vehicle(
                        12,
                        "Veldane Otter, blue",
                        "QX 4429",
                        DriveLayout.REAR,
                        true,
                        axle,
                        axle,
                        bolts(140),
                        lithium(16, today, 35)),
                person(12, "Hermance Roquelune"),
                CastParts.summerAndWinter(12, today, "225/55R18", 98, 8.0, 9.4),
                9_340,
                34,
                wear(0.12, 0.16),
                PAD_MM,
                Trouble.NONE,
                LatestVisit.AWAITED);
    }
}
