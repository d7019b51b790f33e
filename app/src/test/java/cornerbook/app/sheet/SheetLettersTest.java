package cornerbook.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.layout.SharedContext;
import java.io.IOException;
import java.text.Normalizer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetLettersTest {
    /** Invented names. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Zażółć Gęśląjaźń",
                "Příšerně Žluťoučký",
                "Ğüneş Işıkçı-İnce",
                "Nguyễn Thị Hồng Đượm",
                "Ευθύμιος Ψαράς",
                "Жанна Щербёнок",
                "Ґалина Їжакевич",
                "Ștefan Țuțea",
                "Ģertrūde Ķēniņa"
            })
    void namesPrintInTheirOwnLetters(String name) throws IOException {
        assertThat(SheetCars.words(SheetCars.ofCustomer(SheetCars.finished(), name)))
                .contains(name);
    }

    @Test
    void aLetterWithItsAccentApartPrintsAsOne() throws IOException {
        var name = "Příšerně Žluťoučký";
        assertThat(SheetCars.words(
                        SheetCars.ofCustomer(SheetCars.finished(), Normalizer.normalize(name, Normalizer.Form.NFD))))
                .contains(name);
    }

    @Test
    void aCharacterWithoutGlyphIsReplacedByABox() throws IOException {
        assertThat(SheetCars.words(SheetCars.ofCustomer(SheetCars.finished(), "Ada 漢\uD83D\uDE97 Ost")))
                .contains("Ada \u25a1\u25a1 Ost");
    }

    /** Pictures are drawn by another library than the page, which has to be given the typefaces by itself. */
    @Test
    void picturesAreWrittenInTheHousesTypeface() {
        try (var drawer = SheetFonts.pictureDrawer()) {
            drawer.importFontFaceRules(List.of(), new SharedContext());
            assertThat(drawer.fontResolver.resolve("B612").getFamilyName()).isEqualTo("B612");
            assertThat(drawer.fontResolver.getFamilyThatCanDisplay('Ж').getFamilyName())
                    .isEqualTo("DejaVu Sans");
        }
        assertThat(SheetFonts.forPicture("W-漢Ж")).isEqualTo("W-\u25a1Ж");
    }
}
