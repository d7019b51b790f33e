package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count_distinct;
import static org.apache.spark.sql.functions.date_trunc;
import static org.apache.spark.sql.functions.sum;

import cornerbook.app.calibration.KeptPromises;
import cornerbook.app.knowledge.Extent;
import cornerbook.app.knowledge.PublicKeyText;
import cornerbook.app.picture.Palette;
import cornerbook.app.picture.Svg;
import cornerbook.app.picture.year.Lengths;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.order.Article;
import cornerbook.core.order.OrderPart;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearParameter;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.jspecify.annotations.Nullable;

/** What came of a night on one page that needs no other file: read on a screen, and printed. It computes nothing but sums of rows. */
final class ReportPage {
    static final String FILE = "report.html";

    static final String CALIBRATION = "calibration";

    /** What is shown as 0.1. */
    private static final double LEAST_RISK = 0.05;

    private static final int MOST_WEEKS = 16;
    private static final int MOST_ARTICLES = 14;
    private static final int MOST_SITES = 40;
    private static final int MOST_MODELS = 24;
    private static final int MOST_REASONS = 12;

    private final SparkSession spark;
    private final Path folder;
    private final Reader reader;
    private final Labels words;
    private final StringBuilder page = new StringBuilder(32_768);

    /**
     * Of the tables in a folder.
     *
     * @param reader who reads it
     */
    ReportPage(SparkSession spark, Path folder, Reader reader) {
        this.spark = spark;
        this.folder = folder;
        this.reader = reader;
        words = reader.labels("fleet");
    }

    /**
     * The signed file of what was learned, which lies beside the page.
     *
     * @param extent how much stands behind it
     * @param key by which it was signed
     */
    record ForShops(Extent extent, PublicKeyText key) {}

    /**
     * The page.
     *
     * @param knowledge by which was judged
     * @param last the night before; null when nothing was taken over
     * @param forShops what was signed for the shops' books; null when nothing was
     * @param calibrated whether there is a table of calibration
     * @param seconds since the night began
     */
    String html(
            LocalDate day,
            Knowledge knowledge,
            Night.Counts counts,
            @Nullable LastNight last,
            @Nullable ForShops forShops,
            boolean calibrated,
            double seconds) {
        var title = words.of("report-title", "day", new Day(day));
        page.append("<!doctype html>\n<html lang=\"")
                .append(reader.language().tag())
                .append(
                        "\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>")
                .append(Svg.escape(title))
                .append("</title><style>")
                .append(style())
                .append("</style></head><body><main>\n");
        element("h1", title);
        element(
                "p",
                words.of(
                        "report-counts",
                        "cars",
                        counts.judged(),
                        "anew",
                        counts.anew(),
                        "aside",
                        counts.setAside(),
                        "time",
                        Amount.of(seconds, "s")));
        if (last != null) {
            changed(last);
        }
        verdicts();
        sites();
        weeks(day);
        articles();
        risk();
        learned(knowledge);
        forShops(forShops);
        if (calibrated) {
            calibration();
        }
        aside(counts.setAside());
        page.append("</main></body></html>\n");
        return page.toString();
    }

    private static String style() {
        return """
                body{margin:0;background:%s;color:%s;font:1rem/1.5 B612,sans-serif}
                main{max-width:58rem;margin:0 auto;padding:1.25rem}
                h1{font-size:1.6rem;line-height:1.25;margin:0 0 .5rem;border-bottom:3px solid %s;padding-bottom:.5rem}
                h2{font-size:1.15rem;margin:2rem 0 .25rem}p{margin:.25rem 0 .75rem;max-width:44rem}
                svg{display:block;max-width:100%%;height:auto;margin-bottom:.75rem;break-inside:avoid}h2,h2+p{break-after:avoid}tr{break-inside:avoid}
                .wide{overflow-x:auto}table{border-collapse:collapse;font-variant-numeric:tabular-nums}
                th,td{text-align:right;padding:.3rem .75rem;border-bottom:1px solid %s;vertical-align:top}
                th{font-weight:700}td{white-space:nowrap}th:first-child,td:first-child{text-align:left;padding-left:0;white-space:normal;min-width:8rem}
                .words th,.words td{text-align:left;white-space:normal}
                @media print{body{background:none;font-size:10pt}main{max-width:none;padding:0}.wide{overflow:visible}}
                """.formatted(Palette.PAPER, Palette.INK, Palette.SLATE, Palette.HAIRLINE);
    }

