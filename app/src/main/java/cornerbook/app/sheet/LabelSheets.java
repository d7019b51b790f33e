package cornerbook.app.sheet;

import cornerbook.app.picture.Palette;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;

/** Labels of any kind on their paper, each with a QR code in its upper right corner. */
final class LabelSheets {
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

    private LabelSheets() {}

    /**
     * One label.
     *
     * @param code what its QR code says
     * @param codeName for those who do not see the code
     * @param words writes what stands beside the code
     */
    record Label(String code, String codeName, Consumer<Xhtml> words) {}

    /**
     * All of them, in their order.
     *
     * @param css of the words
     * @param none what the page says when there is none
     */
    static byte[] render(String title, String css, List<Label> labels, LabelPlace from, String none) {
        var page = new Xhtml();
        page.raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>")
                .raw(Xhtml.escape(title));
        page.raw("</title><meta name=\"description\" content=\"" + Xhtml.escape(title) + "\"/><style>");
        page.raw(from.paper().css() + CSS + css).raw("</style></head><body>\n");
        int before = from.first() - 1;
        int count = from.paper().count();
        for (int at = before; at < before + labels.size(); at++) {
            if (at == before || at % count == 0) {
                boolean last = at / count == (before + labels.size() - 1) / count;
                page.raw(last ? "<div class=\"sheet last\">" : "<div class=\"sheet\">");
            }
            write(page, labels.get(at - before), at % count, from);
            if (at % count == count - 1 || at == before + labels.size() - 1) {
                page.raw("</div>\n");
            }
        }
        if (labels.isEmpty()) {
            page.element("p", none);
        }
        try {
            return SheetPdf.of(page.raw("</body></html>").toString());
        } catch (IOException e) {
            throw new UncheckedIOException("the labels could not be made", e);
        }
    }

    private static void write(Xhtml page, Label label, int at, LabelPlace from) {
        page.raw("<div class=\"label\" style=\"left: %smm; top: %smm\"><div class=\"code\">"
                        .formatted(
                                from.paper().leftOfMm(at) + from.rightMm(),
                                from.paper().topOfMm(at) + from.downMm()))
                .raw(Xhtml.described(QrCode.svg(label.code(), label.codeName())))
                .raw("</div>\n");
        label.words().accept(page);
        page.raw("</div>\n");
    }
}
