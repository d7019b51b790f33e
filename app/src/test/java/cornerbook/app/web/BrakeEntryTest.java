package cornerbook.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.Reading;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The brakes as they are entered: what stands, what is refused, and what follows from it on the other pages. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrakeEntryTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    /** Sliding calipers all round; its brakes are not read yet. Nobody looked up its masses. */
    private static final String VISIT = "demo-08-v7";
    /** Fixed calipers in front, sliding ones behind; all was looked up. */
    private static final String OTHER = "demo-05-v7";

    private final HttpClient client = HttpClient.newHttpClient();
    private Book book;
    private CornerbookServer server;

    @BeforeAll
    void start(@TempDir Path folder) {
        book = Book.open(folder);
        book.addAll(DemoShop.histories(TODAY));
        var clock = Clock.fixed(TODAY.atTime(10, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        server = CornerbookServer.start(book, new Assessor(LimitsFile.load()), 0, clock, "");
    }

    @AfterAll
    void stop() {
        server.stop();
        book.close();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PAD_THICKNESS.LF.INNER. | 12.5 | Pad thickness 12.50 mm inner at LF is above new (11.0 mm), expected at most 11.5 mm.",
                "DISC_THICKNESS_VARIATION.LF.. | 25.4 25.5 25.4 | 3 points around the disc, expected 4 to 36, or one value.",
                "DISC_RUNOUT.LF.. | -0.03 | -0.03 mm cannot be, expected 0 to 5 mm.",
                "PAD_MOVEMENT.LF.INNER. | loose | expected one of free, tight, seized.",
                "DISC_MOVED_BY.LF.. | 5 | expected 1 to 4 of 5.",
                "BRAKE_FLUID_WATER... | 12 % | 12 % cannot be, expected 0 to 10 %.",
                "PEDAL_PUMPED... | maybe | expected one of not done, done."
            })
    void whatCannotBeIsRefusedAtItsFieldAndNothingIsStored(String field, String typed, String sentence)
            throws Exception {
        var before = readings(VISIT);
        var answer = post(Links.visit(VISIT), Map.of("form", "f", field, typed, "DISC_LIP.RF..", "0.4"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("id=\"error." + field + "\"", sentence);
        assertThat(readings(VISIT)).isEqualTo(before);
    }

    @Test
    void fieldsFitTheCaliperAndTheParkingBrake() throws Exception {
        var fixed = get(Links.visit(OTHER)).body();
        assertThat(fixed)
                .contains("name=\"RETAINING_PIN_MOVEMENT.LF..\"", "name=\"SLIDE_PIN_MOVEMENT.LR..\"")
                .doesNotContain("name=\"SLIDE_PIN_MOVEMENT.LF..\"", "name=\"RETAINING_PIN_MOVEMENT.LR..\"");
        assertThat(fixed).contains("never blow it off", "Slide pins: rubber-safe grease", "Pump the pedal");
    }

    @Test
    void wordsAndPointsAreStoredAsTheyWereWritten() throws Exception {
        var visit = "demo-11-v7";
        var answer = post(
                Links.visit(visit),
                Map.of(
                        "form", "g",
                        "PAD_EDGE_LIFT.RR.OUTER.", "slight",
                        "DISC_RUNOUT.RR..", "0 20 40 20 0 -20 -40 -20 µm",
                        "BRACKET_CLEANED.RR..", "done"));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(readings(visit))
                .extracting(Reading::asWritten)
                .contains("slight", "0 20 40 20 0 -20 -40 -20 µm", "done");
        assertThat(get(Links.findings(visit)).body())
                .contains("friction material lifts off its plate", "RR caliper: work was done there");
    }

    @Test
    void brakePairsOfTheWeekAreCountedForTheDustRule() throws Exception {
        var count = BrakeDust.ofWeek(book, TODAY).pairs();
        assertThat(get("/").body()).contains("Brake pairs worked on this week: " + count + ".", "29 CFR 1910.1001");
        post(Links.visit(VISIT), Map.of("form", "h", "BRACKET_CLEANED.LF..", "done", "BRACKET_CLEANED.RF..", "done"));
        assertThat(BrakeDust.ofWeek(book, TODAY).pairs())
                .as("one axle is one pair")
                .isEqualTo(count + 1);
        assertThat(BrakeDust.ofWeek(book, TODAY.plusDays(7)).pairs()).isZero();
        assertThat(new BrakeDust(5).isOver()).isFalse();
        assertThat(new BrakeDust(6).sentence()).contains("enclosure");
    }

    @Test
    void burnishIsPlannedFromTheCarOrAsksForWhatItLacks() throws Exception {
        assertThat(get(Links.burnish(OTHER)).body())
                .contains("Slow down moderately", "Temperature of a front disc", "Keep regeneration out");
        var asked = get(Links.burnish(VISIT));
        assertThat(asked.statusCode()).isEqualTo(200);
        assertThat(asked.body()).contains("There is no plan yet").doesNotContain("Slow down moderately");
        var typed =
                "?mass=1500&frontShare=60&frontDiscMass=7&frontDiscDiameter=300&rearDiscMass=6&rearDiscDiameter=290&air=";
        assertThat(get(Links.burnish(VISIT) + typed + "10").body()).contains("Slow down moderately");
        var refused = get(Links.burnish(VISIT) + typed + "warm");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("id=\"error.air\"", "is not a quantity");
    }

    private List<Reading> readings(String visitId) {
        return book.findHistoryOfVisit(visitId).orElseThrow().getVisit(visitId).readings();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(address(path)).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, Map<String, String> fields)
            throws IOException, InterruptedException {
        var body = fields.entrySet().stream()
                .map(field -> encode(field.getKey()) + "=" + encode(field.getValue()))
                .collect(Collectors.joining("&"));
        return client.send(
                HttpRequest.newBuilder(address(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private URI address(String path) {
        return URI.create("http://127.0.0.1:" + server.port() + path);
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
