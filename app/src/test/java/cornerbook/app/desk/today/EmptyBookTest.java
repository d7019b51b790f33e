package cornerbook.app.desk.today;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.door.ServedShop;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first page that a shop ever sees. */
class EmptyBookTest {
    /** What to do comes first, and no list that can only be empty. */
    @Test
    void anEmptyBookSaysWhereToBegin(@TempDir Path folder) throws Exception {
        try (var shop = new ServedShop(folder, List.of())) {
            var page = shop.get("/").body();
            assertThat(page)
                    .contains(
                            "Begin with a car",
                            "href=\"" + CarLinks.newCar() + "\"",
                            "href=\"" + CarLinks.carList() + "\"")
                    .doesNotContain("No visit on this day", "Re-torques still open");
            assertThat(shop.get("/?q=nobody").body())
                    .as("a search is answered as in any book")
                    .contains("No car matches");
        }
    }

    @Test
    void aBookWithCarsBeginsWithItsDay(@TempDir Path folder) throws Exception {
        try (var shop = new ServedShop(folder, List.of(ServedShop.cars().getFirst()))) {
            assertThat(shop.get("/").body()).contains("Re-torques still open").doesNotContain("Begin with a car");
        }
    }
}
