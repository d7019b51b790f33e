package cornerbook.fleet;

import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.element_at;
import static org.apache.spark.sql.functions.is_valid_utf8;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.regexp_replace;
import static org.apache.spark.sql.functions.sha2;
import static org.apache.spark.sql.functions.size;
import static org.apache.spark.sql.functions.split;
import static org.apache.spark.sql.functions.url_decode;
import static org.apache.spark.sql.functions.when;

import cornerbook.app.book.store.ServerAddress;
import cornerbook.core.say.Refused;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.DataFrameReader;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;

/**
 * The cars to be judged, each as the text of its visit file: as {@code cornerbook export --all} writes them, a file each, or many in
 * the column {@link #TEXT} of Parquet files; in a folder to each site, or all in one. None is looked into here.
 */
final class CarLines {
    /** Name of the file. */
    static final String FILE = "file";
    /** Which of the operator's shops a car belongs to; null where nobody has told. */
    static final String SITE = "site";
    /** The visit file as it is written; null where it is no UTF-8. */
    static final String TEXT = "visit_file";
    /** Id of a car of a book that cannot be read; null for any other. */
    static final String UNREAD = "unread_car";
    /** SHA-256 of the text, hexadecimal. */
    static final String DIGEST = "digest";

    /** A folder is listed once; each file of a pattern would be listed by a task of its own. */
    private static final String ONLY = "pathGlobFilter";

    private static final int SHA_BITS = 256;

    private CarLines() {}

    /**
     * All cars of a folder, or of a book.
     *
     * @param folder on any file system that Spark reads, or the address of a book in a PostgreSQL database
     * @throws Refused when it cannot be read, or has neither form
     */
    static Dataset<Row> read(SparkSession spark, String folder) {
        if (ServerAddress.is(folder)) {
            return digested(BookCars.read(spark, folder));
        }
        var root = root(spark, folder);
        var forms = new ArrayList<Dataset<Row>>();
        if (has(spark, folder, "json")) {
            forms.add(lines(
                    reader(spark, "*.json").option("wholetext", true).text(folder),
                    when(is_valid_utf8(col("value")), col("value")),
                    ofFolder(root)));
        }
        if (has(spark, folder, "parquet")) {
            var read = reader(spark, "*.parquet").parquet(folder);
            forms.add(lines(
                    read,
                    col(TEXT),
                    Arrays.asList(read.columns()).contains(SITE)
                            ? coalesce(col(SITE).cast(DataTypes.StringType), ofFolder(root))
                            : ofFolder(root)));
        }
        return forms.stream().reduce(Dataset::union).orElseThrow(() -> new Refused(new FleetSaid.NoCars(folder)));
    }

    private static DataFrameReader reader(SparkSession spark, String only) {
        return spark.read().option(ONLY, only).option("recursiveFileLookup", true);
    }

    private static Dataset<Row> lines(Dataset<Row> read, Column text, Column site) {
        return digested(read.select(
                col("_metadata.file_name").as(FILE),
                site.as(SITE),
                text.as(TEXT),
                lit(null).cast(DataTypes.StringType).as(UNREAD)));
    }

    private static Dataset<Row> digested(Dataset<Row> cars) {
        return cars.withColumn(DIGEST, sha2(col(TEXT), SHA_BITS));
    }

    /** The folder in the folder in which a file is, also where it is called as a column of Hive is; null for a file that is in none. */
    private static Column ofFolder(String root) {
        var path = regexp_replace(col("_metadata.file_path"), "^[a-z0-9]+:(//[^/]*)?", "");
        var below = split(path.substr(lit(root.length() + 2), lit(Integer.MAX_VALUE)), "/");
        var name = url_decode(regexp_replace(element_at(below, 1), "\\+", "%2B"));
        return when(size(below).gt(1), regexp_replace(name, "^" + SITE + "=", ""));
    }

    /** The path of a folder as addresses of files have it. */
    private static String root(SparkSession spark, String folder) {
        try {
            var path = new Path(folder);
            return path.getFileSystem(spark.sparkContext().hadoopConfiguration())
                    .makeQualified(path)
                    .toUri()
                    .getRawPath();
        } catch (IOException | IllegalArgumentException e) {
            throw new Refused(new FleetSaid.NoCars(folder));
        }
    }

    private static boolean has(SparkSession spark, String folder, String ending) {
        return found(spark, folder, "*." + ending) || found(spark, folder, "*/*." + ending);
    }

    private static boolean found(SparkSession spark, String folder, String pattern) {
        try {
            var files = new Path(folder, pattern);
            var found = files.getFileSystem(spark.sparkContext().hadoopConfiguration())
                    .globStatus(files);
            return found != null && found.length > 0;
        } catch (IOException | IllegalArgumentException e) {
            throw new Refused(new FleetSaid.NoCars(folder));
        }
    }
}
