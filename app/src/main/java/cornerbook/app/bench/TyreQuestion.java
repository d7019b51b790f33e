package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.tyre.SetFit;
import cornerbook.core.tyre.SizeComparison;
import cornerbook.core.tyre.TyreSaid;
import cornerbook.core.tyre.TyreSize;
import java.util.List;

/** What a sidewall says, and whether another size, rim or set of wheels fits. */
final class TyreQuestion {
    private static final double USUAL_SPEED_KMH = 100;
    private static final String SIZE = "225/55R18 98V";
    private static final String MOUNTING = "5x114.3 M14x1.5 cone 64.1 ET45 7.5J";

    static final Question QUESTION = new Question(
            "tyre",
            Title.TYRE,
            Description.TYRE,
            List.of(),
            List.of(
                    TyreSizeGroup.GROUP,
                    new Group(
                            "comparison",
                            Title.TYRE_COMPARISON,
                            Note.TYRE_COMPARISON,
                            List.of(
                                    Ask.words("placard", Label.TYRE_PLACARD, SIZE, Help.TYRE_PLACARD),
                                    Ask.words("other", Label.TYRE_OTHER, "235/50R18 101H", Help.TYRE_OTHER),
                                    Ask.quantity(
                                            "speed",
                                            Label.TYRE_SPEED,
                                            "km/h",
                                            TyreSaid.Input.SPEED_SHOWN,
                                            new Otherwise(Help.TYRE_SPEED, Amount.of(USUAL_SPEED_KMH, "km/h")))),
                            List.of("placard", "other"),
                            TyreQuestion::comparison),
                    TyreAgeGroup.GROUP,
                    TyreDifferenceGroup.GROUP,
                    TyreAlignmentGroup.GROUP,
                    new Group(
                            "fit",
                            Title.TYRE_FIT,
                            Note.TYRE_FIT,
                            List.of(
                                    Ask.words("hub", Label.TYRE_HUB, MOUNTING, Help.TYRE_HUB),
                                    Ask.words("wheel", Label.TYRE_WHEEL, MOUNTING, Help.TYRE_WHEEL),
                                    Ask.quantity(
                                            "caliper-gap",
                                            Label.TYRE_CALIPER_GAP,
                                            "mm",
                                            TyreSaid.Input.CALIPER_GAP,
                                            Help.TYRE_CALIPER_GAP)),
                            List.of("hub", "wheel"),
                            TyreQuestion::fit)),
            NothingAsked.TYRE,
            "cornerbook tyre --placard \"225/55R18 98V\" --other \"235/50R18 101H\" --speed \"62 mph\"");

    private TyreQuestion() {}

    private static List<Part> comparison(Given given) {
        if (!given.any("placard", "other", "speed")) {
            return List.of();
        }
        var result = SizeComparison.of(
                size(given, "placard"), size(given, "other"), given.quantity("speed", USUAL_SPEED_KMH));
        return List.of(Part.of(
                "comparison",
                result,
                new AnswerSaid.SizesCompared(
                        result.other().toString(),
                        result.placard().toString(),
                        given.told(result.diameterMm(), "mm"),
                        Amount.significant(result.circumferencePercent(), "%", 4)),
                new AnswerSaid.TrueSpeed(
                        given.told(result.indicatedKmh(), "km/h"), given.told(result.trueKmh(), "km/h")),
                new AnswerSaid.TreadMoves(
                        size(given, result.radiusMm()),
                        result.radiusMm() < 0,
                        new Amount(result.turnsPerKm(), "", 0))));
    }

    private static List<Part> fit(Given given) {
        if (!given.any("hub", "wheel", "caliper-gap")) {
            return List.of();
        }
        var result = SetFit.of(mounting(given, "hub"), mounting(given, "wheel"), given.find("caliper-gap"));
        return List.of(Part.of(
                "fit",
                result,
                new AnswerSaid.WheelMounts(result.mounts()),
                new AnswerSaid.WheelEdges(
                        size(given, result.inwardMm()),
                        result.inwardMm() < 0,
                        size(given, result.outwardMm()),
                        result.outwardMm() < 0)));
    }

    private static Said size(Given given, double millimetres) {
        return given.told(Math.abs(millimetres), "mm");
    }

    private static TyreSize size(Given given, String name) {
        return given.reading(name, TyreSize::parse);
    }

    private static Mounting mounting(Given given, String name) {
        return given.reading(name, Mounting::parse);
    }
}
