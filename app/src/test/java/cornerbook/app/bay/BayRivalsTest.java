package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.car.Reading;
import java.sql.DriverManager;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Two readings of one place, from two tablets that had not seen each other. */
class BayRivalsTest extends TabletEntries {
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
}
