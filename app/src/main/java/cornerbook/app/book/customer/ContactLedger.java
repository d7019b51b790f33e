package cornerbook.app.book.customer;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.EntryRow;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import java.time.LocalDate;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps what customers said to being called and written to. */
public final class ContactLedger {
    private static final int LONGEST_WORDS = 1000;

    private final Transactions store;

    public ContactLedger(Transactions store) {
        this.store = store;
    }

    /** What a customer said so far. */
    public ContactAnswers listOf(String customerId) {
        return store.read(handle -> new ContactAnswers(listOf(handle, customerId)));
    }

    /** Whether customers may be reached on a day, at the shop's usual place. */
    public Reach reach(LocalDate day) {
        return new Reach(store, day);
    }

    static List<ContactAnswer> listOf(Handle handle, String customerId) {
        return handle.select("select * from contact_answer where customer_id = ? order by place_in_list", customerId)
                .map((row, context) -> new ContactAnswer(
                        Purpose.valueOf(row.getString("purpose")),
                        Channel.valueOf(row.getString("channel")),
                        row.getInt("agreed") == 1,
                        row.getString("words"),
                        row.getString("person"),
                        EntryRow.madeAt(row)))
                .list();
    }

    /**
     * What a customer says to being reached; what was said already, by its id, counts once.
     *
     * @throws BookException when there is no such customer or the data were erased, nothing was answered, or nobody says what was asked
     */
    public Arrival add(String id, String customerId, List<ContactAnswer> answers) {
        if (answers.isEmpty()) {
            throw new BookException(new CustomerBookSaid.NothingAnswered());
        }
        for (var answer : answers) {
            if (answer.words().isBlank() || answer.words().length() > LONGEST_WORDS) {
                throw new BookException(new CustomerBookSaid.WordsMissing(LONGEST_WORDS));
            }
        }
        return store.write(handle -> {
            boolean known = handle.select(
                            "select 1 from customer where id = ? and not exists (select 1 from customer_erased where customer_id = customer.id)",
                            customerId)
                    .mapTo(Integer.class)
                    .findFirst()
                    .isPresent();
            if (!known) {
                throw new BookException(new CustomerBookSaid.NobodyToAsk());
            }
            int place = handle.select("select count(*) from contact_answer where customer_id = ?", customerId)
                    .mapTo(Integer.class)
                    .one();
            var arrival = Arrival.ALREADY;
            for (int i = 0; i < answers.size(); i++) {
                var answer = answers.get(i);
                if (new TableRow("contact_answer")
                        .set("id", i == 0 ? id : id + "/" + i)
                        .set("customer_id", customerId)
                        .set("place_in_list", place + i)
                        .set("purpose", answer.purpose())
                        .set("channel", answer.channel())
                        .set("agreed", answer.agreed())
                        .set("words", answer.words())
                        .set("person", answer.person())
                        .set("made_at", answer.at())
                        .insertOnce(handle)) {
                    arrival = Arrival.STORED;
                }
            }
            return arrival;
        });
    }
}