    private void changed(LastNight last) {
        var changed = table("changed");
        var cars = changed.groupBy("why")
                .agg(count_distinct(col(Look.CAR)).as("cars"))
                .collectAsList();
        section("report-changed", words.of("report-changed-how", "day", new Day(last.day())));
        if (cars.isEmpty()) {
            element("p", words.of("report-nothing-changed"));
        } else {
            picture(
                    "report-changed",
                    cars.stream()
                            .sorted(Comparator.comparing((Row row) -> -row.<Long>getAs("cars"))
                                    .thenComparing(row -> row.<String>getAs("why")))
                            .map(row -> line(
                                    words.say(ChangedTable.Why.valueOf(row.getAs("why"))), row.<Long>getAs("cars"), 0))
                            .toList());
            var moved = changed.where(col("what").equalTo("VERDICT"))
                    .groupBy("before", "now")
                    .count()
                    .collectAsList();
            rows(
                    List.of("report-before", "report-now", "report-cars"),
                    moved.stream()
                            .sorted(Comparator.comparing((Row row) -> -row.<Long>getAs("count"))
                                    .thenComparing(Row::toString))
                            .map(row -> List.of(
                                    verdict(row.getAs("before")),
                                    verdict(row.getAs("now")),
                                    number(row.<Long>getAs("count"))))
                            .toList());
        }
        end();
    }

    private void verdicts() {
        section("report-verdicts", words.of("report-verdicts-how"));
        picture(
                "report-verdicts",
                ofAll(table("verdicts")).collectAsList().stream()
                        .collect(Collectors.groupingBy(
                                row -> Verdict.valueOf(row.getAs("verdict")),
                                TreeMap::new,
                                Collectors.summingLong(row -> row.<Long>getAs("cars"))))
                        .descendingMap()
                        .entrySet()
                        .stream()
                        .map(each -> line(reader.begin(each.getKey()), each.getValue(), 0))
                        .toList());
        end();
    }

    private void sites() {
        var cars = table("verdicts")
                .where(col(CarLines.SITE).isNotNull())
                .groupBy(CarLines.SITE)
                .pivot("verdict", List.of(Verdict.UNSAFE.name(), Verdict.SPENT.name(), Verdict.RUNS_OUT.name()))
                .agg(sum("cars"))
                .join(table("verdicts").groupBy(CarLines.SITE).agg(sum("cars").as("all")), new String[] {CarLines.SITE})
                .join(pieces(OrderPart.TYRE), new String[] {CarLines.SITE}, "left")
                .join(pieces(OrderPart.PADS), new String[] {CarLines.SITE}, "left")
                .orderBy(col("all").desc(), col(CarLines.SITE))
                .limit(MOST_SITES)
                .collectAsList();
        if (cars.isEmpty()) {
            return;
        }
        section("report-sites", words.of("report-sites-how"));
        picture(
                "report-sites",
                cars.stream()
                        .map(row -> line(row.getAs(CarLines.SITE), row.<Long>getAs("all"), 0))
                        .toList());
        page.append("<div class=\"wide\"><table><tr>");
        heads(List.of(
                words.of("report-site"),
                reader.begin(Verdict.UNSAFE),
                reader.begin(Verdict.SPENT),
                reader.begin(Verdict.RUNS_OUT),
                reader.begin(OrderPart.TYRE),
                reader.begin(OrderPart.PADS)));
        cars.forEach(row -> cells(List.of(
                row.<String>getAs(CarLines.SITE),
                count(row, Verdict.UNSAFE.name()),
                count(row, Verdict.SPENT.name()),
                count(row, Verdict.RUNS_OUT.name()),
                number(orZero(row, OrderPart.TYRE.name())),
                number(orZero(row, OrderPart.PADS.name())))));
        page.append("</table></div>\n");
        end();
    }

