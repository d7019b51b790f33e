package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.bay.BayRoom;
import cornerbook.app.desk.Room;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.core.car.CarHistory;
import cornerbook.core.tool.ShopTool;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * From any valid book, any accepted entry leaves every page of the car answering, every other car as it was, and its own
 * correction possible. More seeds and entries by hand: {@code -Dcornerbook.seeds=200 -Dcornerbook.entries=60}.
 */
class AnyEntryPropertyTest {
    private static final int SEEDS = Integer.getInteger("cornerbook.seeds", 4);
    private static final int ENTRIES = Integer.getInteger("cornerbook.entries", 6);
    /** The sheet takes longest. */
    private static final int PRINTED_EVERY = 6;

    private final OddBooks books = new OddBooks();

    @Test
    void anyAcceptedEntryLeavesEveryPageAnsweringAndCanBePutRight(@TempDir Path folder) throws Exception {
        int accepted = 0;
        int typed = 0;
        for (int seed = 1; seed <= SEEDS; seed++) {
            var random = new Random(seed);
            var car = books.any(random);
            var neighbour = ServedShop.car(car.vehicle().id().equals("demo-02") ? "demo-05" : "demo-02");
            try (var shop = new ServedShop(
                    folder.resolve("seed-" + seed), List.of(car, neighbour), () -> new Room[] {new BayRoom()})) {
                shop.book()
                        .tools()
                        .put(new ShopTool(
                                "G-1",
                                ShopTool.Kind.PRESSURE_GAUGE,
                                "Invented gauge",
                                0,
                                700,
                                30,
                                LocalDate.of(2027, 1, 31)));
                for (int n = 0; n < ENTRIES; n++) {
                    typed++;
                    accepted +=
                            enterAndPutRight(shop, car.vehicle().id(), random, "seed %d, entry %d".formatted(seed, n))
                                    ? 1
                                    : 0;
                }
                assertStands(shop, neighbour, "seed " + seed);
            }
        }
        System.out.printf("%d entries of %d were accepted%n", accepted, typed);
        assertThat(accepted).isGreaterThan(typed / 2);
    }

    /** Whether the entry was accepted. */
    private static boolean enterAndPutRight(ServedShop shop, String carId, Random random, String as) throws Exception {
        var car = shop.book().cars().find(carId).orElseThrow();
        var visit = car.visits()
                .get(car.visits().size()
                        - 1
                        - random.nextInt(Math.min(2, car.visits().size())));
        var entry = OddEntry.any(car, visit.id(), random);
        var pages = new CarPages(shop);
        if (!entry.enter(shop, pages)) {
            return false;
        }
        var after = as + ", " + entry;
        pages.assertAnswer(shop.book().cars().find(carId).orElseThrow(), visit.id(), after);
        if (random.nextInt(PRINTED_EVERY) == 0) {
            pages.assertAnswers(VisitLinks.handover(visit.id()), after);
            pages.assertAnswers(VisitLinks.tags(visit.id()), after);
        }
        assertThat(entry.putRight(shop, pages)).as("put right: %s", after).isTrue();
        return true;
    }

    private static void assertStands(ServedShop shop, CarHistory neighbour, String as) throws Exception {
        assertThat(shop.book().cars().find(neighbour.vehicle().id())).as(as).contains(neighbour);
        assertThat(shop.get(CarLinks.car(neighbour.vehicle().id())).body())
                .as(as)
                .contains("Latest findings")
                .doesNotContain("could not be judged");
    }
}
