package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOnlyOptions;
import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.util.List;

/** The rules of axe-core for WCAG 2.2, levels A and AA. */
public final class Axe {
    private static final AxeRunOptions VIOLATIONS = violations();

    private Axe() {}

    public static void assertNoViolation(Page page, String what) {
        // A field half under a bar that stays on the screen counts as a small target, though a person scrolls it free;
        // that focus is never under a bar is tested on its own.
        page.evaluate("document.querySelectorAll('.jump, .store, .bar, #steps, .next')"
                + ".forEach(bar => bar.style.position = 'static')");
        // In the page itself, as none has frames: half the time of a page beside it that gathers what frames say.
        var violations = new AxeBuilder(page)
                .options(VIOLATIONS)
                .setLegacyMode(true)
                .analyze()
                .getViolations();
        assertThat(violations)
                .as(what)
                .extracting(rule -> rule.getId() + ": "
                        + rule.getNodes().stream()
                                .map(node -> node.getHtml())
                                .limit(3)
                                .toList())
                .isEmpty();
    }

    /** Of what holds, no list. */
    private static AxeRunOptions violations() {
        var only = new AxeRunOnlyOptions();
        only.setType("tag");
        only.setValues(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"));
        var options = new AxeRunOptions();
        options.setRunOnly(only);
        options.setResultTypes(List.of("violations"));
        return options;
    }
}
