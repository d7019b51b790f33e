package cornerbook.app.book.knowledge;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.knowledge.KnowledgeFile;
import cornerbook.app.knowledge.PublicKeyText;
import cornerbook.app.text.PlainText;
import cornerbook.core.finding.OthersKnowledge;
import cornerbook.core.say.Day;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Which keys the shop trusts, and what it took in that they signed. What counts the book learns beside from its next learning on. */
public final class OthersLedger {
    private static final int LONGEST_NAME = 100;

    private final Transactions store;

    public OthersLedger(Transactions store) {
        this.store = store;
    }

    /** All keys that were ever trusted, in the order in which they came. */
    public List<TrustedKey> listKeys() {
        return store.read(OthersLedger::keys);
    }

    private static List<TrustedKey> keys(Handle handle) {
        var last = new LinkedHashMap<String, TrustedKey>();
        handle.select("select * from trusted_key order by place_in_list")
                .map((row, context) -> key(row))
                .forEach(key -> last.put(key.key().base64(), key));
        return List.copyOf(last.values());
    }

    private static TrustedKey key(ResultSet row) throws SQLException {
        return new TrustedKey(
                new PublicKeyText(row.getString("public_key")),
                row.getString("name"),
                row.getInt("trusted") == 1,
                row.getString("person"),
                Instant.parse(row.getString("made_at")));
    }

    private static Optional<TrustedKey> trusted(Handle handle, PublicKeyText key) {
        return keys(handle).stream()
                .filter(each -> each.trusted() && each.key().equals(key))
                .findFirst();
    }

    /**
     * From now on what a key signs may be taken in; what was said already, by its id, counts once.
     *
     * @param name of who signs by it, as people of this shop are told
     * @throws BookException when the name is missing or too long, or the key is trusted by that name already
     */
    public Arrival trust(String id, PublicKeyText key, String name, String person, Instant madeAt) {
        if (name.isBlank()
                || name.length() > LONGEST_NAME
                || PlainText.findUnfit(name).isPresent()) {
            throw new BookException(new OthersSaid.NoName(LONGEST_NAME));
        }
        return store.write(handle -> {
            if (isKept(handle, "trusted_key", id)) {
                return Arrival.ALREADY;
            }
            trusted(handle, key).filter(each -> each.name().equals(name)).ifPresent(each -> {
                throw new BookException(new OthersSaid.TrustedAlready(name));
            });
            return put(handle, id, new TrustedKey(key, name, true, person, madeAt));
        });
    }

    /**
     * What a key signed does not count any longer, and no more of it may be taken in.
     *
     * @throws BookException when it is not trusted
     */
    public Arrival distrust(String id, PublicKeyText key, String person, Instant madeAt) {
        return store.write(handle -> {
            if (isKept(handle, "trusted_key", id)) {
                return Arrival.ALREADY;
            }
            var known = trusted(handle, key).orElseThrow(() -> new BookException(new OthersSaid.NoSuchKey()));
            return put(handle, id, new TrustedKey(key, known.name(), false, person, madeAt));
        });
    }

    private static Arrival put(Handle handle, String id, TrustedKey key) {
        return Arrival.of(new TableRow("trusted_key")
                .set("id", id)
                .set("place_in_list", TableRow.count(handle, "trusted_key"))
                .set("public_key", key.key().base64())
                .set("name", key.name())
                .set("trusted", key.trusted())
                .set("person", key.person())
                .set("made_at", key.madeAt())
                .insertOnce(handle));
    }

