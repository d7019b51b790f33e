package cornerbook.app.book.verdict;

import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.coming.DueMatter;
import cornerbook.core.order.judge.CarNeed;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Keeps what lists show of each car, and says which cars have to be judged anew. */
public final class VerdictLedger {
    /** An appointment that is earlier by more is for something else. Common practice, no source. */
    private static final int DAYS_EARLY = 45;

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
     * @param needs what it may need by its coming visit, and for what that is; null when it has no visit, or could not be judged
     */
    public record Judgement(
            String vehicleId,
            long revision,
            long judgedBy,
            Instant judgedAt,
            @Nullable Gravest gravest,
            @Nullable String faultId,
            @Nullable Needs needs) {}

    /**
     * What a car may need, by one of its visits.
     *
     * @param matters for what it is to come back
     */
    public record Needs(String visitId, List<CarNeed> list, List<DueMatter> matters) {
        public Needs {
            list = List.copyOf(list);
            matters = List.copyOf(matters);
        }
    }

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
            judgements.forEach(judged -> putNeeds(handle, judged));
            return rows.execute().length;
        });
    }

    private static void putNeeds(Handle handle, Judgement judged) {
        handle.execute("delete from car_need where vehicle_id = ?", judged.vehicleId());
        handle.execute("delete from car_due where vehicle_id = ?", judged.vehicleId());
        var needs = judged.needs();
        if (needs == null) {
            return;
        }
        for (int place = 0; place < needs.list().size(); place++) {
            var need = needs.list().get(place);
            ArticleColumns.set(
                            new TableRow("car_need")
                                    .set("vehicle_id", judged.vehicleId())
                                    .set("place_in_list", place)
                                    .set("visit_id", needs.visitId()),
                            need.article())
                    .set("pieces", need.need().pieces())
                    .set("chance_once", need.need().once())
                    .set("chance_twice", need.need().twice())
                    .set("due", need.due())
                    .insert(handle);
        }
        needs.matters()
                .forEach(due -> new TableRow("car_due")
                        .set("vehicle_id", judged.vehicleId())
                        .set("visit_id", needs.visitId())
                        .set("matter", due.matter())
                        .set("due", due.day())
                        .set("due_from", due.day().minusDays(DAYS_EARLY))
                        .insert(handle));
    }
}
