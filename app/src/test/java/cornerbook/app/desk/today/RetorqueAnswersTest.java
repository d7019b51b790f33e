package cornerbook.app.desk.today;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.cars.CarLibrary;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The customers whose wheels are due, called from the first page. Car and customer are invented. */
class RetorqueAnswersTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    private String visitId;

    @BeforeEach
    void aReTorqueIsDue(@TempDir Path folder) throws Exception {
        var car = CarLibrary.car(CarLibrary.text("sound-car"));
        var customer = new Customer("customer", "Oriel Tambrec", "+1 (819) 555-0142", null, null);
        shop = new ServedShop(folder, List.of(new CarHistory(car.vehicle(), customer, car.sets(), car.visits())));
        visitId = due().visitId();
    }

    @Test
    void theNumberIsCalledAndTheBookRemembersIt() throws Exception {
        assertThat(shop.get("/").body()).contains("href=\"tel:+18195550142\"").doesNotContain(">called ");
        assertThat(answer("CALLED", "a")).isEqualTo(303);
        assertThat(shop.get("/").body()).contains(">called ").contains(VisitLinks.retorqueAnswer(visitId));
        assertThat(answer("CALLED", "a")).as("sent twice").isEqualTo(303);
        assertThat(answer("WILL_COME", "w")).isEqualTo(303);
        assertThat(shop.get("/").body()).contains(">will come, said ");
    }

    /** Whoever does not want it is not called again; whoever comes all the same has it recorded. */
    @Test
    void whatIsDeclinedLeavesTheListAndMayStillBeRecorded() throws Exception {
        assertThat(answer("CALLED", "a")).isEqualTo(303);
        assertThat(answer("DECLINED", "b")).isEqualTo(303);
        assertThat(shop.get("/").body()).doesNotContain(VisitLinks.retorqueAnswer(visitId));
        assertThat(shop.get(VisitLinks.visit(visitId)).body()).contains("The customer does not want it.");
        var due = due();
        var recorded = Map.of(
                "date", due.dueDate().toString(),
                "odometer", String.valueOf(Math.round(due.dueOdometerKm())),
                "torque", "110");
        assertThat(shop.post(VisitLinks.retorque(visitId), recorded).statusCode())
                .isEqualTo(303);
        assertThat(shop.book().retorques().listOpen()).isEmpty();
        assertThat(answer("CALLED", "c")).as("nothing is open any more").isEqualTo(409);
    }

    /** A desk is no paired tablet: its browser knows who sits there, from the first answer or from a bay sheet. */
    @Test
    void whoSitsAtTheDeskIsKeptWithEachAnswer() {
        var page = chromium.newPage(1180, 820);
        page.navigate(shop.address("/"));
        page.locator("#sits").fill("Ada");
        page.locator(".answers button[value=CALLED]").click();
        assertThat(page.locator("#sits").inputValue()).isEqualTo("Ada");
        assertThat(Objects.requireNonNull(due().contact().last()).person()).isEqualTo("Ada");
        page.locator(".answers button:not([name])").click();
        assertThat(page.locator(".confirmed").innerText()).contains("Ada");
    }

    /** One tap where no figures are known; another takes it back on the same day. */
    @Test
    void oneTapSaysThatItWasDoneAtTheSpecifiedTorque() throws Exception {
        assertThat(confirm(Map.of())).isEqualTo(303);
        assertThat(shop.book().retorques().listOpen()).isEmpty();
        assertThat(shop.get("/").body()).contains("tightened again at the specified torque, odometer not known");
        assertThat(confirm(Map.of())).as("nothing is open any more").isEqualTo(409);
        assertThat(confirm(Map.of("taken-back", "yes"))).isEqualTo(303);
        assertThat(due().visitId()).isEqualTo(visitId);
        assertThat(shop.get("/").body()).doesNotContain("tightened again at the specified torque");
    }

    /** Who tightened them is asked where no tablet tells it, and stands with the re-torque. */
    @Test
    void theOneWhoTightenedThemIsNamed() throws Exception {
        assertThat(shop.get(VisitLinks.visit(visitId)).body()).contains("Who tightened them");
        assertThat(confirm(Map.of("person", "Ada"))).isEqualTo(303);
        assertThat(shop.get("/").body()).contains("tightened again at the specified torque by Ada, odometer not known");
        assertThat(shop.get(VisitLinks.visit(visitId)).body())
                .contains("odometer not known, at the specified torque, by Ada.");
        assertThat(confirm(Map.of("taken-back", "yes"))).isEqualTo(303);
        assertThat(confirm(Map.of())).isEqualTo(303);
        assertThat(shop.get("/").body()).contains("tightened again at the specified torque, odometer not known");
    }

    /** What was recorded with figures is not taken back by the way. */
    @Test
    void figuresStayWhenSomebodyTakesBack() throws Exception {
        var due = due();
        var recorded = Map.of(
                "date", due.dueDate().toString(),
                "odometer", String.valueOf(Math.round(due.dueOdometerKm())),
                "torque", "110");
        assertThat(shop.post(VisitLinks.retorque(visitId), recorded).statusCode())
                .isEqualTo(303);
        assertThat(confirm(Map.of("taken-back", "yes"))).isEqualTo(303);
        assertThat(shop.book().retorques().listOpen()).isEmpty();
    }

    private int confirm(Map<String, String> fields) throws Exception {
        return shop.post(VisitLinks.retorqueConfirmed(visitId), fields).statusCode();
    }

    @Test
    void anAnswerThatNobodyKnowsIsRefusedAndStoresNothing() throws Exception {
        assertThat(answer("LATER", "a")).isEqualTo(400);
        assertThat(due().contact().last()).isNull();
    }

    private OpenRetorque due() {
        return shop.book().retorques().listOpen().getFirst();
    }

    private int answer(String answer, String name) throws Exception {
        return shop.post(VisitLinks.retorqueAnswer(visitId), Map.of("answer", answer, "id", identity(name)))
                .statusCode();
    }

    private static String identity(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
