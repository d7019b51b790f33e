package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.link.VisitLinks;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What keeps a car from leaving is one answer, on the page of findings as on the sheet. */
class OpenPointsTest {
    private static final String SECOND_CHECK = "Nobody but the one who tightened has checked the torque.";
    private static final String RETORQUE =
            "The wheels were due to be tightened again after they were fitted, and nobody recorded it.";

    @TempDir
    private Path folder;

    private static CarHistory finished() {
        return ServedShop.cars().stream()
                .filter(car -> !car.visits().getLast().leftOn().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private static String sheet(ServedShop shop, String visitId) throws Exception {
        try (var document = Loader.loadPDF(shop.getBytes(VisitLinks.handover(visitId)))) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void theSecondCheckThatTheShopAsksForStandsOnPageAndSheet() throws Exception {
        var car = finished();
        var visitId = car.visits().getLast().id();
        try (var shop = new ServedShop(folder, List.of(car))) {
            assertThat(shop.get(VisitLinks.findings(visitId)).body()).doesNotContain(SECOND_CHECK);
            assertThat(sheet(shop, visitId)).doesNotContain(SECOND_CHECK, "Draft");
            shop.book().rules().askSecondCheck(true);
            assertThat(shop.get(VisitLinks.findings(visitId)).body()).contains(SECOND_CHECK);
            assertThat(sheet(shop, visitId)).contains("Draft", SECOND_CHECK);
        }
    }

    @Test
    void aRetorqueThatNobodyRecordedStandsOnPageAndSheet() throws Exception {
        var car = finished();
        var fitted = car.visits().getLast();
        var visit =
                new Visit("back", ServedShop.TODAY, fitted.odometerKm() + 2000, fitted.leftOn(), Map.of(), List.of());
        try (var shop = new ServedShop(folder, List.of(car))) {
            shop.book().visits().add(car.vehicle().id(), visit);
            assertThat(shop.get(VisitLinks.findings(visit.id())).body()).contains(RETORQUE);
            assertThat(sheet(shop, visit.id())).contains("Draft", RETORQUE);
        }
    }
}
