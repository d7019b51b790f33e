package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.size;

import cornerbook.app.limits.JudgeCode;
import cornerbook.core.say.Day;
import cornerbook.core.say.Refused;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;

/**
 * The tables of a night before, of which the next takes what did not move.
 *
 * @param day on which it was
 * @param program a digest of the judges that judged, with the form of what is kept
 * @param knowledge by which was judged, as {@link JudgedBy} has it
 */
record LastNight(SparkSession spark, String folder, LocalDate day, String program, String knowledge) {
    /** What a night is known by, one row. */
    static final StructType NIGHT = new StructType()
            .add("day", DataTypes.DateType)
            .add("program", DataTypes.StringType)
            .add("knowledge", DataTypes.StringType);

    /** What the next night takes over; who needs no such may delete it. */
    static final String KEPT = "for_next_night";

    /** Of what is kept for the next night. */
    private static final String FORM = "2";

    static final String LOOKED = "looked";
    static final String JUDGED = "judged";
    static final String OF_NIGHT = "night";

    /**
     * Of a folder that a night has written.
     *
     * @param today the day of the night that takes over
     * @throws Refused when there are no such tables, or they are of a later day
     */
    static LastNight read(SparkSession spark, String folder, LocalDate today) {
        var tables = new Path(new Path(folder, KEPT), OF_NIGHT);
        try {
            if (!tables.getFileSystem(spark.sparkContext().hadoopConfiguration())
                    .exists(new Path(tables, "_SUCCESS"))) {
                throw new Refused(new FleetSaid.NoNight(folder));
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new Refused(new FleetSaid.NoNight(folder));
        }
        var night = spark.read().schema(NIGHT).parquet(tables.toString()).first();
        LocalDate day = night.getAs("day");
        if (day.isAfter(today)) {
            throw new Refused(new FleetSaid.LaterNight(folder, new Day(day), new Day(today)));
        }
        return new LastNight(spark, folder, day, night.getAs("program"), night.getAs("knowledge"));
    }

    /** Writes what the next night knows this one by. */
    static Dataset<Row> row(SparkSession spark, LocalDate day, JudgedBy by) {
        return spark.createDataset(List.of(RowFactory.create(day, thisProgram(), by.knowledge())), Encoders.row(NIGHT));
    }

    private static String thisProgram() {
        return JudgeCode.digest() + "/" + FORM;
    }

    boolean isOfThisProgram() {
        return program.equals(thisProgram());
    }

    /** What was learned, when it is to be kept. */
    JudgedBy judgedBy(@Nullable String climate) {
        if (!isOfThisProgram()) {
            throw new Refused(new FleetSaid.OtherProgram(folder));
        }
        return new JudgedBy(knowledge, climate);
    }

    /** Cars that a look found nothing wrong with, once a file; none that another program looked at. */
    Dataset<Row> looked() {
        return sound(LOOKED).dropDuplicates(CarLines.DIGEST);
    }

    /** Cars that were judged, once a file and basis. */
    Dataset<Row> judged() {
        return sound(JUDGED).dropDuplicates(CarLines.DIGEST, Judge.BASIS);
    }

    /** A table as people read it. */
    Dataset<Row> table(String name) {
        return spark.read().parquet(new Path(folder, name).toString());
    }

    private Dataset<Row> sound(String name) {
        return table(KEPT + "/" + name)
                .where(size(col(Look.PROBLEMS)).equalTo(0))
                .where(isOfThisProgram() ? "true" : "false");
    }
}
