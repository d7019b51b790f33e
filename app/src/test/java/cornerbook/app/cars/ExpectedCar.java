package cornerbook.app.cars;

import cornerbook.core.assess.Assessment;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a technician says of a car before the program is asked, as the file beside the car has it.
 *
 * @param story the car in a sentence
 * @param gravest the gravest verdict on the car as it drives away; null where the findings say enough
 * @param findings that there must be
 * @param others what any other finding may come to at most; {@code HOLDS} when null
 * @param notJudged what has to be told as not judged
 * @param open the points that keep it from leaving, all of them
 * @param openBecause why those, or why none
 * @param never beginnings of what no finding may be: "PAD" or "WHEEL_SET SPENT set"
 * @param waits what the program has to learn before it can say this; null for what it says today
 */
record ExpectedCar(
        String story,
        @Nullable Verdict gravest,
        List<Expected> findings,
        @Nullable Verdict others,
        List<NotJudged> notJudged,
        List<String> open,
        @Nullable String openBecause,
        @Nullable List<String> never,
        @Nullable String waits) {
    private static final Reader READER = Reader.DEFAULT;

    /**
     * One finding.
     *
     * @param about part and corner: "PAD LF", "BATTERY"
     * @param wheel its tag; null where that does not matter
     * @param set its id; null where that does not matter
     * @param todo what has to be done; null where that does not matter
     * @param by when: one of {@link Todo.When}, or "DAY" for a day of its own
     * @param between first and last day that its horizon may have
     * @param says patterns that stand in what is said of it
     * @param unsaid patterns that do not
     * @param because why, with the rule or the source
     */
    record Expected(
            String about,
            Verdict verdict,
            @Nullable String wheel,
            @Nullable String set,
            Todo.@Nullable Action todo,
            @Nullable String by,
            @Nullable List<LocalDate> between,
            @Nullable List<String> says,
            @Nullable List<String> unsaid,
            String because) {
        boolean isAbout(Finding finding) {
            var subject = finding.subject();
            return about.equals(place(finding))
                    && (wheel == null || wheel.equals(subject.wheelTag()))
                    && (set == null || set.equals(subject.setId()));
        }

        /** What differs; empty where the finding is as expected. */
        List<String> differences(Finding finding) {
            var said = said(finding);
            var differences = new ArrayList<String>();
            if (finding.verdict() != verdict) {
                differences.add("is " + finding.verdict());
            }
            var asked = finding.todo();
            if (todo != null && (asked == null || asked.action() != todo)) {
                differences.add("asks for " + (asked == null ? "nothing" : asked.action()));
            }
            if (by != null && (asked == null || !by.equals(name(asked)))) {
                differences.add("asks for it by " + (asked == null ? "no day" : name(asked)));
            }
            if (between != null
                    && (finding.horizon() == null
                            || finding.horizon().isBefore(between.getFirst())
                            || finding.horizon().isAfter(between.getLast()))) {
                differences.add("runs out on " + finding.horizon());
            }
            patterns(says).filter(each -> !each.matcher(said).find()).forEach(each -> differences.add("lacks " + each));
            patterns(unsaid).filter(each -> each.matcher(said).find()).forEach(each -> differences.add("says " + each));
            return differences;
        }

        private static String name(Todo todo) {
            return todo.by() instanceof Todo.When when ? when.name() : "DAY";
        }
    }

    /** Something that was not judged, by a pattern of the sentence, and why it cannot be. */
    record NotJudged(String says, String because) {}

    /** What differs from what is expected; empty where nothing does. */
    List<String> differences(Assessment assessment) {
        var differences = new ArrayList<String>();
        for (var expected : findings) {
            var about = assessment.findings().stream().filter(expected::isAbout).toList();
            if (about.stream()
                    .allMatch(finding -> !expected.differences(finding).isEmpty())) {
                differences.add("%s should be %s, because %s; %s"
                        .formatted(
                                expected.about(),
                                expected.verdict(),
                                expected.because(),
                                about.isEmpty()
                                        ? "nothing is said of it"
                                        : about.stream()
                                                .map(finding -> expected.differences(finding) + ": " + said(finding))
                                                .toList()));
            }
        }
        var most = others == null ? Verdict.HOLDS : others;
        assessment.findings().stream()
                .filter(finding -> findings.stream()
                        .noneMatch(expected -> expected.isAbout(finding) && expected.verdict() == finding.verdict()))
                .filter(finding -> finding.verdict().compareTo(most) > 0)
                .forEach(finding -> differences.add("Not expected: " + told(finding)));
        notJudged.stream()
                .filter(expected -> assessment.notJudged().stream()
                        .noneMatch(said -> pattern(expected.says())
                                .matcher(READER.say(said))
                                .find()))
                .forEach(expected -> differences.add("Not told as not judged: %s, because %s; told are %s"
                        .formatted(
                                expected.says(),
                                expected.because(),
                                assessment.notJudged().stream().map(READER::say).toList())));
        var points =
                assessment.open().stream().map(point -> point.key()).sorted().toList();
        if (!points.equals(open.stream().sorted().toList())) {
            differences.add("Open should be %s, because %s; open is %s".formatted(open, openBecause, points));
        }
        var found = assessment.gravest().map(Finding::verdict).orElse(Verdict.HOLDS);
        if (gravest != null && found != gravest) {
            differences.add("The car as it drives away should be %s, and is %s".formatted(gravest, found));
        }
        if (never != null) {
            assessment.findings().stream()
                    .filter(finding -> never.stream().anyMatch(told(finding)::startsWith))
                    .forEach(finding -> differences.add("Must not be said: " + told(finding)));
        }
        return differences;
    }

    /** Part and corner. */
    static String place(Finding finding) {
        var corner = finding.subject().corner();
        return finding.subject().part() + (corner == null ? "" : " " + corner);
    }

    /** The finding in a line. */
    static String told(Finding finding) {
        return Stream.of(
                        place(finding),
                        finding.verdict(),
                        finding.subject().setId(),
                        finding.subject().wheelTag(),
                        finding.todo() == null ? null : finding.todo().action(),
                        said(finding))
                .filter(each -> each != null)
                .map(String::valueOf)
                .reduce((one, other) -> one + " " + other)
                .orElseThrow();
    }

    /** What is said of it, with plain spaces before units. */
    private static String said(Finding finding) {
        return (READER.say(finding.title()) + " / " + READER.say(finding.plainWords()))
                .replaceAll("[\u00A0\u202F]", " ");
    }

    private static Stream<Pattern> patterns(@Nullable List<String> written) {
        return written == null ? Stream.of() : written.stream().map(ExpectedCar::pattern);
    }

    private static Pattern pattern(String written) {
        return Pattern.compile(written, Pattern.CASE_INSENSITIVE);
    }
}