    private Dataset<Row> pieces(OrderPart part) {
        return table("order")
                .where(col("part").equalTo(part.name()).and(col(CarLines.SITE).isNotNull()))
                .groupBy(CarLines.SITE)
                .agg(sum("expected_pieces").as(part.name()));
    }

    private void weeks(LocalDate day) {
        var monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        var week = date_trunc("week", col("next_visit")).cast("date");
        var weeks = table("cars")
                .where(week.geq(monday))
                .groupBy(week.as("week"))
                .count()
                .orderBy("week")
                .limit(MOST_WEEKS)
                .collectAsList();
        section("report-weeks", words.of("report-weeks-how"));
        picture(
                "report-weeks",
                weeks.stream()
                        .map(row -> line(words.day(row.getAs("week")), row.<Long>getAs("count"), 0))
                        .toList());
        end();
    }

    private void articles() {
        var order = ofAll(table("order"))
                .orderBy(col("expected_pieces").desc(), col("part"), col("kind"), col("article"))
                .limit(MOST_ARTICLES)
                .collectAsList();
        if (order.isEmpty()) {
            return;
        }
        var first = order.getFirst();
        section(
                "report-order",
                words.of(
                        "report-order-how",
                        "from",
                        new Day(first.getAs("from")),
                        "until",
                        new Day(first.getAs("until"))));
        rows(
                List.of("report-article", "report-cars", "report-expected", "report-enough"),
                order.stream()
                        .map(row -> List.of(
                                reader.begin(new Article(
                                                OrderPart.valueOf(row.getAs("part")),
                                                row.getAs("kind"),
                                                row.<String>getAs("article"))
                                        .said()),
                                number(row.<Long>getAs("cars")),
                                words.say(new Amount(row.<Double>getAs("expected_pieces"), "", 1)),
                                row.getAs("enough_90") == null ? "–" : number(row.<Integer>getAs("enough_90"))))
                        .toList());
        end();
    }

    private void risk() {
        section("report-risk", words.of("report-risk-how"));
        picture(
                "report-risk",
                ofAll(table("risk")).collectAsList().stream()
                        .filter(row -> !Subject.Part.valueOf(row.getAs("part")).isOfShop() && risk(row) >= LEAST_RISK)
                        .sorted(Comparator.comparing((Row row) -> -risk(row)).thenComparing(Row::toString))
                        .map(row -> line(reader.begin(Subject.Part.valueOf(row.getAs("part"))), risk(row), 1))
                        .toList());
        end();
    }

    private static double risk(Row row) {
        return row.<Long>getAs("spent") + orZero(row, "expected_not_to_hold");
    }

    private void learned(Knowledge knowledge) {
        section("report-learned", words.of("report-learned-how"));
        rows(
                List.of("report-tyres", "report-front", "report-rear", "report-cars"),
                knowledge.wear().rows().stream()
                        .sorted(Comparator.comparing(row -> -row.learned().cars()))
                        .limit(MOST_MODELS)
                        .map(row -> List.of(
                                words.of(
                                        "report-of",
                                        "season",
                                        row.season(),
                                        "drive",
                                        row.drive(),
                                        "model",
                                        row.tyreModel()),
                                rate(row.learned(), WearParameter.FRONT_RATE),
                                rate(row.learned(), WearParameter.REAR_RATE),
                                number(row.learned().cars())))
                        .toList());
        knowledge.distances().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(each -> element(
                        "p",
                        words.of(
                                "report-distance",
                                "season",
                                each.getKey(),
                                "distance",
                                new PlusMinus(
                                        each.getValue().meanKm(),
                                        each.getValue().carSdKm(),
                                        "km",
                                        0),
                                "cars",
                                each.getValue().cars())));
        end();
    }

    private void forShops(@Nullable ForShops signed) {
        if (signed == null) {
            section("report-shops", words.of("report-unsigned"));
        } else {
            var extent = signed.extent();
            section(
                    "report-shops",
                    words.of(
                            "report-signed",
                            "file",
                            Night.KNOWLEDGE,
                            "cars",
                            extent.cars(),
                            "shops",
                            extent.shops(),
                            "visits",
                            extent.visits(),
                            "key",
                            signed.key().fingerprint()));
            element("p", words.of("report-take-in", "file", Night.KNOWLEDGE));
        }
        end();
    }

