package cornerbook.app.door;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/**
 * The system's Chromium without a window, registered by the tests of the pages. It starts with the first of them, ends with
 * the last, and closes after each test what that one opened.
 */
public final class Chromium implements BeforeEachCallback, AfterEachCallback, AfterAllCallback {
    /** The shell is the same browser without what draws its own windows, and takes half the time. */
    private static final List<Path> EXECUTABLES =
            List.of(Path.of("/usr/lib/chromium/chromium-headless-shell"), Path.of("/usr/bin/chromium"));

    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    /** As long as Playwright waits for anything else: a machine that has much to do is slow and not wrong. */
    private static final double AWAITED_MS = 30_000;

    private final List<String> more;
    private final List<BrowserContext> opened = new ArrayList<>();
    private @Nullable Browser browser;
    private @Nullable Page kept;

    /** With more of Chromium's own arguments; each list of them starts a browser of its own. */
    public Chromium(String... more) {
        this.more = List.of(more);
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        browser = context.getRoot()
                .getStore(Namespace.create(Chromium.class))
                .computeIfAbsent(more, Running::start, Running.class)
                .browser();
    }

    @Override
    public void afterEach(ExtensionContext context) {
        opened.forEach(BrowserContext::close);
        opened.clear();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        if (kept != null) {
            kept.context().close();
        }
    }

    /** A page with its own cookies and storage. */
    public Page newPage(int width, int height) {
        return open(new Browser.NewContextOptions().setViewportSize(width, height))
                .newPage();
    }

    /**
     * The one page of a class that has one instance for all its tests, for tests that only look: a page of its own costs each of
     * them a process of Chromium's and all that pages share.
     */
    public Page keptPage() {
        var page = kept;
        if (page == null) {
            page = context(new Browser.NewContextOptions()).newPage();
            kept = page;
        }
        return page;
    }

    /** A page at this address, on a telephone when it is 390 wide, else on a tablet. */
    public Page open(String address, int width) {
        var page = newPage(width, width == 390 ? 844 : 820);
        page.navigate(address);
        return page;
    }

    /** A tablet of its own: its pages share cookies and storage, and it can lose its network. */
    public BrowserContext newTablet(int width, int height) {
        return open(
                new Browser.NewContextOptions().setViewportSize(width, height).setHasTouch(true));
    }

    private BrowserContext open(Browser.NewContextOptions options) {
        var context = context(options);
        opened.add(context);
        return context;
    }

    private BrowserContext context(Browser.NewContextOptions options) {
        return Objects.requireNonNull(browser, "not registered").newContext(options);
    }

    private record Running(Playwright playwright, Browser browser) implements AutoCloseable {
        static Running start(List<String> more) {
            var executable = EXECUTABLES.stream()
                    .filter(Files::isExecutable)
                    .findFirst()
                    .orElseThrow(() ->
                            new IllegalStateException("The tests of the pages need Chromium at one of " + EXECUTABLES
                                    + ": install it, on Debian with \"apt-get install chromium-headless-shell\"."));
            PlaywrightAssertions.setDefaultAssertionTimeout(AWAITED_MS);
            Playwright playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            var arguments = Stream.concat(ARGUMENTS.stream(), more.stream()).toList();
            return new Running(
                    playwright,
                    playwright
                            .chromium()
                            .launch(new BrowserType.LaunchOptions()
                                    .setExecutablePath(executable)
                                    .setArgs(arguments)));
        }

        @Override
        public void close() {
            browser.close();
            playwright.close();
        }
    }
}
