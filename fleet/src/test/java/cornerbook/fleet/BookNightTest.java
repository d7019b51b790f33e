package cornerbook.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.say.Refused;
import cornerbook.words.Language;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A night over a book in a real PostgreSQL, beside one over the visit files that this book gives. All cars are invented. */
class BookNightTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    private static final int CARS = 14;
    private static final Path INSTALLED = Path.of("/usr/lib/postgresql");

    @TempDir
    private Path folder;

    @Test
    void aBookHasTheNumbersOfItsVisitFiles() throws IOException, InterruptedException {
        var programs = programs();
        var data = Path.of(run("mktemp", "-d", "/tmp/cornerbook-fleet.XXXXXX").strip());
        int port = freePort();
        run(programs + "/initdb", "-D", data + "/data", "-U", "shop", "-A", "trust", "-E", "UTF8", "--locale=C");
        run(
                programs + "/pg_ctl",
                "-D",
                data + "/data",
                "-l",
                data + "/log",
                "-o",
                "-p %d -k %s -c listen_addresses=127.0.0.1 -c fsync=off".formatted(port, data),
                "-w",
                "start");
        try (var spark = Fleet.session(new SparkConf()
                .set("spark.sql.shuffle.partitions", "2")
                .set("spark.sql.codegen.wholeStage", "false"))) {
            sameNumbers(spark, "jdbc:postgresql://127.0.0.1:%d/postgres?user=shop".formatted(port));
            var nowhere = "jdbc:postgresql://127.0.0.1:%d/nowhere?user=shop".formatted(port);
            assertThatThrownBy(() -> CarLines.read(spark, nowhere)).isInstanceOf(Refused.class);
        } finally {
            run(programs + "/pg_ctl", "-D", data + "/data", "-m", "immediate", "-w", "stop");
            run("rm", "-rf", data.toString());
        }
    }

    private void sameNumbers(SparkSession spark, String address) throws IOException {
        var files = Files.createDirectory(folder.resolve("files"));
        try (var book = Book.onServer(address)) {
            book.records().addCars(DemoShop.histories(DAY, 0, CARS).toList());
            for (var car : book.cars().list()) {
                Files.writeString(
                        files.resolve(car.id() + ".json"),
                        VisitFile.write(book.records().find(car.id()).orElseThrow()));
            }
        }
        night(spark, CarLines.read(spark, address), "of-book");
        night(spark, CarLines.read(spark, files.toString()), "of-files");
        for (var table : List.of("cars", "horizons", "demand", "learned", "set_aside")) {
            assertThat(rows(spark, "of-book", table)).as(table).isEqualTo(rows(spark, "of-files", table));
        }
        assertThat(rows(spark, "of-book", "cars")).hasSize(CARS);
        aCarThatCannotBeReadIsSetAside(spark, address);
    }

    private void aCarThatCannotBeReadIsSetAside(SparkSession spark, String address) {
        try (var connection = DriverManager.getConnection(address);
                var statement = connection.createStatement()) {
            assertThat(statement.executeUpdate("update visit set visit_date = 'one day' where vehicle_id = 'demo-03'"))
                    .isPositive();
            night(spark, CarLines.read(spark, address), "of-damaged-book");
        } catch (SQLException | IOException e) {
            throw new AssertionError(e);
        }
        assertThat(rows(spark, "of-damaged-book", "cars")).hasSize(CARS - 1);
        assertThat(rows(spark, "of-damaged-book", "set_aside"))
                .singleElement(STRING)
                .contains("demo-03", "cannot be read from the book");
    }

    private void night(SparkSession spark, Dataset<Row> lines, String name) throws IOException {
        new Night(DAY, null, Language.ENGLISH, CARS)
                .run(spark, lines, folder.resolve(name).toString());
    }

    private List<String> rows(SparkSession spark, String night, String table) {
        return spark.read().parquet(folder.resolve(night).resolve(table).toString()).collectAsList().stream()
                .map(Row::toString)
                .sorted()
                .toList();
    }

    private static int freePort() throws IOException {
        try (var free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return free.getLocalPort();
        }
    }

    private static Path programs() throws IOException {
        try (var versions = Files.list(INSTALLED)) {
            return versions.map(version -> version.resolve("bin"))
                    .filter(programs -> Files.isExecutable(programs.resolve("initdb")))
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
        }
    }

    /** PostgreSQL does not run as root. */
    private static String run(String... command) throws IOException, InterruptedException {
        var whole = new ArrayList<String>();
        if (System.getProperty("user.name").equals("root")) {
            whole.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        whole.addAll(List.of(command));
        var said = Files.createTempFile("said", null);
        try {
            int exitCode = new ProcessBuilder(whole)
                    .directory(Path.of("/tmp").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start()
                    .waitFor();
            var words = Files.readString(said);
            if (exitCode != 0) {
                throw new IOException("%s ended with %d: %s".formatted(whole, exitCode, words));
            }
            return words;
        } finally {
            Files.delete(said);
        }
    }
}