    private String rate(LearnedWear learned, WearParameter rate) {
        double mmPer1000Km = learned.parameters().of(rate);
        double error =
                mmPer1000Km * Objects.requireNonNull(learned.standardErrors().get(rate));
        return words.say(new PlusMinus(mmPer1000Km, error, "mm/1000 km", 3));
    }

    private void calibration() {
        var figures = KeptPromises.of(Stream.empty()).stream()
                .collect(Collectors.toMap(KeptPromises.Kept::name, KeptPromises.Kept::figure));
        var rows = table(CALIBRATION).where(col("value").isNotNull()).collectAsList();
        if (rows.isEmpty()) {
            return;
        }
        section(
                "report-calibration",
                words.of("report-calibration-how", "cars", rows.getFirst().<Integer>getAs("cars")));
        rows(
                List.of("report-figure", "report-found", "report-asked"),
                rows.stream()
                        .map(row -> List.of(
                                reader.begin(Objects.requireNonNull(figures.get(row.<String>getAs("figure")))),
                                words.say(new PlusMinus(
                                        row.<Double>getAs("value"), row.<Double>getAs("standard_error"), "", 1)),
                                words.of(
                                        "report-between",
                                        "low",
                                        new Amount(row.<Double>getAs("asked_from"), "", 0),
                                        "high",
                                        new Amount(row.<Double>getAs("asked_to"), "", 0))))
                        .toList());
        end();
    }

    private void aside(long setAside) {
        if (setAside == 0) {
            return;
        }
        section("report-aside", words.of("report-aside-how"));
        page.append("<div class=\"wide words\">");
        rows(
                List.of("report-file", "report-reason"),
                table("set_aside").orderBy(CarLines.FILE, "place").limit(MOST_REASONS).collectAsList().stream()
                        .map(row -> List.of(row.<String>getAs(CarLines.FILE), row.<String>getAs("reason")))
                        .toList());
        page.append("</div>");
        end();
    }

    private Dataset<Row> table(String name) {
        return spark.read().parquet(new Path(folder, name).toString());
    }

    private static Dataset<Row> ofAll(Dataset<Row> table) {
        return table.where(col(CarLines.SITE).isNull());
    }

    private String verdict(String name) {
        return reader.begin(Verdict.valueOf(name));
    }

    private Lengths.Line line(String name, double value, int digits) {
        return new Lengths.Line(name, value, words.say(new Amount(value, "", digits)), false);
    }

    private String number(double value) {
        return words.say(new Amount(value, "", 0));
    }

    private static double orZero(Row row, String column) {
        return row.getAs(column) instanceof Number number ? number.doubleValue() : 0;
    }

    private String count(Row row, String column) {
        return number(orZero(row, column));
    }

    private void section(String title, String how) {
        page.append("<section>");
        element("h2", words.of(title));
        element("p", how);
    }

    private void end() {
        page.append("</section>\n");
    }

    private void element(String tag, String text) {
        page.append('<').append(tag).append('>').append(Svg.escape(text));
        page.append("</").append(tag).append(">\n");
    }

    private void picture(String title, List<Lengths.Line> lines) {
        page.append(Lengths.svg(words.of(title), lines)).append('\n');
    }

    private void rows(List<String> heads, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return;
        }
        page.append("<div class=\"wide\"><table><tr>");
        heads(heads.stream().map(head -> words.of(head)).toList());
        rows.forEach(this::cells);
        page.append("</table></div>\n");
    }

    private void heads(List<String> heads) {
        heads.forEach(head ->
                page.append("<th scope=\"col\">").append(Svg.escape(head)).append("</th>"));
        page.append("</tr>\n");
    }

    private void cells(List<String> cells) {
        page.append("<tr>");
        cells.forEach(cell -> page.append("<td>").append(Svg.escape(cell)).append("</td>"));
        page.append("</tr>\n");
    }
}
