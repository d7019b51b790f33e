package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tools.jackson.databind.JsonNode;

/** A whole visit with the tablet's own modules in a real browser, while its network is cut at random and its server killed. */
final class CutVisit {
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
                const answer = await through(address, options).catch((gone) => {
                  window.cuts++;
                  throw gone;
                });
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
              const { Visit } = await import(`${assets}/bay-visit.mjs`);
              const { fieldsOf } = await import(`${assets}/bay-steps.mjs`);
              window.outbox = new Outbox(await import(`${assets}/bay-store.mjs`));
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
                const usual = { "kPa": "240", "N·m": "120", "°C": field.measure.endsWith("_TEMPERATURE") ? "8" : "200", "V": "12.6", "A": "500" };
                const value = field.words[0]?.written ?? last ?? usual[field.unit] ?? String(field.high > 50 ? 60 : field.low + 1);
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

    /** A server that can be taken away and comes back at the same address. */
    interface Server {
        String address(String path);

        /** Takes it away, at the latest after this time. */
        void killWithin(int milliseconds);

        /** Starts it again; returns when it answers. */
        void restart();
    }

    private final BrowserContext tablet;
    private final Server server;
    private final String visitId;
    private final int seed;
    private final Random random;
    private final List<JsonNode> sent = new ArrayList<>();
    private int cuts;
    private int kills;

    CutVisit(BrowserContext tablet, Server server, String visitId, int seed) {
        this.tablet = tablet;
        this.server = server;
        this.visitId = visitId;
        this.seed = seed;
        this.random = new Random(seed);
    }

    /** How many requests were cut, and how often the server was killed. */
    int cuts() {
        return cuts + kills;
    }

    int kills() {
        return kills;
    }

    /** Works through the visit, each step on a page of its own, until everything is sent. */
    void work() {
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        Page first = tablet.newPage();
        first.navigate(server.address("/bay/visits/" + visitId));
        first.locator("#main h2").waitFor();
        first.evaluate("navigator.serviceWorker.ready.then(() => true)");
        first.close();
        int steps = Integer.MAX_VALUE;
        for (int step = 0; step < steps; step++) {
            steps = work(step);
        }
        Page last = tablet.newPage();
        last.navigate(server.address("/bay/shell"));
        last.evaluate(STEP.replace("entries.push", "void entries.push"), List.of(visitId, steps - 1));
        assertThat((List<?>) last.evaluate(SEND_ALL))
                .as("nothing is refused, nothing stays")
                .isEmpty();
    }

    /** One step; gives how many there are. */
    private int work(int step) {
        // The page of the list runs no sheet of its own, so that only this test sends.
        Page page = tablet.newPage();
        page.addInitScript(CUTS.formatted(seed * 1000 + step));
        page.navigate(server.address("/bay/shell"));
        boolean killed = random.nextInt(3) == 0;
        if (killed) {
            server.killWithin(random.nextInt(400));
            kills++;
        }
        var done = BayShop.JSON.readTree((String) page.evaluate(STEP, List.of(visitId, step)));
        if (killed) {
            server.restart();
        }
        cuts += done.path("cuts").intValue();
        done.path("entries").forEach(sent::add);
        page.close();
        return done.path("steps").intValue();
    }

    /** Every reading is there once, and no other. */
    void assertArrivedOnce(Visit stored) {
        assertThat(stored.readings())
                .extracting(Reading::id)
                .containsExactlyInAnyOrderElementsOf(
                        sent.stream().map(each -> each.path(0).stringValue()).toList());
        assertThat(sent.stream().map(each -> each.path(1).stringValue()).distinct())
                .hasSameSizeAs(sent);
        assertThat(stored.leftOn()).hasSize(4);
    }
}
