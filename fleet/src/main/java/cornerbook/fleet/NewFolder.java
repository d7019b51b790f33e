package cornerbook.fleet;

import cornerbook.core.say.Refused;
import java.io.IOException;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.SparkSession;

/** A folder that appears when all that belongs into it is written; on any file system that Spark writes. */
final class NewFolder {
    private static final String UNFINISHED = ".cornerbook-unfinished";

    private NewFolder() {}

    /** What writes into a folder. */
    interface Writing<T> {
        T into(Path folder) throws IOException;
    }

    /**
     * Makes it.
     *
     * @return what the writing gave
     * @throws Refused when it is there
     */
    static <T> T make(SparkSession spark, String folder, Writing<T> writing) throws IOException {
        var target = new Path(folder);
        var files = target.getFileSystem(spark.sparkContext().hadoopConfiguration());
        if (files.exists(target)) {
            throw new Refused(new FleetSaid.IsThere(folder));
        }
        var unfinished = target.suffix(UNFINISHED);
        files.delete(unfinished, true);
        try {
            var given = writing.into(unfinished);
            if (!files.rename(unfinished, target)) {
                throw new IOException("cannot be renamed: " + unfinished);
            }
            return given;
        } finally {
            files.delete(unfinished, true);
        }
    }
}
