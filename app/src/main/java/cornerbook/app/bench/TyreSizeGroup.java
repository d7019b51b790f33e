package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.RimFit;
import cornerbook.core.tyre.SizeMeaning;
import cornerbook.core.tyre.TyreSaid;
import cornerbook.core.tyre.TyreSize;
import java.util.ArrayList;
import java.util.List;

/** What one size says by itself, and on a rim of another width. */
final class TyreSizeGroup {
    private static final double KM_PER_MILE = 1.609344;

    static final Group GROUP = new Group(
            "one-size",
            Title.TYRE_ONE_SIZE,
            Note.TYRE_ONE_SIZE,
            List.of(
                    Ask.words(
                            "size", Label.TYRE_SIZE,
                            "225/55R18 98V", Help.TYRE_SIZE),
                    Ask.number("rim", Label.TYRE_RIM, "in", TyreSaid.Input.RIM_WIDTH, Help.TYRE_RIM)),
            List.of("size"),
            TyreSizeGroup::answer);

    private TyreSizeGroup() {}

    private static List<Part> answer(Given given) {
        if (!given.any("size", "rim")) {
            return List.of();
        }
        var size = given.reading("size", TyreSize::parse);
        var parts = new ArrayList<Part>();
        parts.add(size(given, given.at("size", () -> SizeMeaning.of(size))));
        if (given.any("rim")) {
            parts.add(rim(given, RimFit.of(size, given.number("rim"))));
        }
        return parts;
    }

    private static Part size(Given given, SizeMeaning meaning) {
        var lines = new ArrayList<Said>(List.of(
                new AnswerSaid.SizeIs(
                        meaning.size().toString(),
                        given.told(meaning.overallDiameterMm(), "mm"),
                        given.told(meaning.sectionHeightMm(), "mm")),
                new AnswerSaid.Rolls(
                        given.told(meaning.rollingCircumferenceMm(), "mm"),
                        new Amount(meaning.turnsPerKm(), "", 0),
                        new Amount(meaning.turnsPerKm() * KM_PER_MILE, "", 0))));
        var lowest = meaning.lowestRimCode();
        var highest = meaning.highestRimCode();
        var measuring = meaning.measuringRimCode();
        if (lowest != null && highest != null && measuring != null) {
            lines.add(new AnswerSaid.Rims(inches(lowest), inches(highest), inches(measuring)));
        }
        var service = meaning.size().service();
        var capacityKg = meaning.capacityKg();
        var highestKmh = meaning.highestKmh();
        var atHighestKg = meaning.capacityAtHighestKg();
        if (service != null && capacityKg != null && highestKmh != null && atHighestKg != null) {
            var twinKg = meaning.twinCapacityKg();
            lines.add(new AnswerSaid.LoadIndexCarries(
                    service.loadIndex().number(),
                    given.told(capacityKg, "kg"),
                    twinKg == null ? null : given.told(twinKg, "kg")));
            lines.add(new AnswerSaid.SpeedSymbolAllows(
                    service.speedSymbol().toString(), given.told(highestKmh, "km/h"), given.told(atHighestKg, "kg")));
        }
        var referenceKpa = meaning.referenceKpa();
        if (referenceKpa != null) {
            lines.add(new AnswerSaid.LoadIndexHoldsAt(given.told(referenceKpa, "kPa")));
        }
        return new Part("size", lines, meaning);
    }

    private static Part rim(Given given, RimFit fit) {
        var widthMm = fit.sectionWidthMm();
        var permitted = fit.permitted();
        var rim = inches(fit.rimCode());
        return Part.of(
                "rim",
                fit,
                widthMm == null || permitted == null
                        ? new AnswerSaid.RimNotJudged(rim)
                        : new AnswerSaid.OnRim(rim, given.told(widthMm, "mm"), permitted));
    }

    /** Rims are measured in inches everywhere. */
    private static Amount inches(double rimCode) {
        return Amount.significant(rimCode, "in", 4);
    }
}
