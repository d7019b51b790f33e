package cornerbook.app.knowledge;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.demo.DemoShop;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.say.Day;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearKnowledge;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A knowledge file comes back to the last bit, or is refused with one sentence. All cars are invented. */
class KnowledgeFileTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    private static final List<CarHistory> CARS = DemoShop.histories(DAY, 0, 60).toList();
    /** Somebody may have typed anything as the model of a tyre. */
    private static final String TYPED = "Pneus de Zoé";

    private static final Knowledge LEARNED = withRowOfFewCars(Learner.learn(CARS, DAY));
    private static final Extent EXTENT = new Extent(60, 3, 412, LocalDate.of(2022, 4, 2), LocalDate.of(2026, 11, 29));

    private static Knowledge withRowOfFewCars(Knowledge knowledge) {
        var rows = new ArrayList<>(knowledge.wear().rows());
        var row = rows.getFirst();
        var learned = row.learned();
        rows.add(new WearKnowledge.Row(
                row.drive(),
                row.season(),
                TYPED,
                new LearnedWear(learned.parameters(), learned.standardErrors(), 4, 40, 1)));
        return new Knowledge(
                knowledge.learnedOn(), new WearKnowledge(rows), knowledge.distances(), knowledge.seizing());
    }

    @TempDir
    private Path folder;

    private SigningKey key;

    @BeforeEach
    void makeKey() {
        key = SigningKey.make(folder.resolve("key"));
    }

    private String text() {
        return KnowledgeFile.of(EXTENT, LEARNED).write(key);
    }

    private static Said refusal(String text, Predicate<PublicKeyText> trusted) {
        try {
            KnowledgeFile.read(text, trusted, DAY);
        } catch (Refused refused) {
            return refused.said();
        }
        throw new AssertionError("read");
    }

    @Test
    void itComesBackToTheLastBitWithoutWhatFewCarsTaught() {
        var read = KnowledgeFile.read(text(), key.publicKey()::equals, DAY);
        assertThat(read.key()).isEqualTo(key.publicKey());
        assertThat(read.file().extent()).isEqualTo(EXTENT);
        assertThat(read.file().release()).matches("[0-9.]+\\+[0-9a-f]{8}");
        var rows = LEARNED.wear().rows().stream()
                .filter(row -> row.learned().cars() >= 5)
                .toList();
        assertThat(rows).hasSizeBetween(2, LEARNED.wear().rows().size() - 1);
        assertThat(read.file().knowledge())
                .isEqualTo(new Knowledge(
                        DAY,
                        new WearKnowledge(rows),
                        LEARNED.distances().entrySet().stream()
                                .filter(each -> each.getValue().cars() >= 5)
                                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)),
                        Objects.requireNonNull(LEARNED.seizing())));
    }

    /** Mail programs change the ends of lines, and editors put a mark before the first. */
    @Test
    void endsOfLinesSayNothing() {
        var read = KnowledgeFile.read(text(), key -> true, DAY);
        assertThat(KnowledgeFile.read("\uFEFF" + text().replace("\n", "\r\n") + "\r\n", key -> true, DAY))
                .isEqualTo(read);
    }

    @Test
    void nothingOfAPersonOrACarStandsInIt() {
        var text = text();
        assertThat(text).doesNotContain(TYPED);
        for (var car : CARS) {
            var vehicle = car.vehicle();
            var customer = car.customer();
            for (var personal : new String[] {
                vehicle.id(),
                vehicle.plate(),
                vehicle.vin(),
                vehicle.name(),
                customer.id(),
                customer.name(),
                customer.phone(),
                customer.email()
            }) {
                if (personal != null && !personal.isBlank()) {
                    assertThat(text).doesNotContainIgnoringCase(personal);
                }
            }
            for (var visit : car.visits()) {
                assertThat(text).doesNotContain(visit.id());
            }
            car.sets().stream().flatMap(set -> set.wheels().stream()).forEach(wheel -> {
                // What somebody typed as a model and few cars have may be anything.
                var model = wheel.tyre().model();
                assertThat(text).doesNotContain("\"" + wheel.tag() + "\"");
                long cars = CARS.stream()
                        .filter(other -> other.sets().stream()
                                .flatMap(set -> set.wheels().stream())
                                .anyMatch(each ->
                                        Objects.equals(model, each.tyre().model())))
                        .count();
                if (model != null && cars < 5) {
                    assertThat(text).doesNotContain("\"" + model + "\"");
                }
            });
        }
    }

    @Test
    void tooFewCarsAreNotWritten() {
        var few = KnowledgeFile.of(new Extent(4, 1, 9, DAY.minusDays(9), DAY), Learner.learn(CARS.subList(0, 4), DAY));
        assertThatThrownBy(() -> few.write(key))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said()).isEqualTo(new KnowledgeSaid.TooFewCars(5)));
    }

    @Test
    void whatIsNotSignedByATrustedKeyIsRefused() {
        var other = SigningKey.make(folder.resolve("other"));
        assertThat(refusal(text(), other.publicKey()::equals))
                .isEqualTo(new KnowledgeSaid.NotTrusted(key.publicKey().fingerprint()));
        // Somebody puts the trusted key in place of the own.
        assertThat(refusal(
                        text().replace(
                                        key.publicKey().base64(),
                                        other.publicKey().base64()),
                        other.publicKey()::equals))
                .isEqualTo(new KnowledgeSaid.Altered());
        var lines = text();
        assertThat(refusal(lines.substring(0, lines.lastIndexOf("signature")), key -> true))
                .isEqualTo(new KnowledgeSaid.NotSigned());
        assertThat(refusal(lines.replaceFirst("key [^\n]*", "key AAAA"), key -> true))
                .isEqualTo(new KnowledgeSaid.Altered());
        assertThat(refusal(lines.replaceFirst("key [^\n]*", "key =A="), key -> false))
                .isEqualTo(new KnowledgeSaid.NotSigned());
        assertThat(refusal(lines.replaceFirst("signature [^\n]*", "signature =A="), key -> true))
                .isEqualTo(new KnowledgeSaid.Altered());
    }

    /** Whichever sign is another, none of its numbers is believed. */
    @Test
    void whateverSignIsAlteredItIsRefused() {
        var bytes = text().stripTrailing().getBytes(UTF_8);
        for (int place = 0; place < bytes.length; place += Math.max(1, bytes.length / 300)) {
            var other = bytes.clone();
            other[place] = (byte) (other[place] == '7' ? '8' : '7');
            var altered = new String(other, UTF_8);
            assertThat(refusal(altered, key.publicKey()::equals))
                    .as("sign " + place)
                    .isInstanceOf(KnowledgeSaid.class);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "{}", "Cornerbook knowledge", "Cornerbook knowledge one\n", "{\"vehicle\": {}}", "PK\u0003"})
    void somethingElseIsNoKnowledge(String text) {
        assertThat(refusal(text, key -> true)).isEqualTo(new KnowledgeSaid.NoKnowledge());
    }

    @Test
    void anotherFormIsToldFromNone() {
        assertThat(refusal(text().replaceFirst("knowledge 1", "knowledge 2"), key -> true))
                .isEqualTo(new KnowledgeSaid.OtherForm("2", 1));
    }

    @Test
    void nothingIsLearnedTomorrow() {
        var tomorrow = DAY.plusDays(1);
        var file = KnowledgeFile.of(EXTENT, Learner.learn(CARS, tomorrow)).write(key);
        assertThat(refusal(file, key -> true)).isEqualTo(new KnowledgeSaid.NotYet(new Day(tomorrow)));
    }

    /** The same file with a piece replaced, signed again by a key that is trusted: a trusted signer may be mistaken. */
    private String signedAnew(String pattern, String replacement) {
        var text = text();
        int end = text.indexOf("\nsignature ") + 1;
        var content = text.substring(0, end).replaceFirst(pattern, replacement);
        assertThat(content).isNotEqualTo(text.substring(0, end));
        return content + "signature " + Base64.getEncoder().encodeToString(key.sign(content.getBytes(UTF_8))) + "\n";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"value\" : [0-9.E-]+ | \"value\" : -0.1",
                "\"value\" : [0-9.E-]+ | \"value\" : 1e999",
                "\"value\" : [0-9.E-]+ | \"value\" : \"much\"",
                "\"value\" : [0-9.E-]+ | \"value\" : 12",
                "\"value\" : [0-9.E-]+ | \"value\" : null",
                "\"standard_error\" : [0-9.E-]+ | \"standard_error\" : 0",
                "\"standard_error\" : [0-9.E-]+ | \"standard_error\" : -1",
                "\"standard_error\" : [0-9.E-]+ | \"standard_error\" : 1e9",
                "\"widening\" : [0-9.]+ | \"widening\" : 0.5",
                "\"widening\" : [0-9.]+ | \"widening\" : 9",
                "\"shops\" : 3 | \"shops\" : 0",
                "\"shops\" : 3 | \"shops\" : 61",
                "\"cars\" : 60 | \"cars\" : 4",
                "\"cars\" : 60 | \"cars\" : 60.5",
                "\"cars\" : 60 | \"cars\" : 99999999999999999999",
                "\"visits\" : 412 | \"visits\" : 2",
                "\"from\" : \"2022-04-02\" | \"from\" : \"2026-11-30\"",
                "\"from\" : \"2022-04-02\" | \"from\" : \"2022-02-30\"",
                "\"until\" : \"2026-11-29\" | \"until\" : \"2027-01-01\"",
                "\"mean_km_per_day\" : [0-9.E-]+ | \"mean_km_per_day\" : 0",
                "\"mean_km_per_day\" : [0-9.E-]+ | \"mean_km_per_day\" : 5000",
                "\"car_sd_km_per_day\" : [0-9.E-]+ | \"car_sd_km_per_day\" : -3",
                "\"scale\" : [0-9.E-]+ | \"scale\" : 0",
                "\"covariance\" : \\[ [0-9.E-]+ | \"covariance\" : [ -1",
                "\"covariance\" : \\[ ([0-9.E-]+), [0-9.E-]+ | \"covariance\" : [ $1, 0.5",
                "\"drive\" : \"[A-Z]+\" | \"drive\" : \"SIDEWAYS\"",
                "\"season\" : \"[A-Z]+\" | \"season\" : 3",
                "\"release\" : \"[^\"]+\" | \"release\" : \"\"",
            })
    void aNumberThatCannotBeIsRefusedWithItsPlace(String pattern, String replacement) {
        assertThat(refusal(signedAnew(pattern, replacement), key -> true))
                .isInstanceOfSatisfying(
                        KnowledgeSaid.Impossible.class,
                        impossible -> assertThat(impossible.place()).startsWith("/"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"shops\" : 3 | \"shops\" : 3, \"plate\" : \"ABC 123\"",
                "\"shops\" : 3 | \"shops\" : 3, \"shops\" : 4",
                "\"shops\" : 3 | \"stores\" : 3",
                "\"FRONT_RATE\" | \"SIDE_RATE\"",
                "\"tread\" : \\[ | \"tread\" : 5, \"more\" : [",
                "\"coefficients\" : \\[ | \"coefficients\" : [ 0.1, ",
                "\\{ | [",
            })
    void anotherShapeIsRefused(String pattern, String replacement) {
        assertThat(refusal(signedAnew(pattern, replacement), key -> true)).isInstanceOf(KnowledgeSaid.Misshapen.class);
    }
}
