package cornerbook.app.cli;

import cornerbook.words.Reader;
import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.calibration.CalibrationPage;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Writes the page that shows whether the forecasts keep what they promise. */
@CommandLine.Command(
        name = "calibrate",
        description = "Write a page with pictures that shows whether the forecasts keep what they promise.")
final class Calibrate implements Runnable {
    private final PrintWriter out;

    @CommandLine.Option(
            names = "--to",
            paramLabel = "FOLDER",
            required = true,
            description = "Folder to write calibration.md and its pictures into.")
    private Path target = Path.of("");

    @CommandLine.Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "Folder of the book to look back on; the invented shop if not given.")
    private @Nullable Path data;

    Calibrate(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        TargetFile.refuse(target.resolve("calibration.md"), true);
        var today = LocalDate.now(ZoneId.systemDefault());
        var folder = data;
        List<CarHistory> cars;
        String name;
        if (folder == null) {
            cars = DemoShop.histories(today);
            name = DemoShop.NAME;
        } else {
            try (var book = new BookFolder(folder).openExisting()) {
                cars = book.listHistories();
            }
            name = "The book in " + folder;
        }
        var files = CalibrationPage.files(cars, name, today, Reader.DEFAULT);
        files.forEach((file, text) -> TargetFile.write(target.resolve(file), text.getBytes(UTF_8), true));
        out.println(Printed.line("Wrote " + target.resolve("calibration.md")));
    }
}
