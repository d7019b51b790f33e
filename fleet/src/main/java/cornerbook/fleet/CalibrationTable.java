package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;

import cornerbook.app.book.knowledge.ShareBytes;
import cornerbook.app.calibration.KeptPromises;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.CarShare;
import cornerbook.core.assess.Learner;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.StreamSupport;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import scala.reflect.ClassTag;

/**
 * Whether forecasts at past visits kept what they promised, as the page on calibration has it of a book: of some cars every second one
 * is forecast from what the others taught, and the other way round.
 */
final class CalibrationTable {
    /** What each of them teaches is on one machine at once. */
    static final int MOST = 10_000;

    static final StructType CALIBRATION = new StructType()
            .add("figure", DataTypes.StringType)
            .add("value", DataTypes.DoubleType)
            .add("standard_error", DataTypes.DoubleType)
            .add("asked_from", DataTypes.DoubleType)
            .add("asked_to", DataTypes.DoubleType)
            .add("cars", DataTypes.IntegerType);

    private static final StructType SCORED = new StructType()
            .add(CarLines.DIGEST, DataTypes.StringType)
            .add("numbers", new ArrayType(DataTypes.DoubleType, false));

    private CalibrationTable() {}

    /**
     * What goes to other machines.
     *
     * @param half 0 or 1, by the digest of the car's file
     * @param taught what the cars of each half teach
     */
    private record Halves(Map<String, Integer> half, List<JudgedBy> taught) implements Serializable {
        Assessor assessor(int ofHalf) {
            return new Assessor(LimitsFile.load()).with(taught.get(1 - ofHalf).read());
        }
    }

    /**
     * The figures of so many cars, which have to do with nothing but the ids that they happen to have.
     *
     * @param looked rows of {@link Look} with nothing wrong
     * @param lines of {@link CarLines}
     * @param cars how many at most
     */
    static Dataset<Row> of(Dataset<Row> looked, Dataset<Row> lines, int cars, LocalDate day) {
        var spark = looked.sparkSession();
        var chosen = looked
                .orderBy(Look.SCATTERED, Look.CAR)
                .limit(cars)
                .select(Look.CAR, CarLines.DIGEST, Look.SHARE)
                .collectAsList()
                .stream()
                .sorted(Comparator.comparing(row -> row.<String>getAs(Look.CAR)))
                .toList();
        var half = new HashMap<String, Integer>();
        var shares = List.of(new ArrayList<CarShare>(), new ArrayList<CarShare>());
        for (int place = 0; place < chosen.size(); place++) {
            half.put(chosen.get(place).getAs(CarLines.DIGEST), place % 2);
            shares.get(place % 2).add(ShareBytes.share(chosen.get(place).getAs(Look.SHARE)));
        }
        var taught = shares.stream()
                .map(each -> JudgedBy.of(Learner.sum(each, day), null))
                .toList();
        var scored = scored(spark, lines, new Halves(half, taught), day);
        return spark.createDataFrame(
                KeptPromises.of(chosen.stream()
                                .map(row -> scored.get(row.<String>getAs(CarLines.DIGEST)))
                                .filter(Objects::nonNull))
                        .stream()
                        .map(kept -> RowFactory.create(
                                kept.name(),
                                kept.value(),
                                kept.standardError(),
                                kept.low(),
                                kept.high(),
                                chosen.size()))
                        .toList(),
                CALIBRATION);
    }

    private static Map<String, List<Double>> scored(
            SparkSession spark, Dataset<Row> lines, Halves halves, LocalDate day) {
        var digests = spark.createDataset(List.copyOf(halves.half().keySet()), Encoders.STRING())
                .toDF(CarLines.DIGEST);
        var sent = spark.sparkContext().broadcast(halves, ClassTag.apply(Halves.class));
        var scored = new HashMap<String, List<Double>>();
        Night.only(lines, digests)
                .mapPartitions(scoring(sent, day), Encoders.row(SCORED))
                .select(col(CarLines.DIGEST), col("numbers"))
                .collectAsList()
                .forEach(row -> scored.put(row.getAs(CarLines.DIGEST), row.getList(1)));
        return scored;
    }

    private static MapPartitionsFunction<Row, Row> scoring(Broadcast<Halves> halves, LocalDate day) {
        return lines -> {
            var assessors = List.of(halves.value().assessor(0), halves.value().assessor(1));
            return StreamSupport.stream(Spliterators.spliteratorUnknownSize(lines, Spliterator.ORDERED), false)
                    .map(line -> {
                        String digest = line.getAs(CarLines.DIGEST);
                        var assessor = assessors.get(
                                Objects.requireNonNull(halves.value().half().get(digest)));
                        var read = (VisitFile.Read) VisitFile.read(line.<String>getAs(CarLines.TEXT), day);
                        return RowFactory.create(
                                digest,
                                KeptPromises.ofCar(assessor, read.history()).toArray());
                    })
                    .iterator();
        };
    }
}
