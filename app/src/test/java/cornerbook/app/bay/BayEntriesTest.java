package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.corner.Corner;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Reading;
import cornerbook.core.visit.ShopTool;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What tablets send, answered one by one. */
class BayEntriesTest {
    private final CarHistory car = BayShop.untouched("demo-08");
    private final String visitId = car.visits().getLast().id();
    private BayShop shop;

    @TempDir
    private Path folder;

    @BeforeEach
    void open() {
        shop = new BayShop(folder, List.of(car));
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void eachEntryIsAnsweredOnItsOwnAndSendingTwiceStoresOnce() throws Exception {
        var good = tread("OUTER", "5.2");
        var unreadable = tread("CENTRE", "fife");
        var impossible = tread("INNER", "-1");
        assertThat(statuses(good, unreadable, impossible)).containsExactly("stored", "refused", "refused");
        assertThat(statuses(good, unreadable)).containsExactly("already", "refused");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("5.2 mm");
    }

    /** The choice is taken back by another one; each is stored once, whatever order the answers are lost in. */
    @Test
    void theToolInHandIsNamedByItsMarkAndTakenBack() throws Exception {
        var gauge = new ShopTool(
                "G-1", ShopTool.Kind.PRESSURE_GAUGE, "Invented gauge", 0, 700, 3, LocalDate.of(2027, 1, 31));
        shop.book.putTool(gauge);
        var named = entry("tool", Map.of("tool", "PRESSURE_GAUGE", "toolId", "G-1"));
        var foreign = entry("tool", Map.of("tool", "TORQUE_WRENCH", "toolId", "G-1"));
        assertThat(statuses(named, foreign)).containsExactly("stored", "refused");
        assertThat(shop.book.findVisit(visitId).orElseThrow().tools()).containsExactly(gauge);
        var takenBack = entry("tool", Map.of("tool", "PRESSURE_GAUGE", "toolId", ""));
        assertThat(statuses(takenBack, named)).containsExactly("stored", "already");
        assertThat(shop.book.findVisit(visitId).orElseThrow().tools()).isEmpty();
    }

    @Test
    void refusalSaysWhereAndWhatWasExpected() throws Exception {
        var answers = send(tread("OUTER", "99"), with(tread("OUTER", "5"), "id", "no identity"));
        assertThat(answers.get(0).path("pointer").stringValue()).isEqualTo("/entries/0/written");
        assertThat(answers.get(0).path("sentence").stringValue()).isEqualTo("99 mm cannot be, expected 0 to 25 mm.");
        assertThat(answers.get(1).path("pointer").stringValue()).isEqualTo("/entries/1/id");
        assertThat(answers.get(1).path("sentence").stringValue()).contains("expected an identity as a UUID");
        assertThat(shop.readings(visitId)).isEmpty();
    }

    @Test
    void whatIsNoBatchIsRefusedWhole() throws Exception {
        assertThat(shop.post(visitId, "nothing").statusCode()).isEqualTo(400);
        assertThat(shop.post("no-visit", List.of()).statusCode()).isEqualTo(404);
        var foreign = shop.post(visitId, List.of(tread("OUTER", "5.2")), "Origin", "http://elsewhere.example");
        assertThat(foreign.statusCode()).isEqualTo(403);
        assertThat(shop.readings(visitId)).isEmpty();
    }

    @Test
    void secondReadingOfAPlaceIsKeptBesideTheFirstUntilAPersonAnswers() throws Exception {
        var first = tread("OUTER", "5.2");
        var second = with(tread("OUTER", "4.4"), "person", "Bo");
        assertThat(statuses(first)).containsExactly("stored");
        assertThat(statuses(second)).containsExactly("conflict");
        assertThat(statuses(second)).as("sent twice").containsExactly("conflict");
        assertThat(shop.readings(visitId)).extracting(Reading::asWritten).containsExactly("5.2 mm");
        var rival = state().path("rivals").path(0);
        assertThat(rival.path("written").stringValue()).isEqualTo("4.4 mm");
        assertThat(rival.path("standing").stringValue()).isEqualTo("5.2 mm");

        var answer = entry("answer", Map.of("rival", second.path("id").stringValue(), "take", true));
        assertThat(statuses(answer)).containsExactly("stored");
        assertThat(statuses(answer)).containsExactly("already");
        assertThat(state().path("rivals").isEmpty()).isTrue();
        var correction = shop.readings(visitId).getLast();
        assertThat(correction.corrects()).isEqualTo(first.path("id").stringValue());
        assertThat(correction.asWritten()).isEqualTo("4.4 mm");
        assertThat(correction.reason()).contains("Bo", "Ada");
        assertThat(statuses(second)).as("once answered").containsExactly("already");
    }

    @Test
    void rivalIsNeverChangedOrDeleted() throws Exception {
        assertThat(statuses(tread("OUTER", "5.2"), tread("OUTER", "4.4"))).containsExactly("stored", "conflict");
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("book.sqlite"));
                var statement = connection.createStatement()) {
            for (var sql : List.of("update rival_reading set amount = 5", "delete from rival_reading")) {
                assertThatThrownBy(() -> statement.execute(sql)).hasMessageContaining("a reading is never");
            }
        }
    }

    @Test
    void theOtherMayStandAndEqualReadingsAskNothing() throws Exception {
        var first = tread("OUTER", "5.2");
        var same = tread("OUTER", "5.20");
        var other = tread("OUTER", "4.4");
        assertThat(statuses(first, same, other)).containsExactly("stored", "stored", "conflict");
        assertThat(state().path("rivals").size()).isEqualTo(1);
        assertThat(statuses(entry("answer", Map.of("rival", other.path("id").stringValue(), "take", false))))
                .containsExactly("stored");
        assertThat(state().path("rivals").isEmpty()).isTrue();
        assertThat(shop.readings(visitId)).hasSize(1);
    }

    @Test
    void rivalThatCouldNotStandAloneIsRefused() throws Exception {
        assertThat(statuses(tread("OUTER", "5.2"), tread("OUTER", "24"))).containsExactly("stored", "refused");
    }

    @Test
    void correctionNamesWhatTheTabletShowed() throws Exception {
        var first = tread("OUTER", "5.2");
        var correction =
                with(with(tread("OUTER", "5.3"), "shown", first.path("id").stringValue()), "reason", "Misread.");
        assertThat(statuses(first, correction)).containsExactly("stored", "stored");
        assertThat(shop.readings(visitId).getLast().reason()).isEqualTo("Misread.");
        assertThat(state().path("readings")
                        .path("TREAD_DEPTH.LF.OUTER." + wheel())
                        .path("written")
                        .stringValue())
                .isEqualTo("5.3 mm");
    }

    @Test
    void nothingLeavesWithAnOpenCautionWithoutAReason() throws Exception {
        assertThat(statuses(done("PADS_REPLACED", "LF"), done("PEDAL_PUMPED", null), done("CALIPER_CLOSED", "RF")))
                .containsOnly("stored");
        var silent = send(entry("departure", Map.of("reasons", Map.of())));
        assertThat(silent.getFirst().path("sentence").stringValue()).contains("caliper at LF is not closed");
        assertThat(silent.getFirst().path("pointer").stringValue()).isEqualTo("/entries/0/reasons/CALIPER.LF");

        var toTheNextShop = entry("departure", Map.of("reasons", Map.of("CALIPER.LF", "Towed to the next shop.")));
        assertThat(statuses(toTheNextShop)).containsExactly("stored");
        var departure = shop.book.bay().findDeparture(visitId).orElseThrow();
        assertThat(departure.person()).isEqualTo("Ada");
        assertThat(departure.reasons())
                .singleElement()
                .satisfies(reason -> assertThat(reason.reason()).isEqualTo("Towed to the next shop."));

        var later = entry("departure", Map.of("reasons", Map.of())).put("at", "2026-11-25T11:00:00Z");
        assertThat(statuses(done("CALIPER_CLOSED", "LF"), later)).containsOnly("stored");
        assertThat(shop.book.bay().findDeparture(visitId).orElseThrow().reasons())
                .isEmpty();
    }

    @Test
    void tickIsAStepOfThisCar() throws Exception {
        assertThat(statuses(
                        entry("tick", Map.of("tick", "FASTENER.LF.1", "done", true)),
                        entry("tick", Map.of("tick", "FASTENER.LF.11", "done", true))))
                .containsExactly("stored", "refused");
        assertThat(state().path("ticks").path("FASTENER.LF.1").path("person").stringValue())
                .isEqualTo("Ada");
    }

    @Test
    void wheelsThatWentOnMustBeTorqued() throws Exception {
        var wheels = names(shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("metric")
                .path("planned"));
        assertThat(statuses(entry("leaving", Map.of("wheels", wheels, "shown", Map.of()))))
                .containsExactly("stored");
        assertThat(statuses(entry("leaving", Map.of("wheels", wheels, "shown", Map.of()))))
                .containsExactly("already");
        assertThat(shop.visit(visitId).leftOn()).hasSize(4);
        var other = new HashMap<>(wheels);
        other.put("LF", wheels.get("RF"));
        other.put("RF", wheels.get("LF"));
        assertThat(statuses(entry("leaving", Map.of("wheels", other, "shown", Map.of()))))
                .as("from a tablet that had not seen them")
                .containsExactly("conflict");
        assertThat(send(entry("departure", Map.of("reasons", Map.of())))
                        .getFirst()
                        .path("sentence")
                        .stringValue())
                .contains("not torqued");
        var torques = new ArrayList<ObjectNode>();
        for (var corner : Corner.values()) {
            torques.add(reading("WHEEL_TORQUE", corner.name(), String.valueOf(wheels.get(corner.name())), "120"));
        }
        torques.add(entry("departure", Map.of("reasons", Map.of())));
        assertThat(statuses(torques)).containsOnly("stored");
    }

    @Test
    void torqueIsCheckedByAnotherPersonWhereTheShopAsksForIt() throws Exception {
        shop.book.rules().askSecondCheck(true);
        var wheels = names(shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("metric")
                .path("planned"));
        var entries = new ArrayList<ObjectNode>();
        entries.add(entry("leaving", Map.of("wheels", wheels, "shown", Map.of())));
        for (var corner : Corner.values()) {
            entries.add(reading("WHEEL_TORQUE", corner.name(), String.valueOf(wheels.get(corner.name())), "120"));
        }
        entries.add(entry("tick", Map.of("tick", "SECOND_CHECK", "done", true)));
        assertThat(statuses(entries)).containsOnly("stored");
        var leaves = entry("departure", Map.of("reasons", Map.of()));
        assertThat(send(leaves).getFirst().path("sentence").stringValue())
                .as("Ada wrote the torque down, and ticked")
                .contains("Nobody but the one who tightened has checked the torque.");
        var other = with(entry("tick", Map.of("tick", "SECOND_CHECK", "done", true)), "person", "Bo")
                .put("at", "2026-11-25T10:05:00Z");
        var tightenedAnew =
                entry("tick", Map.of("tick", "FASTENER.LF.1", "done", true)).put("at", "2026-11-25T10:06:00Z");
        assertThat(statuses(other, tightenedAnew)).containsOnly("stored");
        assertThat(send(leaves).getFirst().path("sentence").stringValue())
                .as("Ada tightened after Bo had checked")
                .contains("Nobody but the one who tightened");
        var checkedAnew = with(entry("tick", Map.of("tick", "SECOND_CHECK", "done", true)), "person", "Bo")
                .put("at", "2026-11-25T10:09:00Z");
        var heardOfLate =
                entry("tick", Map.of("tick", "FASTENER.LF.2", "done", true)).put("at", "2026-11-25T10:08:00Z");
        assertThat(statuses(checkedAnew, heardOfLate, leaves)).containsOnly("stored");
        shop.book.rules().askSecondCheck(false);
        assertThat(shop.book.rules().asksSecondCheck()).isFalse();
    }

    private String wheel() {
        return String.valueOf(car.visits().getLast().arrivedOn().get(Corner.LF));
    }

    private ObjectNode tread(String spot, String written) {
        return with(reading("TREAD_DEPTH", "LF", wheel(), written), "spot", spot);
    }

    private static ObjectNode reading(String measure, String corner, String wheel, String written) {
        return entry("reading", Map.of("measure", measure, "corner", corner, "wheel", wheel, "written", written));
    }

    private static ObjectNode done(String measure, @Nullable String corner) {
        return entry("reading", Map.of("measure", measure, "written", "done")).put("corner", corner);
    }

    private static ObjectNode entry(String kind, Map<String, ?> parts) {
        ObjectNode entry = BayShop.JSON.valueToTree(parts);
        return entry.put("id", UUID.randomUUID().toString())
                .put("kind", kind)
                .put("person", "Ada")
                .put("at", "2026-11-25T10:00:00Z");
    }

    private static ObjectNode with(ObjectNode entry, String name, String value) {
        return entry.deepCopy().put(name, value);
    }

    private JsonNode state() throws Exception {
        return shop.get("/bay/visits/" + visitId + "/state.json");
    }

    private static Map<String, String> names(JsonNode object) {
        var names = new LinkedHashMap<String, String>();
        object.properties()
                .forEach(each -> names.put(each.getKey(), each.getValue().stringValue()));
        return names;
    }

    private List<JsonNode> send(ObjectNode... entries) throws Exception {
        return send(List.of(entries));
    }

    private List<JsonNode> send(List<ObjectNode> entries) throws Exception {
        var answer = shop.post(visitId, entries);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        var answers = new ArrayList<JsonNode>();
        BayShop.JSON.readTree(answer.body()).path("answers").forEach(answers::add);
        return answers;
    }

    private List<String> statuses(ObjectNode... entries) throws Exception {
        return statuses(List.of(entries));
    }

    private List<String> statuses(List<ObjectNode> entries) throws Exception {
        return send(entries).stream()
                .map(answer -> answer.path("status").stringValue())
                .toList();
    }
}
