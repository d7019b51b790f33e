package cornerbook.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.collect_list;
import static org.apache.spark.sql.functions.date_trunc;
import static org.apache.spark.sql.functions.explode;
import static org.apache.spark.sql.functions.sort_array;
import static org.apache.spark.sql.functions.struct;

import cornerbook.core.order.Demand;
import cornerbook.core.order.Need;
import java.util.List;
import org.apache.spark.api.java.function.MapFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;

/** What all cars together may need, by article and by the week of their coming visits. */
final class DemandTable {
    /** Up to so many needs the count that is enough is reckoned exactly, in a time that grows with their square. */
    static final int MOST_EXACT = 5000;
    /** What the order list of a shop asks for where nobody says otherwise. */
    private static final double LEVEL = 0.9;

    private static final String WEEK = "week";
    private static final String OF_CARS = "of_cars";

    private static final StructType DEMAND = new StructType()
            .add("part", DataTypes.StringType)
            .add("kind", DataTypes.StringType)
            .add("article", DataTypes.StringType)
            .add(WEEK, DataTypes.DateType)
            .add("cars", DataTypes.LongType)
            .add("expected_pieces", DataTypes.DoubleType)
            .add("enough_90", DataTypes.IntegerType);

    private DemandTable() {}

    /** Of rows of {@link Judge}. Needs are summed in the order of the cars' ids, whatever machine they were on. */
    static Dataset<Row> of(Dataset<Row> judged) {
        return judged.select(col(Look.CAR), explode(col(Judge.NEEDS)).as("need"))
                .select(col(Look.CAR), col("need.*"))
                .withColumn(WEEK, date_trunc("week", col("due")).cast(DataTypes.DateType))
                .groupBy("part", "kind", "article", WEEK)
                .agg(sort_array(collect_list(struct(Look.CAR, "pieces", "once", "twice")))
                        .as(OF_CARS))
                .map((MapFunction<Row, Row>) DemandTable::sum, Encoders.row(DEMAND));
    }

    private static Row sum(Row group) {
        List<Row> ofCars = group.getList(group.fieldIndex(OF_CARS));
        var needs = ofCars.stream()
                .map(each -> new Need(
                        each.<Integer>getAs("pieces"), each.<Double>getAs("once"), each.<Double>getAs("twice")))
                .toList();
        long cars = ofCars.stream()
                .map(each -> each.<String>getAs(Look.CAR))
                .distinct()
                .count();
        @Nullable
        Integer enough = needs.size() > MOST_EXACT ? null : Demand.of(needs).quantity(LEVEL);
        return RowFactory.create(
                group.getAs("part"),
                group.getAs("kind"),
                group.getAs("article"),
                group.getAs(WEEK),
                cars,
                needs.stream().mapToDouble(Need::mean).sum(),
                enough);
    }
}
