package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.is_valid_utf8;
import static org.apache.spark.sql.functions.sha2;
import static org.apache.spark.sql.functions.when;

import cornerbook.core.say.Refused;
import java.io.IOException;
import java.util.ArrayList;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;

/**
 * The cars to be judged, each as the text of its visit file: as {@code cornerbook export --all} writes them, a file each, or many in
 * the column {@link #TEXT} of Parquet files. None is looked into here.
 */
final class CarLines {
    /** Name of the file. */
    static final String FILE = "file";
    /** The visit file as it is written; null where it is no UTF-8. */
    static final String TEXT = "visit_file";
    /** SHA-256 of the text, hexadecimal. */
    static final String DIGEST = "digest";

    /** A folder is listed once; each file of a pattern would be listed by a task of its own. */
    private static final String ONLY = "pathGlobFilter";

    private static final int SHA_BITS = 256;

    private CarLines() {}

    /**
     * All cars of a folder.
     *
     * @param folder on any file system that Spark reads
     * @throws Refused when it cannot be read, or has neither form
     */
    static Dataset<Row> read(SparkSession spark, String folder) {
        var forms = new ArrayList<Dataset<Row>>();
        if (has(spark, folder, "json")) {
            forms.add(lines(
                    spark.read()
                            .option("wholetext", true)
                            .option(ONLY, "*.json")
                            .text(folder),
                    when(is_valid_utf8(col("value")), col("value"))));
        }
        if (has(spark, folder, "parquet")) {
            forms.add(lines(spark.read().option(ONLY, "*.parquet").parquet(folder), col(TEXT)));
        }
        return forms.stream().reduce(Dataset::union).orElseThrow(() -> new Refused(new FleetSaid.NoCars(folder)));
    }

    private static Dataset<Row> lines(Dataset<Row> read, Column text) {
        return read.select(col("_metadata.file_name").as(FILE), text.as(TEXT))
                .withColumn(DIGEST, sha2(col(TEXT), SHA_BITS));
    }

    private static boolean has(SparkSession spark, String folder, String ending) {
        try {
            var files = new Path(folder, "*." + ending);
            var found = files.getFileSystem(spark.sparkContext().hadoopConfiguration())
                    .globStatus(files);
            return found != null && found.length > 0;
        } catch (IOException | IllegalArgumentException e) {
            throw new Refused(new FleetSaid.NoCars(folder));
        }
    }
}
