package cornerbook.app.sheet;

import static cornerbook.app.sheet.SheetWords.name;

import cornerbook.app.picture.Palette;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.wheelplan.WheelState;
import cornerbook.core.wheelplan.judge.SetPlan;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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
            th { font-weight: 400; width: 23mm; }
            .corner td { font-size: 13pt; font-weight: 700; }
            .small { font-size: 7pt; margin-top: 1.2mm; }
            """;

    private static final List<Spot> ACROSS = List.of(Spot.OUTER, Spot.CENTRE, Spot.INNER);

    private final CarHistory history;
    private final Visit visit;
    private final Xhtml page = new Xhtml();

    private WheelTags(CarHistory history, Visit visit) {
        this.history = history;
        this.visit = visit;
    }

    /**
     * The tags of the sets that were planned at a visit.
     *
     * @param goingOn the wheels that the car leaves on, if they are planned
     * @param stored the wheels that come off and wait for their season, if they are planned
     */
    public static byte[] render(
            CarHistory history, Visit visit, Optional<SetPlan> goingOn, Optional<SetPlan> stored, Paper paper) {
        try {
            return SheetPdf.of(new WheelTags(history, visit).write(goingOn, stored, paper));
        } catch (IOException e) {
            throw new UncheckedIOException("the wheel tags could not be made", e);
        }
    }

    private String write(Optional<SetPlan> goingOn, Optional<SetPlan> stored, Paper paper) {
        var vehicle = history.vehicle();
        page.raw("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>");
        page.raw(Xhtml.escape("Wheel tags, %s, %s".formatted(name(vehicle.name()), SheetWords.day(visit.date()))));
        page.raw("</title><meta name=\"description\" content=\"A tag for each wheel\"/><style>");
        page.raw((CSS + paper.css)
                .replace("SLATE", Palette.SLATE)
                .replace("INK", Palette.INK)
                .replace("HAIRLINE", Palette.HAIRLINE));
        page.raw("</style></head><body>\n");
        int tags = count(goingOn) + count(stored);
        int written = 0;
        for (var set : List.of(stored, goingOn)) {
            if (set.isPresent()) {
                for (var wheel : set.get().request().wheels()) {
                    written++;
                    writeTag(set.get(), wheel, set.equals(stored), written == tags);
                }
            }
        }
        return page.raw("</body></html>").toString();
    }

    private static int count(Optional<SetPlan> set) {
        return set.map(planned -> planned.request().wheels().size()).orElse(0);
    }

    private void writeTag(SetPlan set, WheelState state, boolean stored, boolean last) {
        var wheel = history.findWheel(state.tag()).orElseThrow();
        var vehicle = history.vehicle();
        page.raw(last ? "<div class=\"tag last\">" : "<div class=\"tag\">");
        page.raw("<div class=\"code\">")
                .raw(Xhtml.described(QrCode.svg(state.tag(), "QR code of the wheel tag " + state.tag())))
                .raw("</div>\n");
        page.element("h1", Xhtml.shorten(state.tag(), 24));
        page.element("p", Xhtml.shorten(vehicle.name(), 40));
        page.element("p class=\"plate\"", vehicle.plate());
        page.element("p", SheetWords.season(set.set().season()) + " set");
        page.raw("<table>\n");
        corner(
                "Came off",
                state.lastCorner() == null ? "never ran" : state.lastCorner().name());
        var next = corners(set, state.tag());
        if (stored) {
            corner("Next season", next.getFirst());
        } else {
            corner("Goes to now", next.getFirst());
            corner("Next season", next.size() > 1 ? next.get(1) : "set is spent");
        }
        page.row("Tread, outer first", List.of(depths(state)));
        var place = set.set().storePlace();
        page.row("Store place", List.of(place == null ? "–" : Xhtml.shorten(place, 30)));
        page.row("Tyre", List.of(wheel.tyre().size()));
        page.row("Date", List.of(SheetWords.day(visit.date())));
        page.raw("</table>\n");
        page.element(
                "p class=\"small\"", "Corners by the wheel plan of this day. Hub faces bare, torque on the ground.");
        page.raw("</div>\n");
    }

    private void corner(String what, String corner) {
        page.raw("<tr class=\"corner\"><th scope=\"row\">").text(what).raw("</th>");
        page.element("td", corner).raw("</tr>\n");
    }

    /** The wheel's corner in each season that begins. */
    private static List<String> corners(SetPlan set, String tag) {
        return set.plan().seasons().stream()
                .map(season -> season.wheelAt().entrySet().stream()
                        .filter(entry -> entry.getValue().equals(tag))
                        .map(Map.Entry::getKey)
                        .map(Corner::name)
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    /** From the outside to the inside as read at this visit; as the wear model has them where nothing was read. */
    private String depths(WheelState state) {
        var readings = new StandingReadings(visit);
        var read = ACROSS.stream()
                .map(spot -> readings.ofWheel(Measure.TREAD_DEPTH, state.tag(), spot))
                .toList();
        boolean none = read.stream().allMatch(Optional::isEmpty);
        return IntStream.range(0, ACROSS.size())
                        .mapToObj(i -> none
                                ? millimetres(state.depthsMm().get(ACROSS.get(i).ordinal()))
                                : read.get(i)
                                        .map(reading -> millimetres(reading.value()))
                                        .orElse("–"))
                        .collect(Collectors.joining(" / "))
                + (none ? " mm expected" : " mm");
    }

    private static String millimetres(double depthMm) {
        return String.format(Locale.ROOT, "%.1f", depthMm);
    }
}
