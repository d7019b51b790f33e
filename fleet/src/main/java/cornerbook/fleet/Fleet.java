package cornerbook.fleet;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.knowledge.InformingCars;
import cornerbook.app.cli.arguments.LanguageChoice;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.exchange.ClimateFile;
import cornerbook.app.knowledge.SigningKey;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.SparkSession;
import org.jspecify.annotations.Nullable;

/** Runs a night, on this machine or where {@code spark-submit} says. */
public final class Fleet {
    private static final int USAGE = 2;
    private static final int INPUT_REFUSED = 3;
    /** As a cluster does: a task that fails is done again. */
    private static final int TRIES = 4;

    private static final double NANOSECONDS_PER_SECOND = 1e9;

    private Fleet() {}

    /** Runs a night and ends the process with its exit code. */
    public static void main(String[] words) throws IOException {
        Locale.setDefault(Locale.ROOT);
        var language = LanguageChoice.of(System.getenv(), words);
        var reader = new Reader(language, UnitSystem.METRIC, ZoneId.systemDefault());
        try {
            run(language, new Terminal(reader, new PrintWriter(System.out, true, UTF_8)), words);
        } catch (Refused refused) {
            new Terminal(reader, new PrintWriter(System.err, true, UTF_8)).say(refused.said());
            System.exit(refused.said() instanceof FleetSaid.Usage ? USAGE : INPUT_REFUSED);
        }
    }

    private static void run(Language language, Terminal terminal, String... words) throws IOException {
        var asked = Arguments.parse(LocalDate.now(ZoneId.systemDefault()), words);
        var climate = climate(asked.climate());
        var keyFile = asked.key();
        var key = keyFile == null ? null : SigningKey.read(Path.of(keyFile));
        var cars = asked.cars();
        long begun = System.nanoTime();
        try (var spark = session(new SparkConf())) {
            if (cars == null) {
                make(spark, asked);
                terminal.say(new FleetSaid.Made(asked.make(), asked.to()));
                return;
            }
            var since = asked.since();
            var last = since == null ? null : LastNight.read(spark, since.tables(), asked.day());
            boolean keepLearned = since != null && since.keepLearned();
            var counts = new Night(asked.day(), climate, language, InformingCars.OF_A_KIND, asked.calibrate(), key)
                    .run(spark, CarLines.read(spark, cars), last, keepLearned, asked.to());
            var time = Amount.of((System.nanoTime() - begun) / NANOSECONDS_PER_SECOND, "s");
            terminal.say(
                    last == null
                            ? new FleetSaid.Done(counts.judged(), counts.setAside(), time, asked.to())
                            : new FleetSaid.DoneSince(
                                    counts.judged(), counts.anew(), counts.setAside(), time, asked.to()));
        }
    }

    private static void make(SparkSession spark, Arguments asked) throws IOException {
        NewFolder.make(spark, asked.to(), folder -> {
            Night.write(MadeCars.of(spark, asked.day(), asked.make()), folder);
            return folder;
        });
    }

    /** Spark as it is configured from outside; where nobody did, in this process, on all its processors and at no port. */
    static SparkSession session(SparkConf configured) {
        if (!configured.contains("spark.master")) {
            int processors = Runtime.getRuntime().availableProcessors();
            configured
                    .setMaster("local[*,%s]".formatted(TRIES))
                    .setIfMissing("spark.ui.enabled", "false")
                    .setIfMissing("spark.driver.host", "localhost")
                    .setIfMissing("spark.driver.bindAddress", "127.0.0.1")
                    .setIfMissing("spark.sql.shuffle.partitions", String.valueOf(2 * processors));
        }
        // Days are days, whatever the place of the machine.
        configured.set("spark.sql.datetime.java8API.enabled", "true").set("spark.sql.session.timeZone", "UTC");
        // A visit file is small: as many go to one task as a task's megabytes hold.
        configured.setIfMissing("spark.sql.files.openCostInBytes", "16384");
        return SparkSession.builder().appName("Cornerbook").config(configured).getOrCreate();
    }

    private static @Nullable String climate(@Nullable String file) {
        if (file == null) {
            return null;
        }
        try {
            var text = Files.readString(Path.of(file));
            ClimateFile.parse(text);
            return text;
        } catch (IOException e) {
            throw new Refused(new FleetSaid.NoClimate(file));
        }
    }
}
