package cornerbook.app.sheet;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A small tag for each wheel, on the same papers as the labels of the shelves. */
public final class WheelLabels {
    private static final String CSS = """
            .label { font-size: 7.5pt; line-height: 1.15; }
            h1 { font-size: 12pt; margin: 0 0 0.5mm 0; }
            h1.long { font-size: 7pt; }
            .corner { font-size: 11pt; font-weight: 700; }
            """;

    /** On labels of an inch. */
    private static final String LOW_CSS = """
            .label { font-size: 6.5pt; padding-top: 2.5mm; }
            .code { margin-top: -0.5mm; }
            p { margin: 0 0 0.25mm 0; }
            """;

    private static final double LOW_MM = 30;

    /** Characters that stand on one line of the narrowest label. */
    private static final int LONGEST_LARGE = 10;

    private WheelLabels() {}

    /**
     * What a tag says of its wheel.
     *
     * @param last null when it never ran
     * @param next where the wheel plan puts it when its set goes on; null without a plan
     * @param depths outer first, as "5.2 mm"
     */
    public record Tag(
            String tag,
            String plate,
            SeasonKind season,
            @Nullable Corner last,
            @Nullable Corner next,
            List<String> depths,
            @Nullable String storePlace,
            String tyreSize) {
        public Tag {
            depths = List.copyOf(depths);
        }
    }

    public static byte[] render(List<Tag> tags, LabelPlace from) {
        var labels = tags.stream()
                .map(tag -> new LabelSheets.Label(
                        tag.tag(), "QR code of the wheel tag " + tag.tag(), page -> write(page, tag)))
                .toList();
        var css = from.paper().heightMm() < LOW_MM ? CSS + LOW_CSS : CSS;
        return LabelSheets.render("Wheel tags", css, labels, from, "There is no wheel to be tagged.");
    }

    private static void write(Xhtml page, Tag tag) {
        page.element(tag.tag().length() > LONGEST_LARGE ? "h1 class=\"long\"" : "h1", Xhtml.shorten(tag.tag(), 24));
        page.raw("<p><span class=\"corner\">")
                .text(tag.next() == null ? "no plan" : "to " + tag.next())
                .raw("</span> ")
                .text("came off " + (tag.last() == null ? "no car yet" : tag.last()))
                .raw("</p>\n");
        page.element("p class=\"plate\"", tag.plate());
        page.element(
                "p",
                SheetWords.season(tag.season()) + " set"
                        + (tag.storePlace() == null ? "" : ", " + Xhtml.shorten(tag.storePlace(), 16)));
        page.element("p", depths(tag.depths()) + ", " + tag.tyreSize());
    }

    /** The unit is said once. */
    private static String depths(List<String> depths) {
        var last = depths.getLast();
        int unit = last.indexOf(' ');
        boolean same = unit > 0 && depths.stream().allMatch(depth -> depth.endsWith(last.substring(unit)));
        return same
                ? String.join(
                                " / ",
                                depths.stream()
                                        .map(depth -> depth.substring(0, depth.indexOf(' ')))
                                        .toList())
                        + last.substring(unit)
                : String.join(" / ", depths);
    }
}
