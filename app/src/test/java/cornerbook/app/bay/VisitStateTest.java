package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.visit.VisitState;
import cornerbook.app.book.visit.VisitSummary;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Where a car is, desk and bay say to each other: by what happens, and by hand until the next happens. */
class VisitStateTest extends TabletEntries {
    @Test
    void aVisitWaitsUntilItsFirstEntryAndIsGoneWithItsHandOver() throws Exception {
        assertThat(told()).isEqualTo(VisitState.WAITING);
        assertThat(statuses(tread("OUTER", "5.2"))).containsExactly("stored");
        assertThat(told()).isEqualTo(VisitState.ON_THE_HOIST);
        assertThat(statuses(entry("departure", Map.of("reasons", Map.of())))).containsExactly("stored");
        assertThat(told()).isEqualTo(VisitState.GONE);
    }

    @Test
    void whatIsSaidByHandHoldsUntilTheNextHappens() throws Exception {
        var expected = entry("state", Map.of("state", "EXPECTED"));
        assertThat(statuses(expected, expected)).containsExactly("stored", "already");
        assertThat(told()).isEqualTo(VisitState.EXPECTED);
        assertThat(statuses(tick("ROCKED", true))).containsExactly("stored");
        assertThat(told()).as("the first entry").isEqualTo(VisitState.ON_THE_HOIST);
        assertThat(statuses(entry("state", Map.of("state", "DONE")), tread("OUTER", "5.2")))
                .containsExactly("stored", "stored");
        assertThat(told()).isEqualTo(VisitState.DONE);
    }

    /** A car is gone by its hand-over, which asks for what is open; nobody goes round that. */
    @Test
    void nobodySaysByHandThatACarIsGone() throws Exception {
        assertThat(statuses(entry("state", Map.of("state", "GONE")), entry("state", Map.of("state", "LOST"))))
                .containsOnly("refused");
        assertThat(told()).isEqualTo(VisitState.WAITING);
    }

    /** Desk and bay have one answer. */
    private VisitState told() throws Exception {
        var atTheBay = VisitState.valueOf(state().path("whereabouts").stringValue());
        assertThat(shop.book
                        .visits()
                        .list(shop.book.visits().find(visitId).orElseThrow().date()))
                .extracting(VisitSummary::state)
                .containsExactly(atTheBay);
        return atTheBay;
    }
}
