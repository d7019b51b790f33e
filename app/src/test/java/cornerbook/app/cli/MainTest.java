package cornerbook.app.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.log.Log;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.words.Reader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

class MainTest {
    @TempDir
    private Path folder;

    private final CarHistory history =
            DemoShop.histories(LocalDate.now(ZoneId.systemDefault())).getLast();
    private Path file;
    private Path broken;

    private record Outcome(int exitCode, String out, String err) {}

    private static Outcome run(Object... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exitCode = Main.run(
                Map.of(),
                new PrintWriter(out),
                new PrintWriter(err),
                List.of(arguments).stream().map(Object::toString).toArray(String[]::new));
        return new Outcome(exitCode, out.toString(), err.toString());
    }

    private static void assertRefused(Outcome outcome, int exitCode, String part) {
        assertThat(outcome.exitCode()).as(outcome.err()).isEqualTo(exitCode);
        assertThat(outcome.err()).contains(part).doesNotContain("\tat ").doesNotContain("Exception");
        assertThat(outcome.err().strip().lines()).isNotEmpty().allMatch(line -> line.endsWith("."));
        assertThat(outcome.out()).isEmpty();
    }

    @Test
    void faultIsToldWithItsIdAndWhereTheLogIs() throws IOException {
        Log.keepIn(folder);
        var err = new StringWriter();
        var writer = new PrintWriter(err, true);
        assertThat(Main.report(new IllegalStateException("Ida Invented"), "learn", Reader.DEFAULT, writer))
                .isEqualTo(1);
        var id = err.toString().replaceAll("(?s).*\\(fault ([0-9a-f]{8})\\).*", "$1");
        assertThat(err.toString())
                .contains(folder.resolve("log/cornerbook.jsonl").toString())
                .doesNotContain("Exception", "Ida");
        assertThat(Files.readString(folder.resolve("log/cornerbook.jsonl")))
                .contains(id, "running learn", "MainTest.java")
                .doesNotContain("Ida");
    }

    @Test
    void whatCannotBeKeptIsRefusedInEveryParameter() {
        for (var text : List.of("Garage\u0000", "Garage\ud800", "Garage\u0007")) {
            assertRefused(run("handover", file, "--shop", text), 2, "stands the character U+");
        }
    }

