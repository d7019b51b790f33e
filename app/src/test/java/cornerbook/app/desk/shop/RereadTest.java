package cornerbook.app.desk.shop;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** How well the shop reads, from the book to the page. */
class RereadTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @TempDir
    private Path folder;

    @Test
    void aBookWithNothingReadTwiceSaysSo() throws IOException, InterruptedException {
        try (var shop = new ServedShop(folder, List.of())) {
            assertThat(shop.get("/shop/reread").body()).contains("Too few grooves were read twice");
        }
    }

    /** Una reads half a millimetre less at every second visit of each car, at the tablet. */
    @Test
    void whoReadsLessThanTheOthersIsTold() {
        try (var shop = new ServedShop(folder, ServedShop.cars())) {
            for (var car : ServedShop.cars()) {
                for (int i = 1; i < car.visits().size(); i += 2) {
                    readByUna(shop, car.visits().get(i));
                }
            }
            for (int width : new int[] {390, 1180}) {
                var page = chromium.open(shop.address("/shop/reread"), width);
                assertThat(page.locator("main").innerText().replace('\u00a0', ' '))
                        .contains("Una reads 0.", " less than the others", "Una and another person read one groove");
                assertThat(page.locator("svg[role=img][aria-label]").count()).isEqualTo(1);
                assertThat((int) page.evaluate("document.documentElement.scrollWidth - window.innerWidth"))
                        .isLessThanOrEqualTo(0);
                Axe.assertNoViolation(page, "reread at " + width);
            }
        }
    }

    private static void readByUna(ServedShop shop, Visit visit) {
        for (var reading : new StandingReadings(visit).all(Measure.TREAD_DEPTH)) {
            shop.book()
                    .bay()
                    .addReading(
                            visit.id(),
                            new Reading(
                                    "una-" + reading.id(),
                                    reading.measure(),
                                    reading.corner(),
                                    reading.wheelTag(),
                                    reading.spot(),
                                    reading.value() - 0.5,
                                    reading.asWritten(),
                                    reading.id(),
                                    "read again"),
                            "Una",
                            Instant.parse("2026-11-25T08:00:00Z"));
        }
    }
}
