package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.door.Chromium;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole visit while the network is cut at random: before a request leaves, or after the server has stored it and before
 * its answer arrives; the page is loaded anew, and the server stopped and started, or killed. Each reading must be in the
 * book once.
 */
class CutNetworkTest {
    private static final String CAR = "demo-08";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @Test
    void everyReadingArrivesOnceThroughTwoHundredCuts(@TempDir Path folder) {
        assertThat(cutVisit(folder, 1)).isGreaterThanOrEqualTo(200);
    }

    @Test
    @Tag("long")
    void everyReadingArrivesOnceThroughManyVisits(@TempDir Path folder) {
        for (int seed = 2; seed < 12; seed++) {
            assertThat(cutVisit(folder.resolve(String.valueOf(seed)), seed)).isGreaterThanOrEqualTo(200);
        }
    }

    /** The server is a process of its own that the system kills (SIGKILL) in the middle of its work. */
    @Test
    void everyReadingArrivesOnceThroughAKilledProcess(@TempDir Path folder) throws Exception {
        var car = BayShop.untouched(CAR);
        var visitId = car.visits().getLast().id();
        try (var process = new ShopProcess(folder, List.of(car))) {
            var visit = new CutVisit(chromium.newTablet(1180, 820), process, visitId, 1);
            visit.work();
            assertThat(visit.kills()).isGreaterThanOrEqualTo(3);
            visit.assertArrivedOnce(process.closeAndRead(visitId));
        }
    }

    /** One visit; gives how many cuts there were. */
    private int cutVisit(Path folder, int seed) {
        var car = BayShop.untouched(CAR);
        var visitId = car.visits().getLast().id();
        try (var tablet = chromium.newTablet(1180, 820);
                var shop = new BayShop(folder, List.of(car))) {
            var visit = new CutVisit(tablet, shop, visitId, seed);
            visit.work();
            visit.assertArrivedOnce(shop.visit(visitId));
            return visit.cuts();
        }
    }
}
