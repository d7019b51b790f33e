package cornerbook.fleet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.apache.spark.sql.functions.broadcast;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.explode;
import static org.apache.spark.sql.functions.row_number;
import static org.apache.spark.sql.functions.size;

import cornerbook.app.book.order.OrderList;
import cornerbook.app.exchange.ClimateFile;
import cornerbook.app.knowledge.KnowledgeFile;
import cornerbook.app.knowledge.SigningKey;
import cornerbook.core.assess.Learner;
import cornerbook.core.say.Refused;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.StreamSupport;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.function.MapFunction;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.expressions.Window;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;
import scala.reflect.ClassTag;

/**
 * One night over all cars, in two passes: a look at each, which sets aside what cannot be read and takes what the car teaches; and,
 * when the cars that tell most are summed, the judgement of each by what was learned. Which cars tell most is the rule of a book, so that any number of cars is learned
 * from in bounded time and memory. What comes out does not depend on how the cars are spread over machines, nor on a task that fails
 * and is done again.
 *
 * @param day the last that is not in the future
 * @param climate of the place, as a climate file; null where it is not known
 * @param language in which it is told why a car was set aside
 * @param ofAKind from how many cars on of a kind some may be left out in learning
 * @param calibrated of how many cars is told whether forecasts at their past visits kept their promise; 0 for none
 * @param key by which is signed what was learned, for the shops; null where nothing is signed
 */
