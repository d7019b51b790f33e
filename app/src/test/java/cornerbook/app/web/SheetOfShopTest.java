package cornerbook.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.visit.Assessor;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetOfShopTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

    @Test
    void theServedSheetNamesTheShopAndSaysThatTheDemonstrationIsInvented(@TempDir Path folder) throws Exception {
        var car = DemoShop.histories(LocalDate.now(CLOCK)).getFirst();
        try (var book = Book.open(folder);
                var client = HttpClient.newHttpClient()) {
            book.add(car);
            var server = CornerbookServer.start(book, new Assessor(LimitsFile.load()), 0, CLOCK, DemoShop.NAME);
            try {
                var address = URI.create("http://127.0.0.1:%d%s"
                        .formatted(
                                server.port(),
                                Links.handover(car.visits().getLast().id())));
                var pdf = client.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofByteArray())
                        .body();
                try (var document = Loader.loadPDF(pdf)) {
                    assertThat(new PDFTextStripper().getText(document)).contains(DemoShop.NAME, "Invented data");
                }
            } finally {
                server.stop();
            }
        }
    }
}
