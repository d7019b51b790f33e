package cornerbook.app.book.verdict;

import cornerbook.core.finding.Urgency;
import cornerbook.core.finding.Verdict;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What the book has of a car's verdict.
 *
 * @param gravest null when nothing was found, or the car could not be judged
 * @param faultId of the fault that kept it from being judged; null when there was none
 * @param judgedAt null when it never was
 * @param isOld whether the car, or what cars are judged by, has changed since
 */
public record KeptVerdict(
        @Nullable Gravest gravest,
        @Nullable String faultId,
        @Nullable Instant judgedAt,
        boolean isOld) {
    /** Joins the row of each car of {@code vehicle}. */
    public static final String JOIN =
            " left join car_verdict on car_verdict.vehicle_id = vehicle.id cross join judged_by ";

    /** True where the row that {@link #JOIN} found is not there, or old. */
    static final String OLD =
            "(car_verdict.vehicle_id is null or car_verdict.revision <> vehicle.revision or car_verdict.judged_by <> judged_by.number)";

    /** Selects the columns that {@link #of} reads. */
    public static final String COLUMNS =
            "car_verdict.verdict, car_verdict.urgency, car_verdict.life_left, car_verdict.fault_id, car_verdict.judged_at, case when "
                    + OLD + " then 1 else 0 end as verdict_old";

    public static KeptVerdict of(ResultSet row) throws SQLException {
        var verdict = row.getString("verdict");
        var judgedAt = row.getString("judged_at");
        return new KeptVerdict(
                verdict == null
                        ? null
                        : new Gravest(
                                Verdict.valueOf(verdict),
                                Urgency.valueOf(row.getString("urgency")),
                                row.getDouble("life_left")),
                row.getString("fault_id"),
                judgedAt == null ? null : Instant.parse(judgedAt),
                row.getInt("verdict_old") == 1);
    }
}
