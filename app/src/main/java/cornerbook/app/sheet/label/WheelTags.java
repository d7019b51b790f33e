package cornerbook.app.sheet.label;

import cornerbook.app.picture.Palette;
import cornerbook.app.picture.QrCode;
import cornerbook.app.sheet.SheetPage;
import cornerbook.app.sheet.SheetPdf;
import cornerbook.app.sheet.SheetTemplates;
import cornerbook.app.sheet.SheetText;
import cornerbook.app.sheet.TreadAcross;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.corner.Spot;
import cornerbook.core.wheelplan.WheelState;
import cornerbook.core.wheelplan.judge.SetPlan;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A tag for each wheel, 62 mm wide: which it is, where it came off, where the wheel plan puts it, its depths, and a QR
 * code of its tag.
 */
public final class WheelTags {
    /** What the tags are printed on. */
    public enum Paper {
        /** A roll of 62 mm: a page for each tag. */
        ROLL(
                "@page { size: 62mm 90mm; margin: 0; } .tag { page-break-after: always; } .tag.last { page-break-after: auto; }"),
        /** A4, to be cut along the dashes. */
        A4("@page { size: A4; margin: 12mm 11mm; } .tag { float: left; border: 0.15mm dashed SLATE; }");

        private final String css;

        Paper(String css) {
            this.css = css;
        }
    }

    private static final String CSS = """
            body { font: 8.5pt/1.25 B612, 'DejaVu Sans'; color: INK; margin: 0; }
            .wide { font-family: 'DejaVu Sans', B612; }
            .tag { width: 62mm; height: 90mm; box-sizing: border-box; padding: 3mm 4mm; overflow: hidden; page-break-inside: avoid; }
            h1 { font-size: 19pt; line-height: 1.05; margin: 1mm 0 1mm 0; word-wrap: break-word; }
            p { margin: 0 0 0.6mm 0; }
            .code { float: right; width: 24mm; margin: -1mm -2mm 0 1mm; }
            .code svg { width: 24mm; height: 24mm; }
            .plate { font-weight: 700; }
            table { clear: both; border-collapse: collapse; width: 100%; margin-top: 1mm; border-top: 0.5mm solid SLATE; }
            th, td { text-align: left; vertical-align: baseline; padding: 0.9mm 0 0.6mm 0; border-bottom: 0.15mm solid HAIRLINE; }
            th { font-weight: 400; font-size: 8pt; width: 25mm; }
            .corner td { font-size: 13pt; font-weight: 700; }
            .small { font-size: 7pt; margin-top: 1.2mm; }
            """;

    private static final List<Spot> ACROSS = List.of(Spot.OUTER, Spot.CENTRE, Spot.INNER);
    private static final int LONGEST_TAG = 24;
    private static final int LONGEST_CAR = 40;
    private static final int LONGEST_PLACE = 30;

    private final CarHistory history;
    private final Visit visit;
    private final Map<String, StorePlace> places;
    private final Paper paper;
    private final List<Tag> tags;
    private final Reader reader;
    private final Labels labels;

    private WheelTags(
            CarHistory history,
            Visit visit,
            Optional<SetPlan> goingOn,
            Optional<SetPlan> stored,
            Map<String, StorePlace> places,
            Paper paper,
            Reader reader) {
        this.history = history;
        this.visit = visit;
        this.places = Map.copyOf(places);
        this.paper = paper;
        this.reader = reader;
        this.labels = reader.labels(SheetPage.ROOM);
        this.tags = new ArrayList<>();
        stored.ifPresent(set -> addTags(set, true));
        goingOn.ifPresent(set -> addTags(set, false));
    }

    /**
     * What stands on one of them.
     *
     * @param code the picture of its QR code
     * @param corners where it came from and where it goes, in large letters
     */
    public record Tag(String code, String tag, String set, List<Row> corners, List<Row> rows) {
        public Tag {
            corners = List.copyOf(corners);
            rows = List.copyOf(rows);
        }
    }

    /** One line of its table. */
    public record Row(String what, String value) {}

    /**
     * The tags of the sets that were planned at a visit.
     *
     * @param goingOn the wheels that the car leaves on, if they are planned
     * @param stored the wheels that come off and wait for their season, if they are planned
     * @param places where the sets of the car lie or are to be laid, by the id of the set; a set that is not there is nowhere
     */
    public static byte[] render(
            CarHistory history,
            Visit visit,
            Optional<SetPlan> goingOn,
            Optional<SetPlan> stored,
            Map<String, StorePlace> places,
            Paper paper,
            Reader reader) {
        try {
            return SheetPdf.of(
                    SheetTemplates.fill("tags", new WheelTags(history, visit, goingOn, stored, places, paper, reader)));
        } catch (IOException e) {
            throw new UncheckedIOException("the wheel tags could not be made", e);
        }
    }

