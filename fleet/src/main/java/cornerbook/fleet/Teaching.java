package cornerbook.fleet;

import cornerbook.app.book.knowledge.ShareBytes;
import cornerbook.app.knowledge.Extent;
import cornerbook.core.assess.CarShare;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.functions;
import org.jspecify.annotations.Nullable;

/**
 * A car that is learned from.
 *
 * @param packed what it teaches, as {@link ShareBytes}
 * @param first day of its first visit
 * @param last day of its latest visit
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Teaching(String car, @Nullable String site, byte[] packed, int visits, LocalDate first, LocalDate last) {
    static final Column[] COLUMNS = {
        functions.col(Look.CAR),
        functions.col(CarLines.SITE),
        functions.col(Look.SHARE),
        functions.col(Look.VISITS),
        functions.col(Look.FIRST),
        functions.col(Look.LAST)
    };

    static Teaching of(Row row) {
        return new Teaching(
                row.getAs(Look.CAR),
                row.getAs(CarLines.SITE),
                row.getAs(Look.SHARE),
                row.getAs(Look.VISITS),
                row.getAs(Look.FIRST),
                row.getAs(Look.LAST));
    }

    CarShare share() {
        return ShareBytes.share(packed);
    }

    /** How much stands behind what these cars taught; those that belong to no site count as one more. */
    static Extent extent(List<Teaching> cars, LocalDate today) {
        var teaching = cars.stream().filter(car -> !car.share().isEmpty()).toList();
        return new Extent(
                teaching.size(),
                Math.max(1, (int) teaching.stream()
                        .map(car -> Objects.requireNonNullElse(car.site(), ""))
                        .distinct()
                        .count()),
                teaching.stream().mapToLong(Teaching::visits).sum(),
                teaching.stream()
                        .map(Teaching::first)
                        .min(Comparator.naturalOrder())
                        .orElse(today),
                teaching.stream()
                        .map(Teaching::last)
                        .max(Comparator.naturalOrder())
                        .orElse(today));
    }
}
