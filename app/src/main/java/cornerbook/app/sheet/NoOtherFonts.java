package cornerbook.app.sheet;

import java.awt.geom.GeneralPath;
import java.util.List;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Papers embed the fonts that they are written in (ISO 19005-2, 6.2.11.4.1). The library makes two more for forms, which no paper has,
 * and to draw those it would look through all fonts of the machine; here each is a font without a glyph.
 */
final class NoOtherFonts implements FontMapper {
    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(new NoGlyphs(name), false);
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        throw new IllegalStateException("no paper has the font " + name + ": papers embed their fonts");
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        throw new IllegalStateException("no paper has the font " + name + ": papers embed their fonts");
    }

    private record NoGlyphs(String name) implements FontBoxFont {
        @Override
        public String getName() {
            return name;
        }

        @Override
        public BoundingBox getFontBBox() {
            return new BoundingBox();
        }

        @Override
        public List<Number> getFontMatrix() {
            return List.of(0.001, 0, 0, 0.001, 0, 0);
        }

        @Override
        public GeneralPath getPath(String glyph) {
            return new GeneralPath();
        }

        @Override
        public float getWidth(String glyph) {
            return 0;
        }

        @Override
        public boolean hasGlyph(String glyph) {
            return false;
        }
    }
}
