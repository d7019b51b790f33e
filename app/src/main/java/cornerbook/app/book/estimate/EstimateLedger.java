package cornerbook.app.book.estimate;

import cornerbook.app.book.bay.BayLedger;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.work.Declined;
import cornerbook.app.law.RepairLaw;
import cornerbook.core.price.Tax;
import cornerbook.core.price.TaxCode;
import cornerbook.core.release.ChargedWork;
import cornerbook.core.say.Said;
import cornerbook.core.say.Verbatim;
import cornerbook.words.Language;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Keeps what was estimated and agreed. */
public final class EstimateLedger {
    public static final int MOST_LINES = 60;

    private static final int LONGEST_WORDS = 1200;
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_SIGNATURE = 60_000;

    private final Transactions store;

    public EstimateLedger(Transactions store) {
        this.store = store;
    }

    /** All that was estimated and agreed at a visit. */
    public WorkOfVisit of(String visitId) {
        return store.read(handle -> of(handle, visitId));
    }

    private static WorkOfVisit of(Handle handle, String visitId) {
        var estimates = handle.select("select * from estimate where visit_id = ? order by place_in_list", visitId)
                .map((row, context) -> estimate(handle, row))
                .list();
        var agreements = handle.select(
                        "select agreement.* from agreement join estimate on estimate.id = agreement.estimate_id where"
                                + " estimate.visit_id = ? order by estimate.place_in_list, agreement.place_in_list",
                        visitId)
                .map((row, context) -> agreement(handle, row))
                .list();
        var answers = handle.select("select * from work_answer where visit_id = ? order by place_in_list", visitId)
                .map((row, context) -> answer(row))
                .list();
        return new WorkOfVisit(
                estimates,
                agreements,
                answers.stream().flatMap(Optional::stream).toList());
    }

    /** Empty for work that a later program knew. */
    private static Optional<WorkAnswer> answer(ResultSet row) throws SQLException {
        var id = row.getString("id");
        var visitId = row.getString("visit_id");
        var kind = WorkAnswer.Kind.valueOf(row.getString("kind"));
        var line = row.getString("line_key");
        var reason = row.getString("reason");
        var person = row.getString("person");
        var madeAt = Instant.parse(row.getString("made_at"));
        return ChargedWork.find(row.getString("work"))
                .map(work -> new WorkAnswer(id, visitId, work, kind, line, reason, person, madeAt));
    }

    /** One estimate. */
    public Optional<Estimate> find(String id) {
        return store.read(handle -> find(handle, id));
    }

    private static Optional<Estimate> find(Handle handle, String id) {
        return handle.select("select * from estimate where id = ?", id)
                .map((row, context) -> estimate(handle, row))
                .findFirst();
    }

    private static Estimate estimate(Handle handle, ResultSet row) throws SQLException {
        var id = row.getString("id");
        return new Estimate(
                id,
                row.getString("visit_id"),
                row.getInt("place_in_list"),
                Language.valueOf(row.getString("language")),
                LocalDate.parse(row.getString("day")),
                LocalDate.parse(row.getString("valid_until")),
                row.getString("place"),
                CurrencyUnit.of(row.getString("currency")),
                handle.select("select * from estimate_line where estimate_id = ? order by place_in_list", id)
                        .map((line, context) -> line(line, works(handle, id, line.getInt("place_in_list"))))
                        .list(),
                handle.select("select * from estimate_tax where estimate_id = ? order by place_in_list", id)
                        .map((tax, context) -> tax(tax))
                        .list(),
                row.getString("person"),
                Instant.parse(row.getString("made_at")));
    }

    private static List<ChargedWork> works(Handle handle, String estimateId, int place) {
        return handle
                .select(
                        "select work from estimate_line_work where estimate_id = ? and place_in_list = ? order by work",
                        estimateId,
                        place)
                .mapTo(String.class)
                .stream()
                .flatMap(work -> ChargedWork.find(work).stream())
                .toList();
    }

    /** A line that an older program kept says by its advice what it is about. */
    private static EstimateLine line(ResultSet row, List<ChargedWork> works) throws SQLException {
        var amount = row.getString("amount");
        var advice = row.getString("advice");
        return new EstimateLine(
                row.getString("line_key"),
                row.getString("one_of"),
                advice,
                said(row),
                row.getString("detail"),
                row.getString("meaning"),
                row.getInt("safety") != 0,
                amount == null ? null : Money.parse(amount),
                works.isEmpty() && advice != null ? ChargedWork.ofAdvice(advice) : works);
    }

