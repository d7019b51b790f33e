package cornerbook.app.demo;

import static cornerbook.app.demo.CastParts.agm;
import static cornerbook.app.demo.CastParts.axle;
import static cornerbook.app.demo.CastParts.flooded;
import static cornerbook.app.demo.CastParts.nuts;
import static cornerbook.app.demo.CastParts.person;
import static cornerbook.app.demo.CastParts.set;
import static cornerbook.app.demo.CastParts.tyre;
import static cornerbook.app.demo.CastParts.vehicle;
import static cornerbook.app.demo.CastParts.wear;

import cornerbook.app.demo.CastMember.LatestVisit;
import cornerbook.app.demo.CastMember.Trouble;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Tyre;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.util.List;

/** The front-drive cars of the cast, as data. */
final class FrontDriveCars {
    private static final double PAD_MM = 9.6;

    private FrontDriveCars() {}

    /** Nothing special: front drive, two sets. */
    static CastMember volta(LocalDate today) {
        AxleSpecification axle = axle(1150, "215/55R17", 94, 250, Caliper.SLIDING);
        return new CastMember(
                1,
                vehicle(
                        1,
                        "Fjordling Volta, blue",
                        "QX 4817",
                        DriveLayout.FRONT,
                        true,
                        axle,
                        axle,
                        nuts(140),
                        agm(60, 520, today, 30)),
                person(1, "Odile Marchenoir"),
                CastParts.summerAndWinter(1, today, "215/55R17", 94, 8.0, 9.4),
                31_240,
                38,
                wear(0.16, 0.11),
                PAD_MM,
                Trouble.NONE,
                LatestVisit.MEASURED);
    }

    /** A pad seized in its bracket at the right rear. */
    static CastMember tiko(LocalDate today) {
        AxleSpecification axle = axle(980, "205/55R16", 91, 240, Caliper.SLIDING);
        return new CastMember(
                2,
                vehicle(
                        2,
                        "Brumel Tiko, white",
                        "QX 1093",
                        DriveLayout.FRONT,
                        true,
                        axle,
                        axle,
                        nuts(120),
                        agm(50, 450, today, 26)),
                person(2, "Anselme Trudivert"),
                CastParts.summerAndWinter(2, today, "205/55R16", 91, 7.8, 9.0),
                18_910,
                29,
                wear(0.17, 0.11),
                PAD_MM,
                Trouble.SEIZED_PAD,
                LatestVisit.FINISHED);
    }

    /** Directional tyres, which stay on their side; brake fluid that is due. */
    static CastMember plover(LocalDate today) {
        AxleSpecification axle = axle(1120, "215/55R17", 94, 250, Caliper.SLIDING);
        Tyre summer = tyre("Karstol Sillon 7", "215/55R17", 94, true, 8.0);
        Tyre winter = tyre("Rimefall Crampon", "215/55R17", 94, true, 9.3);
        return new CastMember(
                6,
                vehicle(
                        6,
                        "Morvane Plover, red",
                        "QX 5141",
                        DriveLayout.FRONT,
                        true,
                        axle,
                        axle,
                        nuts(130),
                        agm(60, 520, today, 28)),
                person(6, "Eulalie Grandpin"),
                List.of(
                        set(6, SeasonKind.SUMMER, summer, summer, today, 46),
                        set(6, SeasonKind.WINTER, winter, winter, today, 41)),
                27_050,
                33,
                wear(0.17, 0.12),
                PAD_MM,
                Trouble.WET_BRAKE_FLUID,
                LatestVisit.FINISHED);
    }

    /** One wheel loses air between visits. */
    static CastMember wren(LocalDate today) {
        AxleSpecification axle = axle(1010, "205/55R16", 91, 240, Caliper.SLIDING);
        return new CastMember(
                8,
                vehicle(
                        8,
                        "Ostrel Wren, yellow",
                        "QX 8476",
                        DriveLayout.FRONT,
                        true,
                        axle,
                        axle,
                        nuts(120),
                        agm(50, 450, today, 31)),
                person(8, "Sidonie Larquevent"),
                CastParts.summerAndWinter(8, today, "205/55R16", 91, 7.9, 9.1),
                20_330,
                31,
                wear(0.17, 0.11),
                PAD_MM,
                Trouble.SLOW_LEAK,
                LatestVisit.ARRIVED);
    }

    /** One all-season set the year round, rotated at each visit. */
    static CastMember sedge(LocalDate today) {
        AxleSpecification axle = axle(1090, "215/55R17", 94, 250, Caliper.SLIDING);
        Tyre allSeason = tyre("Velmora Quatre Vents", "215/55R17", 94, false, 9.5);
        return new CastMember(
                10,
                vehicle(
                        10,
                        "Tindrel Sedge, beige",
                        "QX 6034",
                        DriveLayout.FRONT,
                        true,
                        axle,
                        axle,
                        nuts(130),
                        agm(60, 520, today, 33)),
                person(10, "Yseult Montfrelon"),
                List.of(set(10, SeasonKind.ALL_SEASON, allSeason, allSeason, today, 39)),
                12_800,
                22,
                wear(0.15, 0.11),
                PAD_MM,
                Trouble.NONE,
                LatestVisit.FINISHED);
    }

    /** A hybrid with drums behind, some years older, on tyres that lay long before they were sold. */
    static CastMember harvest(LocalDate today) {
        AxleSpecification front = axle(1040, "205/55R16", 91, 240, Caliper.SLIDING);
        AxleSpecification rear =
                CastParts.axleWithDrums(1040, "205/55R16", 91, 240, new DrumBrake(228.6, 230.6, 4.5, 1));
        Tyre summer = tyre("Velmora Brise 4", "205/55R16", 91, false, 7.9);
        Tyre winter = tyre("Isgrim Tapis 2", "205/55R16", 91, false, 9.2);
        return new CastMember(
                11,
                vehicle(
                        11,
                        "Gorsel Harvest hybrid, brown",
                        "QX 1750",
                        DriveLayout.FRONT,
                        false,
                        front,
                        rear,
                        nuts(110),
                        flooded(45, 400, today, 38)),
                person(11, "Fulbert Aunaie"),
                List.of(
                        set(11, SeasonKind.SUMMER, summer, summer, today, 74),
                        set(11, SeasonKind.WINTER, winter, winter, today, 117)),
                96_450,
                36,
                wear(0.15, 0.10),
                8.4,
                Trouble.NONE,
                LatestVisit.ARRIVED);
    }
}
