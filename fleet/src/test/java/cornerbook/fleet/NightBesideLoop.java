package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.sha2;

import com.sun.management.OperatingSystemMXBean;
import cornerbook.app.book.knowledge.InformingCars;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.CarShare;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.words.Language;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;

/**
 * A night beside the plain loop over the same cars, run by hand: {@code loop CARS}, {@code night CARS NEW-FOLDER}, or {@code make
 * NUMBER NEW-FOLDER}, which invents cars into Parquet files. Cars are a folder of visit files or of Parquet files, or a number: so many are then invented in the job, in each pass.
 * The loop keeps no car in memory either, reads each twice, learns from the same cars, and writes nothing.
 */
final class NightBesideLoop {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    /** As the night makes them. */
    private static final int AT_ONCE = 100;

    private static final double NANOSECONDS_PER_SECOND = 1e9;

    private NightBesideLoop() {}

    public static void main(String[] words) throws IOException {
        var machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long begun = System.nanoTime();
        long cars = switch (words[0]) {
            case "loop" -> loop(texts(words[1]));
            case "make" -> make(Integer.parseInt(words[1]), words[2]);
            default -> night(words[1], words[2]);
        };
        System.out.printf(
                Locale.ROOT,
                "%s of %s: %d cars, %.1f s by the clock, %.1f s of processor time with the start of the program, at most %d MB resident%n",
                words[0],
                words[1],
                cars,
                (System.nanoTime() - begun) / NANOSECONDS_PER_SECOND,
                machine.getProcessCpuTime() / NANOSECONDS_PER_SECOND,
                mostResidentMegabytes());
    }

    private static long mostResidentMegabytes() throws IOException {
        try (var lines = Files.lines(Path.of("/proc/self/status"))) {
            return lines.filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
                    .findFirst()
                    .orElse(0);
        }
    }

    private static boolean isNumber(String cars) {
        return cars.matches("\\d+");
    }

    /** All cars anew each time that it is asked. */
    private static Supplier<Stream<String>> texts(String cars) throws IOException {
        if (isNumber(cars)) {
            int all = Integer.parseInt(cars);
            return () -> IntStream.iterate(0, from -> from < all, from -> from + AT_ONCE)
                    .boxed()
                    .flatMap(from -> DemoShop.histories(DAY, from, Math.min(all, from + AT_ONCE)))
                    .map(VisitFile::write);
        }
        List<Path> files;
        try (var found = Files.list(Path.of(cars))) {
            files = found.sorted().toList();
        }
        if (files.stream().anyMatch(file -> file.toString().endsWith(".parquet"))) {
            return () -> ofParquet(cars);
        }
        return () -> files.stream().map(NightBesideLoop::text);
    }

    /** Row after row by DuckDB, which the loop reads from as it would from any file. */
    private static Stream<String> ofParquet(String folder) {
        try {
            var connection = DriverManager.getConnection("jdbc:duckdb:");
            var statement = connection.createStatement();
            statement.execute("set threads = 1");
            var rows = statement.executeQuery("select visit_file from read_parquet('%s/*.parquet')".formatted(folder));
            return Stream.generate(() -> next(rows))
                    .takeWhile(Optional::isPresent)
                    .map(Optional::get)
                    .onClose(() -> close(connection));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Optional<String> next(ResultSet rows) {
        try {
            return rows.next() ? Optional.of(rows.getString(1)) : Optional.empty();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void close(Connection connection) {
        try {
            connection.close();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static long make(int cars, String target) throws IOException {
        try (var spark = Fleet.session(new SparkConf())) {
            Night.write(MadeCars.of(spark, DAY, cars), new org.apache.hadoop.fs.Path(target));
        }
        return cars;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Dataset<Row> lines(SparkSession spark, String cars) {
        return isNumber(cars)
                ? MadeCars.of(spark, DAY, Integer.parseInt(cars))
                        .select(
                                lit("made").as(CarLines.FILE),
                                lit(null).cast("string").as(CarLines.SITE),
                                col(CarLines.TEXT),
                                lit(null).cast("string").as(CarLines.UNREAD),
                                sha2(col(CarLines.TEXT), 256).as(CarLines.DIGEST))
                : CarLines.read(spark, cars);
    }

    private static long night(String cars, String target) throws IOException {
        try (var spark = Fleet.session(new SparkConf())) {
            return new Night(DAY, null, Language.ENGLISH, InformingCars.OF_A_KIND)
                    .run(spark, lines(spark, cars), target)
                    .judged();
        }
    }

    private static long loop(Supplier<Stream<String>> texts) {
        var seen = new LinkedHashMap<String, Set<InformingCars.Kind>>();
        var shares = new LinkedHashMap<String, CarShare>();
        texts.get().map(NightBesideLoop::read).forEach(car -> {
            var id = car.vehicle().id();
            seen.put(id, Look.kinds(car));
            shares.put(id, CarShare.of(car));
        });
        var chosen = new LinkedHashSet<>(InformingCars.choose(seen, InformingCars.OF_A_KIND));
        var ofChosen = new ArrayList<CarShare>();
        shares.forEach((id, share) -> {
            if (chosen.contains(id)) {
                ofChosen.add(share);
            }
        });
        var assessor = new Assessor(LimitsFile.load()).with(Learner.sum(ofChosen, DAY));
        long needs = texts.get()
                .map(NightBesideLoop::read)
                .mapToLong(car -> assessor.outcome(car, car.visits().getLast().id())
                        .needs()
                        .size())
                .sum();
        System.out.println(needs + " needs of cars; learned from " + ofChosen.size() + " cars");
        return seen.size();
    }

    private static CarHistory read(String text) {
        return ((VisitFile.Read) VisitFile.read(text, DAY)).history();
    }
}
