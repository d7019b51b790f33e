package cornerbook.app.book.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.people.Secret;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.work.Declined;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.price.Job;
import cornerbook.core.price.Tax;
import cornerbook.core.price.TaxCode;
import cornerbook.core.release.ChargedWork;
import cornerbook.words.Language;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.jdbi.v3.core.Jdbi;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an invented customer says to invented prices. */
class EstimateLedgerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    private static final String VISIT = "demo-08-v7";
    private static final String SIGNATURE = "M10 20L30 40L999 299M5 5L6 6";

    @AutoClose
    private Book book;

    private Path folder;

    @BeforeEach
    void open(@TempDir Path folder) {
        this.folder = folder;
        book = EmptyBook.open(folder);
        book.records()
                .addCars(DemoShop.histories(TODAY).stream()
                        .filter(car -> car.vehicle().id().equals("demo-08"))
                        .toList());
    }

    private static EstimateLine line(String key, String oneOf, @Nullable String advice, @Nullable String amount) {
        return new EstimateLine(
                key,
                oneOf,
                advice,
                "Work " + key,
                "",
                "",
                advice != null,
                amount == null ? null : Money.parse("CAD " + amount));
    }

    private static Estimate estimate(String id, EstimateLine... lines) {
        return new Estimate(
                id,
                VISIT,
                0,
                Language.FRENCH,
                TODAY,
                TODAY.plusDays(14),
                "CA-QC",
                CurrencyUnit.CAD,
                List.of(lines),
                List.of(
                        new Estimate.Named(new Tax(TaxCode.GST, new BigDecimal("5")), "1 RT"),
                        new Estimate.Named(new Tax(TaxCode.QST, new BigDecimal("9.975")), "2 TQ")),
                "Ida",
                NOW);
    }

    private static Agreement agreement(
            String id,
            String estimateId,
            Agreement.Way way,
            @Nullable String signature,
            Map<Integer, Boolean> answers) {
        return new Agreement(
                id, estimateId, way, "Ottilie", "", Language.FRENCH, "Oui, é", signature, answers, "Ida", NOW);
    }

    private void agree(String id, String estimateId, Map<Integer, Boolean> answers) {
        assertThat(book.estimates().agree(agreement(id, estimateId, Agreement.Way.SIGNED, SIGNATURE, answers), TODAY))
                .isEqualTo(Arrival.STORED);
    }

    @Test
    void whatWasAgreedStandsWithItsTaxesAndWhatWasDeclinedIsOnTheSheet() {
        var estimate = estimate(
                "e", line("A", "", "PAD.LF", "100.00"), line("B", "", "DISC.LF", "50.00"), line("C", "", null, null));
        assertThat(book.estimates().keep(estimate)).isEqualTo(Arrival.STORED);
        assertThat(book.estimates().keep(estimate)).isEqualTo(Arrival.ALREADY);
        agree("g", "e", Map.of(0, true, 1, false));

        var work = book.estimates().of(VISIT);
        assertThat(work.estimates()).containsExactly(estimate);
        assertThat(work.agreed()).extracting(each -> each.line().key()).containsExactly("A");
        // Revenu Québec's example: $100.00 and taxes are $114.98.
        assertThat(work.totalAgreed())
                .hasValueSatisfying(total -> assertThat(total.total()).isEqualTo(Money.parse("CAD 114.98")));
        assertThat(work.standing().get(2).isOpen()).isTrue();
        assertThat(book.bay().read(VISIT).declined())
                .extracting(Declined::advice, Declined::sentence, Declined::saidBy)
                .containsExactly(tuple("DISC.LF", "Work B", "Ottilie"));

        agree("later", "e", Map.of(1, true));
        assertThat(book.estimates().of(VISIT).agreed()).hasSize(2);
        assertThat(book.bay().read(VISIT).declined()).as("wanted after all").isEmpty();
        assertThat(book.estimates().of(VISIT).agreements()).as("both are kept").hasSize(2);
    }

    /** FIPS 180-4: the SHA-256 of the text in UTF-8, by the system's own tool: printf 'Oui, é' | sha256sum. */
    @Test
    void theExactTextIsKeptWithItsHash() {
        book.estimates().keep(estimate("e", line("A", "", null, "1.00")));
        agree("g", "e", Map.of(0, true));
        var kept = book.estimates().of(VISIT).agreements().getFirst();
        assertThat(kept.words()).isEqualTo("Oui, é");
        assertThat(kept.signature()).isEqualTo(SIGNATURE);
        assertThat(kept.hash()).isEqualTo("4dd9576baff6f31d3841113adb70f32267ac4b5101b6f66aa468e3a821e494f7");
        String hash = Jdbi.create("jdbc:sqlite:" + folder.resolve("book.sqlite"))
                .withHandle(handle -> handle.select("select hash from agreement")
                        .mapTo(String.class)
                        .one());
        assertThat(hash).isEqualTo(kept.hash());
    }

    /** Another price asks for another answer. */
    @Test
    void aLaterEstimatePutsALineInThePlaceOfTheOneBefore() {
        book.estimates().keep(estimate("e", line("A", "", null, "100.00"), line("B", "", null, "9.00")));
        agree("g", "e", Map.of(0, true, 1, true));
        book.estimates().keep(estimate("f", line("A", "", null, "150.00")));
        var work = book.estimates().of(VISIT);
        assertThat(work.agreed()).extracting(each -> each.line().key()).containsExactly("B");
        assertThat(work.standing().getFirst().line().amount()).isEqualTo(Money.parse("CAD 150.00"));
        refused("a newer estimate", agreement("x", "e", Agreement.Way.SIGNED, SIGNATURE, Map.of(0, true)));
    }

    /** What the last estimate leaves out, and nobody had answered, waits for no answer: nobody could give one. */
    @Test
    void aLineThatALaterEstimateLeavesOutIsOfferedNoMore() {
        book.estimates().keep(estimate("e", line("A", "", null, "100.00"), line("B", "", null, "9.00")));
        agree("g", "e", Map.of(0, false));
        book.estimates().keep(estimate("f", line("C", "", null, "50.00")));
        assertThat(book.estimates().of(VISIT).standing())
                .extracting(each -> each.line().key(), WorkOfVisit.Standing::isOpen)
                .containsExactly(tuple("A", false), tuple("C", true));
    }

    @Test
    void whatCannotCountIsRefusedAndKeepsNothing() {
        book.estimates()
                .keep(estimate(
                        "e",
                        line("A1", "tyres", null, "1.00"),
                        line("A2", "tyres", null, "2.00"),
                        line("B", "", null, null)));
        refused("no such estimate", agreement("x", "nothing", Agreement.Way.SIGNED, SIGNATURE, Map.of(0, true)));
        refused("only one of several", agreement("x", "e", Agreement.Way.SIGNED, SIGNATURE, Map.of(0, true, 1, true)));
        refused("without a price", agreement("x", "e", Agreement.Way.SIGNED, SIGNATURE, Map.of(2, true)));
        refused("no line has an answer", agreement("x", "e", Agreement.Way.SIGNED, SIGNATURE, Map.of()));
        refused("no line has an answer", agreement("x", "e", Agreement.Way.SIGNED, SIGNATURE, Map.of(3, true)));
        refused("signature is missing", agreement("x", "e", Agreement.Way.SIGNED, null, Map.of(0, true)));
        for (var drawn :
                List.of("<svg/>", "M1", "M1 2L", "L1 2", "M1 2L3 4\"", "M10000 1", "M1 2Z", "M1 2L3 4".repeat(9000))) {
            refused("signature could not be read", agreement("x", "e", Agreement.Way.SIGNED, drawn, Map.of(0, true)));
        }
        assertThatThrownBy(() -> book.estimates()
                        .agree(agreement("x", "e", Agreement.Way.LINK, null, Map.of(0, true)), TODAY.plusDays(15)))
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains("holds no longer");
        assertThat(book.estimates().of(VISIT).agreements()).isEmpty();
        assertThatThrownBy(() -> book.estimates().keep(estimate("y")))
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains("no line");
    }

    private void refused(String sentence, Agreement agreement) {
        assertThatThrownBy(() -> book.estimates().agree(agreement, TODAY))
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains(sentence);
    }

    @Test
    void whoKnowsTheSecretFindsTheEstimate() {
        book.estimates().keep(estimate("e", line("A", "", null, "1.00")));
        var secret = Secret.make();
        book.estimates().link("l", "e", Secret.hash(secret), "Ida", NOW);
        assertThat(book.estimates().findBySecret(Secret.hash(secret)))
                .map(Estimate::id)
                .contains("e");
        assertThat(book.estimates().findBySecret(Secret.hash(secret + "x"))).isEmpty();
    }

    @Test
    void noRowIsEverChangedButForWhoIsErased() {
        book.estimates().keep(estimate("e", line("A", "", null, "1.00")));
        agree("g", "e", Map.of(0, true));
        book.close();
        var rows = Jdbi.create("jdbc:sqlite:" + folder.resolve("book.sqlite"));
        for (var change : List.of(
                "update estimate_line set amount = 'CAD 9.00'",
                "delete from estimate",
                "update agreement_answer set agreed = 0",
                "delete from agreement",
                "update agreement set words = 'Non'",
                "update agreement set name = 'Another'")) {
            assertThatThrownBy(() -> rows.useHandle(handle -> handle.execute(change)))
                    .as(change)
                    .hasMessageContaining("never changed");
        }
        int erased = rows.withHandle(
                handle -> handle.execute("update agreement set name = '–', contact = '', signature = null"));
        assertThat(erased).isEqualTo(1);
    }

    private static final ChargedWork PADS = ChargedWork.find("PADS.FRONT").orElseThrow();

    private static WorkAnswer answer(String id, WorkAnswer.Kind kind, @Nullable String line, String reason) {
        return new WorkAnswer(id, VISIT, PADS, kind, line, reason, "Ida", NOW);
    }

    private Visit withPads() {
        var visit = book.visits().find(VISIT).orElseThrow();
        return visit.withReadings(
                List.of(new Reading("p", Measure.PADS_REPLACED, Corner.LF, null, null, 1, "done", null, null)));
    }

    /** Nothing is held before there is an estimate; then what no agreed line stands for, at either side of its axle. */
    @Test
    void workIsHeldUntilItsLineIsAgreed() {
        assertThat(book.estimates().of(VISIT).held(withPads())).isEmpty();
        book.estimates().keep(estimate("e", line("PAD.RF.REPLACE_PAIR", "", "PAD.RF.REPLACE_PAIR", "100.00")));
        assertThat(book.estimates().of(VISIT).held(withPads())).containsExactly(PADS);
        agree("no", "e", Map.of(0, false));
        assertThat(book.estimates().of(VISIT).held(withPads())).containsExactly(PADS);
        agree("yes", "e", Map.of(0, true));
        assertThat(book.estimates().of(VISIT).held(withPads())).isEmpty();
    }

    @Test
    void workIsWithoutChargeWithItsReasonUntilItIsAskedAboutAgain() {
        book.estimates().keep(estimate("e", line("A", "", null, "10.00")));
        assertThatThrownBy(() -> book.estimates().answer(answer("f", WorkAnswer.Kind.WITHOUT_CHARGE, null, " ")))
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains("needs a reason");
        var free = answer("f", WorkAnswer.Kind.WITHOUT_CHARGE, null, "SAFETY");
        assertThat(book.estimates().answer(free)).isEqualTo(Arrival.STORED);
        assertThat(book.estimates().answer(free)).isEqualTo(Arrival.ALREADY);
        assertThat(book.estimates().of(VISIT).held(withPads())).isEmpty();
        assertThat(book.estimates().of(VISIT).free(withPads())).containsExactly(free);
        book.estimates().answer(answer("again", WorkAnswer.Kind.ASKED_AGAIN, null, ""));
        assertThat(book.estimates().of(VISIT).held(withPads())).containsExactly(PADS);
        assertThat(book.estimates().of(VISIT).free(withPads())).isEmpty();
    }

    /** Only a person knows what a line is about that was typed by hand. */
    @Test
    void aLineThatWasTypedByHandStandsForWorkOnceSomebodySaysSo() {
        book.estimates().keep(estimate("e", line("OWN.Pads", "", null, "80.00")));
        var named = answer("l", WorkAnswer.Kind.AS_LINE, "OWN.Pads", "");
        assertThatThrownBy(() -> book.estimates().answer(named))
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains("not agreed to this line");
        agree("yes", "e", Map.of(0, true));
        book.estimates().answer(named);
        assertThat(book.estimates().of(VISIT).held(withPads())).isEmpty();
        agree("no", "e", Map.of(0, false));
        assertThat(book.estimates().of(VISIT).held(withPads()))
                .as("declined after all")
                .containsExactly(PADS);
    }

    /** An advice for several corners is kept with all of them, whatever its key names. */
    @Test
    void aLineKeepsTheWorkThatItIsAbout() {
        var hoses = new EstimateLine(
                "BRAKE_LINE.LF.REPLACE",
                "",
                "BRAKE_LINE.LF.REPLACE",
                LineWords.of("Hoses"),
                "",
                "",
                true,
                Money.parse("CAD 60.00"),
                ChargedWork.of(Job.BRAKE_HOSE, List.of(Corner.LF, Corner.RF)));
        book.estimates().keep(estimate("e", hoses));
        assertThat(book.estimates()
                        .of(VISIT)
                        .estimates()
                        .getFirst()
                        .lines()
                        .getFirst()
                        .works())
                .extracting(ChargedWork::key)
                .containsExactly("BRAKE_HOSE.LF", "BRAKE_HOSE.RF");
    }

    /** Québec, section 172: the number that was called is noted. */
    @Test
    void anAgreementByTelephoneNamesTheNumberWhereTheLawAsksForIt() {
        book.estimates().keep(estimate("e", line("A", "", null, "10.00")));
        assertThatThrownBy(() -> book.estimates()
                        .agree(agreement("t", "e", Agreement.Way.TELEPHONE, null, Map.of(0, true)), TODAY))
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains("number that was called");
    }
}
