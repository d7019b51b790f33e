package cornerbook.app.sheet.label;

import cornerbook.app.picture.QrCode;
import cornerbook.app.sheet.SheetPage;
import cornerbook.app.sheet.SheetText;
import cornerbook.app.sheet.TreadAcross;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.words.Reader;
import java.util.List;
import java.util.OptionalDouble;
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

    private static final int LONGEST_TAG = 24;
    private static final int LONGEST_PLACE = 16;

    private WheelLabels() {}

    /**
     * What a tag says of its wheel.
     *
     * @param last null when it never ran
     * @param next where the wheel plan puts it when its set goes on; null without a plan
     * @param depthsMm outer first, empty where none was read
     * @param place null where nobody knows one
     */
    public record Tag(
            String tag,
            String plate,
            SeasonKind season,
            @Nullable Corner last,
            @Nullable Corner next,
            List<OptionalDouble> depthsMm,
            @Nullable StorePlace place,
            String tyreSize) {
        public Tag {
            depthsMm = List.copyOf(depthsMm);
        }
    }

    public static byte[] render(List<Tag> tags, LabelPlace from, Reader reader) {
        var labels = reader.labels(SheetPage.ROOM);
        return LabelSheets.of(
                        labels.of("wheel-tags"),
                        from.paper().heightMm() < LOW_MM ? CSS + LOW_CSS : CSS,
                        tags.stream().map(tag -> label(tag, reader)).toList(),
                        from,
                        labels.of("no-wheel"),
                        reader)
                .render();
    }

    private static LabelSheets.Label label(Tag tag, Reader reader) {
        var labels = reader.labels(SheetPage.ROOM);
        var place = tag.place();
        var set = reader.begin(new SetOf(tag.season()));
        return new LabelSheets.Label(
                QrCode.svg(tag.tag(), labels.of("code-of-tag", "tag", tag.tag())),
                SheetText.shorten(tag.tag(), LONGEST_TAG),
                tag.tag().length() > LONGEST_LARGE,
                List.of(
                        new LabelSheets.Line(
                                "",
                                tag.next() == null ? labels.of("no-plan") : labels.of("goes-to", "corner", tag.next()),
                                tag.last() == null
                                        ? labels.of("came-off-no-car")
                                        : labels.of("came-off-corner", "corner", tag.last())),
                        LabelSheets.Line.plate(tag.plate()),
                        LabelSheets.Line.of(
                                place == null
                                        ? set
                                        : labels.of(
                                                "set-at-place",
                                                "set",
                                                set,
                                                "place",
                                                SheetText.shorten(place.name(), LONGEST_PLACE),
                                                "proposed",
                                                place.isProposed())),
                        LabelSheets.Line.of(TreadAcross.words(tag.depthsMm(), reader) + ", " + tag.tyreSize())));
    }
}