    private static LineWords said(ResultSet row) throws SQLException {
        var words = row.getString("words");
        var brief = row.getString("brief");
        return brief == null ? LineWords.of(words) : new LineWords(words, brief);
    }

    private static Estimate.Named tax(ResultSet row) throws SQLException {
        return new Estimate.Named(
                new Tax(named(row.getString("name")), new BigDecimal(row.getString("percent"))),
                row.getString("registration"));
    }

    /** A tax by its name in law, or as a shop calls it. */
    public static Said named(String name) {
        return Arrays.stream(TaxCode.values())
                .filter(code -> code.name().equals(name))
                .<Said>map(code -> code)
                .findFirst()
                .orElseGet(() -> Said.verbatim(name));
    }

    /** The same as the book writes it. */
    public static String written(Said name) {
        return name instanceof Verbatim(var text) ? text : ((TaxCode) name).name();
    }

    private static Agreement agreement(Handle handle, ResultSet row) throws SQLException {
        var id = row.getString("id");
        return new Agreement(
                id,
                row.getString("estimate_id"),
                Agreement.Way.valueOf(row.getString("way")),
                row.getString("name"),
                row.getString("contact"),
                Language.valueOf(row.getString("language")),
                row.getString("words"),
                row.getString("signature"),
                handle
                        .select("select * from agreement_answer where agreement_id = ?", id)
                        .map((answer, context) -> Map.entry(answer.getInt("line"), answer.getInt("agreed") != 0))
                        .stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
                row.getString("person"),
                Instant.parse(row.getString("made_at")));
    }

    /**
     * Keeps an estimate as the next one of its visit, whatever its turn says; what was kept already, by its id, counts once.
     *
     * @throws BookException when it has no lines or too many, or one is too long
     */
    public Arrival keep(Estimate estimate) {
        if (estimate.lines().isEmpty()) {
            throw refused(new EstimateBookSaid.NoLines());
        }
        if (estimate.lines().size() > MOST_LINES) {
            throw refused(new EstimateBookSaid.TooManyLines(MOST_LINES));
        }
        for (var line : estimate.lines()) {
            if (line.words().length() > LONGEST_WORDS || line.key().length() > LONGEST_WORDS) {
                throw refused(new EstimateBookSaid.WordsTooLong(LONGEST_WORDS));
            }
        }
        return store.write(handle -> {
            boolean stored = new TableRow("estimate")
                    .set("id", estimate.id())
                    .set("visit_id", estimate.visitId())
                    .set("place_in_list", TableRow.count(handle, "estimate where visit_id = ?", estimate.visitId()))
                    .set("language", estimate.language())
                    .set("day", estimate.day())
                    .set("valid_until", estimate.validUntil())
                    .set("place", estimate.place())
                    .set("currency", estimate.currency().getCode())
                    .set("person", estimate.person())
                    .set("made_at", estimate.madeAt())
                    .insertOnce(handle);
            if (stored) {
                for (int place = 0; place < estimate.lines().size(); place++) {
                    insert(handle, estimate.id(), place, estimate.lines().get(place));
                }
                for (int place = 0; place < estimate.taxes().size(); place++) {
                    var named = estimate.taxes().get(place);
                    new TableRow("estimate_tax")
                            .set("estimate_id", estimate.id())
                            .set("place_in_list", place)
                            .set("name", written(named.tax().name()))
                            .set("percent", named.tax().percent().toPlainString())
                            .set("registration", named.registration())
                            .insert(handle);
                }
            }
            return Arrival.of(stored);
        });
    }

    /**
     * The same where its turn says how many there were when it was written: of two that are written at once the second is refused, and
     * its writer looks at the first.
     */
    public Arrival keepInTurn(Estimate estimate) {
        return store.write(handle -> {
            int given = TableRow.count(handle, "estimate where visit_id = ?", estimate.visitId());
            if (estimate.turn() != given && find(handle, estimate.id()).isEmpty()) {
                throw refused(new EstimateBookSaid.GivenMeanwhile(given));
            }
            return new EstimateLedger(Transactions.within(handle)).keep(estimate);
        });
    }

