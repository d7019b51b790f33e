package cornerbook.app.sheet;

import cornerbook.app.picture.VerdictMark;
import cornerbook.core.assess.Advice;
import cornerbook.core.assess.Assessment;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was found: the gravest as a whole and first, and what holds in one line for each area. */
public final class FindingsSection {
    private static final int OVERVIEW_MARK_PX = 26;
    private static final int MARK_PX = 18;

    /** What moves in a brake. */
    private static final Set<Subject.Part> MOVING = EnumSet.of(Subject.Part.CALIPER, Subject.Part.DRUM_GEAR);

    private final Assessment assessment;
    private final SheetRoom room;
    private final Reader reader;
    private final Labels labels;

    FindingsSection(Assessment assessment, SheetRoom room, Reader reader) {
        this.assessment = assessment;
        this.room = room;
        this.reader = reader;
        this.labels = reader.labels(SheetPage.ROOM);
    }

    /** The gravest of all, in large letters. */
    public record Overview(Verdict verdict, String mark, String words) {}

    /**
     * One thing to do.
     *
     * @param why each finding that asks for it
     */
    public record Row(Verdict verdict, String mark, String word, String todo, String by, List<String> why) {}

    /** Empty when nothing could be judged. */
    public Optional<Overview> overview() {
        return assessment
                .gravest()
                .map(gravest -> new Overview(
                        gravest.verdict(),
                        mark(gravest, OVERVIEW_MARK_PX),
                        labels.of("overview", "verdict", gravest.verdict(), "now", now())));
    }

    /** What the car left with is no more good than what is to be done. */
    private String now() {
        return assessment.asksNow() ? "true" : assessment.open().isEmpty() ? "false" : "open";
    }

    /** What is to be done, gravest first, for as many findings as there is room for; what is unsafe has room always. */
    public List<Row> rows() {
        return rows(assessment.advice().stream().limit(told()));
    }

    /** The rest of it, for the record: a line for each thing to do. */
    public Lines rest() {
        return Lines.of(
                rows(assessment.advice().stream().skip(told())).stream()
                        .map(row -> labels.of(
                                "rest",
                                "verdict",
                                row.word(),
                                "todo",
                                row.todo().isEmpty() ? "none" : row.todo(),
                                "by",
                                row.by(),
                                "why",
                                String.join(" ", row.why())))
                        .toList(),
                room.record().lines());
    }

    private List<Row> rows(Stream<Advice> told) {
        return told
                // What asks for nothing stands alone.
                .collect(Collectors.groupingBy(
                        advice -> advice.todo().<Object>map(todo -> todo).orElse(advice),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values()
                .stream()
                .map(this::row)
                .toList();
    }

    /** How many lines there was no room for. */
    public long more() {
        return Math.max(0, assessment.advice().size() - told());
    }

    private long told() {
        return Math.max(
                room.findings(),
                assessment.advice().stream()
                        .filter(advice -> advice.first().verdict() == Verdict.UNSAFE)
                        .count());
    }

    private Row row(List<Advice> alike) {
        var gravest = alike.getFirst().first();
        var todo = alike.getFirst().todo();
        return new Row(
                gravest.verdict(),
                mark(gravest, MARK_PX),
                reader.say(gravest.urgency()),
                todo.map(asked -> reader.begin(asked.action())).orElse(""),
                todo.map(asked -> reader.say(asked.by())).orElse(""),
                alike.stream().map(this::words).toList());
    }

    private String words(Advice advice) {
        return reader.begin(advice.said());
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
            return labels.of("area", "area", part(part, labels), "corners", Advice.corners(corners));
        }
        return Advice.together(assessment.history(), assessment.visit(), findings.stream()).stream()
                .limit(room.lines())
                .map(this::words)
                .collect(Collectors.joining(" "));
    }

    /** As a customer calls it. */
    static String part(Subject.Part part, Labels labels) {
        return labels.of("part", "part", part);
    }

    private List<Finding> holding() {
        return with(Verdict.HOLDS).stream()
                .filter(finding -> !Advice.asks(finding))
                .filter(finding -> !isInDoubt(finding.subject()))
                .toList();
    }

    /**
     * A thick pad that is stuck is not told to be good, nor the caliper of a brake that does not let go, nor a pad that is
     * replaced with its worn mate, nor the torque of a wheel whose fasteners are damaged.
     */
    private boolean isInDoubt(Subject subject) {
        var corner = subject.corner();
        return corner != null
                && assessment.ofCar().stream()
                        .filter(Advice::asks)
                        .anyMatch(finding -> finding.subject().equals(subject)
                                || (MOVING.contains(subject.part()) && StuckBrake.isTold(finding, corner))
                                || takesTheMate(finding, subject.part(), corner)
                                || isTorqueOfDamaged(finding, subject.part(), corner));
    }

    private static boolean isTorqueOfDamaged(Finding asking, Subject.Part part, Corner corner) {
        return part == Subject.Part.WHEEL_TORQUE
                && asking.subject().part() == Subject.Part.WHEEL_FASTENERS
                && asking.subject().corner() == corner;
    }

    private static boolean takesTheMate(Finding asking, Subject.Part part, Corner corner) {
        var todo = asking.todo();
        var worn = asking.subject().corner();
        return todo != null
                && todo.action() == Todo.Action.REPLACE_PAIR
                && asking.subject().part() == part
                && worn != null
                && worn.axle() == corner.axle();
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