    public Labels labels() {
        return labels;
    }

    public String language() {
        return reader.language().tag();
    }

    public String title() {
        return "%s, %s, %s"
                .formatted(
                        labels.of("wheel-tags"),
                        SheetText.name(history.vehicle().name()),
                        day());
    }

    public String css() {
        return (CSS + paper.css)
                .replace("SLATE", Palette.SLATE)
                .replace("INK", Palette.INK)
                .replace("HAIRLINE", Palette.HAIRLINE);
    }

    public String car() {
        return SheetText.shorten(history.vehicle().name(), LONGEST_CAR);
    }

    public String plate() {
        return history.vehicle().plate();
    }

    public List<Tag> tags() {
        return List.copyOf(tags);
    }

    private String day() {
        return reader.day(visit.date());
    }

    private void addTags(SetPlan set, boolean stored) {
        set.request().wheels().forEach(wheel -> tags.add(tag(set, wheel, stored)));
    }

    private Tag tag(SetPlan set, WheelState state, boolean stored) {
        var wheel = history.findWheel(state.tag()).orElseThrow();
        boolean lay = isSpare(set, state);
        var last = lay ? null : state.lastCorner();
        var place = stored ? places.get(set.set().id()) : place(set.set().storePlace());
        var planned = corners(set, state.tag());
        var corners = new ArrayList<Row>();
        corners.add(new Row(
                labels.of("came-off"), last == null ? labels.of(lay ? "as-spare" : "never-ran") : reader.say(last)));
        var left = cornerOf(visit.leftOn(), state.tag());
        var on = visit.leftOn().size() == Corner.values().length && !stored ? left : left.or(planned::getFirst);
        if (!stored) {
            corners.add(new Row(labels.of("goes-to-now"), corner(on)));
        }
        // Of a wheel that went on elsewhere the plan says nothing more.
        if (stored || on.equals(planned.getFirst())) {
            var next = planned.stream().skip(stored ? 0 : 1).findFirst();
            corners.add(new Row(
                    labels.of("next-season"), next.map(this::corner).orElseGet(() -> labels.of("set-is-spent"))));
        }
        return new Tag(
                SheetTemplates.described(QrCode.svg(state.tag(), labels.of("code-of-tag", "tag", state.tag()))),
                SheetText.shorten(state.tag(), LONGEST_TAG),
                reader.begin(new SetOf(set.set().season())),
                corners,
                List.of(
                        new Row(labels.of("tread-outer-first"), depths(state)),
                        new Row(
                                labels.of(place != null && place.isProposed() ? "store-at" : "store-place"),
                                place == null ? "–" : SheetText.shorten(place.name(), LONGEST_PLACE)),
                        new Row(labels.of("tyre"), wheel.tyre().size()),
                        new Row(labels.of("date"), day())));
    }

    private static @Nullable StorePlace place(@Nullable String written) {
        return written == null ? null : new StorePlace(written, false);
    }

    /** Whether it lay as the spare before the seasons planned: the fifth wheel. */
    private static boolean isSpare(SetPlan set, WheelState state) {
        return set.request().wheels().indexOf(state) == Corner.values().length;
    }

    private String corner(Optional<Corner> corner) {
        return corner.map(reader::say).orElseGet(() -> labels.of("as-spare"));
    }

    /** The wheel's corner in each season that begins; empty where it is the spare. */
    private static List<Optional<Corner>> corners(SetPlan set, String tag) {
        return set.plan().seasons().stream()
                .map(season -> cornerOf(season.wheelAt(), tag))
                .toList();
    }

    private static Optional<Corner> cornerOf(Map<Corner, String> wheelAt, String tag) {
        return wheelAt.entrySet().stream()
                .filter(entry -> entry.getValue().equals(tag))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** From the outside to the inside as read at this visit; as the wear model has them where nothing was read. */
    private String depths(WheelState state) {
        var readings = new StandingReadings(visit);
        var read = ACROSS.stream()
                .map(spot -> readings.ofWheel(Measure.TREAD_DEPTH, state.tag(), spot)
                        .map(reading -> OptionalDouble.of(reading.value()))
                        .orElseGet(OptionalDouble::empty))
                .toList();
        return read.stream().anyMatch(OptionalDouble::isPresent)
                ? TreadAcross.words(read, reader)
                : labels.of(
                        "depths-expected",
                        "depths",
                        TreadAcross.words(
                                ACROSS.stream()
                                        .map(spot -> OptionalDouble.of(
                                                tenths(state.depthsMm().get(spot.ordinal()))))
                                        .toList(),
                                reader));
    }

    private static double tenths(double depthMm) {
        return new BigDecimal(depthMm).setScale(1, RoundingMode.HALF_UP).doubleValue();
    }
}
