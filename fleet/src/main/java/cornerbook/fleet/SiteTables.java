package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.explode;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.not;
import static org.apache.spark.sql.functions.sum;
import static org.apache.spark.sql.functions.when;

import cornerbook.core.finding.Verdict;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.types.DataTypes;

/** What stands before each site, and before all together, where the site is null. */
final class SiteTables {
    private SiteTables() {}

    /** How many cars have which gravest finding, from rows of {@link Judge}. */
    static Dataset<Row> verdicts(Dataset<Row> judged) {
        return ofAllAndEach(judged.select(CarLines.SITE, "verdict", "urgency"))
                .groupBy(CarLines.SITE, "verdict", "urgency")
                .agg(count(lit(1)).as("cars"));
    }

    /** How many findings of each part are spent, and how many more are expected not to hold until the next visit. */
    static Dataset<Row> risk(Dataset<Row> judged) {
        var findings = judged.select(
                        col(CarLines.SITE), explode(col(Judge.HORIZONS)).as("each"))
                .select(CarLines.SITE, "each.*");
        var spent = col("verdict").isin(Verdict.SPENT.name(), Verdict.UNSAFE.name());
        // Summed to 18 digits after the point, which no order of summing changes.
        var fails = when(
                not(spent), lit(1.0).minus(col("holds_until_next_visit")).cast(DataTypes.createDecimalType(28, 18)));
        return ofAllAndEach(findings)
                .groupBy(CarLines.SITE, "part")
                .agg(
                        count(lit(1)).as("findings"),
                        count(when(spent, 1)).as("spent"),
                        sum(fails).cast(DataTypes.DoubleType).as("expected_not_to_hold"));
    }

    private static Dataset<Row> ofAllAndEach(Dataset<Row> rows) {
        return rows.where(col(CarLines.SITE).isNotNull())
                .union(rows.withColumn(CarLines.SITE, lit(null).cast(DataTypes.StringType)));
    }
}
