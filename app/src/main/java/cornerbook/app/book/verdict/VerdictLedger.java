package cornerbook.app.book.verdict;

import cornerbook.app.book.store.Transactions;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Keeps what lists show of each car, and says which cars have to be judged anew. */
public final class VerdictLedger {
    private final Transactions store;

    public VerdictLedger(Transactions store) {
        this.store = store;
    }

    /**
     * What was judged of one car.
     *
     * @param revision of the car, read before its history was: a change in between makes the verdict old, not wrong
     * @param judgedBy the number of what it was judged by
     * @param gravest null when nothing was found, or the car could not be judged
     * @param faultId null when it could be judged
     */
    public record Judgement(
            String vehicleId,
            long revision,
            long judgedBy,
            Instant judgedAt,
            @Nullable Gravest gravest,
            @Nullable String faultId) {}

    /** The number of what cars are judged by now. */
    public long judgedBy() {
        return store.read(JudgedBy::number);
    }

    /**
     * Cars are judged by this program from now on; where another judged before, all verdicts are old.
     *
     * @param program a digest of its judges and limits
     */
    public void judgeBy(String program) {
        store.write(handle -> JudgedBy.changeProgram(handle, program));
    }

    /** The verdict of one car; empty when there is no such car. */
    public Optional<KeptVerdict> find(String vehicleId) {
        return store.read(handle -> handle.select(
                        "select " + KeptVerdict.COLUMNS + " from vehicle" + KeptVerdict.JOIN + "where vehicle.id = ?",
                        vehicleId)
                .map((row, context) -> KeptVerdict.of(row))
                .findFirst());
    }

    /** Cars whose verdict is not there or old, those that were here last first. */
    public List<String> listOld(int most) {
        return store.read(handle -> handle.select(
                        "select vehicle.id from vehicle" + KeptVerdict.JOIN + "where " + KeptVerdict.OLD
                                + " order by coalesce((select max(visit_date) from visit where visit.vehicle_id = vehicle.id and visit.cancelled = 0), '') desc, vehicle.id limit ?",
                        most)
                .mapTo(String.class)
                .list());
    }

    /** Puts verdicts in the place of those before. */
    public void put(List<Judgement> judgements) {
        store.write(handle -> {
            var rows = handle.prepareBatch(
                    "insert into car_verdict (vehicle_id, revision, judged_by, judged_at, verdict, urgency, life_left, fault_id) values (?, ?, ?, ?, ?, ?, ?, ?) on conflict (vehicle_id) do update set revision = excluded.revision, judged_by = excluded.judged_by, judged_at = excluded.judged_at, verdict = excluded.verdict, urgency = excluded.urgency, life_left = excluded.life_left, fault_id = excluded.fault_id");
            for (var judged : judgements) {
                var gravest = judged.gravest();
                rows.add(
                        judged.vehicleId(),
                        judged.revision(),
                        judged.judgedBy(),
                        judged.judgedAt().toString(),
                        gravest == null ? null : gravest.verdict().name(),
                        gravest == null ? null : gravest.urgency().name(),
                        gravest == null ? null : gravest.lifeLeft(),
                        judged.faultId());
            }
            return rows.execute().length;
        });
    }
}
