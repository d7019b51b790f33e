package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whose papers they are, as the shop sees it: a sheet that says "call us" needs a number. */
class PapersTest {
    private static final String GIVEN = "--shop-telephone";

    @Test
    void aShopWithoutTelephoneOrAddressIsToldWhereToGiveThem(@TempDir Path folder) throws Exception {
        var pages = pages(folder, Letterhead.of("Garage Brisegel"));
        assertThat(pages.getFirst()).contains("Neither address nor telephone stands on them", GIVEN);
        assertThat(pages.getLast()).containsOnlyOnce("does not say where to find and call the shop");
    }

    @Test
    void aShopThatGaveThemSeesThemAndIsNotAskedAgain(@TempDir Path folder) throws Exception {
        var pages = pages(folder, new Letterhead("Garage Brisegel", "12, rue du Cric", "418-555-0142", false));
        assertThat(pages.getFirst())
                .contains("Garage Brisegel", "12, rue du Cric", "418-555-0142")
                .doesNotContain("stands on them");
        assertThat(pages.getLast()).doesNotContain("does not say where to find");
    }

    /** Whoever holds the receipt for stored wheels has to find where they are. */
    @Test
    void theReceiptSaysWhereTheShopIsAndHowToCallIt(@TempDir Path folder) throws Exception {
        var car = ServedShop.car("demo-08");
        var letterhead = new Letterhead("Garage Brisegel", "12, rue du Cric", "418-555-0142", false);
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(List.of(car));
            var server = CornerbookServer.start(
                    book, new Assessor(LimitsFile.load()), ServedShop.twoFreePorts(), ServedShop.CLOCK, letterhead);
            try (var client = HttpClient.newHttpClient()) {
                var path = StoreLinks.receipt(
                        car.vehicle().id(), car.sets().getFirst().id());
                var receipt = client.send(request(server, path), BodyHandlers.ofByteArray());
                try (var document = Loader.loadPDF(receipt.body())) {
                    assertThat(new PDFTextStripper().getText(document))
                            .contains("Garage Brisegel", "12, rue du Cric · 418-555-0142");
                }
            } finally {
                server.stop();
            }
        }
    }

    /** The shop's page, and the findings of a visit. */
    private static List<String> pages(Path folder, Letterhead letterhead) throws IOException, InterruptedException {
        var car = ServedShop.car("demo-08");
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(List.of(car));
            var server = CornerbookServer.start(
                    book, new Assessor(LimitsFile.load()), ServedShop.twoFreePorts(), ServedShop.CLOCK, letterhead);
            try (var client = HttpClient.newHttpClient()) {
                return List.of(
                        page(client, server, "/shop"),
                        page(
                                client,
                                server,
                                VisitLinks.findings(car.visits().getLast().id())));
            } finally {
                server.stop();
            }
        }
    }

    private static String page(HttpClient client, CornerbookServer server, String path)
            throws IOException, InterruptedException {
        return client.send(request(server, path), BodyHandlers.ofString()).body();
    }

    private static HttpRequest request(CornerbookServer server, String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .header("Accept-Language", "en")
                .build();
    }
}
