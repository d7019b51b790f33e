package cornerbook.app.desk.wheel;

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
import cornerbook.app.door.ServedShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.label.LabelPaper;
import cornerbook.app.sheet.label.LabelPlace;
import cornerbook.app.sheet.label.ShelfLabels;
import cornerbook.core.assess.Assessor;
import cornerbook.core.corner.Corner;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WheelPageTest {
    private static final int DOTS_PER_INCH = 300;
    private static final double SMALLEST_MODULE_MM = 0.4;

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void wheelSaysWhereItRanAndWhereThePlanPutsIt() {
        var assessor = new Assessor(LimitsFile.load());
        var car = DemoShop.histories(TODAY).getFirst();
        var visit = car.visits().getLast();
        var plan = assessor.plan(car, visit.id()).orElseThrow();
        plan.plan()
                .wheelAt()
                .forEach((corner, tag) ->
                        assertThat(WheelPage.of(car, tag, assessor).next()).isEqualTo(corner));
        var tag = String.valueOf(visit.arrivedOn().get(Corner.LF));
        assertThat(WheelPage.of(car, tag, assessor).depths())
                .hasSize(3)
                .allSatisfy(depth -> assertThat(depth).endsWith("mm"));
    }

    @Test
    void eachStorePlaceHasItsLabel() throws Exception {
        var cars = DemoShop.histories(TODAY);
        long places = cars.stream()
                .flatMap(car -> car.sets().stream())
                .filter(set -> set.storePlace() != null)
                .count();
        for (var paper : LabelPaper.values()) {
            for (int first : new int[] {1, paper.count()}) {
                var pdf = ShelfLabels.render(cars.stream(), new LabelPlace(paper, first, 0.5, -0.3), Reader.DEFAULT);
                try (var document = Loader.loadPDF(pdf)) {
                    assertThat(document.getNumberOfPages())
                            .as(paper.name())
                            .isEqualTo(Math.ceilDiv((int) places + first - 1, paper.count()));
                    assertThat(new PDFTextStripper().getText(document))
                            .contains(cars.getFirst().vehicle().plate());
                }
            }
        }
    }

    /** The codes of a whole sheet are read by a general reader of ISO/IEC 18004, each at its place. */
    @ParameterizedTest
    @EnumSource(LabelPaper.class)
    void codesOfASheetAreReadAndTheirModulesAreLargeEnough(LabelPaper paper) throws Exception {
        var cars = ServedShop.cars();
        var places = cars.stream()
                .flatMap(car -> car.sets().stream())
                .map(set -> set.storePlace())
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        try (var document = Loader.loadPDF(ShelfLabels.render(cars.stream(), LabelPlace.of(paper), Reader.DEFAULT))) {
            var image = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH);
            var pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
            var source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
            var read = new QRCodeMultiReader()
                    .decodeMultiple(
                            new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, true));
            assertThat(read)
                    .extracting(Result::getText)
                    .containsExactlyInAnyOrderElementsOf(places.subList(0, Math.min(places.size(), paper.count())));
            for (var code : read) {
                // The middles of two finder patterns are the code's modules less seven apart (ISO/IEC 18004, 6.3.3).
                var points = code.getResultPoints();
                double apartMm = ResultPoint.distance(points[1], points[2]) * 25.4 / DOTS_PER_INCH;
                int modules = Encoder.encode(code.getText(), ErrorCorrectionLevel.M)
                        .getVersion()
                        .getDimensionForVersion();
                assertThat(apartMm / (modules - 7)).isGreaterThanOrEqualTo(SMALLEST_MODULE_MM);
            }
        }
    }
}
