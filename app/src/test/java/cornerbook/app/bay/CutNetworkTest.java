package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.web.Chromium;
import cornerbook.core.visit.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * A whole visit with the tablet's own modules in a real browser, while the network is cut at random: before a request
 * leaves, or after the server has stored it and before its answer arrives; the page is loaded anew, and the server stopped
 * and started. Each reading must be in the book once.
 */
class CutNetworkTest {
    /** Cuts requests for entries by a seeded generator (mulberry32 by T. Ettinger, public domain). */
    private static final String CUTS = """
            (() => {
              let seed = %d;
              const random = () => {
                seed = (seed + 0x6d2b79f5) | 0;
                let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
                t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
                return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
              };
              const through = window.fetch.bind(window);
              window.cuts = 0;
              window.fetch = async (address, options) => {
                if (!String(address).endsWith("/entries") || window.quiet) {
                  return through(address, options);
                }
                const dice = random();
                if (dice < 0.35) {
                  window.cuts++;
                  throw new TypeError("cut before the request");
                }
                const answer = await through(address, options);
                if (dice < 0.7) {
                  window.cuts++;
                  throw new TypeError("cut before the answer");
                }
                return answer;
              };
            })();
            """;

    /** Enters one step of the visit, without waiting for the network between two entries. */
    private static final String STEP = """
            async ([visitId, at]) => {
              const assets = document.documentElement.dataset.assets;
              const { Outbox } = await import(`${assets}/bay-outbox.mjs`);
              const { Visit, fieldsOf } = await import(`${assets}/bay-visit.mjs`);
              window.outbox = new Outbox();
              await outbox.load();
              const visit = new Visit(visitId, outbox);
              await visit.load();
              const step = visit.sheet.steps[at];
              const entries = [];
              if (step.kind === "WHEELS" && !visit.leaving("LF")) {
                await visit.record("leaving", { wheels: visit.sheet.planned, shown: {} });
              }
              for (const tick of step.ticks) {
                await visit.tick(tick.key, true);
                await outbox.send();
              }
              for (const field of fieldsOf(step).filter((each) => visit.applies(each))) {
                const last = field.measure === "DISC_DIAL_RADIUS" ? "120" : visit.lastOf(field)?.written;
                const usual = { "kPa": "240", "N·m": "120", "°C": field.measure === "TYRE_TEMPERATURE" ? "8" : "200", "V": "12.6", "A": "500" };
                const value = field.words[0] ?? last ?? usual[field.unit] ?? String(field.high > 50 ? 60 : field.low + 1);
                const entry = await visit.enter(field, value);
                entries.push([entry.id, entry.key]);
                await outbox.send();
                await outbox.send();
              }
              return JSON.stringify({ cuts: window.cuts, entries, steps: visit.sheet.steps.length });
            }
            """;

    private static final String SEND_ALL = """
            async () => {
              window.quiet = true;
              for (let i = 0; i < 20 && outbox.entries.some((entry) => !entry.refused); i++) {
                await outbox.send();
              }
              return outbox.entries.map((entry) => `${entry.key ?? entry.kind} ${entry.written}: ${entry.refused}`);
            }
            """;

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

    /** One visit; gives how many requests were cut. */
    private int cutVisit(Path folder, int seed) {
        var car = BayShop.untouched("demo-08");
        var visitId = car.visits().getLast().id();
        var random = new Random(seed);
        int cuts = 0;
        try (var tablet = chromium.newTablet(1180, 820);
                var shop = new BayShop(folder, List.of(car))) {
            tablet.addInitScript("localStorage.setItem('person', 'Ada')");
            Page first = tablet.newPage();
            first.navigate(shop.address("/bay/visits/" + visitId));
            first.locator("#main h2").waitFor();
            first.evaluate("navigator.serviceWorker.ready.then(() => true)");
            first.close();
            var sent = new ArrayList<JsonNode>();
            int steps = Integer.MAX_VALUE;
            for (int step = 0; step < steps; step++) {
                // The page of the list runs no sheet of its own, so that only this test sends.
                Page page = tablet.newPage();
                page.addInitScript(CUTS.formatted(seed * 1000 + step));
                page.navigate(shop.address("/bay/shell"));
                boolean killed = random.nextInt(3) == 0;
                if (killed) {
                    shop.kill();
                }
                var done = BayShop.JSON.readTree((String) page.evaluate(STEP, List.of(visitId, step)));
                cuts += done.path("cuts").intValue();
                steps = done.path("steps").intValue();
                done.path("entries").forEach(sent::add);
                if (killed) {
                    shop.restart();
                }
                page.close();
            }
            Page last = tablet.newPage();
            last.navigate(shop.address("/bay/shell"));
            last.evaluate(STEP.replace("entries.push", "void entries.push"), List.of(visitId, steps - 1));
            assertThat((List<?>) last.evaluate(SEND_ALL))
                    .as("nothing is refused, nothing stays")
                    .isEmpty();
            var stored = shop.readings(visitId);
            assertThat(stored)
                    .extracting(Reading::id)
                    .containsExactlyInAnyOrderElementsOf(sent.stream()
                            .map(each -> each.path(0).stringValue())
                            .toList());
            assertThat(sent.stream().map(each -> each.path(1).stringValue()).distinct())
                    .hasSameSizeAs(sent);
            assertThat(shop.visit(visitId).leftOn()).hasSize(4);
        }
        return cuts;
    }
}
