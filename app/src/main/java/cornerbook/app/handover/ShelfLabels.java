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
    private static final String CSS = """
            body { font: 8pt/1.2 B612, 'DejaVu Sans'; color: INK; margin: 0; }
            .wide { font-family: 'DejaVu Sans', B612; }
            .sheet { position: relative; page-break-after: always; overflow: hidden; }
            .sheet.last { page-break-after: auto; }
            .label { position: absolute; box-sizing: border-box; padding: 3.5mm 5mm 1mm 5mm; overflow: hidden; }
            h1 { font-size: 13pt; line-height: 1.1; margin: 0 0 1mm 0; word-wrap: break-word; }
            p { margin: 0 0 0.5mm 0; }
            .code { float: right; width: 18mm; margin: -1.5mm -2mm 0 1mm; }
            .code svg { width: 18mm; height: 18mm; }
            .plate { font-weight: 700; }
            """.replace("INK", Palette.INK);

    private ShelfLabels() {}

    private record Stored(String place, CarHistory history, WheelSet set) {}

    /** Labels of every set that lies at a place, by place. */
    public static byte[] render(List<CarHistory> histories, LabelPlace from) {
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
        page.raw(from.paper().css() + CSS).raw("</style></head><body>\n");
        int before = from.first() - 1;
        int count = from.paper().count();
        for (int at = before; at < before + stored.size(); at++) {
            if (at == before || at % count == 0) {
                boolean last = at / count == (before + stored.size() - 1) / count;
                page.raw(last ? "<div class=\"sheet last\">" : "<div class=\"sheet\">");
            }
            write(page, stored.get(at - before), at % count, from);
            if (at % count == count - 1 || at == before + stored.size() - 1) {
                page.raw("</div>\n");
            }
        }
        if (stored.isEmpty()) {
            page.element("p", "No set lies at a place.");
        }
        try {
            return SheetPdf.of(page.raw("</body></html>").toString());
        } catch (IOException e) {
            throw new UncheckedIOException("the shelf labels could not be made", e);
        }
    }

    private static void write(Xhtml page, Stored stored, int at, LabelPlace from) {
        var vehicle = stored.history().vehicle();
        page.raw("<div class=\"label\" style=\"left: %smm; top: %smm\"><div class=\"code\">"
                        .formatted(
                                from.paper().leftOfMm(at) + from.rightMm(),
                                from.paper().topOfMm(at) + from.downMm()))
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
