package cornerbook.app.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The system's Chromium without a window, driven by the tests of the pages. */
public final class Chromium implements AutoCloseable {
    private static final Path EXECUTABLE = Path.of("/usr/bin/chromium");

    private final Playwright playwright;
    private final Browser browser;

    private Chromium(Playwright playwright, Browser browser) {
        this.playwright = playwright;
        this.browser = browser;
    }

    public static Chromium start() {
        if (!Files.isExecutable(EXECUTABLE)) {
            throw new IllegalStateException("The tests of the pages need Chromium at " + EXECUTABLE
                    + ": install it, on Debian with \"apt-get install chromium\".");
        }
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(EXECUTABLE)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
        return new Chromium(playwright, browser);
    }

    /** A page with its own cookies and storage. */
    public Page newPage(int width, int height) {
        return browser.newPage(new Browser.NewPageOptions().setViewportSize(width, height));
    }

    /** A tablet of its own: its pages share cookies and storage, and it can lose its network. */
    public BrowserContext newTablet(int width, int height) {
        return browser.newContext(
                new Browser.NewContextOptions().setViewportSize(width, height).setHasTouch(true));
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
