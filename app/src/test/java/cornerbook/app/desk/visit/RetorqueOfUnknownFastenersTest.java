package cornerbook.app.desk.visit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.cars.CarLibrary;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.core.corner.Corner;
import cornerbook.core.torque.WheelFastener;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A car of which nobody has looked up the nuts, whose wheels went from front to rear. It is invented. */
class RetorqueOfUnknownFastenersTest {
    @Test
    void itIsDueAndRecordedAsThatOfAnyCar(@TempDir Path folder) throws Exception {
        var car = CarLibrary.car(CarLibrary.text("bare-electric-first-visit"));
        try (var shop = new ServedShop(folder, List.of(car))) {
            var visit = car.visits().getLast();
            assertThat(shop.book().retorques().listOpen()).isEmpty();

            assertThat(shop.post(VisitLinks.leaving(visit.id()), rotated(visit.arrivedOn()))
                            .statusCode())
                    .isEqualTo(303);

            assertThat(shop.book().retorques().listOpen())
                    .extracting(OpenRetorque::dueOdometerKm)
                    .containsExactly(visit.odometerKm() + WheelFastener.USUAL_RETORQUE_AFTER_KM);
            assertThat(shop.get("/").body()).contains("#retorque");
            for (var path : List.of(VisitLinks.visit(visit.id()), VisitLinks.findings(visit.id()))) {
                assertThat(shop.get(path).body()).as(path).contains("to the manufacturer’s torque");
            }
            var recorded = Map.of("date", "2026-05-06", "odometer", "30085", "torque", "118");
            assertThat(shop.post(VisitLinks.retorque(visit.id()), recorded).statusCode())
                    .isEqualTo(303);
            assertThat(shop.book().retorques().listOpen()).isEmpty();
        }
    }

    private static Map<String, String> rotated(Map<Corner, String> wheels) {
        var fields = new LinkedHashMap<String, String>();
        Map.of(Corner.LF, Corner.LR, Corner.LR, Corner.LF, Corner.RF, Corner.RR, Corner.RR, Corner.RF)
                .forEach((to, from) -> fields.put(to.name(), wheels.getOrDefault(from, "")));
        return fields;
    }
}