    private static void insert(Handle handle, String estimateId, int place, EstimateLine line) {
        new TableRow("estimate_line")
                .set("estimate_id", estimateId)
                .set("place_in_list", place)
                .set("line_key", line.key())
                .set("one_of", line.oneOf())
                .set("advice", line.advice())
                .set("words", line.words())
                .set("brief", line.said().brief())
                .set("detail", line.detail())
                .set("meaning", line.meaning())
                .set("safety", line.safety())
                .set("amount", line.amount())
                .insert(handle);
        for (var work : line.works()) {
            new TableRow("estimate_line_work")
                    .set("estimate_id", estimateId)
                    .set("place_in_list", place)
                    .set("work", work.key())
                    .insert(handle);
        }
    }

    /**
     * Keeps what was said of work that no agreed line stands for; what was kept already, by its id, counts once.
     *
     * @throws BookException when it is without charge and nobody says why, or as a line that is not agreed
     */
    public Arrival answer(WorkAnswer answer) {
        if (answer.kind() == WorkAnswer.Kind.WITHOUT_CHARGE && answer.reason().isBlank()) {
            throw refused(new EstimateBookSaid.FreeReasonMissing());
        }
        if (answer.reason().length() > LONGEST_NAME) {
            throw refused(new EstimateBookSaid.WordsTooLong(LONGEST_NAME));
        }
        return store.write(handle -> {
            if (answer.kind() == WorkAnswer.Kind.AS_LINE
                    && of(handle, answer.visitId()).agreed().stream()
                            .noneMatch(each -> each.line().key().equals(answer.line()))) {
                throw refused(new EstimateBookSaid.LineNotAgreed());
            }
            return Arrival.of(new TableRow("work_answer")
                    .set("id", answer.id())
                    .set("visit_id", answer.visitId())
                    .set("place_in_list", TableRow.count(handle, "work_answer where visit_id = ?", answer.visitId()))
                    .set("work", answer.work().key())
                    .set("kind", answer.kind())
                    .set("line_key", answer.line())
                    .set("reason", answer.reason())
                    .set("person", answer.person())
                    .set("made_at", answer.madeAt())
                    .insertOnce(handle));
        });
    }

    /** Who knows the secret may read the estimate and answer it. */
    public void link(String id, String estimateId, String secretHash, String person, Instant madeAt) {
        store.write(handle -> new TableRow("estimate_link")
                .set("id", id)
                .set("estimate_id", estimateId)
                .set("secret_hash", secretHash)
                .set("person", person)
                .set("made_at", madeAt)
                .insertOnce(handle));
    }

    /** The estimate behind an address, by the hash of its secret. */
    public Optional<Estimate> findBySecret(String secretHash) {
        return store.read(handle -> handle.select(
                        "select estimate.* from estimate join estimate_link on estimate_link.estimate_id = estimate.id"
                                + " where estimate_link.secret_hash = ?",
                        secretHash)
                .map((row, context) -> estimate(handle, row))
                .findFirst());
    }

    /**
     * Keeps what the customer said, and puts what comes of advice on the list of what was declined; what was kept already, by its id,
     * counts once.
     *
     * @param today on which the estimate must still hold
     * @throws BookException when the estimate is not the last one or no longer holds, or the answers or the signature cannot be
     */
    public Arrival agree(Agreement agreement, LocalDate today) {
        return store.write(handle -> {
            var estimate = find(handle, agreement.estimateId())
                    .orElseThrow(() -> refused(new EstimateBookSaid.NoSuchEstimate()));
            check(handle, estimate, agreement, today);
            boolean stored = new TableRow("agreement")
                    .set("id", agreement.id())
                    .set("estimate_id", estimate.id())
                    .set("place_in_list", TableRow.count(handle, "agreement where estimate_id = ?", estimate.id()))
                    .set("way", agreement.way())
                    .set("name", agreement.name())
                    .set("contact", agreement.contact())
                    .set("language", agreement.language())
                    .set("words", agreement.words())
                    .set("hash", agreement.hash())
                    .set("signature", agreement.signature())
                    .set("person", agreement.person())
                    .set("made_at", agreement.madeAt())
                    .insertOnce(handle);
            if (stored) {
                agreement
                        .answers()
                        .forEach((line, agreed) -> new TableRow("agreement_answer")
                                .set("agreement_id", agreement.id())
                                .set("line", line)
                                .set("agreed", agreed)
                                .insert(handle));
                decline(handle, estimate, agreement);
            }
            return Arrival.of(stored);
        });
    }

