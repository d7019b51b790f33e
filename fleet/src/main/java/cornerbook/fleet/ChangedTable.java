package cornerbook.fleet;

import static org.apache.spark.sql.functions.broadcast;
import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.struct;

import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;

/** What changed since the last night, and why. */
final class ChangedTable {
    static final StructType CHANGED = new StructType()
            .add(Look.CAR, DataTypes.StringType)
            .add("what", DataTypes.StringType)
            .add("before", DataTypes.StringType)
            .add("now", DataTypes.StringType)
            .add("why", DataTypes.StringType);

    /** What people act on; a share of life that moved in its last digits is no news. */
    private static final List<String> TOLD =
            List.of(CarLines.DIGEST, "visit", "verdict", "urgency", "earliest_horizon", "next_visit");

    private static final String NOW = "now";
    private static final String BEFORE = "before";
    private static final String ASIDE_NOW = "aside_now";
    private static final String ASIDE_BEFORE = "aside_before";
    private static final String NAMED = "_named";
    private static final String BY_CAR = "_by_car";
    private static final String BY_FILE = "_by_file";

    private ChangedTable() {}

    /** Why a car is not what it was. */
    enum Why implements Said {
        NEW_CAR,
        /** What kept it back last night does so no more. */
        NO_LONGER_SET_ASIDE,
        NOT_IN_INPUT,
        SET_ASIDE,
        NEW_VISIT,
        /** Its file is another, its latest visit is not: something was read late, or put right. */
        LATE_OR_CORRECTED,
        /** Its file is the same: what the other cars teach moved, or the climate. */
        LEARNED,
        /** The program judges otherwise. */
        PROGRAM
    }

    /**
     * Two nights side by side.
     *
     * @param sameProgram whether both were judged by the same program
     */
    static Dataset<Row> of(
            Dataset<Row> cars, Dataset<Row> aside, Dataset<Row> before, Dataset<Row> asideBefore, boolean sameProgram) {
        var both = side(cars, NOW).join(side(before, BEFORE), new String[] {Look.CAR}, "full_outer");
        return marked(marked(both, aside, BEFORE, ASIDE_NOW), asideBefore, NOW, ASIDE_BEFORE)
                .flatMap(telling(sameProgram), Encoders.row(CHANGED));
    }

    /** Marks cars that were set aside: by their ids, and where a car is a file by its name, for what cannot be read has no id. */
    private static Dataset<Row> marked(Dataset<Row> both, Dataset<Row> aside, String side, String as) {
        var cars = aside.select(col(Look.CAR))
                .where(col(Look.CAR).isNotNull())
                .distinct()
                .withColumn(as + BY_CAR, lit(true));
        var files = aside.select(col(CarLines.FILE).as(as + NAMED))
                .where(col(as + NAMED).endsWith(".json"))
                .distinct()
                .withColumn(as + BY_FILE, lit(true));
        return both.join(broadcast(cars), new String[] {Look.CAR}, "left")
                .join(broadcast(files), col(side + "." + CarLines.FILE).equalTo(col(as + NAMED)), "left")
                .withColumn(as, coalesce(col(as + BY_CAR), col(as + BY_FILE), lit(false)));
    }

    private static Dataset<Row> side(Dataset<Row> cars, String as) {
        var columns = new ArrayList<>(TOLD);
        columns.addAll(List.of(CarLines.FILE, Judge.BASIS));
        return cars.select(
                col(Look.CAR),
                struct(columns.stream().map(functions::col).toArray(Column[]::new))
                        .as(as));
    }

    private static FlatMapFunction<Row, Row> telling(boolean sameProgram) {
        return pair -> tell(pair, sameProgram).iterator();
    }

    private static List<Row> tell(Row pair, boolean sameProgram) {
        String car = pair.getAs(Look.CAR);
        @Nullable Row now = pair.getAs(NOW);
        @Nullable Row before = pair.getAs(BEFORE);
        var why = why(pair, now, before, sameProgram);
        if (now == null || before == null) {
            return List.of(RowFactory.create(
                    car,
                    "CAR",
                    before == null ? null : text(before, "verdict"),
                    now == null ? null : text(now, "verdict"),
                    why.name()));
        }
        return TOLD.stream()
                .filter(what -> !Objects.equals(now.getAs(what), before.getAs(what)))
                .map(what -> RowFactory.create(
                        car,
                        what.equals(CarLines.DIGEST) ? "FILE" : what.toUpperCase(Locale.ROOT),
                        text(before, what),
                        text(now, what),
                        why.name()))
                .toList();
    }

    private static Why why(Row pair, @Nullable Row now, @Nullable Row before, boolean sameProgram) {
        if (before == null) {
            return pair.<Boolean>getAs(ASIDE_BEFORE) ? Why.NO_LONGER_SET_ASIDE : Why.NEW_CAR;
        }
        if (now == null) {
            return pair.<Boolean>getAs(ASIDE_NOW) ? Why.SET_ASIDE : Why.NOT_IN_INPUT;
        }
        if (!Objects.equals(now.getAs(CarLines.DIGEST), before.getAs(CarLines.DIGEST))) {
            return Objects.equals(now.getAs("visit"), before.getAs("visit")) ? Why.LATE_OR_CORRECTED : Why.NEW_VISIT;
        }
        return sameProgram ? Why.LEARNED : Why.PROGRAM;
    }

    private static @Nullable String text(Row row, String what) {
        @Nullable Object value = row.getAs(what);
        return value == null ? null : value.toString();
    }
}
