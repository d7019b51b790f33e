package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.brake.burnish.BrakedCar;
import cornerbook.core.brake.burnish.BurnishDrive;
import cornerbook.core.brake.burnish.BurnishSaid;
import cornerbook.core.brake.burnish.BurnishStop;
import cornerbook.core.brake.burnish.BurnishTarget;
import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.corner.Axle;
import cornerbook.core.say.Amount;
import cornerbook.core.tyre.TyreSize;
import java.util.List;

/** How many stops, how far apart, burnish the pads and discs of one axle. */
final class BurnishQuestion {
    private static final double FROM_KMH = 65;
    private static final double TO_KMH = 15;
    private static final double DECELERATION_M_PER_S2 = 3;
    private static final double AIR_C = 10;
    private static final double LIMIT_C = 300;
    private static final double PERCENT = 100;

    static final Question QUESTION = new Question(
            "burnish",
            Title.BURNISH,
            Description.BURNISH,
            List.of(),
            List.of(new Group(
                    "drive",
                    Title.BURNISH_DRIVE,
                    Note.BURNISH_DRIVE,
                    List.of(
                            Ask.quantity("mass", Label.BURNISH_MASS, "kg", BurnishSaid.Part.MASS, Help.BURNISH_MASS),
                            Ask.number(
                                    "front-share",
                                    Label.BURNISH_FRONT_SHARE,
                                    "%",
                                    BurnishSaid.Part.FRONT_SHARE,
                                    Help.BURNISH_FRONT_SHARE),
                            Ask.choice(
                                    "axle",
                                    Label.BURNISH_AXLE,
                                    List.of(new Ask.Option("front", Axle.FRONT), new Ask.Option("rear", Axle.REAR)),
                                    Help.BURNISH_AXLE),
                            Ask.quantity(
                                    "disc-mass",
                                    Label.BURNISH_DISC_MASS,
                                    "kg",
                                    BurnishSaid.Part.DISC_MASS,
                                    Help.BURNISH_DISC_MASS),
                            Ask.quantity(
                                    "disc-diameter",
                                    Label.BURNISH_DISC_DIAMETER,
                                    "mm",
                                    BurnishSaid.Part.DISC_DIAMETER,
                                    Help.BURNISH_DISC_DIAMETER),
                            new Ask("solid", Label.BURNISH_SOLID, new Ask.Tick(), Help.BURNISH_SOLID, null),
                            Ask.words(
                                    "tyre", Label.BURNISH_TYRE,
                                    "225/55R18", Help.BURNISH_TYRE),
                            Ask.quantity(
                                    "from",
                                    Label.BURNISH_FROM,
                                    "km/h",
                                    BurnishSaid.Part.SPEED_BEFORE,
                                    new Otherwise(Help.BURNISH_FROM, Amount.of(FROM_KMH, "km/h"))),
                            Ask.quantity(
                                    "to",
                                    Label.BURNISH_TO,
                                    "km/h",
                                    BurnishSaid.Part.SPEED_AFTER,
                                    new Otherwise(Help.BURNISH_TO, Amount.of(TO_KMH, "km/h"))),
                            Ask.number(
                                    "deceleration",
                                    Label.BURNISH_DECELERATION,
                                    "m/s²",
                                    BurnishSaid.Part.DECELERATION,
                                    Help.BURNISH_DECELERATION),
                            Ask.number(
                                    "regeneration",
                                    Label.BURNISH_REGENERATION,
                                    "%",
                                    BurnishSaid.Part.REGENERATION_SHARE,
                                    Help.BURNISH_REGENERATION),
                            Ask.quantity(
                                    "air",
                                    Label.BURNISH_AIR,
                                    "°C",
                                    BurnishSaid.Part.AIR_TEMPERATURE,
                                    new Otherwise(Help.BURNISH_AIR, Amount.of(AIR_C, "°C"))),
                            Ask.quantity(
                                    "limit",
                                    Label.BURNISH_LIMIT,
                                    "°C",
                                    BurnishSaid.Part.LIMIT,
                                    new Otherwise(Help.BURNISH_LIMIT, Amount.of(LIMIT_C, "°C")))),
                    List.of("mass", "front-share", "disc-mass", "disc-diameter", "tyre"),
                    BurnishQuestion::drive)),
            NothingAsked.BURNISH,
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
        return List.of(Part.of(
                "burnish",
                drive,
                new AnswerSaid.Stops(
                        plan.stops(),
                        given.told(fromKmh, "km/h"),
                        given.told(toKmh, "km/h"),
                        new Amount(Math.ceil(plan.spacingS()), "s", 0),
                        axle,
                        given.told(plan.peaksC().getLast(), "°C")),
                new AnswerSaid.CoolDown(new Amount(Math.ceil(plan.coolDownS() / 60), "min", 0))));
    }
}
