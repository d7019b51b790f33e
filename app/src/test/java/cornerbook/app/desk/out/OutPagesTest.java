package cornerbook.app.desk.out;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.app.exchange.VisitFile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The whole book by the browser. Its cars are invented. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OutPagesTest {
    private ServedShop shop;

    @BeforeAll
    void openTheShop(@TempDir Path folder) {
        shop = new ServedShop(folder, ServedShop.cars());
    }

    @AfterAll
    void closeTheShop() {
        shop.close();
    }

    private byte[] made(Map<String, String> wish) throws IOException, InterruptedException {
        assertThat(shop.post(ShopLinks.out(), wish).statusCode()).isEqualTo(303);
        for (int i = 0; i < 1200 && shop.get(ShopLinks.out()).body().contains("<progress"); i++) {
            Thread.sleep(50);
        }
        assertThat(shop.get(ShopLinks.out()).body()).contains(ShopLinks.outFile());
        return shop.getBytes(ShopLinks.outFile());
    }

    private static Map<String, String> entries(byte[] zip) throws IOException {
        var entries = new TreeMap<String, String>();
        try (var from = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (var entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                entries.put(entry.getName(), new String(from.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return entries;
    }

    @Test
    void everyCarComesAsItsVisitFile() throws Exception {
        var entries = entries(made(Map.of("kind", "VISIT_FILES")));
        assertThat(entries).hasSameSizeAs(ServedShop.cars());
        for (var car : ServedShop.cars()) {
            var id = car.vehicle().id();
            assertThat(entries.get(id + ".json"))
                    .isEqualTo(VisitFile.write(shop.book().records().find(id).orElseThrow()));
        }
    }

    @Test
    void tablesComeWithNamesOnlyWhenAsked() throws Exception {
        var plate = ServedShop.cars().getFirst().vehicle().plate();
        var without = entries(made(Map.of("kind", "CSV")));
        assertThat(without.keySet())
                .containsExactly("cars.csv", "readings.csv", "visits.csv", "wheels.csv", "work.csv");
        assertThat(without.get("cars.csv")).doesNotContain(plate);
        assertThat(shop.get(ShopLinks.out()).body()).contains("No plate and no name");
        assertThat(entries(made(Map.of("kind", "CSV", "names", "1"))).get("cars.csv"))
                .contains(plate);
    }

    @Test
    void aDownloadThatWasCutGoesOn() throws Exception {
        var whole = made(Map.of("kind", "PARQUET"));
        var first = shop.send(shop.request(ShopLinks.outFile()).header("Range", "bytes=0-99"));
        assertThat(first.statusCode()).isEqualTo(206);
        assertThat(first.headers().firstValue("content-range")).contains("bytes 0-99/" + whole.length);
        assertThat(first.headers().firstValue("content-length")).contains("100");
        var tag = first.headers().firstValue("etag").orElseThrow();
        var rest = shop.send(shop.request(ShopLinks.outFile()).headers("Range", "bytes=100-", "If-Range", tag));
        assertThat(rest.statusCode()).isEqualTo(206);
        assertThat(rest.headers().firstValue("content-length")).contains(String.valueOf(whole.length - 100));
        var other =
                shop.send(shop.request(ShopLinks.outFile()).headers("Range", "bytes=100-", "If-Range", "\"another\""));
        assertThat(other.statusCode()).as("it is another file by now").isEqualTo(200);
        assertThat(shop.send(shop.request(ShopLinks.outFile()).header("Range", "bytes=" + whole.length + "-"))
                        .statusCode())
                .isEqualTo(416);
        assertThat(Arrays.copyOf(whole, 2)).containsExactly('P', 'K');
    }

    @Test
    void whatWasMadeIsRemoved() throws Exception {
        made(Map.of("kind", "CSV"));
        shop.post(ShopLinks.out() + "/remove", Map.of());
        assertThat(shop.get(ShopLinks.outFile()).statusCode()).isEqualTo(404);
        assertThat(shop.get(ShopLinks.out()).body()).contains("Nothing yet.");
    }

    @Test
    void whatIsNotUnderstoodBeginsNothing() throws Exception {
        shop.post(ShopLinks.out() + "/remove", Map.of());
        assertThat(shop.post(ShopLinks.out(), Map.of("kind", "ALL")).statusCode())
                .isEqualTo(400);
        assertThat(shop.post(ShopLinks.out(), Map.of()).statusCode()).isEqualTo(400);
        assertThat(shop.get(ShopLinks.out()).body()).contains("Nothing yet.");
    }

    /** Nothing of it is left, however far it was. */
    @Test
    void whatIsStoppedLeavesNothing(@TempDir Path folder) throws Exception {
        var file = folder.resolve("book.zip");
        var cars = new AtomicInteger();
        try (var book = EmptyBook.open(folder.resolve("book"))) {
            book.records().addCars(ServedShop.cars());
            assertThatThrownBy(() -> BookZip.write(book, folder, file, OutKind.PARQUET, false, (done, all) -> {
                        if (cars.incrementAndGet() == 4) {
                            throw new CancellationException();
                        }
                    }))
                    .isInstanceOf(CancellationException.class);
        }
        assertThat(cars).hasValue(4);
        try (var left = Files.list(folder)) {
            assertThat(left).as("but the file that was there").containsExactlyInAnyOrder(file, folder.resolve("book"));
        }
    }
}
