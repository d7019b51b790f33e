package cornerbook.app.cli;

import cornerbook.app.exchange.AssessmentJson;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.corner.Corner;
import cornerbook.core.visit.Assessment;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.Finding;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Prints the findings of one visit of a visit file. */
@CommandLine.Command(name = "assess", description = "Print the findings of a visit file; no book is needed.")
final class Assess implements Runnable {
    private final PrintWriter out;

    @CommandLine.Parameters(paramLabel = "FILE", description = "Visit file.")
    private Path file = Path.of("");

    @CommandLine.Option(
            names = "--visit",
            paramLabel = "ID",
            description = "Visit to assess; the last one if not given.")
    private @Nullable String visitId;

    @CommandLine.Option(names = "--why", description = "Print what each finding rests on.")
    private boolean why;

    @CommandLine.Option(names = "--json", description = "Print the assessment as JSON.")
    private boolean json;

    Assess(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        var history = SourceFile.read(file);
        var visit = SourceFile.visit(history, visitId, file);
        var assessment = new Assessor(LimitsFile.load()).assess(history, visit.id());
        if (json) {
            out.println(Printed.clean(AssessmentJson.write(assessment)).strip());
        } else {
            lines(assessment).forEach(line -> out.println(Printed.line(line)));
        }
    }

    private List<String> lines(Assessment assessment) {
        var vehicle = assessment.history().vehicle();
        var visit = assessment.visit();
        var lines = new ArrayList<String>();
        lines.add("%s, %s, %s, %.0f km".formatted(vehicle.name(), vehicle.plate(), visit.date(), visit.odometerKm()));
        assessment.findings().forEach(finding -> add(finding, lines));
        var plan = assessment.plan();
        if (plan != null) {
            for (var corner : Corner.values()) {
                lines.add("Wheel to %s: %s".formatted(corner, plan.wheelAt().get(corner)));
            }
            plan.reasons().forEach(reason -> lines.add("    " + reason));
        }
        var retorque = assessment.retorque();
        if (retorque != null) {
            lines.add("Re-torque to %.0f N·m at %.0f km, about %s"
                    .formatted(retorque.torqueNm(), retorque.dueOdometerKm(), retorque.dueDate()));
        }
        assessment.notJudged().forEach(words -> lines.add("Not judged: " + words));
        lines.add("Next visit: " + assessment.nextVisit());
        return lines;
    }

    private void add(Finding finding, List<String> lines) {
        var horizon = finding.horizon();
        lines.add("%-8s  %s%s"
                .formatted(
                        finding.verdict().word(), finding.title(), horizon == null ? "" : ", runs out on " + horizon));
        if (why) {
            finding.evidence()
                    .forEach(evidence ->
                            lines.add("    %s: %s (%s)".formatted(evidence.what(), evidence.value(), evidence.how())));
            lines.add("    source: " + finding.source());
        }
    }
}
