package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import cornerbook.app.door.Chromium;
import cornerbook.app.sheet.label.LabelPaper;
import cornerbook.app.sheet.label.LabelPlace;
import cornerbook.app.sheet.label.WheelLabels;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.words.Reader;
import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A printed tag is held before the camera of a tablet whose browser reads no codes by itself. */
class ScanBrowserTest {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 480;
    /** What Chromium takes for its camera. */
    private static final Path VIDEO = newFile();

    @RegisterExtension
    private final Chromium chromium = new Chromium(
            "--use-fake-ui-for-media-stream",
            "--use-fake-device-for-media-stream",
            "--use-file-for-fake-video-capture=" + VIDEO);

    @AutoClose
    private BayShop shop;

    private BrowserContext tablet;
    private String visitId;

    @BeforeEach
    void openTheShop(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car, BayShop.untouched("demo-01")));
        tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("delete globalThis.BarcodeDetector; localStorage.setItem('person', 'Ada')");
    }

    @Test
    void tagBeforeTheCameraOpensTheVisitAtTheReadingsOfItsSet() throws Exception {
        hold("08W1");
        Page page = tablet.newPage();
        page.navigate(shop.address("/bay/visits"));
        assertThat((Integer) page.evaluate(
                        "performance.getEntriesByType('resource').filter(({ name }) => name.includes('jsqr')).length"))
                .as("loaded when it is first used")
                .isZero();
        page.locator("text=Scan").click();
        page.waitForURL("**/bay/visits/" + visitId + "#ON");
        assertThat(page.locator("section.corner:has(h3:has-text('08W1')) input:focus"))
                .hasCount(1);
        assertThat(page.locator(".rack h3", new Page.LocatorOptions().setHasText("08W1")))
                .containsText("goes to " + planned().get("08W1"));
    }

    @Test
    void wheelOfAnotherCornerSetOrCarIsCaughtAtFittingWithoutALink() throws Exception {
        Page page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#ON"));
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        tablet.setOffline(true);
        var planned = planned();
        for (var tag : planned.keySet()) {
            hold(tag);
            page.locator(".corner.LF button", new Page.LocatorOptions().setHasText("Scan the tag"))
                    .click();
            var belongs = planned.get(tag);
            assertThat(page.locator(".corner.LF .note"))
                    .hasText(belongs.equals("LF") ? "The right wheel." : tag + " belongs to " + belongs + ".");
        }
        hold("08S1");
        page.locator(".corner.LF button").click();
        assertThat(page.locator(".corner.LF .note")).hasText("08S1 is of the summer set, it stays off.");
        page.locator("text=These wheels are on").click();
        assertThat(page.locator("main")).containsText("Stop: 08S1 was read at LF");
        hold("01W1");
        page.locator(".corner.LF button").click();
        assertThat(page.locator(".corner.LF .note")).hasText("01W1 is no wheel of this car.");
        page.locator("text=These wheels are on").click();
        tablet.setOffline(false);
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.visit(visitId).leftOn()).isEmpty();
    }

    /** Tags that go on, with their corners. */
    private Map<String, String> planned() throws Exception {
        var cornerOf = new TreeMap<String, String>();
        shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("en")
                .path("metric")
                .path("planned")
                .properties()
                .forEach(each -> cornerOf.put(each.getValue().stringValue(), each.getKey()));
        assertThat(cornerOf).hasSize(4);
        return cornerOf;
    }

    /** The printed tag, a little turned, on a grey floor. */
    private static void hold(String tag) throws IOException {
        var printed = new WheelLabels.Tag(
                tag,
                "QX 0008",
                SeasonKind.WINTER,
                null,
                Corner.RF,
                List.of(OptionalDouble.of(5), OptionalDouble.of(5), OptionalDouble.of(5)),
                null,
                "205/55R16");
        var pdf = WheelLabels.render(List.of(printed), LabelPlace.of(LabelPaper.ROLL_62), Reader.DEFAULT);
        var picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
        var graphics = picture.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.setColor(Color.GRAY);
        graphics.fillRect(0, 0, WIDTH, HEIGHT);
        graphics.rotate(Math.toRadians(7), WIDTH / 2.0, HEIGHT / 2.0);
        try (var document = Loader.loadPDF(pdf)) {
            var label = new PDFRenderer(document).renderImageWithDPI(0, 203);
            graphics.drawImage(label, (WIDTH - label.getWidth()) / 2, (HEIGHT - label.getHeight()) / 2, null);
        }
        graphics.dispose();
        Files.write(VIDEO, film(picture));
    }

    /** Two equal frames of YUV4MPEG2: brightness for each pixel, then colour for each two by two. */
    private static byte[] film(BufferedImage picture) throws IOException {
        var film = new ByteArrayOutputStream();
        film.write("YUV4MPEG2 W%d H%d F10:1 Ip C420mpeg2\n"
                .formatted(WIDTH, HEIGHT)
                .getBytes(StandardCharsets.US_ASCII));
        var colourless = new byte[WIDTH * HEIGHT / 2];
        Arrays.fill(colourless, (byte) 128);
        for (int frame = 0; frame < 2; frame++) {
            film.write("FRAME\n".getBytes(StandardCharsets.US_ASCII));
            for (int brightness : picture.getRaster().getPixels(0, 0, WIDTH, HEIGHT, (int[]) null)) {
                film.write(brightness);
            }
            film.write(colourless);
        }
        return film.toByteArray();
    }

    private static Path newFile() {
        try {
            var file = Files.createTempFile("camera", ".y4m");
            file.toFile().deleteOnExit();
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
