package cornerbook.app.sheet.label;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.Encoder;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.sheet.TreadAcross;
import cornerbook.app.sheet.label.WheelLabels.Tag;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.words.Reader;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Wheel tags on every paper, as they come out of a printer. */
class LabelsTest {
    private static final int DOTS_PER_INCH = 300;
    private static final double POINTS_PER_MM = 72 / 25.4;
    /** Common practice, no source: three dots and more of a label printer of 203 dots per inch. */
    private static final double SMALLEST_MODULE_MM = 0.4;
    /** Nothing is printed closer to a label's edge, as cutting is no better than this. Common practice, no source. */
    private static final double EDGE_MM = 0.8;

    /** Half of them with as much to say as a tag may have. */
    private final List<Tag> tags = IntStream.range(0, 40)
            .mapToObj(i -> new Tag(
                    i % 2 == 0 ? "08W" + i : "WINTER-SET-LONG-MARK-%02d".formatted(i),
                    i % 2 == 0 ? "QX 0008" : "WWWW MMMM 88",
                    SeasonKind.ALL_SEASON,
                    i % 4 == 0 ? null : Corner.LR,
                    Corner.RF,
                    List.of(OptionalDouble.of(15.25), OptionalDouble.of(15.25), OptionalDouble.of(15.25)),
                    new StorePlace("Hall 12 shelf 34-56", i % 2 == 1),
                    "LT275/65R18 C"))
            .toList();

    /** By a general reader of ISO/IEC 18004, each in its label, with its quiet zone of four modules. */
    @ParameterizedTest
    @EnumSource(LabelPaper.class)
    void codesAreReadFromEachPaper(LabelPaper paper) throws Exception {
        int onPage = Math.min(tags.size(), paper.count());
        try (var document = Loader.loadPDF(WheelLabels.render(tags, LabelPlace.of(paper), Reader.DEFAULT))) {
            assertThat(document.getNumberOfPages()).isEqualTo(Math.ceilDiv(tags.size(), paper.count()));
            var image = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH);
            var read = read(image);
            assertThat(read)
                    .extracting(Result::getText)
                    .containsExactlyInAnyOrderElementsOf(
                            tags.stream().limit(onPage).map(Tag::tag).toList());
            for (var code : read) {
                // The middles of two finder patterns are the code's modules less seven apart (ISO/IEC 18004, 6.3.3).
                var points = code.getResultPoints();
                int modules = Encoder.encode(code.getText(), ErrorCorrectionLevel.M)
                        .getVersion()
                        .getDimensionForVersion();
                double modulePx = ResultPoint.distance(points[1], points[2]) / (modules - 7);
                assertThat(modulePx * 25.4 / DOTS_PER_INCH).isGreaterThanOrEqualTo(SMALLEST_MODULE_MM);
                assertQuiet(image, points[1], modules, modulePx);
            }
        }
    }

    @Test
    void depthsHaveTheirUnitOnce() {
        var read = List.of(OptionalDouble.of(5.25), OptionalDouble.empty(), OptionalDouble.of(5));
        assertThat(TreadAcross.words(read, Reader.DEFAULT)).isEqualTo("5.25 / – / 5.00\u00a0mm");
        assertThat(TreadAcross.words(List.of(OptionalDouble.of(5), OptionalDouble.empty()), Reader.DEFAULT))
                .isEqualTo("5.0\u00a0mm / –");
    }

    /** White for four modules on all sides, seen from the middle of the upper left finder pattern. */
    private static void assertQuiet(BufferedImage image, ResultPoint upperLeft, int modules, double modulePx) {
        for (double along = -7.4; along < modules + 0.4; along += 0.2) {
            for (double out : new double[] {-4.3, -5.5, -7.3, modules - 2.7, modules - 1.5, modules + 0.3}) {
                for (boolean across : new boolean[] {true, false}) {
                    int x = (int) Math.round(upperLeft.getX() + (across ? along : out) * modulePx);
                    int y = (int) Math.round(upperLeft.getY() + (across ? out : along) * modulePx);
                    assertThat(new Color(image.getRGB(x, y)).getGreen())
                            .as("quiet zone at %d, %d", x, y)
                            .isGreaterThan(200);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(LabelPaper.class)
    void nothingStandsOverTheEdgeOfALabel(LabelPaper paper) throws Exception {
        assertInside(WheelLabels.render(tags, LabelPlace.of(paper), Reader.DEFAULT), paper);
        assertInside(
                ShelfLabels.render(
                        DemoShop.histories(LocalDate.of(2026, 11, 25)).stream(), LabelPlace.of(paper), Reader.DEFAULT),
                paper);
    }

    private static void assertInside(byte[] pdf, LabelPaper paper) throws Exception {
        try (var document = Loader.loadPDF(pdf)) {
            var stripper = new PDFTextStripper() {
                int glyphs;

                @Override
                protected void processTextPosition(TextPosition glyph) {
                    glyphs++;
                    double left = glyph.getXDirAdj() / POINTS_PER_MM;
                    double right = left + glyph.getWidthDirAdj() / POINTS_PER_MM;
                    double bottom = glyph.getYDirAdj() / POINTS_PER_MM;
                    double top = bottom - glyph.getHeightDir() / POINTS_PER_MM;
                    assertThat(IntStream.range(0, paper.count()))
                            .as("%s at %.1f, %.1f mm", glyph.getUnicode(), left, bottom)
                            .anyMatch(label -> left >= paper.leftOfMm(label) + EDGE_MM
                                    && right <= paper.leftOfMm(label) + paper.widthMm() - EDGE_MM
                                    && top >= paper.topOfMm(label) + EDGE_MM
                                    && bottom <= paper.topOfMm(label) + paper.heightMm() - EDGE_MM);
                }
            };
            stripper.getText(document);
            assertThat(stripper.glyphs).isGreaterThan(500);
        }
    }

    private static Result[] read(BufferedImage image) throws Exception {
        var pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        var source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        return new QRCodeMultiReader()
                .decodeMultiple(new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, true));
    }
}
