package cornerbook.app.book.mail;

import cornerbook.app.book.coming.AskedMatter;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.book.visit.CallAnswers;
import cornerbook.app.mail.Delivery;
import cornerbook.app.mail.MailServer;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/**
 * Keeps e-mails to customers. That one is given to the server is kept before it is: whoever is cut off between knows that it may have
 * been sent, and nothing is sent twice unless somebody asks for it.
 */
public final class MailLedger {
    private static final String BEGUN = "BEGUN";
    private static final String BETWEEN = "\n";

    private static final String SELECT = """
            select mail_message.*, customer.name as customer_name, mail_event.event, mail_event.answer,
                mail_event.place_in_list as last_place, mail_event.made_at as last_at
            from mail_message
                join customer on customer.id = mail_message.customer_id
                join mail_event on mail_event.mail_id = mail_message.id
            where mail_event.place_in_list =
                (select max(place_in_list) from mail_event as later where later.mail_id = mail_message.id)
            """;

    private static final String LATEST_FIRST = " order by mail_message.made_at desc, mail_message.id";

    private final Transactions store;

    public MailLedger(Transactions store) {
        this.store = store;
    }

    /** The server that takes the shop's e-mails; empty until somebody has entered it. */
    public Optional<MailServer> findServer() {
        return store.read(handle -> handle.select("select * from mail_server")
                .map((row, context) -> new MailServer(
                        row.getString("host"),
                        row.getInt("port"),
                        MailServer.Security.valueOf(row.getString("security")),
                        row.getString("sender"),
                        row.getString("login")))
                .findFirst());
    }

    /** The shop's e-mails go to this server from now on. */
    public void putServer(MailServer server) {
        store.write(handle -> {
            handle.execute("delete from mail_server");
            new TableRow("mail_server")
                    .set("only_row", 1)
                    .set("host", server.host())
                    .set("port", server.port())
                    .set("security", server.security())
                    .set("sender", server.sender())
                    .set("login", server.login())
                    .insert(handle);
            return server;
        });
    }

    /** The shop writes no e-mails any longer. */
    public void removeServer() {
        store.write(handle -> handle.execute("delete from mail_server"));
    }

    /**
     * An e-mail is about to be given to the server.
     *
     * @return whether it is to be; one of that id was before, whatever became of it
     */
    public boolean begin(Letter letter, String person, Instant at) {
        return store.write(handle -> {
            int place = handle.select("select count(*) from mail_message where customer_id = ?", letter.customerId())
                    .mapTo(Integer.class)
                    .one();
            boolean isNew = new TableRow("mail_message")
                    .set("id", letter.id())
                    .set("customer_id", letter.customerId())
                    .set("place_in_list", place)
                    .set("address", letter.address())
                    .set("language", letter.language())
                    .set("subject", letter.subject())
                    .set("body", letter.text())
                    .set(
                            "about",
                            letter.about().stream().map(AskedMatter::toString).collect(Collectors.joining(BETWEEN)))
                    .set("person", person)
                    .set("made_at", at)
                    .insertOnce(handle);
            if (isNew) {
                addEvent(handle, letter.id(), BEGUN, "", at);
            }
            return isNew;
        });
    }

    /**
     * One that did not arrive for certain is about to be given to the server again.
     *
     * @param seen how many times something had become of it when the person saw it
     * @throws BookException when there is none, or it was sent since
     */
    public KeptMail beginAgain(String id, int seen, Instant at) {
        return store.write(handle -> {
            var kept = find(handle, id).orElseThrow(() -> new BookException(new MailBookSaid.NoSuchMail()));
            if (!kept.mayGoAgain() || kept.events() != seen) {
                throw new BookException(new MailBookSaid.SentMeanwhile());
            }
            addEvent(handle, id, BEGUN, "", at);
            return kept;
        });
    }

    /**
     * The server has answered, or not; what nobody knows stays begun. What was taken is an answer to each matter that it is about: the
     * customer was written to.
     */
    public void end(String id, Delivery delivery, Instant at) {
        store.write(handle -> {
            var kept = find(handle, id).orElseThrow(() -> new BookException(new MailBookSaid.NoSuchMail()));
            if (delivery.outcome() != Delivery.Outcome.UNKNOWN) {
                addEvent(handle, id, delivery.outcome().name(), delivery.answer(), at);
            }
            if (delivery.outcome() == Delivery.Outcome.TAKEN) {
                var written = new CallAnswer(CallAnswer.Kind.WRITTEN, kept.person(), at);
                kept.letter()
                        .about()
                        .forEach(asked -> CallAnswers.add(
                                handle,
                                id + "/" + asked,
                                asked.visitId(),
                                asked.matter().name(),
                                written));
            }
            return kept;
        });
    }

    private static void addEvent(Handle handle, String id, String event, String answer, Instant at) {
        int place = handle.select("select count(*) from mail_event where mail_id = ?", id)
                .mapTo(Integer.class)
                .one();
        new TableRow("mail_event")
                .set("mail_id", id)
                .set("place_in_list", place)
                .set("event", event)
                .set("answer", answer)
                .set("made_at", at)
                .insert(handle);
    }

    /** One of them as it stands. */
    public Optional<KeptMail> find(String id) {
        return store.read(handle -> find(handle, id));
    }

    private static Optional<KeptMail> find(Handle handle, String id) {
        return handle.select(SELECT + " and mail_message.id = ?", id)
                .map((row, context) -> kept(row))
                .findFirst();
    }

    /** A page of them, the latest first. */
    public List<KeptMail> list(int passed, int most) {
        return store.read(handle -> handle.select(SELECT + LATEST_FIRST + " limit ? offset ?", most, passed)
                .map((row, context) -> kept(row))
                .list());
    }

    public int count() {
        return store.read(handle -> handle.select("select count(*) from mail_message")
                .mapTo(Integer.class)
                .one());
    }

    /** Those to a customer, the latest first. */
    public List<KeptMail> listOf(String customerId) {
        return store.read(
                handle -> handle.select(SELECT + " and mail_message.customer_id = ?" + LATEST_FIRST, customerId)
                        .map((row, context) -> kept(row))
                        .list());
    }

    private static KeptMail kept(ResultSet row) throws SQLException {
        var event = row.getString("event");
        return new KeptMail(
                new Letter(
                        row.getString("id"),
                        row.getString("customer_id"),
                        row.getString("address"),
                        row.getString("language"),
                        row.getString("subject"),
                        row.getString("body"),
                        Arrays.stream(row.getString("about").split(BETWEEN, -1))
                                .filter(asked -> !asked.isEmpty())
                                .map(AskedMatter::parse)
                                .toList()),
                row.getString("customer_name"),
                row.getString("person"),
                new Delivery(
                        event.equals(BEGUN) ? Delivery.Outcome.UNKNOWN : Delivery.Outcome.valueOf(event),
                        row.getString("answer")),
                row.getInt("last_place") + 1,
                Instant.parse(row.getString("last_at")));
    }
}