record Night(
        LocalDate day,
        @Nullable String climate,
        Language language,
        int ofAKind,
        int calibrated,
        @Nullable SigningKey key) {
    /** More cars than these stand in the input twice by no mistake of single files. */
    static final int MOST_TWICE = 10_000;

    /** So many digests go to each machine; of more, the texts of all cars go where their digest is. */
    private static final int MOST_SENT = 200_000;

    /** What one pass leaves for the next, and nobody needs then. */
    private static final String BETWEEN = "between";

    /** What was learned, signed, as a shop's book takes it in. */
    static final String KNOWLEDGE = "knowledge.txt";

    private static final String WANTED = "wanted_digest";

    /** A car of this night with what it has to be judged by. */
    private static final StructType TODAY = new StructType()
            .add(Look.CAR, DataTypes.StringType)
            .add(CarLines.FILE, DataTypes.StringType)
            .add(CarLines.SITE, DataTypes.StringType)
            .add(CarLines.DIGEST, DataTypes.StringType)
            .add(Judge.BASIS, DataTypes.StringType);

    private static final double NANOSECONDS_PER_SECOND = 1e9;

    private static final String PLACE = "place_in_kind";

    private static final StructType TWICE = new StructType()
            .add(CarLines.FILE, DataTypes.StringType)
            .add(CarLines.SITE, DataTypes.StringType)
            .add(CarLines.DIGEST, DataTypes.StringType)
            .add(Look.CAR, DataTypes.StringType)
            .add(Look.PROBLEMS, new ArrayType(Look.PROBLEM, false));

    /** A night that asks for no calibration, and signs nothing. */
    Night(LocalDate day, @Nullable String climate, Language language, int ofAKind) {
        this(day, climate, language, ofAKind, 0, null);
    }

    /** How many cars have findings, of how many these were reckoned this night, and how many were set aside. */
    record Counts(long judged, long anew, long setAside) {}

    /** A night of which nothing is taken over. */
    Counts run(SparkSession spark, Dataset<Row> lines, String folder) throws IOException {
        return run(spark, lines, null, false, folder);
    }

    /**
     * Judges cars and writes the tables into a new folder, which appears when they are whole.
     *
     * @param lines rows of {@link CarLines}; they are read once in each pass
     * @param last of which is taken over what did not move; null to reckon all
     * @param keepLearned whether cars are judged by what was learned in the last night, so that one with no news stays as it is
     * @throws Refused when the folder is there, or too many cars stand in the input twice
     */
    Counts run(SparkSession spark, Dataset<Row> lines, @Nullable LastNight last, boolean keepLearned, String folder)
            throws IOException {
        return NewFolder.make(spark, folder, unfinished -> write(spark, lines, last, keepLearned, unfinished));
    }

    private Counts write(
            SparkSession spark, Dataset<Row> given, @Nullable LastNight last, boolean keepLearned, Path folder)
            throws IOException {
        long begun = System.nanoTime();
        var files = folder.getFileSystem(spark.sparkContext().hadoopConfiguration());
        var between = new Path(folder, BETWEEN);
        var kept = new Path(folder, LastNight.KEPT);
        // A book goes on while the night reads: both passes read what the first has found.
        var lines = given.inputFiles().length > 0 ? given : kept(given, new Path(between, "lines"));
        var looked = kept(look(lines, last, between), new Path(kept, LastNight.LOOKED));
        var twice = twice(looked);
        JudgedBy judgedBy;
        ReportPage.@Nullable ForShops forShops = null;
        if (last != null && keepLearned) {
            judgedBy = last.judgedBy(climate);
        } else {
            var learned = learn(without(looked, twice));
            judgedBy = JudgedBy.of(learned.knowledge(), climate);
            if (key != null) {
                put(files, new Path(folder, KNOWLEDGE), learned.write(key));
                forShops = new ReportPage.ForShops(learned.extent(), key.publicKey());
            }
        }
        write(
                spark.createDataFrame(LearnedTable.of(judgedBy.read()), LearnedTable.LEARNED)
                        .coalesce(1),
                new Path(folder, "learned"));
        write(LastNight.row(spark, day, judgedBy), new Path(kept, LastNight.OF_NIGHT));
        var by = spark.sparkContext().broadcast(judgedBy, ClassTag.apply(JudgedBy.class));
        var clear = without(looked.where(size(col(Look.PROBLEMS)).equalTo(0)), twice);
        if (calibrated > 0) {
            write(
                    CalibrationTable.of(clear, lines, calibrated, day).coalesce(1),
                    new Path(folder, ReportPage.CALIBRATION));
        }
        var judging = judging(by, day, language);
        @Nullable Dataset<Row> wanted = null;
        @Nullable Dataset<Row> unmoved = null;
        if (last != null) {
            var today = kept(clear.mapPartitions(basing(by), Encoders.row(TODAY)), new Path(between, "today"));
            var before = last.judged();
            wanted = kept(
                    today.join(before, new String[] {CarLines.DIGEST, Judge.BASIS}, "left_anti"),
                    new Path(between, "wanted"));
            unmoved = today.join(
                            before.drop(Look.CAR, CarLines.FILE, CarLines.SITE),
                            new String[] {CarLines.DIGEST, Judge.BASIS})
                    .select(columns(Judge.JUDGED));
        }
        var reckoned =
                (wanted == null ? lines : only(lines, wanted)).mapPartitions(judging, Encoders.row(Judge.JUDGED));
        var judged = without(
                kept(unmoved == null ? reckoned : reckoned.union(unmoved), new Path(kept, LastNight.JUDGED)),
                twice.union(looked.where(
                                size(col(Look.PROBLEMS)).gt(0).and(col(Look.CAR).isNotNull()))
                        .select(Look.CAR)));
        var sound = judged.where(size(col(Look.PROBLEMS)).equalTo(0));
        write(sound.drop(Judge.HORIZONS, Judge.NEEDS, Look.PROBLEMS), new Path(folder, "cars"));
        write(
                sound.select(
                                col(Look.CAR),
                                col("visit"),
                                explode(col(Judge.HORIZONS)).as("each"))
                        .select(Look.CAR, "visit", "each.*"),
                new Path(folder, "horizons"));
        write(DemandTable.byWeek(sound).coalesce(1), new Path(folder, "demand"));
        write(DemandTable.until(sound, OrderList.usualFrom(day), usualUntil()).coalesce(1), new Path(folder, "order"));
        write(SiteTables.verdicts(sound).coalesce(1), new Path(folder, "verdicts"));
        write(SiteTables.risk(sound).coalesce(1), new Path(folder, "risk"));
        write(
                reasons(looked)
                        .union(reasons(judged))
                        .union(reasons(looked.join(broadcast(twice), Look.CAR)
                                .map(tellingTwice(language), Encoders.row(TWICE))))
                        .coalesce(1),
                new Path(folder, "set_aside"));
        if (last != null) {
            write(
                    ChangedTable.of(
                            read(spark, folder, "cars"),
                            read(spark, folder, "set_aside"),
                            last.table("cars"),
                            last.table("set_aside"),
                            last.isOfThisProgram()),
                    new Path(folder, "changed"));
        }
        long cars = sound.count();
        long anew = wanted == null
                ? cars
                : sound.join(wanted.select(Look.CAR), new String[] {Look.CAR}, "left_semi")
                        .count();
        var counts = new Counts(cars, anew, looked.count() - cars);
        files.delete(between, true);
        double seconds = (System.nanoTime() - begun) / NANOSECONDS_PER_SECOND;
        var reader = new Reader(language, UnitSystem.METRIC, ZoneOffset.UTC);
        put(
                files,
                new Path(folder, ReportPage.FILE),
                new ReportPage(spark, folder, reader)
                        .html(day, judgedBy.read(), counts, last, forShops, calibrated > 0, seconds));
        return counts;
    }

    private static void put(FileSystem files, Path file, String text) throws IOException {
        try (var out = files.create(file)) {
            out.write(text.getBytes(UTF_8));
        }
        // A folder of this machine gets a sum beside it, which would stand there as a file that nobody knows.
        files.delete(new Path(file.getParent(), "." + file.getName() + ".crc"), false);
    }

    /** Until when a shop of this place orders that names no day. */
    private LocalDate usualUntil() {
        return OrderList.usualUntil(day, Optional.ofNullable(climate).map(ClimateFile::parse));
    }

    /** Looks at all cars, or at those of which the last night has seen no such file. */
    private Dataset<Row> look(Dataset<Row> lines, @Nullable LastNight last, Path between) {
        if (last == null) {
            return lines.map(looking(day, language), Encoders.row(Look.LOOKED));
        }
        var files = kept(lines.select(CarLines.FILE, CarLines.SITE, CarLines.DIGEST), new Path(between, "files"));
        var seen = last.looked().drop(CarLines.FILE, CarLines.SITE);
        return only(lines, files.join(seen, new String[] {CarLines.DIGEST}, "left_anti"))
                .map(looking(day, language), Encoders.row(Look.LOOKED))
                .union(files.join(seen, new String[] {CarLines.DIGEST}).select(columns(Look.LOOKED)));
    }

    /** Lines whose digests are among those of others; a file that is no text has none. */
    static Dataset<Row> only(Dataset<Row> lines, Dataset<Row> others) {
        var digests = others.select(col(CarLines.DIGEST).as(WANTED)).distinct();
        boolean few = digests.limit(MOST_SENT + 1).count() <= MOST_SENT;
        return lines.join(
                few ? broadcast(digests) : digests, col(CarLines.DIGEST).eqNullSafe(col(WANTED)), "left_semi");
    }

    private static Column[] columns(StructType type) {
        return Arrays.stream(type.fieldNames()).map(functions::col).toArray(Column[]::new);
    }

    private static Dataset<Row> read(SparkSession spark, Path folder, String table) {
        return spark.read().parquet(new Path(folder, table).toString());
    }

    static void write(Dataset<Row> table, Path folder) {
        table.write().option("compression", "zstd").parquet(folder.toString());
    }

    /** The same rows from the disk, so that no car is judged twice. */
    private static Dataset<Row> kept(Dataset<Row> rows, Path folder) {
        write(rows, folder);
        return rows.sparkSession().read().parquet(folder.toString());
    }

    /** Ids that stand in the input more than once: which of their files is right nobody can tell. */
    private static Dataset<Row> twice(Dataset<Row> looked) {
        var twice = looked.where(col(Look.CAR).isNotNull())
                .groupBy(Look.CAR)
                .count()
                .where(col("count").gt(1))
                .select(Look.CAR)
                .limit(MOST_TWICE + 1)
                .cache();
        if (twice.count() > MOST_TWICE) {
            throw new Refused(new FleetSaid.ManyTwice(MOST_TWICE));
        }
        return twice;
    }

    private static Dataset<Row> without(Dataset<Row> cars, Dataset<Row> others) {
        // By name: both come from one table, whose column Spark would compare with itself.
        return cars.join(broadcast(others), new String[] {Look.CAR}, "left_anti");
    }

    private static Dataset<Row> reasons(Dataset<Row> cars) {
        return cars.select(
                        col(CarLines.FILE),
                        col(CarLines.SITE),
                        col(CarLines.DIGEST),
                        col(Look.CAR),
                        explode(col(Look.PROBLEMS)).as("each"))
                .select(CarLines.FILE, CarLines.SITE, CarLines.DIGEST, Look.CAR, "each.*");
    }

    /** What the cars that tell most teach, summed in the order of their ids. */
    private KnowledgeFile learn(Dataset<Row> looked) {
        var inKind = Window.partitionBy("kind.drive", "kind.season", "kind.tyre_model")
                .orderBy(col(Look.SCATTERED), col(Look.CAR));
        var chosen = looked.select(
                        col(Look.CAR),
                        col(Look.SCATTERED),
                        explode(col(Look.KINDS)).as("kind"))
                .withColumn(PLACE, row_number().over(inKind))
                .where(col(PLACE).leq(ofAKind))
                .select(Look.CAR)
                .distinct();
        var teaching = looked.join(chosen, Look.CAR).select(Teaching.COLUMNS).collectAsList().stream()
                .map(Teaching::of)
                .sorted(Comparator.comparing(Teaching::car))
                .toList();
        return KnowledgeFile.of(
                Teaching.extent(teaching, day),
                Learner.sum(() -> teaching.stream().map(Teaching::share).iterator(), day));
    }

    // What goes to other machines is made without a night around it.

    private static MapFunction<Row, Row> looking(LocalDate day, Language language) {
        return line -> Look.of(line, day, language);
    }

    private static MapPartitionsFunction<Row, Row> judging(Broadcast<JudgedBy> by, LocalDate day, Language language) {
        return lines -> {
            var judge = new Judge(by.value(), day, language);
            return StreamSupport.stream(Spliterators.spliteratorUnknownSize(lines, Spliterator.ORDERED), false)
                    .flatMap(line -> judge.of(line).stream())
                    .iterator();
        };
    }

    private static MapPartitionsFunction<Row, Row> basing(Broadcast<JudgedBy> by) {
        return looked -> {
            var basis = by.value().basis();
            return StreamSupport.stream(Spliterators.spliteratorUnknownSize(looked, Spliterator.ORDERED), false)
                    .map(car -> RowFactory.create(
                            car.getAs(Look.CAR),
                            car.getAs(CarLines.FILE),
                            car.getAs(CarLines.SITE),
                            car.getAs(CarLines.DIGEST),
                            basis.of(car.getList(car.fieldIndex(Look.MODELS)))))
                    .iterator();
        };
    }

    private static MapFunction<Row, Row> tellingTwice(Language language) {
        return looked -> {
            var reader = new Reader(language, UnitSystem.METRIC, ZoneOffset.UTC);
            String car = looked.getAs(Look.CAR);
            return RowFactory.create(
                    looked.getAs(CarLines.FILE),
                    looked.getAs(CarLines.SITE),
                    looked.getAs(CarLines.DIGEST),
                    car,
                    new Row[] {Look.problem("/vehicle/id", reader, new FleetSaid.Twice(car))});
        };
    }
}
