package cornerbook.app.desk.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A visit that was opened by mistake is struck, counts nowhere, and can count again. */
class CancelledVisitTest {
    private static final String CAR = "demo-03";
    private static final Map<String, String> BECAUSE = Map.of("reason", "Another car", "person", "Ada");

    @AutoClose
    private ServedShop shop;

    private Book book;
    private CarHistory before;
    private Visit last;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car(CAR)));
        book = shop.book();
        before = book.cars().find(CAR).orElseThrow();
        last = before.visits().getLast();
    }

    private int post(String address, Map<String, String> form) throws Exception {
        return shop.post(address, form).statusCode();
    }

    @Test
    void itCountsNowhereAndIsShownStruck() throws Exception {
        long revision = book.cars().findRevision(CAR).orElseThrow();
        assertThat(post(VisitLinks.cancel(last.id()), BECAUSE)).isEqualTo(303);

        assertThat(book.cars().find(CAR).orElseThrow().visits())
                .isEqualTo(before.visits().subList(0, before.visits().size() - 1));
        assertThat(book.cars().findRevision(CAR).orElseThrow()).isGreaterThan(revision);
        assertThat(book.cars().listHistories().getFirst().visits()).doesNotContain(last);
        assertThat(book.visits().list(last.date())).isEmpty();
        assertThat(book.cars().list().getFirst().lastVisit())
                .isEqualTo(before.visits().get(before.visits().size() - 2).date());
        assertThat(book.retorques().listOpen())
                .extracting(OpenRetorque::visitId)
                .doesNotContain(last.id());
        assertThat(VisitFile.write(book.records().find(CAR).orElseThrow())).doesNotContain(last.id(), "Another car");
        assertThat(book.readings().countBrakePairs(last.date(), last.date())).isZero();
        assertThat(book.check()).isEmpty();

        for (var address : List.of(
                VisitLinks.visit(last.id()),
                VisitLinks.findings(last.id()),
                VisitLinks.bay(last.id()) + "/sheet.json")) {
            assertThat(shop.get(address).statusCode()).as(address).isEqualTo(404);
        }
        assertThat(shop.get(VisitLinks.visit(last.id())).body()).contains("was cancelled on", "by Ada", "Another car");
        assertThat(shop.get(CarLinks.car(CAR)).body())
                .contains("<s>", "by Ada", "Another car", last.readings().size() + " readings");
    }

    /** The odometer of a cancelled visit holds nobody up. */
    @Test
    void theTrueVisitOfItsDayIsTakenAfterIt() throws Exception {
        assertThat(post(VisitLinks.cancel(last.id()), BECAUSE)).isEqualTo(303);
        var visit = new Visit("true", last.date(), last.odometerKm() - 200, Map.of(), Map.of(), List.of());
        book.visits().add(CAR, visit);
        assertThat(book.cars().find(CAR).orElseThrow().visits()).endsWith(visit);
    }

    @Test
    void itCountsAgainWithAllThatWasEntered() throws Exception {
        var retorques = book.retorques().listOpen();
        post(VisitLinks.cancel(last.id()), BECAUSE);
        assertThat(post(VisitLinks.restore(last.id()), BECAUSE)).isEqualTo(303);
        assertThat(book.cars().find(CAR)).contains(before);
        assertThat(book.retorques().listOpen()).isEqualTo(retorques);
        assertThat(book.visits().listCancelled(CAR)).isEmpty();
        assertThat(shop.get(VisitLinks.visit(last.id())).body())
                .contains("visit was counted, now cancelled (Ada: Another car)");
    }

    @Test
    void withoutReasonOrNameNothingIsCancelled() throws Exception {
        assertThat(shop.post(VisitLinks.cancel(last.id()), Map.of("reason", "", "person", "Ada"))
                        .body())
                .contains("The reason is missing");
        assertThat(shop.post(VisitLinks.cancel(last.id()), Map.of("reason", "Another car"))
                        .body())
                .contains("Your name is missing");
        assertThat(post(VisitLinks.restore(last.id()), BECAUSE)).isEqualTo(422);
        assertThat(post(VisitLinks.cancel("no-visit"), BECAUSE)).isEqualTo(404);
        assertThat(book.cars().find(CAR)).contains(before);
    }
}
