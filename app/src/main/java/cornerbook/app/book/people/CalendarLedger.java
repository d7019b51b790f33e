package cornerbook.app.book.people;

import cornerbook.app.book.store.Transactions;
import cornerbook.words.Language;
import java.time.Instant;
import java.util.List;

/** Keeps whose appointments calendars may read. */
public final class CalendarLedger {
    private final Transactions store;

    public CalendarLedger(Transactions store) {
        this.store = store;
    }

    /** The one of the shop first. */
    public List<CalendarAddress> list() {
        return store.read(handle -> handle.select("select * from calendar_address order by whose")
                .map((row, context) -> new CalendarAddress(
                        row.getString("whose"),
                        row.getString("secret_hash"),
                        Language.valueOf(row.getString("language")),
                        Instant.parse(row.getString("made_at"))))
                .list());
    }

    /** In the place of the one that there was: that opens nothing any more. */
    public void put(CalendarAddress address) {
        store.write(handle -> handle.execute(
                "insert into calendar_address (whose, secret_hash, language, made_at) values (?, ?, ?, ?) on conflict (whose) do update set secret_hash = excluded.secret_hash, language = excluded.language, made_at = excluded.made_at",
                address.whose(),
                address.secretHash(),
                address.language().name(),
                address.madeAt().toString()));
    }

    public void withdraw(String whose) {
        store.write(handle -> handle.execute("delete from calendar_address where whose = ?", whose));
    }
}
