package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.work.Remark;
import cornerbook.core.car.Reading;
import cornerbook.core.tool.ShopTool;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.node.ObjectNode;

/** What tablets send, answered one by one. */
class BayEntriesTest extends TabletEntries {
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

    /** Of each topic the last one counts, and nothing that was written is lost. */
    @Test
    void whatTheCustomerComplainsOfIsKeptAndThenSaidBetter() throws Exception {
        var first = entry("remark", Map.of("topic", "COMPLAINT", "words", "Noise"));
        var better = entry("remark", Map.of("topic", "COMPLAINT", "words", "Noise at the left front, over 80 km/h"));
        var odd = entry("remark", Map.of("topic", "WEATHER", "words", "Rain"));
        var long1000 = entry("remark", Map.of("topic", "LIFT", "words", "x".repeat(1001)));
        assertThat(statuses(first, better, first, odd, long1000))
                .containsExactly("stored", "stored", "already", "refused", "refused");
        var notes = shop.book.records().notes(visitId);
        assertThat(notes.remarks()).extracting(Remark::words).contains("Noise").hasSize(2);
        assertThat(notes.remark(Remark.Topic.COMPLAINT)).contains("Noise at the left front, over 80 km/h");
        assertThat(notes.remark(Remark.Topic.ARRIVAL_DAMAGE)).isEmpty();
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

    /** What stood there is kept with reason and name; a second tablet that had not seen it does not write over it. */
    @Test
    void anOdometerThatIsReadAgainIsKeptAsAChange() throws Exception {
        var seen = state().path("odometer").path("written").stringValue();
        var again = odometer(seen, "38200 km");
        assertThat(statuses(again, again, odometer(seen, "38201 km"), odometer("38200 km", "-5 km")))
                .containsExactly("stored", "already", "refused", "refused");
        assertThat(state().path("odometer").path("shown").path("metric").stringValue())
                .isEqualTo("38200");
        assertThat(shop.book
                        .visits()
                        .listChanges(shop.book
                                .cars()
                                .findOfVisit(visitId)
                                .orElseThrow()
                                .vehicle()
                                .id()))
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.before()).isEqualTo(seen);
                    assertThat(change.after()).isEqualTo("38200 km");
                    assertThat(change.reason()).isEqualTo("Typed wrong.");
                    assertThat(change.person()).isEqualTo("Ada");
                });
    }

    private ObjectNode odometer(String seen, String odometer) {
        return entry("put right", Map.of("seen", seen, "odometer", odometer, "reason", "TYPED_WRONG"));
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

    /** Read at the rack, before it has a corner; once the wheels are on, it stands at the corner of its wheel, by who read it. */
    @Test
    void whatIsReadInTheStoreGoesAlongToTheCornerOfItsWheel() throws Exception {
        var tag = String.valueOf(planned().get("LF"));
        var read = with(reading("TREAD_DEPTH", "LR", tag, "6.9"), "spot", "OUTER");
        assertThat(statuses(read)).containsExactly("stored");
        var plan = names(state().path("plans").path(0).path("wheelAt"));
        assertThat(leave()).as("by what was read").isEqualTo(plan);
        var corner = plan.keySet().stream()
                .filter(each -> tag.equals(plan.get(each)))
                .findFirst()
                .orElseThrow();
        assertThat(corner).isNotEqualTo("LR");
        assertThat(shop.readings(visitId)).singleElement().satisfies(reading -> {
            assertThat(reading.corner()).hasToString(corner);
            assertThat(reading.asWritten()).isEqualTo("6.9 mm");
            assertThat(reading.corrects()).isNull();
        });
        var stands = state().path("readings").path("TREAD_DEPTH." + corner + ".OUTER." + tag);
        assertThat(stands.path("person").stringValue()).isEqualTo("Ada");
        assertThat(state().path("plans").size()).isZero();
        assertThat(statuses(read)).as("sent again").containsExactly("already");
        assertThat(shop.readings(visitId)).hasSize(1);
    }
}