    private static boolean isKept(Handle handle, String table, String id) {
        return handle.select("select 1 from %s where id = ?".formatted(table), id)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    /** What counts; empty when nothing was taken in, it was taken back, or its key is trusted no longer. */
    public Optional<TakenKnowledge> find() {
        return store.read(OthersLedger::find);
    }

    static Optional<TakenKnowledge> find(Handle handle) {
        return handle.select("select * from taken_knowledge order by place_in_list desc limit 1")
                .map((row, context) -> taken(handle, row))
                .findFirst()
                .flatMap(found -> found);
    }

    private static Optional<TakenKnowledge> taken(Handle handle, ResultSet row) throws SQLException {
        var id = row.getString("id");
        var person = row.getString("person");
        var madeAt = Instant.parse(row.getString("made_at"));
        return Optional.ofNullable(row.getString("file"))
                .flatMap(OthersLedger::readKept)
                .flatMap(signed -> trusted(handle, signed.key())
                        .map(key -> new TakenKnowledge(id, signed.file(), key, person, madeAt)));
    }

    /** Of a damaged row nothing counts; checking the book tells of it. */
    private static Optional<KnowledgeFile.Signed> readKept(String text) {
        try {
            return Optional.of(KnowledgeFile.read(text, key -> true, LocalDate.MAX));
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    /** What a learning was done beside, as who signed it was called then. */
    static Optional<OthersKnowledge> ofLearning(Handle handle, String takenId, String signedBy) {
        return handle.select("select file from taken_knowledge where id = ?", takenId)
                .mapTo(String.class)
                .findFirst()
                .flatMap(OthersLedger::readKept)
                .map(signed -> signed.file().as(signedBy));
    }

    /**
     * What a text would bring, with nothing taken in.
     *
     * @throws Refused when it is no knowledge file that may be taken in
     * @throws BookException when what counts is newer, or the same
     */
    public TakenKnowledge look(String text, LocalDate today) {
        return store.read(handle -> look(handle, text, today));
    }

    private static TakenKnowledge look(Handle handle, String text, LocalDate today) {
        var signed = KnowledgeFile.read(text, key -> trusted(handle, key).isPresent(), today);
        find(handle).ifPresent(standing -> {
            if (signed.file().equals(standing.file())
                    && signed.key().equals(standing.key().key())) {
                throw new BookException(new OthersSaid.StandsAlready());
            }
            if (signed.file().learnedOn().isBefore(standing.file().learnedOn())) {
                throw new BookException(new OthersSaid.Older(
                        new Day(signed.file().learnedOn()),
                        new Day(standing.file().learnedOn())));
            }
        });
        var key = trusted(handle, signed.key()).orElseThrow();
        return new TakenKnowledge("", signed.file(), key, "", key.madeAt());
    }

    /**
     * Takes a file in; what was taken already, by its id, counts once.
     *
     * @throws Refused as {@link #look}
     * @throws BookException as {@link #look}
     */
    public Arrival take(String id, String text, String person, Instant madeAt, LocalDate today) {
        return store.write(handle -> {
            if (isKept(handle, "taken_knowledge", id)) {
                return Arrival.ALREADY;
            }
            look(handle, text, today);
            return Arrival.of(row(handle, id, person, madeAt).set("file", text).insertOnce(handle));
        });
    }

    /**
     * From now on the book learns from its own cars and what is usual again.
     *
     * @throws BookException when nothing counts
     */
    public Arrival takeBack(String id, String person, Instant madeAt) {
        return store.write(handle -> {
            if (isKept(handle, "taken_knowledge", id)) {
                return Arrival.ALREADY;
            }
            if (find(handle).isEmpty()) {
                throw new BookException(new OthersSaid.NothingStands());
            }
            return Arrival.of(row(handle, id, person, madeAt).insertOnce(handle));
        });
    }

    private static TableRow row(Handle handle, String id, String person, Instant madeAt) {
        return new TableRow("taken_knowledge")
                .set("id", id)
                .set("place_in_list", TableRow.count(handle, "taken_knowledge"))
                .set("person", person)
                .set("made_at", madeAt);
    }

    /** Which of the kept files are not as they were signed. */
    public List<Said> problems() {
        return store.read(handle -> {
            var problems = new ArrayList<Said>();
            handle.select("select id, file from taken_knowledge where file is not null order by place_in_list")
                    .map((row, context) -> problem(row.getString("id"), Objects.requireNonNull(row.getString("file"))))
                    .forEach(problem -> problem.ifPresent(problems::add));
            return problems;
        });
    }

    private static Optional<Said> problem(String id, String text) {
        try {
            KnowledgeFile.read(text, key -> true, LocalDate.MAX);
            return Optional.empty();
        } catch (Refused e) {
            return Optional.of(new OthersSaid.Unsound(id, e.said()));
        }
    }
}
