package cornerbook.app.sheet;

import cornerbook.app.picture.VerdictMark;
import cornerbook.core.assess.Assessment;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Urgency;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was found: the gravest as a whole and first, and what holds in one line for each area. */
public final class FindingsSection {
    private static final int OVERVIEW_MARK_PX = 26;
    private static final int MARK_PX = 18;
    private final Assessment assessment;
    private final Collection<String> tagsOnCar;
    private final SheetRoom room;
    private final Reader reader;
    private final Labels labels;

    FindingsSection(Assessment assessment, Collection<String> tagsOnCar, SheetRoom room, Reader reader) {
        this.assessment = assessment;
        this.tagsOnCar = tagsOnCar;
        this.room = room;
        this.reader = reader;
        this.labels = reader.labels(SheetPage.ROOM);
    }

    /** The gravest of all, in large letters. */
    public record Overview(Verdict verdict, String mark, String words, String counts) {}

    /** One line of the table. */
    public record Row(Verdict verdict, String mark, String word, String words, String todo, String by) {}

    /** Findings that are said in the same words, and ask for the same. */
    private record Alike(
            Urgency urgency,
            String words,
            @Nullable Todo todo,
            @Nullable String set) {}

    /** Empty when nothing could be judged. */
    public Optional<Overview> overview() {
        return assessment
                .gravest()
                .map(gravest -> new Overview(
                        gravest.verdict(),
                        mark(gravest, OVERVIEW_MARK_PX),
                        labels.of("overview", "verdict", gravest.verdict()),
                        labels.of("counts", "counts", counts())));
    }

    /** Advice on what holds is not folded away. */
    private static boolean asks(Finding finding) {
        return finding.verdict() != Verdict.HOLDS || finding.todo() != null;
    }

    private String counts() {
        return Arrays.stream(Urgency.values())
                .sorted(Comparator.reverseOrder())
                .filter(urgency -> count(urgency) > 0)
                .map(urgency -> count(urgency) + "\u00a0× " + reader.say(urgency))
                .collect(Collectors.joining(", "));
    }

    /** What does not hold, gravest first, as many lines as there is room for. */
    public List<Row> rows() {
        return alike().entrySet().stream()
                .limit(room.findings())
                .map(entry -> row(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** How many lines there was no room for. */
    public int more() {
        return Math.max(0, alike().size() - room.findings());
    }

    private Map<Alike, List<Finding>> alike() {
        return alike(assessment.ofCar().stream()
                .filter(FindingsSection::asks)
                .sorted(Comparator.comparing(Finding::verdict).reversed()));
    }

    private Row row(Alike alike, List<Finding> findings) {
        var first = findings.getFirst();
        var todo = alike.todo();
        return new Row(
                first.verdict(),
                mark(first, MARK_PX),
                reader.say(alike.urgency()),
                words(alike, findings),
                todo == null ? "" : reader.begin(todo.action()),
                todo == null ? "" : reader.say(todo.by()));
    }

    /** Named where the finding is about one part of a set that is not on the car. */
    private @Nullable String storedSet(Finding finding) {
        var tag = finding.subject().wheelTag();
        return tag == null || tagsOnCar.contains(tag)
                ? null
                : assessment
                        .history()
                        .findSetOf(tag)
                        .map(set -> reader.begin(new SetOf(set.season())))
                        .orElse(null);
    }

    /** How many findings hold. */
    public int held() {
        return holding().size();
    }

    /** What holds, by area; empty when there is only room for their number. */
    public List<String> areas() {
        return room.holding()
                ? Arrays.stream(Subject.Part.values())
                        .map(part -> area(
                                part,
                                holding().stream()
                                        .filter(finding -> finding.subject().part() == part)
                                        .toList()))
                        .filter(area -> !area.isEmpty())
                        .toList()
                : List.of();
    }

    private String area(Subject.Part part, List<Finding> findings) {
        var corners = cornersOf(findings);
        if (!corners.isEmpty() && part != Subject.Part.TREAD_PATTERN) {
            return labels.of("area", "area", part(part, labels), "corners", corners(corners));
        }
        return alike(findings.stream()).entrySet().stream()
                .limit(room.lines())
                .map(entry -> words(entry.getKey(), entry.getValue()))
                .collect(Collectors.joining(" "));
    }

    /** As a customer calls it. */
    static String part(Subject.Part part, Labels labels) {
        return labels.of("part", "part", part);
    }

    private List<Finding> holding() {
        return with(Verdict.HOLDS).stream()
                .filter(finding -> !asks(finding))
                .filter(finding -> !isInDoubt(finding.subject()))
                .toList();
    }

    /** A thick pad that is stuck is not told to be good. */
    private boolean isInDoubt(Subject subject) {
        return subject.corner() != null
                && assessment.ofCar().stream()
                        .filter(FindingsSection::asks)
                        .anyMatch(finding -> finding.subject().equals(subject));
    }

    private Map<Alike, List<Finding>> alike(Stream<Finding> findings) {
        return findings.collect(Collectors.groupingBy(
                finding -> new Alike(
                        finding.urgency(),
                        SheetText.line(reader.say(finding.plainWords())),
                        finding.todo(),
                        storedSet(finding)),
                LinkedHashMap::new,
                Collectors.toList()));
    }

    /** With the set and the corners that the sentence itself does not name. */
    private String words(Alike alike, List<Finding> findings) {
        Said sentence = findings.getFirst().plainWords();
        var corners = cornersOf(findings).stream()
                .filter(corner -> !NamedCorner.isNamed(corner, sentence))
                .toList();
        var where = Stream.of(alike.set(), corners.isEmpty() ? null : corners(corners))
                .filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
        return where.isEmpty() ? alike.words() : labels.of("where", "where", where, "words", alike.words());
    }

    /** All four in words, fewer by their names. */
    private String corners(List<Corner> corners) {
        return corners.size() == Corner.values().length
                ? labels.of("all-corners")
                : corners.stream().map(reader::say).collect(Collectors.joining(", "));
    }

    private long count(Urgency urgency) {
        return assessment.ofCar().stream()
                .filter(finding -> finding.urgency() == urgency)
                .count();
    }

    private List<Finding> with(Verdict verdict) {
        return assessment.ofCar().stream()
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

    private String mark(Finding finding, int sizePx) {
        return SheetTemplates.described(VerdictMark.svg(finding.verdict(), finding.lifeLeft(), sizePx, reader));
    }
}
