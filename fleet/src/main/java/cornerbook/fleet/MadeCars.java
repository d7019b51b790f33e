package cornerbook.fleet;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.say.Refused;
import java.time.LocalDate;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;

/**
 * Invented cars, any number of them, to try the engine with. They are the cars of the invented shop: the same number and day give the
 * same cars. Each is made when it is written, so that no machine holds many.
 */
final class MadeCars {
    /** As many as the largest fleets have. */
    static final int MOST = 10_000_000;

    /** What is made in one go; the shop's own cars are thought up anew for each. */
    private static final int AT_ONCE = 100;
    /** Files of some thousand cars each, of the greatest number. */
    private static final int MOST_FILES = 2000;

    private static final StructType MADE = new StructType().add(CarLines.TEXT, DataTypes.StringType);

    private MadeCars() {}

    /**
     * So many cars as rows with the column {@link CarLines#TEXT}.
     *
     * @param day by which their latest visits are dated
     * @throws Refused when they are none, or more than {@link #MOST}
     */
    static Dataset<Row> of(SparkSession spark, LocalDate day, int cars) {
        if (cars < 1 || cars > MOST) {
            throw new Refused(new FleetSaid.TooManyCars(MOST));
        }
        int parts = (cars + AT_ONCE - 1) / AT_ONCE;
        return spark.range(0, parts, 1, Math.min(parts, MOST_FILES)).flatMap(making(day, cars), Encoders.row(MADE));
    }

    private static FlatMapFunction<Long, Row> making(LocalDate day, int cars) {
        return part -> {
            int from = Math.toIntExact(part * AT_ONCE);
            return DemoShop.histories(day, from, Math.min(cars, from + AT_ONCE))
                    .map(car -> RowFactory.create(VisitFile.write(car)))
                    .iterator();
        };
    }
}