    private List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(each -> each.getFileName().toString()).sorted().toList();
        }
    }

    @BeforeEach
    void writeFiles() throws IOException {
        file = Files.writeString(folder.resolve("visit.json"), VisitFile.write(history));
        broken = Files.writeString(folder.resolve("broken.json"), "{\"format\": \"\u001b[31m\"}");
    }

    @Test
    void assessPrintsFindingsAndWhatTheyRestOn() {
        var outcome = run("assess", file, "--why");
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out())
                .contains(history.vehicle().plate())
                .contains("source: ")
                .contains("Next visit: ");
    }

    @Test
    void dataSheetsAreKeptListedAndPrintedAllOrNone() throws IOException {
        var example = Path.of("../docs/kinds/fjordling-volta.json");
        var data = folder.resolve("kinds");
        assertRefused(run("kinds", example, broken, "--data", data), 3, "expected JSON");
        assertThat(Files.exists(data)).as("nothing was kept").isFalse();
        assertThat(run("kinds", example, "--data", data).out()).startsWith("Kept the data sheet Fjordling Volta");
        assertThat(run("kinds", "--data", data).out()).startsWith("Fjordling Volta (VIN XFJVT3E4*T)");
        var printed = Files.writeString(
                folder.resolve("printed.json"),
                run("kinds", "--export", "Fjordling Volta", "--data", data).out());
        assertThat(run("kinds", printed, "--data", data).exitCode()).isZero();
        assertRefused(run("kinds", "--export", "Fjordling", "--data", data), 4, "no data sheet");
    }

    @Test
    void assessSpeaksPlainWordsAndKeepsToTheWidth() {
        for (int width : List.of(60, 100)) {
            System.setProperty("picocli.usage.width", String.valueOf(width));
            try {
                var outcome = run("assess", file, "--why");
                assertThat(outcome.out().lines()).allMatch(line -> line.length() <= width);
                assertThat(outcome.out().lines().mapToInt(String::length).max().orElseThrow())
                        .isGreaterThan(width - 15);
                var words = outcome.out().replaceAll("\\s+", " ");
                var assessment = new Assessor(LimitsFile.load())
                        .assess(history, history.visits().getLast().id());
                assertThat(assessment.findings())
                        .isNotEmpty()
                        .allMatch(finding -> words.contains(
                                Reader.DEFAULT.say(finding.plainWords()).replaceAll("[\\s\u00a0\u202f]+", " ")));
            } finally {
                System.clearProperty("picocli.usage.width");
            }
        }
    }

    @Test
    void helpListsTheExitCodes() {
        assertThat(run("--help").out()).contains("Exit codes:").contains("5   A file, a backup or a port");
        assertThat(run("restore", "--help").out()).contains("Exit codes:").contains("4   The book refuses");
    }

    @Test
    void controlCharactersInDataAreEscapedInJsonAndLeftOutOfText() throws IOException {
        var data = folder.resolve("book");
        var name = "Lumen\u009b31m\u202e";
        var steering = Files.writeString(
                folder.resolve("steering.json"),
                Files.readString(file).replace(history.vehicle().name(), name));
        run("import", steering, "--data", data);
        var tools = history.visits().getFirst().card().tools();
        for (var outcome :
                List.of(run("export", history.vehicle().id(), "--data", data), run("assess", steering, "--json"))) {
            assertThat(outcome.out()).doesNotContain("\u009b", "\u202e");
            var json = JsonMapper.builder().build().readTree(outcome.out());
            assertThat(json.findValuesAsString("name"))
                    .filteredOn(
                            each -> tools.stream().noneMatch(tool -> tool.name().equals(each)))
                    .isSubsetOf(name, history.customer().name());
            assertThat(json.findValuesAsString("name").contains(name)
                            || json.path("vehicleName").stringValue("").equals(name))
                    .isTrue();
        }
        assertThat(run("assess", steering).out()).startsWith("Lumen31m, ");
    }

    @Test
    void assessAnswersInJson() {
        var first = history.visits().getFirst().id();
        var outcome = run("assess", file, "--json", "--visit", first);
        assertThat(outcome.exitCode()).isZero();
        assertThat(JsonMapper.builder().build().readTree(outcome.out()).isObject())
                .isTrue();
        assertThat(outcome.out()).contains(first);
    }

    @Test
    void badInputIsRefusedWithItsPlaceAndWithoutControlCharacters() {
        var outcome = run("assess", broken);
        assertRefused(outcome, 3, "broken.json");
        assertThat(outcome.err()).doesNotContain("\u001b");
        assertRefused(run("assess", file, "--visit", "none"), 3, "has no visit none");
        assertRefused(run("assess", folder.resolve("absent.json")), 5, "absent.json");
    }

    @Test
    void wrongUsageIsTold() {
        assertRefused(run("assess"), 2, "FILE");
        assertRefused(run("polish"), 2, "polish");
        assertRefused(run("export", "--data", folder), 2, "--all");
        assertRefused(run("serve", "--port", "many"), 2, "many");
        assertRefused(run(), 2, "subcommand");
    }

    @Test
    void theSheetIsWrittenOnceAndOverwrittenOnlyByForce() throws IOException {
        assertThat(run("handover", file).exitCode()).isZero();
        var sheet = folder.resolve("visit.pdf");
        assertThat(Files.readString(sheet, ISO_8859_1)).startsWith("%PDF-");
        Files.writeString(sheet, "mine");
        assertRefused(run("handover", file), 5, "--force");
        assertThat(sheet).hasContent("mine");
        assertThat(run("handover", file, "-o", sheet, "--force").exitCode()).isZero();
        assertThat(Files.size(sheet)).isGreaterThan(1000);
        assertThat(names()).containsExactly("broken.json", "visit.json", "visit.pdf");
        assertRefused(run("handover", broken, "-o", folder.resolve("b.pdf")), 3, "broken.json");
        assertRefused(run("handover", file, "-o", folder.resolve("no/b.pdf")), 5, "There is no folder");
        assertThat(names()).containsExactly("broken.json", "visit.json", "visit.pdf");
    }

    @Test
    void theBookLearnsAndShowsHowWellItForecasts() {
        var data = folder.resolve("data");
        assertRefused(run("learn", "--data", data), 4, "There is no book");
        run("import", file, "--data", data);
        assertThat(run("learn", "--data", data).out()).contains("mm per 1 000 km, from", "km per day, from 1 car");
        assertThat(run("learn", "--data", data, "--json").out()).contains("\"FRONT_RATE\"");

        assertRefused(run("calibrate"), 2, "--to");
        assertRefused(run("calibrate", "--to", folder, "--cars", "-1"), 3, "--cars");
        assertRefused(run("calibrate", "--to", folder.resolve("no"), "--data", data), 5, "There is no folder");
        assertThat(run("calibrate", "--to", folder, "--data", data, "--cars", "10")
                        .exitCode())
                .isZero();
        assertThat(folder.resolve("calibration.md")).content().contains("What is off");
    }

    @Test
    void importIsAllOrNothing() {
        var data = folder.resolve("book");
        assertRefused(run("import", file, broken, "--data", data), 3, "broken.json");
        assertThat(data).doesNotExist();
        assertThat(run("import", file, "--data", data).exitCode()).isZero();
        assertRefused(run("import", file, "--data", data), 4, "in the book already");
    }

    @Test
    void anOdometerThatItsCarCanHardlyHaveIsAskedAbout() throws IOException {
        var data = folder.resolve("book");
        var history = DemoShop.histories(LocalDate.of(2026, 11, 25)).getFirst();
        var last = history.visits().getLast();
        var visits = new ArrayList<>(history.visits());
        visits.set(visits.size() - 1, last.withOdometer(last.date(), 10 * last.odometerKm()));
        var odd = Files.writeString(
                folder.resolve("odd.json"),
                VisitFile.write(new CarHistory(history.vehicle(), history.customer(), history.sets(), visits)));
        assertRefused(run("import", odd, "--data", data), 3, "/visits/" + (visits.size() - 1) + "/odometer");
        assertThat(run("import", odd, "--data", data).err()).contains("a digit too many", "--odometers-are-so");
        assertThat(data).doesNotExist();
        assertThat(run("import", odd, "--data", data, "--odometers-are-so").exitCode())
                .isZero();
    }

    @Test
    void whatIsImportedComesOutTheSame() throws IOException {
        var data = folder.resolve("book");
        assertThat(run("import", file, "--data", data, "--json").out())
                .contains(history.vehicle().id());
        assertThat(run("export", history.vehicle().id(), "--data", data).out().strip())
                .isEqualTo(Files.readString(file).strip());
        var target = Files.createDirectory(folder.resolve("out"));
        assertThat(run("export", "--all", "-o", target, "--data", data).exitCode())
                .isZero();
        assertThat(target.resolve(history.vehicle().id() + ".json")).hasSameTextualContentAs(file);
        assertRefused(run("export", "--all", "-o", target, "--data", data), 5, "--force");
        assertRefused(run("export", "none", "--data", data), 4, "no car none");
    }

    @Test
    void theTablesAreWrittenIntoAFolderOfTheirOwn() throws IOException {
        var data = folder.resolve("book");
        run("import", file, "--data", data);
        var tables = folder.resolve("tables");
        assertThat(run("export", "--csv", tables, "--data", data).out()).contains("readings.csv");
        assertThat(tables.resolve("readings.csv"))
                .content()
                .startsWith("car,visit,reading,")
                .contains("TREAD_DEPTH");
        assertThat(Files.readString(tables.resolve("cars.csv")))
                .doesNotContain(history.vehicle().plate());
        assertRefused(run("export", "--csv", tables, "--data", data), 5, "holds something");
        assertRefused(run("export", "--parquet", file, "--data", data), 5, "holds something");
        assertRefused(run("export", "--parquet", folder.resolve("no/tables"), "--data", data), 5, "There is no folder");
        assertRefused(run("export", "--parquet", tables, "--csv", tables, "--data", data), 2, "Name one of these");
        assertRefused(run("export", "--csv", folder.resolve("b"), "--force", "--data", data), 2, "made new");
        assertRefused(run("export", "--all", "--names", "-o", folder, "--data", data), 2, "--names goes with");
        assertThat(run("export", "--csv", folder.resolve("named"), "--names", "--data", data)
                        .exitCode())
                .isZero();
        assertThat(folder.resolve("named/cars.csv"))
                .content()
                .contains(history.vehicle().plate());
    }

    @Test
    void aBackupMakesTheSameBookAgain() {
        var data = folder.resolve("book");
        var copy = folder.resolve("copy.sqlite");
        var second = folder.resolve("second");
        run("import", file, "--data", data);
        assertThat(run("check", "--data", data, "--json").out()).contains("\"sound\":true");
        assertThat(run("backup", copy, "--data", data).exitCode()).isZero();
        assertRefused(run("backup", copy, "--data", data), 5, "is there already");
        assertThat(run("restore", copy, "--data", second).exitCode()).isZero();
        assertThat(run("export", history.vehicle().id(), "--data", second).out())
                .isEqualTo(run("export", history.vehicle().id(), "--data", data).out());
        assertRefused(run("restore", copy, "--data", second), 4, "second");
        assertRefused(run("restore", folder.resolve("absent"), "--data", folder.resolve("third")), 5, "absent");
        var moved = run("move", "--to", folder.resolve("moved"), "--data", second);
        assertThat(moved.exitCode()).isZero();
        assertThat(moved.out()).contains("The book is in " + folder.resolve("moved") + " now: ");
        assertRefused(run("move", "--to", folder.resolve("moved"), "--data", second), 5, "has a book already");
        assertRefused(run("move", "--to", folder.resolve("fourth"), "--data", folder.resolve("absent")), 4, "absent");
        assertRefused(run("check", "--data", folder.resolve("third")), 4, "There is no book");
        assertThat(folder.resolve("third")).doesNotExist();
    }

    @Test
    void aPortInUseIsToldAndLeavesNoNewBook() throws IOException {
        try (var taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            for (var verb : List.of("serve", "demo")) {
                assertRefused(run(verb, "--port", taken.getLocalPort(), "--data", folder.resolve("book")), 5, "Port");
                assertRefused(run(verb, "--port", "70000", "--data", folder.resolve("book")), 5, "70000");
            }
        }
        assertThat(folder.resolve("book")).doesNotExist();
    }

    @Test
    void demoRefusesABookThatIsNotInvented() throws IOException {
        var data = folder.resolve("book");
        var real = Files.readString(file).replace(history.vehicle().id(), "one-of-ours");
        run("import", Files.writeString(folder.resolve("real.json"), real), "--data", data);
        assertRefused(run("demo", "--port", 0, "--data", data), 4, "not of the invented shop");
        assertThat(run("export", "one-of-ours", "--data", data).exitCode()).isZero();
    }

    @Test
    void aFolderWithoutABookHasNoneMade() throws IOException {
        var empty = Files.createDirectory(folder.resolve("empty"));
        assertRefused(run("check", "--data", empty), 4, "There is no book");
        assertThat(empty).isEmptyDirectory();
    }

    @Test
    void anUnsoundBackupAndABackupWithoutAPlaceAreRefused() {
        var data = folder.resolve("book");
        run("import", file, "--data", data);
        assertRefused(run("restore", broken, "--data", folder.resolve("new")), 5, "broken.json");
        assertThat(folder.resolve("new")).doesNotExist();
        assertRefused(run("backup", folder.resolve("no/copy"), "--data", data), 5, "There is no folder");
    }

    @Test
    void aBookOnAServerIsNamedWithoutItsPassword() {
        var address = "jdbc:postgresql://127.0.0.1:1/shop";
        var outcome = run("check", "--data", address + "?password=secret");
        assertRefused(outcome, 4, address + " cannot be reached");
        assertThat(outcome.err()).doesNotContain("secret");
        assertRefused(run("restore", file, "--data", address + "?password=secret"), 2, address + " is on a server");
    }

    @Test
    void anImportTellsWhichCustomerItUpdates() throws IOException {
        var data = folder.resolve("book");
        run("import", file, "--data", data);
        var customer = history.customer();
        var second = VisitFile.write(new CarHistory(
                        history.vehicle(),
                        new Customer(customer.id(), customer.name(), "555 0199", customer.email()),
                        List.of(),
                        List.of()))
                .replace(history.vehicle().id(), "second");
        assertThat(run("import", Files.writeString(folder.resolve("second.json"), second), "--data", data)
                        .out())
                .contains("Imported ")
                .contains("Updated customer " + customer.id())
                .contains("phone 555 0199");
    }

    @Test
    void demoServesTheInventedShopUntilItIsStopped() throws Exception {
        var out = new StringWriter();
        var thread = Thread.ofPlatform()
                .start(() -> Main.run(
                        Map.of(),
                        new PrintWriter(out),
                        new PrintWriter(new StringWriter()),
                        "demo",
                        "--port",
                        "0",
                        "--data",
                        folder.resolve("demo").toString()));
        while (thread.isAlive() && !out.toString().contains("invented")) {
            Thread.sleep(20);
        }
        thread.interrupt();
        thread.join();
        assertThat(out.toString())
                .containsPattern("http://127\\.0\\.0\\.1:[0-9]+\n")
                .contains("invented");
    }

    @Test
    void completionIsAScriptThatKnowsTheVerbs() {
        assertThat(run("completion").out()).contains("cornerbook").contains("handover");
    }
}