    /** The same with its estimate, which may be kept already: both are, or neither. */
    public Arrival agreeTo(Estimate estimate, Agreement agreement, LocalDate today) {
        return store.write(handle -> {
            var ledger = new EstimateLedger(Transactions.within(handle));
            ledger.keep(estimate);
            return ledger.agree(agreement, today);
        });
    }

    private static void check(Handle handle, Estimate estimate, Agreement agreement, LocalDate today) {
        if (estimate.turn() + 1 < TableRow.count(handle, "estimate where visit_id = ?", estimate.visitId())) {
            throw refused(new EstimateBookSaid.NotTheLast());
        }
        if (today.isAfter(estimate.validUntil())) {
            throw refused(new EstimateBookSaid.NoLongerValid());
        }
        if (agreement.name().isBlank()) {
            throw refused(new EstimateBookSaid.NameMissing());
        }
        var spoken = RepairLaw.of(estimate.place()).spoken();
        if (spoken != null
                && agreement.way() == Agreement.Way.TELEPHONE
                && agreement.contact().isBlank()) {
            throw refused(new EstimateBookSaid.NumberMissing(spoken));
        }
        if (agreement.name().length() > LONGEST_NAME || agreement.contact().length() > LONGEST_NAME) {
            throw refused(new EstimateBookSaid.WordsTooLong(LONGEST_NAME));
        }
        checkAnswers(estimate, agreement.answers());
        checkSignature(agreement);
    }

    private static void checkAnswers(Estimate estimate, Map<Integer, Boolean> answers) {
        if (answers.isEmpty()
                || answers.keySet().stream()
                        .anyMatch(line -> line < 0 || line >= estimate.lines().size())) {
            throw refused(new EstimateBookSaid.NothingAnswered());
        }
        var taken = new HashSet<String>();
        answers.forEach((place, agreed) -> {
            var line = estimate.lines().get(place);
            if (agreed && line.amount() == null) {
                throw refused(new EstimateBookSaid.NoPriceYet());
            }
            if (agreed && !line.oneOf().isEmpty() && !taken.add(line.oneOf())) {
                throw refused(new EstimateBookSaid.OnlyOneOfThem());
            }
        });
    }

    private static void checkSignature(Agreement agreement) {
        var signature = agreement.signature();
        if (signature == null) {
            if (agreement.way() == Agreement.Way.SIGNED) {
                throw refused(new EstimateBookSaid.SignatureMissing());
            }
        } else if (!isSignature(signature)) {
            throw refused(new EstimateBookSaid.SignatureNotUnderstood());
        }
    }

    /** One stroke after the other: a pattern over all of them at once would be as deep as they are many. */
    private static boolean isSignature(String path) {
        return path.length() <= LONGEST_SIGNATURE
                && path.startsWith("M")
                && Arrays.stream(path.substring(1).split("M", -1))
                        .allMatch(stroke -> Arrays.stream(stroke.split("L", -1))
                                .allMatch(point -> point.matches("\\d{1,4} \\d{1,3}")));
    }

    /** What was advised and nobody took stands on the hand-over sheet; what is wanted after all does not. */
    private static void decline(Handle handle, Estimate estimate, Agreement agreement) {
        var bay = new BayLedger(Transactions.within(handle));
        var taken = new HashSet<String>();
        agreement.answers().forEach((place, agreed) -> {
            var advice = estimate.lines().get(place).advice();
            if (advice != null && agreed) {
                taken.add(advice);
            }
        });
        var standing = Declined.standing(bay.read(estimate.visitId()).declined()).stream()
                .map(Declined::advice)
                .collect(Collectors.toSet());
        var first = new LinkedHashMap<String, EstimateLine>();
        agreement.answers().keySet().stream().sorted().forEach(place -> {
            var line = estimate.lines().get(place);
            if (line.advice() != null) {
                first.putIfAbsent(line.advice(), line);
            }
        });
        first.forEach((advice, line) -> {
            boolean declined = !taken.contains(advice);
            if (declined || standing.contains(advice)) {
                bay.addDeclined(
                        estimate.visitId(),
                        new Declined(
                                agreement.id() + "/" + advice,
                                advice,
                                line.words(),
                                declined,
                                agreement.name(),
                                agreement.person(),
                                agreement.madeAt()));
            }
        });
    }

    private static BookException refused(EstimateBookSaid why) {
        return new BookException(why);
    }
}
