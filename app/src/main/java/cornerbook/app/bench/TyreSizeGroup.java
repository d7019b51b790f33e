package cornerbook.app.bench;

import cornerbook.core.tyre.RimFit;
import cornerbook.core.tyre.SizeMeaning;
import cornerbook.core.tyre.TyreSize;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/** What one size says by itself, and on a rim of another width. */
final class TyreSizeGroup {
    static final Group GROUP = new Group(
            "one-size",
            "One size",
            "Makers' tyres differ from the size's geometry by up to about 1.5 %; the tyre maker's table of rims outranks the range.",
            List.of(
                    Ask.words(
                            "size",
                            "Size",
                            "225/55R18 98V",
                            "tyre size",
                            "As on the sidewall, with P, LT, HL, C or XL where it stands there, and load index and speed symbol."),
                    Ask.number(
                            "rim",
                            "Rim width",
                            "in",
                            "rim width",
                            "Width of the rim, as 7.5; not judged if not given.")),
            List.of("size"),
            TyreSizeGroup::answer);

    private TyreSizeGroup() {}

    private static List<Part> answer(Given given) {
        if (!given.any("size", "rim")) {
            return List.of();
        }
        var size = given.reading("size", TyreSize::parse);
        var parts = new ArrayList<Part>();
        parts.add(size(given, SizeMeaning.of(size)));
        if (given.any("rim")) {
            parts.add(rim(given, RimFit.of(size, given.number("rim"))));
        }
        return parts;
    }

    private static Part size(Given given, SizeMeaning meaning) {
        var shown = given.shown();
        var lines = new ArrayList<>(List.of(
                "%s: %s high, sidewall %s"
                        .formatted(
                                meaning.size(),
                                shown.show(meaning.overallDiameterMm(), "mm"),
                                shown.show(meaning.sectionHeightMm(), "mm")),
                "Rolls %s in a turn, %.0f turns per km, %.0f per mile"
                        .formatted(
                                shown.show(meaning.rollingCircumferenceMm(), "mm"),
                                meaning.turnsPerKm(),
                                meaning.turnsPerKm() * 1.609344),
                "Rims of %s to %s in, measured on %s in"
                        .formatted(
                                Step.digits(meaning.lowestRimCode()),
                                Step.digits(meaning.highestRimCode()),
                                Step.digits(meaning.measuringRimCode()))));
        var service = meaning.size().service();
        if (service != null) {
            lines.add("Load index %d: %s on one tyre%s"
                    .formatted(
                            service.loadIndex().number(),
                            shown.show(service.loadIndex().capacityKg(), "kg"),
                            service.twinLoadIndex() == null
                                    ? ""
                                    : ", %s on each of two side by side"
                                            .formatted(shown.show(
                                                    service.twinLoadIndex().capacityKg(), "kg"))));
            double highestKmh = service.speedSymbol().highestKmh();
            lines.add("Speed symbol %s: to %s, with %s at that speed"
                    .formatted(
                            service.speedSymbol(),
                            shown.show(highestKmh, "km/h"),
                            shown.show(service.capacityKg(highestKmh), "kg")));
        }
        var referenceKpa = meaning.referenceKpa();
        if (referenceKpa != null) {
            lines.add("The load index holds at %s".formatted(shown.show(referenceKpa, "kPa")));
        }
        return new Part("size", lines, meaning);
    }

    private static Part rim(Given given, RimFit fit) {
        return new Part(
                "rim",
                List.of("Section width on a rim of %s in: %s, %s"
                        .formatted(
                                Step.digits(fit.rimCode()),
                                given.shown().show(fit.sectionWidthMm(), "mm"),
                                fit.permitted() ? "a rim for this size" : "not a rim for this size")),
                fit);
    }
}
