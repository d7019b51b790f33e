package cornerbook.app.cli;

import cornerbook.app.cli.arguments.LetterheadOptions;
import cornerbook.app.cli.arguments.UnitsOption;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.HandoverSheet;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Writes the handover sheet of one visit of a visit file. */
@CommandLine.Command(name = "handover", description = "verb-handover")
final class Handover implements Runnable {
    private final Terminal terminal;

    @CommandLine.Parameters(paramLabel = "${bundle:label-file}", descriptionKey = "param-handover")
    private Path file = Path.of("");

    @CommandLine.Option(
            names = {"-o", "--output"},
            paramLabel = "${bundle:label-out}",
            descriptionKey = "option-handover-output")
    private @Nullable Path output;

    @CommandLine.Option(names = "--visit", paramLabel = "${bundle:label-id}", descriptionKey = "option-handover-visit")
    private @Nullable String visitId;

    @CommandLine.Mixin
    private LetterheadOptions shop = new LetterheadOptions();

    @CommandLine.Option(names = "--force", descriptionKey = "option-handover-force")
    private boolean force;

    @CommandLine.Mixin
    private ClimateOption climate = new ClimateOption();

    @CommandLine.Mixin
    private UnitsOption units = new UnitsOption();

    Handover(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var record = SourceFiles.read(file);
        var history = record.history();
        var visit = SourceFiles.visit(history, visitId, file);
        var chosen = output;
        var target = chosen != null
                ? chosen
                : file.resolveSibling(String.valueOf(file.getFileName()).replaceFirst("\\.json$", "") + ".pdf");
        TargetFile.refuse(target, force);
        var assessor = new Assessor(LimitsFile.load()).in(climate.find());
        var notes = record.notesOf(visit.id());
        var sheet = SourceFiles.judge(
                file,
                visit,
                () -> HandoverSheet.render(
                        SourceFiles.withOpen(assessor.assess(history, visit.id()), notes),
                        shop.letterhead(),
                        Instant.now(),
                        notes,
                        // A visit file brings neither prices nor agreements.
                        List.of(),
                        reader(history)));
        TargetFile.write(target, sheet, force);
        terminal.say(new CliSaid.Wrote(target.toString()));
    }

    /** The customer's language where the book knows it, else that of the command. */
    private Reader reader(CarHistory history) {
        var ours = terminal.reader().in(units.orMetric());
        var language = history.customer().language();
        return language == null ? ours : Language.find(language).map(ours::in).orElse(ours);
    }
}
