package cornerbook.app.bench;

import cornerbook.core.brake.burnish.BrakedCar;
import cornerbook.core.brake.burnish.BurnishDrive;
import cornerbook.core.brake.burnish.BurnishStop;
import cornerbook.core.brake.burnish.BurnishTarget;
import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.corner.Axle;
import cornerbook.core.tyre.TyreSize;
import java.util.List;
import java.util.Locale;

/** How many stops, how far apart, burnish the pads and discs of one axle. */
final class BurnishQuestion {
    private static final double FROM_KMH = 65;
    private static final double TO_KMH = 15;
    private static final double DECELERATION_M_PER_S2 = 3;
    private static final double AIR_C = 10;
    private static final double PERCENT = 100;

    static final Question QUESTION = new Question(
            "burnish",
            "Burnish",
            "How many stops, how far apart, bring the discs of an axle to burnish temperature and not beyond.",
            List.of(),
            List.of(new Group(
                    "drive",
                    "The drive",
                    "Only where traffic allows. The vehicle manufacturer's and the pad maker's procedure outrank it.",
                    List.of(
                            Ask.quantity("mass", "Mass", "kg", "mass", "Mass of the car as it is driven."),
                            Ask.number(
                                    "front-share",
                                    "Front axle brakes",
                                    "%",
                                    "front share",
                                    "Share of the braking that the front axle takes."),
                            Ask.choice(
                                    "axle",
                                    "Axle",
                                    List.of("front", "rear"),
                                    "axle",
                                    "Whose discs are meant; the front ones if not given."),
                            Ask.quantity(
                                    "disc-mass", "Disc, mass", "kg", "disc mass", "Mass of the rings of one disc."),
                            Ask.quantity(
                                    "disc-diameter",
                                    "Disc, diameter",
                                    "mm",
                                    "disc diameter",
                                    "Outer diameter of the disc."),
                            new Ask(
                                    "solid",
                                    "Without vanes",
                                    new Ask.Tick(),
                                    "The disc is solid; vented if not given.",
                                    ""),
                            Ask.words(
                                    "tyre",
                                    "Tyre size",
                                    "225/55R18",
                                    "size",
                                    "Size of the tyres, for the turns of the disc."),
                            Ask.quantity(
                                    "from",
                                    "Stop from",
                                    "km/h",
                                    "speed before the stop",
                                    "Speed before a stop; 65 km/h if not given."),
                            Ask.quantity(
                                    "to",
                                    "Stop to",
                                    "km/h",
                                    "speed after the stop",
                                    "Speed after a stop; 15 km/h if not given."),
                            Ask.number(
                                    "deceleration",
                                    "Deceleration",
                                    "m/s²",
                                    "deceleration",
                                    "Of the stop; 3 m/s², a moderate one, if not given."),
                            Ask.number(
                                    "regeneration",
                                    "Regeneration",
                                    "%",
                                    "regeneration share",
                                    "Share of the braking that the car takes back; 0 if not given."),
                            Ask.quantity(
                                    "air",
                                    "Air",
                                    "°C",
                                    "air temperature",
                                    "Temperature of the air; 10 °C if not given."),
                            Ask.quantity(
                                    "limit",
                                    "Limit of the disc",
                                    "°C",
                                    "limit",
                                    "Temperature that the disc may not pass; 300 °C if not given.")),
                    List.of("mass", "front-share", "disc-mass", "disc-diameter", "tyre"),
                    BurnishQuestion::drive)),
            "nothing to compute, expected --mass with the discs",
            "cornerbook burnish --mass 1900 --front-share 68 --disc-mass 7.2 --disc-diameter 320 --tyre 225/55R18");

    private BurnishQuestion() {}

    private static List<Part> drive(Given given) {
        if (!given.any("mass", "front-share", "disc-mass", "disc-diameter", "tyre")) {
            return List.of();
        }
        var axle = given.choice("axle", Axle.class).orElse(Axle.FRONT);
        double fromKmh = given.quantity("from", FROM_KMH);
        double toKmh = given.quantity("to", TO_KMH);
        var everyday = BurnishTarget.everyday(given.quantity("air", AIR_C));
        var limitC = given.find("limit");
        var car = new BrakedCar(
                given.quantity("mass"),
                BrakedCar.USUAL_ROTATING_MASS_FACTOR,
                given.number("front-share") / PERCENT,
                given.reading("tyre", TyreSize::parse).rollingCircumferenceMm() / 1000);
        var drive = BurnishDrive.of(
                car,
                DiscBody.castIron(given.quantity("disc-mass"), given.quantity("disc-diameter"), !given.ticked("solid")),
                axle,
                new BurnishStop(
                        fromKmh,
                        toKmh,
                        given.number("deceleration", DECELERATION_M_PER_S2),
                        given.number("regeneration", 0) / PERCENT),
                limitC == null ? everyday : everyday.withLimit(limitC));
        var plan = drive.plan();
        return List.of(new Part(
                "burnish",
                List.of(
                        "%d stops from %s to %s, %.0f s apart: last peak of a %s disc %s"
                                .formatted(
                                        plan.stops(),
                                        given.shown().show(fromKmh, "km/h"),
                                        given.shown().show(toKmh, "km/h"),
                                        Math.ceil(plan.spacingS()),
                                        axle.name().toLowerCase(Locale.ROOT),
                                        given.shown().show(plan.peaksC().getLast(), "°C")),
                        "Then %.0f min of driving with little braking".formatted(Math.ceil(plan.coolDownS() / 60))),
                drive));
    }
}
