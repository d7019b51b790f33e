package cornerbook.fleet;

import cornerbook.core.finding.Knowledge;
import java.util.ArrayList;
import java.util.List;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;

/** What was learned, a number a row. */
final class LearnedTable {
    static final StructType LEARNED = new StructType()
            .add("of", DataTypes.StringType)
            .add("drive", DataTypes.StringType)
            .add("season", DataTypes.StringType)
            .add("tyre_model", DataTypes.StringType)
            .add("parameter", DataTypes.StringType)
            .add("value", DataTypes.DoubleType)
            .add("standard_error", DataTypes.DoubleType)
            .add("cars", DataTypes.IntegerType);

    private LearnedTable() {}

    /** In the units of the core; the standard error of a tread's parameter is on the parameter's own scale. */
    static List<Row> of(Knowledge knowledge) {
        var rows = new ArrayList<Row>();
        for (var row : knowledge.wear().rows()) {
            var learned = row.learned();
            learned.parameters()
                    .values()
                    .forEach((parameter, value) -> rows.add(RowFactory.create(
                            "TREAD",
                            row.drive().name(),
                            row.season().name(),
                            row.tyreModel(),
                            parameter.name(),
                            value,
                            learned.standardErrors().get(parameter),
                            learned.cars())));
        }
        knowledge.distances().forEach((season, distance) -> {
            var name = season.name();
            rows.add(ofAll("DISTANCE", name, "MEAN_KM_PER_DAY", distance.meanKm(), null, distance.cars()));
            rows.add(ofAll("DISTANCE", name, "CAR_SD_KM_PER_DAY", distance.carSdKm(), null, distance.cars()));
            rows.add(ofAll("DISTANCE", name, "SEASON_SD_KM_PER_DAY", distance.seasonSdKm(), null, distance.cars()));
        });
        var seizing = knowledge.seizing();
        if (seizing != null) {
            var fit = seizing.fit();
            for (int place = 0; place < fit.coefficients().size(); place++) {
                rows.add(ofAll(
                        "SEIZING",
                        null,
                        "COEFFICIENT_" + place,
                        fit.coefficients().get(place),
                        fit.standardError(place),
                        seizing.cars()));
            }
            rows.add(ofAll("SEIZING", null, "SCALE", fit.scale(), null, seizing.cars()));
        }
        return rows;
    }

    private static Row ofAll(
            String what, @Nullable String season, String parameter, double value, @Nullable Double error, int cars) {
        return RowFactory.create(what, null, season, null, parameter, value, error, cars);
    }
}
