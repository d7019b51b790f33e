package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.Reader;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
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
        shop.book.tools().put(gauge);
        var named = entry("tool", Map.of("tool", "PRESSURE_GAUGE", "toolId", "G-1"));
        var foreign = entry("tool", Map.of("tool", "TORQUE_WRENCH", "toolId", "G-1"));
        assertThat(statuses(named, foreign)).containsExactly("stored", "refused");
        assertThat(shop.book.visits().find(visitId).orElseThrow().card().tools())
                .containsExactly(gauge);
        var takenBack = entry("tool", Map.of("tool", "PRESSURE_GAUGE", "toolId", ""));
        assertThat(statuses(takenBack, named)).containsExactly("stored", "already");
        assertThat(shop.book.visits().find(visitId).orElseThrow().card().tools())
                .isEmpty();
    }

    @Test
    void refusalSaysWhereAndWhatWasExpected() throws Exception {
        var answers = send(tread("OUTER", "99"), with(tread("OUTER", "5"), "id", "no identity"));
        assertThat(answers.get(0).path("pointer").stringValue()).isEqualTo("/entries/0/written");
        assertThat(answers.get(0).path("sentence").stringValue())
                .isEqualTo("99\u00a0mm cannot be, expected 0 to 25\u00a0mm.");
        assertThat(answers.get(1).path("pointer").stringValue()).isEqualTo("/entries/1/id");
        assertThat(answers.get(1).path("sentence").stringValue()).contains("expected an identity as a UUID");
        assertThat(shop.readings(visitId)).isEmpty();
    }

    @Test
    void whatIsNoBatchIsRefusedWhole() throws Exception {
        assertThat(shop.post(visitId, "nothing").statusCode()).isEqualTo(400);
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

        var toTheNextShop = entry(
                "departure",
                Map.of("reasons", Map.of("CALIPER.LF", "Towed to the next shop.", "WHEELS", "On dollies.")));
        assertThat(statuses(toTheNextShop)).containsExactly("stored");
        var departure = shop.book.bay().findDeparture(visitId).orElseThrow();
        assertThat(departure.person()).isEqualTo("Ada");
        assertThat(departure.reasons())
                .extracting(Departure.Reason::reason)
                .containsExactly("Towed to the next shop.", "On dollies.");

        leave();
        var later = entry("departure", Map.of("reasons", wheelsNotTorqued())).put("at", "2026-11-25T09:00:00Z");
        assertThat(statuses(done("CALIPER_CLOSED", "LF"), later)).containsOnly("stored");
        assertThat(shop.book.bay().findDeparture(visitId).orElseThrow().reasons())
                .extracting(Departure.Reason::caution)
                .containsExactlyElementsOf(new TreeSet<>(wheelsNotTorqued().keySet()));
    }

    private static Map<String, String> wheelsNotTorqued() {
        return Arrays.stream(Corner.values())
                .collect(Collectors.toMap(corner -> "TORQUE." + corner, corner -> "The owner torques them."));
    }

    /** 0.5 mm of lining, and a wheel at 80 % of its torque: the car left without a word. */
    @Test
    void nothingUnsafeLeavesUnlessSomebodySaysWhyAndTheCustomerKnows() throws Exception {
        var wheels = leave();
        var entries = new ArrayList<ObjectNode>();
        for (var corner : Corner.values()) {
            entries.add(reading(
                    "WHEEL_TORQUE",
                    corner.name(),
                    String.valueOf(wheels.get(corner.name())),
                    corner == Corner.LF ? "96" : "120"));
        }
        entries.add(pad("INNER", "0.5"));
        entries.add(pad("OUTER", "4.5"));
        assertThat(statuses(entries)).containsOnly("stored");
        assertThat(state().path("unsafe")
                        .valueStream()
                        .map(each -> each.path("key").stringValue()))
                .containsExactlyInAnyOrder("UNSAFE.PAD.LF", "UNSAFE.WHEEL_TORQUE.LF");
        var silent = send(entry("departure", Map.of("reasons", Map.of())));
        assertThat(silent.getFirst().path("pointer").stringValue()).startsWith("/entries/0/reasons/UNSAFE.");
        var reasons = Map.of("UNSAFE.PAD.LF", "Pads come tomorrow.", "UNSAFE.WHEEL_TORQUE.LF", "Stud turns.");
        var unknowing = send(entry("departure", Map.of("reasons", reasons)));
        assertThat(unknowing.getFirst().path("sentence").stringValue()).contains("The customer has to know");
        assertThat(unknowing.getFirst().path("pointer").stringValue()).isEqualTo("/entries/0/acknowledgedBy");
        var knowing = entry("departure", Map.of("reasons", reasons, "acknowledgedBy", "Mme Ardent"));
        assertThat(statuses(knowing)).containsExactly("stored");
        var departure = shop.book.bay().findDeparture(visitId).orElseThrow();
        assertThat(departure.acknowledgedBy()).isEqualTo("Mme Ardent");
        assertThat(departure.reasons())
                .extracting(Departure.Reason::caution)
                .containsExactly("UNSAFE.PAD.LF", "UNSAFE.WHEEL_TORQUE.LF");
    }

    @Test
    void tickIsAStepOfThisCar() throws Exception {
        assertThat(statuses(
                        tick("ROCKED", true),
                        tick("FASTENER.LF.11", true),
                        tick("FASTENER.LF.1", true).put("wheel", "no wheel")))
                .containsExactly("stored", "refused", "refused");
        assertThat(ticked("ROCKED").path("person").stringValue()).isEqualTo("Ada");
    }

    /** A tablet ten minutes ahead ticks; another one, whose clock is right, takes the tick back. */
    @Test
    void ticksCountAsTheyArriveWhateverTheClocksSay() throws Exception {
        var ahead = tick("ROCKED", true).put("at", "2026-11-25T10:10:00Z");
        var takenBack = tick("ROCKED", false).put("shown", ahead.path("id").stringValue());
        assertThat(statuses(ahead, takenBack)).containsOnly("stored");
        assertThat(ticked("ROCKED").path("done").booleanValue()).isFalse();
    }

    /** "Done" of a tablet that had not seen that the step was taken back does not count, and it is told. */
    @Test
    void ofTwoTabletsThatHadNotSeenEachOtherNotDoneStands() throws Exception {
        var first = tick("ROCKED", true);
        var takenBack = tick("ROCKED", false).put("shown", first.path("id").stringValue());
        var late = tick("ROCKED", true).put("at", "2026-11-25T11:00:00Z");
        assertThat(statuses(first, takenBack, late)).containsExactly("stored", "stored", "conflict");
        assertThat(statuses(late, first)).as("sent again").containsExactly("conflict", "already");
        assertThat(ticked("ROCKED").path("done").booleanValue()).isFalse();
        var seen = tick("ROCKED", true).put("shown", ticked("ROCKED").path("id").stringValue());
        assertThat(statuses(seen, late)).containsExactly("stored", "already");
        assertThat(ticked("ROCKED").path("done").booleanValue()).isTrue();
        assertThat(statuses(tick("ROCKED", false)))
                .as("not done needs to have seen nothing")
                .containsExactly("stored");
        assertThat(ticked("ROCKED").path("done").booleanValue()).isFalse();
    }

    @Test
    void whatLiesInTheFutureIsRefusedAndPassesWithTheRightTime() throws Exception {
        var late = tread("OUTER", "5.2").put("at", "2026-11-25T12:03:00Z");
        var answer = send(late).getFirst();
        assertThat(answer.path("status").stringValue()).isEqualTo("refused");
        assertThat(answer.path("pointer").stringValue()).isEqualTo("/entries/0/at");
        assertThat(answer.path("sentence").stringValue()).contains("lies ahead of this machine's");
        assertThat(statuses(with(late, "at", state().path("now").stringValue())))
                .containsExactly("stored");
    }

    @Test
    void entryThatNoneExpectedKeepsNoOtherBack() throws Exception {
        var odd = entry("reading", Map.of("measure", "DISC_RUNOUT", "corner", "LF", "written", "stud 1:;"));
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("book.sqlite"));
                var statement = connection.createStatement()) {
            statement.execute(
                    "create trigger odd before insert on work_tick when new.tick = 'BURNISHED' begin select raise(abort, 'a rule of the tables'); end");
        }
        var answers = send(odd, tick("BURNISHED", true), tread("OUTER", "5.2"));
        assertThat(answers)
                .extracting(each -> each.path("status").stringValue())
                .containsExactly("refused", "refused", "stored");
        assertThat(answers.getFirst().path("sentence").stringValue()).contains("is not a quantity");
    }

    @Test
    void visitThatTheBookHasNoMoreIsSaidSo() throws Exception {
        var answer = shop.post("no-visit", List.of(tread("OUTER", "5.2")));
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(BayShop.JSON.readTree(answer.body()).path("sentence").stringValue())
                .isEqualTo("The book has no visit with this address.");
    }

    @Test
    void rivalIsAnsweredOnceAndTheSecondPersonIsToldWhatWasDecided() throws Exception {
        var second = with(tread("OUTER", "4.4"), "person", "Bo");
        assertThat(statuses(tread("OUTER", "5.2"), second)).containsExactly("stored", "conflict");
        var rival = second.path("id").stringValue();
        var ofAda = entry("answer", Map.of("rival", rival, "take", true));
        var ofBo = with(entry("answer", Map.of("rival", rival, "take", false)), "person", "Bo");
        assertThat(statuses(ofAda)).containsExactly("stored");
        var told = send(ofBo).getFirst();
        assertThat(told.path("status").stringValue()).isEqualTo("refused");
        assertThat(told.path("sentence").stringValue())
                .isEqualTo(
                        "Ada has decided meanwhile that 4.4 mm counts and not 5.2 mm; to change that, type the right value anew.");
        assertThat(statuses(ofAda, with(ofAda, "id", UUID.randomUUID().toString())))
                .as("sent twice, and said alike")
                .containsExactly("already", "already");
        assertThat(shop.readings(visitId)).hasSize(2);
    }

    @Test
    void rivalIsAnsweredAtItsOwnVisitOnly() throws Exception {
        var second = tread("OUTER", "4.4");
        assertThat(statuses(tread("OUTER", "5.2"), second)).containsExactly("stored", "conflict");
        var answer = entry("answer", Map.of("rival", second.path("id").stringValue(), "take", true));
        var elsewhere = shop.post(car.visits().getFirst().id(), List.of(answer));
        assertThat(BayShop.JSON
                        .readTree(elsewhere.body())
                        .path("answers")
                        .path(0)
                        .path("sentence")
                        .stringValue())
                .contains("of this visit waits for an answer");
        assertThat(state().path("rivals").size()).isEqualTo(1);
        assertThat(statuses(answer)).containsExactly("stored");
    }

    /** A wheel whose fasteners are ticked is tight; a torque is known only where somebody read one. */
    @Test
    void ticksTightenTheWheelsThatAreOnAndClaimNoTorque() throws Exception {
        var wheels = leave();
        var ticks = tightenedBy("Ada", wheels);
        assertThat(statuses(ticks)).containsOnly("stored");
        var left = shop.visit(visitId);
        assertThat(left.tightened()).containsExactlyInAnyOrder(Corner.values());
        assertThat(left.readings()).isEmpty();
        assertThat(shop.book.retorques().listOpen())
                .anyMatch(retorque -> retorque.visitId().equals(visitId));
        var assessment = new Assessor(LimitsFile.load())
                .assess(shop.book.cars().findOfVisit(visitId).orElseThrow(), visitId);
        assertThat(assessment.notJudged().stream().map(Reader.DEFAULT::say))
                .contains("wheel torque: 4 wheels ticked as tightened (LF, RF, LR, RR), no torque value read")
                .noneMatch(sentence -> sentence.contains("no torque is recorded"));
        var loosened = tick("FASTENER.RR.2", false).put("wheel", wheels.get("RR"));
        assertThat(statuses(loosened)).containsExactly("stored");
        var leaves = entry("departure", Map.of("reasons", Map.of()));
        assertThat(send(leaves).getFirst().path("sentence").stringValue()).contains("RR is not torqued");
        assertThat(statuses(
                        with(
                                        tick("FASTENER.RR.2", true),
                                        "shown",
                                        loosened.path("id").stringValue())
                                .put("wheel", wheels.get("RR")),
                        leaves))
                .containsOnly("stored");

        var crossed = new HashMap<>(wheels);
        crossed.put("LF", wheels.get("RF"));
        crossed.put("RF", wheels.get("LF"));
        assertThat(statuses(entry("leaving", Map.of("wheels", crossed, "shown", wheels))))
                .containsExactly("stored");
        assertThat(shop.visit(visitId).tightened()).containsExactlyInAnyOrder(Corner.LR, Corner.RR);
    }

    @Test
    void wheelsThatWentOnMustBeTorqued() throws Exception {
        var wheels = names(shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("en")
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

    /** Whatever the clocks say: the check has to have seen each tightening, and be of somebody else. */
    @Test
    void torqueIsCheckedByAnotherPersonWhereTheShopAsksForIt() throws Exception {
        shop.book.rules().askSecondCheck(true);
        var wheels = leave();
        var ticks = tightenedBy("Ada", wheels);
        assertThat(statuses(ticks)).containsOnly("stored");
        var seen = new ArrayList<>(
                ticks.stream().map(tick -> tick.path("id").stringValue()).toList());
        var leaves = entry("departure", Map.of("reasons", Map.of()));
        assertThat(statuses(check("Ada", seen))).containsExactly("stored");
        assertThat(send(leaves).getFirst().path("sentence").stringValue())
                .as("Ada ticked them herself")
                .contains("Nobody but the one who tightened has checked the torque.");

        var torque = reading("WHEEL_TORQUE", "LF", String.valueOf(wheels.get("LF")), "120");
        var ahead = check("Bo", seen).put("at", "2026-11-25T11:59:00Z");
        assertThat(statuses(torque, ahead)).containsOnly("stored");
        assertThat(send(leaves).getFirst().path("sentence").stringValue())
                .as("Bo had not seen the torque that Ada read")
                .contains("Nobody but the one who tightened");
        seen.add(torque.path("id").stringValue());
        assertThat(statuses(check("Bo", seen), leaves)).containsOnly("stored");
    }

    private static ObjectNode check(String person, List<String> seen) {
        var check = with(tick("SECOND_CHECK", true), "person", person);
        seen.forEach(check.putArray("seen")::add);
        return check;
    }

    /** The wheels that are planned go on. */
    private Map<String, String> leave() throws Exception {
        var wheels = names(shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("en")
                .path("metric")
                .path("planned"));
        assertThat(statuses(entry("leaving", Map.of("wheels", wheels, "shown", Map.of()))))
                .containsExactly("stored");
        return wheels;
    }

    private List<ObjectNode> tightenedBy(String person, Map<String, String> wheels) {
        var ticks = new ArrayList<ObjectNode>();
        wheels.forEach((corner, wheel) -> {
            for (int number = 1; number <= car.vehicle().fastener().count(); number++) {
                ticks.add(with(tick("FASTENER.%s.%d".formatted(corner, number), true), "person", person)
                        .put("wheel", wheel));
            }
        });
        return ticks;
    }

    private static ObjectNode tick(String step, boolean done) {
        return entry("tick", Map.of("tick", step, "done", done));
    }

    private JsonNode ticked(String step) throws Exception {
        return state().path("ticks").path(step);
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

    private static ObjectNode pad(String spot, String written) {
        return entry("reading", Map.of("measure", "PAD_THICKNESS", "corner", "LF", "spot", spot, "written", written));
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
