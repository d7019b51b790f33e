package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class AxeTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @Test
    void picturesWithoutANameAndPaleWordsAreFound() {
        var page = chromium.newPage(390, 844);
        page.setContent(
                "<!doctype html><html lang=en><title>A page</title><main><img src='data:,'><p style='color: #ccc; background: #fff'>Pale</p></main>");
        assertThatThrownBy(() -> Axe.assertNoViolation(page, "the page"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContainingAll("image-alt", "color-contrast");
    }
}
