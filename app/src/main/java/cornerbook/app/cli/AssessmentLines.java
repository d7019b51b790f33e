package cornerbook.app.cli;

import cornerbook.app.cli.print.Printed;
import cornerbook.core.assess.Assessment;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Urgency;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Day;
import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** An assessment as lines for a terminal: each finding behind its verdict, then the wheels and what comes next. */
final class AssessmentLines {
    private final Reader reader;
    private final Labels words;
    private final int width;
    private final boolean why;
    private final String indent;
    private final List<String> lines = new ArrayList<>();

    AssessmentLines(Reader reader, int width, boolean why) {
        this.reader = reader;
        this.words = reader.labels("app/cli");
        this.width = width;
        this.why = why;
        int longest = Arrays.stream(Urgency.values())
                .mapToInt(urgency -> reader.say(urgency).length())
                .max()
                .orElseThrow();
        this.indent = " ".repeat(longest + 2);
    }

    List<String> of(Assessment assessment) {
        var vehicle = assessment.history().vehicle();
        var visit = assessment.visit();
        add(
                "",
                new CliSaid.VisitOf(
                        vehicle.name(), vehicle.plate(), visit.date(), Amount.of(visit.odometerKm(), "km")));
        assessment.findings().forEach(this::add);
        var plan = assessment.plan();
        if (plan != null) {
            lines.add("");
            for (var corner : Corner.values()) {
                add(
                        lead(reader.say(new CliSaid.WheelTo(corner))),
                        Said.verbatim(String.valueOf(plan.wheelAt().get(corner))));
            }
            plan.reasons().forEach(reason -> add(indent, reason));
        }
        lines.add("");
        OpenPoint.together(assessment.open()).forEach(point -> add(lead(words.of("before-it-leaves")), point));
        var retorque = assessment.retorque();
        if (retorque != null) {
            add(
                    lead(words.of("retorque")),
                    new CliSaid.RetorqueDue(
                            retorque.tightenedTo(), Amount.of(retorque.dueOdometerKm(), "km"), retorque.dueDate()));
        }
        assessment.doubted().forEach(doubt -> add(lead(words.of("read-again")), doubt.question()));
        assessment.notJudged().forEach(said -> add(lead(words.of("not-judged")), said));
        add(lead(words.of("next-visit")), new Day(assessment.nextVisit()));
        return List.copyOf(lines);
    }

    private void add(Finding finding) {
        lines.add("");
        var urgency = reader.say(finding.urgency());
        add(urgency + " ".repeat(indent.length() - urgency.length()), titled(finding));
        add(indent, finding.plainWords());
        var todo = finding.todo();
        if (todo != null) {
            add(indent, todo);
        }
        if (why) {
            finding.evidence()
                    .forEach(evidence -> add(
                            indent + "- ",
                            new CliSaid.EvidenceLine(evidence.what(), evidence.value(), evidence.how())));
            add(indent + "- ", new CliSaid.SourceLine(finding.source()));
        }
    }

    /** A chance to stay free, or a law's day, has a day to which it is so, but is not used up. */
    private static Said titled(Finding finding) {
        var horizon = finding.horizon();
        var part = finding.subject().part();
        if (horizon == null) {
            return finding.title();
        }
        return part.wears() && part != Subject.Part.PAD_SEIZING
                ? new CliSaid.RunsOut(finding.title(), horizon)
                : new CliSaid.Until(finding.title(), horizon);
    }

    private static String lead(String label) {
        return label + " ";
    }

    private void add(String lead, Said said) {
        lines.addAll(Printed.wrapped(lead, reader.say(said), width));
    }
}
