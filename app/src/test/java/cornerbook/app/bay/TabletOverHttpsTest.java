package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.Book;
import cornerbook.app.certificate.ShopCertificates;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.CornerbookServer;
import cornerbook.app.door.Door;
import cornerbook.app.door.ServedShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A tablet in the shop's network, under an address that is not this machine's own name: only TLS gives it a worker. */
class TabletOverHttpsTest {
    private static final String ADDRESS = "127.0.0.2";
    private static final String WORKER_STATE = """
            async () => {
              let state;
              for (let i = 0; i < 100 && state !== "activated"; i++) {
                await new Promise((resolve) => setTimeout(resolve, 100));
                state = (await navigator.serviceWorker.getRegistration())?.active?.state;
              }
              return state;
            }
            """;
    private static final ShopCertificates CERTIFICATES = certificates();

    /** Trusts the shop's authority, as a tablet does that has it installed. */
    @RegisterExtension
    static final Chromium CHROMIUM = new Chromium("--ignore-certificate-errors-spki-list=" + digestOfKey(CERTIFICATES));

    @Test
    void sheetOpensAnewWhileTheServerIsAwayAndWhatWasTypedArrives(@TempDir Path folder) throws Exception {
        var car = BayShop.untouched("demo-08");
        var visitId = car.visits().getLast().id();
        var door = Door.forTablets(ServedShop.twoFreePorts(), ADDRESS, CERTIFICATES);
        try (var book = Book.open(folder)) {
            book.records().addCars(List.of(car));
            var server = serve(book, door);
            try {
                Page page = CHROMIUM.newTablet(1180, 820).newPage();
                pair(page, door);
                page.navigate(door.publicAddress(0) + "/bay/visits/" + visitId + "#OFF");
                assertThat(page.locator("#link")).hasText("All in the book");
                assertThat(page.evaluate("isSecureContext")).isEqualTo(true);
                assertThat(page.evaluate("typeof navigator.mediaDevices.getUserMedia"))
                        .isEqualTo("function");
                assertThat(page.evaluate(WORKER_STATE)).isEqualTo("activated");
                server.stop();

                page.reload();
                page.locator("[id='f.TREAD_DEPTH.LF.OUTER']").fill("5.1");
                page.keyboard().press("Enter");
                assertThat(page.locator("#link")).containsText("1 only on this tablet");
                page.reload();
                assertThat(page.locator("[id='f.TREAD_DEPTH.LF.OUTER']")).hasValue("5.1");

                server = serve(book, door);
                assertThat(page.locator("#link")).hasText("All in the book");
                assertThat(book.visits().find(visitId).orElseThrow().readings())
                        .singleElement()
                        .satisfies(reading -> assertThat(reading.asWritten()).isEqualTo("5.1 mm"));
            } finally {
                server.stop();
            }
        }
    }

    private static CornerbookServer serve(Book book, Door door) {
        return CornerbookServer.start(
                book, new Assessor(LimitsFile.load()), door, ServedShop.CLOCK, Letterhead.of(""), new BayRoom());
    }

    private static void pair(Page page, Door door) {
        var desk = "http://127.0.0.1:" + door.port() + "/devices";
        page.navigate(desk);
        page.locator("#person").fill("Ada");
        page.locator("#pin").fill("4711");
        page.locator("text=Add, or change the PIN").click();
        assertThat(page.locator("main")).containsText("Ada");
        String code = page.locator(".code").innerText();
        page.navigate(door.publicAddress(0) + "/pair");
        page.locator("#code").fill(code);
        page.locator("#person").fill("Ada");
        page.locator("#pin").fill("4711");
        page.locator("form[action='/pair'] button").click();
        page.waitForURL("**/bay/visits");
    }

    private static ShopCertificates certificates() {
        try {
            return ShopCertificates.of(
                    Files.createTempDirectory("certificates"), ADDRESS, LocalDate.now(ServedShop.CLOCK));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String digestOfKey(ShopCertificates certificates) {
        try {
            var key = certificates.authority().getPublicKey().getEncoded();
            return Base64.getEncoder()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(key));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
