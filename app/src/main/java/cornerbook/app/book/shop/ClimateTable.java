package cornerbook.app.book.shop;

import cornerbook.core.season.Climate;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps the climate of the shop's place. It is no reading: it may be replaced. */
final class ClimateTable {
    private final Handle handle;

    ClimateTable(Handle handle) {
        this.handle = handle;
    }

    Optional<Climate> find() {
        var months = handle.select("select * from climate_month order by month")
                .map((row, context) -> new Climate.MonthNormal(
                        row.getDouble("mean_daily_minimum_c"), row.getDouble("mean_daily_maximum_c")))
                .list();
        return handle.select("select * from climate")
                .map((row, context) -> new Climate(
                        row.getString("place"), row.getString("source"), row.getDouble("coldest_morning_c"), months))
                .findOne();
    }

    void replace(Climate climate) {
        remove();
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
    }

    void remove() {
        handle.execute("delete from climate_month");
        handle.execute("delete from climate");
    }
}
