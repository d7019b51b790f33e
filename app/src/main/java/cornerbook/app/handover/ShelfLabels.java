package cornerbook.app.handover;

import cornerbook.app.picture.Palette;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Wheel;
import cornerbook.core.visit.WheelSet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A label for each place in the store that a set lies at: the place, whose set it is, its wheels, and a QR code. */
public final class ShelfLabels {
    /** What the labels are printed on; both sizes are common practice, no source. */
    public enum Paper {
        /** A roll of 62 mm: a page for each label. */
        ROLL("@page { size: 62mm 37mm; margin: 0; } .label { width: 62mm; height: 37mm; page-break-inside: avoid; }"),
        /** A sheet of 24 labels of 70 mm by 37 mm. */
        A4_3_BY_8(
                "@page { size: A4; margin: 0.5mm 0 0 0; } .label { float: left; width: 70mm; height: 37mm; page-break-inside: avoid; }");

        private final String css;

        Paper(String css) {
            this.css = css;
        }
    }

    private static final String CSS = """
            body { font: 8pt/1.2 B612, 'DejaVu Sans'; color: INK; margin: 0; }
            .wide { font-family: 'DejaVu Sans', B612; }
            .label { box-sizing: border-box; padding: 4mm 5mm 2mm 5mm; overflow: hidden; }
            h1 { font-size: 14pt; line-height: 1.1; margin: 0 0 1mm 0; word-wrap: break-word; }
            p { margin: 0 0 0.5mm 0; }
            .code { float: right; width: 18mm; margin: -2mm -2mm 0 1mm; }
            .code svg { width: 18mm; height: 18mm; }
            .plate { font-weight: 700; }
            """.replace("INK", Palette.INK);

    private ShelfLabels() {}

    private record Stored(String place, CarHistory history, WheelSet set) {}

    /** Labels of every set that lies at a place, by place. */
    public static byte[] render(List<CarHistory> histories, Paper paper) {
        var stored = histories.stream()
                .flatMap(history -> history.sets().stream()
                        .filter(set -> set.storePlace() != null)
                        .map(set -> new Stored(String.valueOf(set.storePlace()), history, set)))
                .sorted(Comparator.comparing(Stored::place))
                .toList();
        var page = new Xhtml();
        page.raw(
                "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>Shelf labels</title>");
        page.raw("<meta name=\"description\" content=\"A label for each place in the store\"/><style>");
        page.raw(paper.css + CSS).raw("</style></head><body>\n");
        stored.forEach(each -> write(page, each));
        if (stored.isEmpty()) {
            page.element("p", "No set lies at a place.");
        }
        try {
            return SheetPdf.of(page.raw("</body></html>").toString());
        } catch (IOException e) {
            throw new UncheckedIOException("the shelf labels could not be made", e);
        }
    }

    private static void write(Xhtml page, Stored stored) {
        var vehicle = stored.history().vehicle();
        page.raw("<div class=\"label\"><div class=\"code\">")
                .raw(Xhtml.described(QrCode.svg(stored.place(), "QR code of the store place " + stored.place())))
                .raw("</div>\n");
        page.element("h1", Xhtml.shorten(stored.place(), 30));
        page.element("p class=\"plate\"", vehicle.plate());
        page.element("p", Xhtml.shorten(vehicle.name(), 40));
        page.element("p", SheetWords.season(stored.set().season()) + " set");
        page.element(
                "p",
                Xhtml.shorten(stored.set().wheels().stream().map(Wheel::tag).collect(Collectors.joining(" ")), 60));
        page.raw("</div>\n");
    }
}
