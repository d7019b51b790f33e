package cornerbook.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.calibration.CalibrationPage;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.car.CarHistory;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Writes the page that shows whether the forecasts keep what they promise. */
@CommandLine.Command(name = "calibrate", description = "verb-calibrate")
final class Calibrate implements Runnable {
    private static final int FEWEST = 10;
    private static final int MOST = 100_000;

    private final Terminal terminal;

    @CommandLine.Option(
            names = "--to",
            paramLabel = "${bundle:label-folder}",
            required = true,
            descriptionKey = "option-calibrate-to")
    private Path target = Path.of("");

    @CommandLine.Option(
            names = "--data",
            paramLabel = "${bundle:label-folder}",
            descriptionKey = "option-calibrate-data")
    private @Nullable Path data;

    @CommandLine.Option(
            names = "--cars",
            paramLabel = "${bundle:label-count}",
            descriptionKey = "option-calibrate-cars")
    private int simulated = CalibrationPage.CARS;

    Calibrate(Terminal terminal) {
        this.terminal = terminal;
    }

    private void checkCount() {
        try {
            Range.check(Said.verbatim("--cars"), simulated, FEWEST, MOST, "");
        } catch (Refused refused) {
            throw new CommandFailure(CommandFailure.INPUT_REFUSED, Refused.said(refused));
        }
    }

    @Override
    public void run() {
        checkCount();
        TargetFile.refuse(target.resolve("calibration.md"), true);
        var folder = data;
        List<CarHistory> cars;
        String name;
        if (folder == null) {
            cars = DemoShop.histories(LocalDate.now(ZoneId.systemDefault()));
            name = DemoShop.NAME;
        } else {
            try (var book = new BookFolder(folder).openExisting()) {
                cars = book.cars().listHistories();
            }
            name = terminal.reader().say(new CliSaid.BookIn(folder.toString()));
        }
        var files = CalibrationPage.files(simulated, cars, LimitsFile.load(), name, terminal.reader());
        files.forEach((file, text) -> TargetFile.write(target.resolve(file), text.getBytes(UTF_8), true));
        terminal.say(new CliSaid.Wrote(target.resolve("calibration.md").toString()));
    }
}
