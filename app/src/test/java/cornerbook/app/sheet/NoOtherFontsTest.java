package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A paper is written in the fonts that it embeds; those of the machine are not looked for. */
class NoOtherFontsTest {
    @Test
    void aPaperIsMadeAndReadWithoutTheFontsOfTheMachine() throws IOException {
        var pdf = SheetPdf.of("<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"fr\"><head><title>Essieu</title>"
                + "<meta name=\"description\" content=\"Essieu\"/><style>body{font-family:B612}</style></head>"
                + "<body><p>Étrier relâché</p></body></html>");
        assertThat(FontMappers.instance()).isInstanceOf(NoOtherFonts.class);
        try (var paper = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(paper)).isEqualToIgnoringWhitespace("Étrier relâché");
            for (var name : paper.getPage(0).getResources().getFontNames()) {
                var font = paper.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            }
        }
    }
}
