package cornerbook.app.sheet;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.OpenHtmlGvtFontFamily;
import com.openhtmltopdf.svgsupport.PDFTranscoder.OpenHtmlFontResolver;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.TextAttribute;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.apache.batik.gvt.font.GVTFontFamily;
import org.jspecify.annotations.Nullable;

/**
 * The typefaces of the sheet: B612, and DejaVu Sans for names in letters that B612 lacks. The PDF holds only the glyphs
 * that it uses of them.
 */
public final class SheetFonts {
    static final String HOUSE = "B612";
    /** Latin with all its marks, Greek, Cyrillic, Armenian, Georgian. */
    static final String WIDE = "DejaVu Sans";
    /** Stands for a character that neither has; a reference to a missing glyph is no PDF/A (ISO 19005-2, 6.2.11.8). */
    private static final String REPLACEMENT = "\u25a1";

    private static final byte[] HOUSE_REGULAR = read("b612-400.ttf");
    private static final byte[] HOUSE_BOLD = read("b612-700.ttf");
    private static final byte[] WIDE_REGULAR = read("dejavu-sans-400.ttf");
    private static final byte[] WIDE_BOLD = read("dejavu-sans-700.ttf");
    private static final Font HOUSE_FONT = parse(HOUSE_REGULAR);
    private static final Font WIDE_FONT = parse(WIDE_REGULAR);
    private static final OpenHtmlGvtFontFamily HOUSE_IN_PICTURES = family(HOUSE, HOUSE_REGULAR, HOUSE_BOLD);
    private static final OpenHtmlGvtFontFamily WIDE_IN_PICTURES = family(WIDE, WIDE_REGULAR, WIDE_BOLD);

    private SheetFonts() {}

    static void addTo(PdfRendererBuilder builder) {
        add(builder, HOUSE, 400, HOUSE_REGULAR);
        add(builder, HOUSE, 700, HOUSE_BOLD);
        add(builder, WIDE, 400, WIDE_REGULAR);
        add(builder, WIDE, 700, WIDE_BOLD);
        builder.useReplacementText(REPLACEMENT);
    }

    /** Whether the house's typeface has all these letters. */
    public static boolean houseHas(String words) {
        return HOUSE_FONT.canDisplayUpTo(SheetText.printable(words)) < 0;
    }

    /** Words for a picture: there the renderer puts nothing in place of a character that no typeface has. */
    static String forPicture(String words) {
        var drawn = new StringBuilder(words.length());
        words.codePoints()
                .forEach(point -> drawn.append(
                        HOUSE_FONT.canDisplay(point) || WIDE_FONT.canDisplay(point)
                                ? Character.toString(point)
                                : REPLACEMENT));
        return drawn.toString();
    }

    /** Draws pictures with the same typefaces; without it they get whatever the machine has. */
    static BatikSVGDrawer pictureDrawer() {
        return new BatikSVGDrawer() {
            @Override
            public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
                fontResolver = new PictureFonts();
            }
        };
    }

    private static void add(PdfRendererBuilder builder, String family, int weight, byte[] font) {
        builder.useFont(() -> new ByteArrayInputStream(font), family, weight, FontStyle.NORMAL, true);
    }

    private static OpenHtmlGvtFontFamily family(String name, byte[] regular, byte[] bold) {
        try {
            var family = new OpenHtmlGvtFontFamily(name);
            family.addFont(regular, 1, TextAttribute.WEIGHT_REGULAR, TextAttribute.POSTURE_REGULAR);
            family.addFont(bold, 1, TextAttribute.WEIGHT_BOLD, TextAttribute.POSTURE_REGULAR);
            return family;
        } catch (FontFormatException e) {
            throw new IllegalStateException("the program's own font " + name + " cannot be read", e);
        }
    }

    private static Font parse(byte[] font) {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(font));
        } catch (FontFormatException | IOException e) {
            throw new IllegalStateException("a font of the program cannot be read", e);
        }
    }

    private static byte[] read(String name) {
        try (var stream = SheetFonts.class.getResourceAsStream("/cornerbook/app/fonts/" + name)) {
            return Objects.requireNonNull(stream, name).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class PictureFonts extends OpenHtmlFontResolver {
        @Override
        public @Nullable GVTFontFamily resolve(String family) {
            return family.equals(HOUSE) ? HOUSE_IN_PICTURES : null;
        }

        @Override
        public GVTFontFamily getFamilyThatCanDisplay(char letter) {
            return HOUSE_FONT.canDisplay(letter) ? HOUSE_IN_PICTURES : WIDE_IN_PICTURES;
        }
    }
}
