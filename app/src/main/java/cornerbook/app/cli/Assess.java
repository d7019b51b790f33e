package cornerbook.app.cli;

import cornerbook.app.cli.arguments.UnitsOption;
import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.exchange.AssessmentJson;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Prints the findings of one visit of a visit file. */
@CommandLine.Command(name = "assess", description = "verb-assess")
final class Assess implements Runnable {
    private final Terminal terminal;

    @CommandLine.Spec
    private CommandLine.Model.@Nullable CommandSpec spec;

    @CommandLine.Parameters(paramLabel = "${bundle:label-file}", descriptionKey = "param-assess")
    private Path file = Path.of("");

    @CommandLine.Option(names = "--visit", paramLabel = "${bundle:label-id}", descriptionKey = "option-assess-visit")
    private @Nullable String visitId;

    @CommandLine.Option(names = "--why", descriptionKey = "option-assess-why")
    private boolean why;

    @CommandLine.Option(names = "--json", descriptionKey = "option-assess-json")
    private boolean json;

    @CommandLine.Mixin
    private ClimateOption climate = new ClimateOption();

    @CommandLine.Mixin
    private UnitsOption units = new UnitsOption();

    Assess(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var record = SourceFiles.read(file);
        var history = record.history();
        var visit = SourceFiles.visit(history, visitId, file);
        var assessor = new Assessor(LimitsFile.load()).in(climate.find());
        SourceFiles.judge(
                        file,
                        visit,
                        () -> printed(
                                SourceFiles.withOpen(assessor.assess(history, visit.id()), record.notesOf(visit.id()))))
                .forEach(terminal.out()::println);
    }

    private List<String> printed(Assessment assessment) {
        return json
                ? List.of(Printed.json(
                        AssessmentJson.write(assessment, terminal.reader().in(units.orMetric()))))
                : new AssessmentLines(terminal.reader().in(units.orMetric()), width(), why).of(assessment);
    }

    private int width() {
        var command = spec;
        return command == null
                ? CommandLine.Model.UsageMessageSpec.DEFAULT_USAGE_WIDTH
                : command.usageMessage().width();
    }
}
