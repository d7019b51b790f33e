package cornerbook.app.cli;

import cornerbook.words.Reader;

import cornerbook.app.exchange.AssessmentJson;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.unit.QuantityText;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.season.Dates;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Prints the findings of one visit of a visit file. */
@CommandLine.Command(name = "assess", description = "Print the findings of a visit file; no book is needed.")
final class Assess implements Runnable {
    private static final String INDENT = " ".repeat(10);

    private final PrintWriter out;

    @CommandLine.Spec
    private CommandLine.Model.@Nullable CommandSpec spec;

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

    @CommandLine.Mixin
    private ClimateOption climate = new ClimateOption();

    @CommandLine.Mixin
    private UnitsOption units = new UnitsOption();

    Assess(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        var history = SourceFile.read(file).history();
        var visit = SourceFile.visit(history, visitId, file);
        var assessor = new Assessor(LimitsFile.load()).in(climate.find());
        CarFence.judge(file, visit, () -> printed(assessor.assess(history, visit.id())))
                .forEach(out::println);
    }

    private List<String> printed(Assessment assessment) {
        return json ? List.of(Printed.json(AssessmentJson.write(assessment, Reader.DEFAULT))) : lines(assessment);
    }

    private List<String> lines(Assessment assessment) {
        var vehicle = assessment.history().vehicle();
        var visit = assessment.visit();
        var lines = new ArrayList<String>();
        add(
                "",
                "%s, %s, %s, %.0f km".formatted(vehicle.name(), vehicle.plate(), visit.date(), visit.odometerKm()),
                lines);
        assessment.findings().forEach(finding -> add(finding, lines));
        var plan = assessment.plan();
        if (plan != null) {
            lines.add("");
            for (var corner : Corner.values()) {
                add(
                        "Wheel to %s: ".formatted(corner),
                        String.valueOf(plan.wheelAt().get(corner)),
                        lines);
            }
            plan.reasons().forEach(reason -> add(INDENT, Reader.DEFAULT.say(reason), lines));
        }
        lines.add("");
        var retorque = assessment.retorque();
        if (retorque != null) {
            add(
                    "Re-torque:  ",
                    "to %.0f N·m at %.0f km, about %s"
                            .formatted(retorque.torqueNm(), retorque.dueOdometerKm(), retorque.dueDate()),
                    lines);
        }
        assessment.doubted().forEach(doubt -> add("Read again: ", Reader.DEFAULT.say(doubt.question()), lines));
        assessment.notJudged().forEach(words -> add("Not judged: ", Reader.DEFAULT.say(words), lines));
        add("Next visit: ", assessment.nextVisit().toString(), lines);
        return lines;
    }

    private void add(Finding finding, List<String> lines) {
        var horizon = finding.horizon();
        lines.add("");
        add(
                "%-10s".formatted(Reader.DEFAULT.say(finding.verdict())),
                Reader.DEFAULT.say(finding.title()) + (horizon == null ? "" : ", runs out on " + Dates.written(horizon)),
                lines);
        add(INDENT, Reader.DEFAULT.say(finding.plainWords()), lines);
        if (why) {
            finding.evidence()
                    .forEach(evidence -> add(
                            INDENT + "- ",
                            "%s: %s (%s)".formatted(Reader.DEFAULT.say(evidence.what()), Reader.DEFAULT.say(evidence.value()), Reader.DEFAULT.say(evidence.how())),
                            lines));
            add(INDENT + "- ", "source: " + Reader.DEFAULT.say(finding.source()), lines);
        }
    }

    private void add(String lead, String text, List<String> lines) {
        var command = spec;
        int width = command == null
                ? CommandLine.Model.UsageMessageSpec.DEFAULT_USAGE_WIDTH
                : command.usageMessage().width();
        lines.addAll(Printed.wrapped(lead, QuantityText.sentence(text, units.orMetric()), width));
    }
}
