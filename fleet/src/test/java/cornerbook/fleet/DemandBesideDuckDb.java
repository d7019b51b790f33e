package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.concat;
import static org.apache.spark.sql.functions.explode;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.sequence;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.SparkSession;

/**
 * What all cars may need by article and week, asked of Spark and of DuckDB in one run over the same Parquet files, by hand:
 * {@code TABLES TIMES}, the tables of a night whose cars are taken so many times. Both have two processors and give the same rows.
 */
final class DemandBesideDuckDb {
    private static final double NANOSECONDS_PER_SECOND = 1e9;
    private static final double NEAR = 1e-9;

    private DemandBesideDuckDb() {}

    public static void main(String[] words) throws Exception {
        var target = Files.createTempDirectory("demand").resolve("judged");
        try (var spark = Fleet.session(new SparkConf().setMaster("local[2]"))) {
            spark.read()
                    .parquet(words[0] + "/for_next_night/judged")
                    .withColumn("copy", explode(sequence(lit(1), lit(Integer.parseInt(words[1])))))
                    .withColumn(Look.CAR, concat(col(Look.CAR), lit("-"), col("copy")))
                    .drop("copy")
                    .write()
                    .parquet(target.toString());
            System.out.println(spark.read().parquet(target.toString()).count() + " cars");
            // Whoever is asked first pays for the files and the start.
            for (int round = 0; round < 3; round++) {
                var ofSpark = timed("Spark", () -> ofSpark(spark, target));
                var ofDuckDb = timed("DuckDB", () -> ofDuckDb(target));
                if (!same(ofSpark, ofDuckDb)) {
                    throw new IllegalStateException("the answers differ");
                }
            }
        }
    }

    private static Map<String, Double> ofSpark(SparkSession spark, Path judged) {
        var rows = new TreeMap<String, Double>();
        DemandTable.byWeek(spark.read().parquet(judged.toString()))
                .where(col(CarLines.SITE).isNull())
                .collectAsList()
                .forEach(row -> rows.put(
                        row.getAs("part") + " " + row.getAs("kind") + " " + row.getAs("article") + " "
                                + row.getAs("week") + " " + row.getAs("cars"),
                        row.<Double>getAs("expected_pieces")));
        return rows;
    }

    private static Map<String, Double> ofDuckDb(Path judged) throws SQLException {
        var rows = new TreeMap<String, Double>();
        try (var connection = DriverManager.getConnection("jdbc:duckdb:");
                var statement = connection.createStatement()) {
            statement.execute("set threads = 2");
            var found = statement.executeQuery("""
                    select need.part, need.kind, need.article, date_trunc('week', need.due)::date as week,
                      count(distinct car) as cars, sum(need.pieces * (need.once + 2 * need.twice)) as expected
                    from (select car, unnest(needs) as need from read_parquet('%s/*.parquet') where len(problems) = 0)
                    group by all""".formatted(judged));
            while (found.next()) {
                rows.put(
                        found.getString(1) + " " + found.getString(2) + " " + found.getString(3) + " "
                                + found.getString(4) + " " + found.getLong(5),
                        found.getDouble(6));
            }
        }
        return rows;
    }

    private static boolean same(Map<String, Double> one, Map<String, Double> other) {
        return one.keySet().equals(other.keySet())
                && one.entrySet().stream()
                        .allMatch(row -> Math.abs(row.getValue() - other.getOrDefault(row.getKey(), Double.NaN))
                                <= NEAR * (1 + row.getValue()));
    }

    private static Map<String, Double> timed(String who, Callable<Map<String, Double>> asked) throws Exception {
        var machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long begun = System.nanoTime();
        long worked = machine.getProcessCpuTime();
        var rows = asked.call();
        System.out.printf(
                Locale.ROOT,
                "%s: %d rows, %.2f s by the clock, %.2f s of processor time%n",
                who,
                rows.size(),
                (System.nanoTime() - begun) / NANOSECONDS_PER_SECOND,
                (machine.getProcessCpuTime() - worked) / NANOSECONDS_PER_SECOND);
        return rows;
    }
}
