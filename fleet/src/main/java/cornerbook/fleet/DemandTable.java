package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.collect_list;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.date_trunc;
import static org.apache.spark.sql.functions.explode;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.sort_array;
import static org.apache.spark.sql.functions.struct;
import static org.apache.spark.sql.functions.sum;

import cornerbook.core.order.Demand;
import cornerbook.core.order.Need;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.api.java.UDF1;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import scala.collection.Seq;
import scala.jdk.javaapi.CollectionConverters;

/**
 * What cars together may need, by article: of all of them, where the site is null, and of each site. Counts and sums come together
 * from parts of any size, so that a site with half of all cars takes no more memory than another; what is expected is summed to 18
 * digits after the point, which no order of summing changes.
 */
final class DemandTable {
    /** Up to so many needs the count that is enough is reckoned exactly, in a time that grows with their square. */
    static final int MOST_EXACT = 5000;
    /** What the order list of a shop asks for where nobody says otherwise. */
    private static final double LEVEL = 0.9;

    private static final String WEEK = "week";
    private static final String NEEDS = "needs_of_cars";
    private static final String ENOUGH = "enough_90";
    private static final String SAME = "same_";
    /** The site, or null for all of them, and the article. */
    private static final List<String> ARTICLE = List.of(CarLines.SITE, "part", "kind", "article");

    private DemandTable() {}

    /** By the week of the coming visits, from rows of {@link Judge}. */
    static Dataset<Row> byWeek(Dataset<Row> judged) {
        return together(
                needs(judged).withColumn(WEEK, date_trunc("week", col("due")).cast(DataTypes.DateType)), WEEK);
    }

    /** Of all cars that are due from a day until another, as the order list of a shop has it. */
    static Dataset<Row> until(Dataset<Row> judged, LocalDate from, LocalDate until) {
        return together(
                needs(judged)
                        .where(col("due").between(from, until))
                        .withColumn("from", lit(from))
                        .withColumn("until", lit(until)),
                "from",
                "until");
    }

    private static Dataset<Row> needs(Dataset<Row> judged) {
        var all = judged.select(
                        col(Look.CAR),
                        col(CarLines.SITE),
                        explode(col(Judge.NEEDS)).as("need"))
                .select(col(Look.CAR), col(CarLines.SITE), col("need.*"));
        return all.where(col(CarLines.SITE).isNotNull())
                .union(all.withColumn(CarLines.SITE, lit(null).cast(DataTypes.StringType)));
    }

    private static Dataset<Row> together(Dataset<Row> needs, String... when) {
        var names = new ArrayList<>(ARTICLE);
        names.addAll(Arrays.asList(when));
        var group = names.stream().map(functions::col).toArray(Column[]::new);
        var mean = col("pieces").multiply(col("once").plus(col("twice").multiply(2)));
        // A car may need an article for two of its sets: it is one car.
        var ofCars = needs.withColumn("mean", mean.cast(DataTypes.createDecimalType(28, 18)))
                .groupBy(with(group, col(Look.CAR)))
                .agg(count(lit(1)).as(NEEDS), sum("mean").as("mean"));
        var counted = ofCars.groupBy(group)
                .agg(
                        count(lit(1)).as("cars"),
                        sum("mean").cast(DataTypes.DoubleType).as("expected_pieces"),
                        sum(NEEDS).as(NEEDS));
        var few = counted.where(col(NEEDS).leq(MOST_EXACT))
                .select(names.stream().map(name -> col(name).as(SAME + name)).toArray(Column[]::new));
        var enough = needs.join(few, same(names), "left_semi")
                .groupBy(group)
                .agg(functions
                        .udf((UDF1<Seq<Row>, Integer>) DemandTable::enough, DataTypes.IntegerType)
                        .apply(sort_array(collect_list(struct(Look.CAR, "pieces", "once", "twice"))))
                        .as(ENOUGH))
                .select(with(
                        names.stream().map(name -> col(name).as(SAME + name)).toArray(Column[]::new), col(ENOUGH)));
        return counted.join(enough, same(names), "left")
                .select(with(group, col("cars"), col("expected_pieces"), col(ENOUGH)));
    }

    private static Column same(List<String> names) {
        return names.stream()
                .map(name -> col(name).eqNullSafe(col(SAME + name)))
                .reduce(Column::and)
                .orElseThrow();
    }

    private static Column[] with(Column[] columns, Column... others) {
        var all = new ArrayList<>(Arrays.asList(columns));
        all.addAll(Arrays.asList(others));
        return all.toArray(Column[]::new);
    }

    /** In the order of the cars' ids, whatever machine they were on. */
    private static int enough(Seq<Row> ofCars) {
        var needs = CollectionConverters.asJava(ofCars).stream()
                .map(each -> new Need(each.getAs("pieces"), each.getAs("once"), each.getAs("twice")))
                .toList();
        return Demand.of(needs).quantity(LEVEL);
    }
}
