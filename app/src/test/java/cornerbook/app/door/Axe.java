package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.util.List;

/** The rules of axe-core for WCAG 2.2, levels A and AA. */
public final class Axe {
    private Axe() {}

    public static void assertNoViolation(Page page, String what) {
        // A field half under a bar that stays on the screen counts as a small target, though a person scrolls it free;
        // that focus is never under a bar is tested on its own.
        page.evaluate("document.querySelectorAll('.jump, .store').forEach(bar => bar.style.position = 'static')");
        var violations = new AxeBuilder(page)
                .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
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
}
