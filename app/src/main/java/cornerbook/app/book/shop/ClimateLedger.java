package cornerbook.app.book.shop;

import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.verdict.JudgedBy;
import cornerbook.core.season.Climate;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The climate of the shop's place. It is no reading: it may be replaced. */
public final class ClimateLedger {
    private final Transactions store;

    public ClimateLedger(Transactions store) {
        this.store = store;
    }

    /** Empty until somebody has entered it. */
    public Optional<Climate> find() {
        return store.read(handle -> {
            var months = handle.select("select * from climate_month order by month")
                    .map((row, context) -> new Climate.MonthNormal(
                            row.getDouble("mean_daily_minimum_c"), row.getDouble("mean_daily_maximum_c")))
                    .list();
            return handle.select("select * from climate")
                    .map((row, context) -> new Climate(
                            row.getString("place"),
                            row.getString("source"),
                            row.getDouble("coldest_morning_c"),
                            months))
                    .findOne();
        });
    }

    /** The shop's place has this climate now. */
    public void put(Climate climate) {
        store.write(handle -> {
            remove(handle);
            handle.execute(
                    "insert into climate (id, place, source, coldest_morning_c) values (1, ?, ?, ?)",
                    climate.place(),
                    climate.source(),
                    climate.coldestMorningC());
            int number = 1;
            for (var month : climate.months()) {
                handle.execute(
                        "insert into climate_month (month, mean_daily_minimum_c, mean_daily_maximum_c) values (?, ?, ?)",
                        number++,
                        month.meanDailyMinimumC(),
                        month.meanDailyMaximumC());
            }
            return climate;
        });
    }

    /** The climate of the shop's place is not known any longer. */
    public void remove() {
        store.write(ClimateLedger::remove);
    }

    private static int remove(Handle handle) {
        JudgedBy.countChange(handle);
        return handle.execute("delete from climate_month") + handle.execute("delete from climate");
    }
}
