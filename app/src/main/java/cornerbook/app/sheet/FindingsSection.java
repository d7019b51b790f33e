package cornerbook.app.sheet;

import cornerbook.app.picture.VerdictMark;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was found: the gravest as a whole and first, and what holds in one line for each area. */
final class FindingsSection {
    private final Assessment assessment;
    private final Collection<String> tagsOnCar;
    private final SheetRoom room;
    private final Xhtml page;

    FindingsSection(Assessment assessment, Collection<String> tagsOnCar, SheetRoom room, Xhtml page) {
        this.assessment = assessment;
        this.tagsOnCar = tagsOnCar;
        this.room = room;
        this.page = page;
    }

    /** What is said of the work and not of the car lasts no longer than the visit. */
    private static final List<Subject.Part> OF_THE_SHOP = List.of(Subject.Part.LIFT, Subject.Part.SHOP_TOOL);

    /** Findings of the same words and day, as one line. */
    private record Row(
            Verdict verdict,
            String words,
            @Nullable LocalDate horizon,
            @Nullable String set) {}

    void writeOverview() {
        var gravest = assessment.findings().stream().max(Comparator.comparing(Finding::verdict));
        if (gravest.isEmpty()) {
            page.element("p class=\"overview\"", "Nothing could be judged at this visit.");
            return;
        }
        var words = switch (gravest.get().verdict()) {
            case UNSAFE -> "Unsafe: do not drive this car as it is.";
            case SPENT -> "Spent: something is used up, or has to be put right.";
            case RUNS_OUT -> "Runs out: something may not last until the next visit.";
            case HOLDS -> "Holds: all that was judged is good until the next visit.";
        };
        page.raw("<p class=\"overview " + gravest.get().verdict() + "\">").raw(mark(gravest.get(), 26));
        page.raw(" <b>").text(words).raw("</b><br/>");
        page.text("Findings: " + counts()).raw("</p>\n");
    }

    private String counts() {
        return Stream.of(Verdict.UNSAFE, Verdict.SPENT, Verdict.RUNS_OUT, Verdict.HOLDS)
                .map(verdict -> Map.entry(verdict, with(verdict).size()))
                .filter(count -> count.getValue() > 0)
                .map(count -> count.getValue() + " × " + Reader.DEFAULT.say(count.getKey()))
                .collect(Collectors.joining(", ", "", "."));
    }

    void write() {
        page.element("h2", "What was found");
        writeRest();
        writeHolding();
        page.element(
                "p class=\"small\"",
                "Holds: good until the next visit. Runs out: may not last until then. Spent: used up or to be put right now. "
                        + "Unsafe: do not drive.");
    }

    private void writeRest() {
        var rows = rows(assessment.findings().stream()
                .filter(finding -> finding.verdict() != Verdict.HOLDS)
                .sorted(Comparator.comparing(Finding::verdict).reversed()));
        if (rows.isEmpty()) {
            return;
        }
        page.raw(
                "<table class=\"findings\"><thead><tr><th class=\"verdict\" scope=\"col\">Verdict</th><th scope=\"col\">Finding</th>"
                        + "<th scope=\"col\">Lasts until</th></tr></thead><tbody>");
        rows.entrySet().stream().limit(room.findings()).forEach(entry -> writeRow(entry.getKey(), entry.getValue()));
        page.raw("</tbody></table>\n");
        if (rows.size() > room.findings()) {
            page.element("p", Xhtml.more(rows.size() - room.findings()));
        }
    }

    private void writeRow(Row row, List<Finding> findings) {
        page.raw("<tr class=\"" + row.verdict() + "\"><th scope=\"row\">").raw(mark(findings.getFirst(), 18));
        page.raw(" " + Reader.DEFAULT.say(row.verdict()) + "</th>");
        page.element("td", where(row, findings) + row.words());
        page.element("td", until(row, findings));
        page.raw("</tr>\n");
    }

    private static String until(Row row, List<Finding> findings) {
        if (row.horizon() != null) {
            return SheetWords.day(row.horizon());
        }
        if (findings.stream()
                .anyMatch(finding -> OF_THE_SHOP.contains(finding.subject().part()))) {
            return "at this visit";
        }
        return row.verdict() == Verdict.RUNS_OUT ? "to be looked at sooner" : "now";
    }

    /** Named where the finding is about one part of a set that is not on the car. */
    private @Nullable String storedSet(Finding finding) {
        var tag = finding.subject().wheelTag();
        return tag == null || tagsOnCar.contains(tag)
                ? null
                : assessment
                        .history()
                        .findSetOf(tag)
                        .map(WheelSet::season)
                        .map(season -> SheetWords.season(season) + " set")
                        .orElse(null);
    }

    private void writeHolding() {
        var holding = with(Verdict.HOLDS).stream()
                .filter(finding -> !isInDoubt(finding.subject()))
                .toList();
        if (holding.isEmpty()) {
            return;
        }
        if (!room.holding()) {
            page.element(
                    "p",
                    "What holds until the next visit: %d findings; the shop has them on its screen."
                            .formatted(holding.size()));
            return;
        }
        page.element("h3", "What holds until the next visit");
        page.raw("<ul>");
        for (var part : Subject.Part.values()) {
            var findings = holding.stream()
                    .filter(finding -> finding.subject().part() == part)
                    .toList();
            if (!findings.isEmpty()) {
                page.element("li", holdingWords(part, findings));
            }
        }
        page.raw("</ul>\n");
    }

    /** A thick pad that is stuck is not told to be good. */
    private boolean isInDoubt(Subject subject) {
        return subject.corner() != null
                && assessment.findings().stream()
                        .filter(finding -> finding.verdict() != Verdict.HOLDS)
                        .anyMatch(finding -> finding.subject().equals(subject));
    }

    private String holdingWords(Subject.Part part, List<Finding> findings) {
        var corners = cornersOf(findings);
        if (!corners.isEmpty() && part != Subject.Part.TREAD_PATTERN) {
            return "%s: %s.".formatted(SheetWords.part(part), SheetWords.corners(corners));
        }
        return rows(findings.stream()).entrySet().stream()
                .limit(room.lines())
                .map(entry ->
                        where(entry.getKey(), entry.getValue()) + entry.getKey().words())
                .collect(Collectors.joining(" "));
    }

    private Map<Row, List<Finding>> rows(Stream<Finding> findings) {
        return findings.collect(Collectors.groupingBy(
                finding -> new Row(
                        finding.verdict(),
                        SheetWords.line(Reader.DEFAULT.say(finding.plainWords())),
                        finding.horizon(),
                        storedSet(finding)),
                LinkedHashMap::new,
                Collectors.toList()));
    }

    /** The set and the corners that the words themselves do not name. */
    private static String where(Row row, List<Finding> findings) {
        var corners = cornersOf(findings).stream()
                .filter(corner -> !row.words().contains(corner.name()))
                .toList();
        var where = Stream.of(row.set(), corners.isEmpty() ? null : SheetWords.corners(corners))
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
        return where.isEmpty() ? "" : where + ": ";
    }

    private List<Finding> with(Verdict verdict) {
        return assessment.findings().stream()
                .filter(finding -> finding.verdict() == verdict)
                .toList();
    }

    private static List<Corner> cornersOf(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.subject().corner())
                .filter(Objects::nonNull)
                .distinct()
                .sorted()
                .toList();
    }

    private static String mark(Finding finding, int sizePx) {
        return Xhtml.described(VerdictMark.svg(finding.verdict(), finding.lifeLeft(), sizePx));
    }
}
