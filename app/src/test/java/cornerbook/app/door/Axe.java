package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The rules of axe-core for WCAG 2.2, levels A and AA. */
public final class Axe {
    private static final String SCRIPT = script();

    /** What is violated, each with three of its places; of what holds, no list. */
    private static final String VIOLATIONS = """
            async () => {
              const {violations} = await axe.run(document, {
                runOnly: {type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]},
                resultTypes: ["violations"],
              });
              return violations.map((rule) => `${rule.id}: ${rule.nodes.slice(0, 3).map((node) => node.html).join(", ")}`);
            }
            """;

    private Axe() {}

    public static void assertNoViolation(Page page, String what) {
        // A field half under a bar that stays on the screen counts as a small target, though a person scrolls it free;
        // that focus is never under a bar is tested on its own.
        page.evaluate("document.querySelectorAll('.jump, .store, .bar, #steps, .next')"
                + ".forEach(bar => bar.style.position = 'static')");
        // Once for each page that is loaded: what has run already is compiled, and runs again in half of the time.
        if (page.evaluate("typeof axe").equals("undefined")) {
            page.evaluate("() => {" + SCRIPT + "}");
        }
        assertThat(page.evaluate(VIOLATIONS)).as(what).isEqualTo(List.of());
    }

    private static String script() {
        try (var script = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            return new String(Objects.requireNonNull(script, "axe-core").readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
