package cornerbook.app.cli;

import cornerbook.words.Reader;
import cornerbook.app.sheet.Letterhead;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.app.sheet.HandoverSheet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Writes the handover sheet of one visit of a visit file. */
@CommandLine.Command(
        name = "handover",
        description = "Write the handover sheet of a visit file as PDF; no book is needed.")
final class Handover implements Runnable {
    private final PrintWriter out;

    @CommandLine.Parameters(paramLabel = "FILE", description = "Visit file.")
    private Path file = Path.of("");

    @CommandLine.Option(
            names = {"-o", "--output"},
            paramLabel = "OUT",
            description = "Sheet to write; the visit file's name with .pdf if not given.")
    private @Nullable Path output;

    @CommandLine.Option(
            names = "--visit",
            paramLabel = "ID",
            description = "Visit of the sheet; the last one if not given.")
    private @Nullable String visitId;

    @CommandLine.Option(
            names = "--shop",
            paramLabel = "NAME",
            description = "Name of the shop, as it is printed on top.")
    private String shopName = "";

    @CommandLine.Option(names = "--force", description = "Overwrite the sheet if it is there already.")
    private boolean force;

    @CommandLine.Mixin
    private ClimateOption climate = new ClimateOption();

    @CommandLine.Mixin
    private UnitsOption units = new UnitsOption();

    Handover(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        var record = SourceFile.read(file);
        var history = record.history();
        var visit = SourceFile.visit(history, visitId, file);
        var chosen = output;
        var target = chosen != null
                ? chosen
                : file.resolveSibling(String.valueOf(file.getFileName()).replaceFirst("\\.json$", "") + ".pdf");
        TargetFile.refuse(target, force);
        var assessor = new Assessor(LimitsFile.load()).in(climate.find());
        var sheet = CarFence.judge(
                file,
                visit,
                () -> HandoverSheet.render(
                        assessor.assess(history, visit.id()),
                        Letterhead.of(shopName),

                        Instant.now(),
                        record.notesOf(visit.id()),
                        Reader.DEFAULT.in(units.orMetric())));
        TargetFile.write(target, sheet, force);
        out.println(Printed.line("Wrote " + target));
    }
}
