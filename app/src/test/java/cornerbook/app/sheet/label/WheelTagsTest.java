package cornerbook.app.sheet.label;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.label.WheelTags.Paper;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.wheelplan.WheelState;
import cornerbook.core.wheelplan.judge.SetPlan;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class WheelTagsTest {
    private static final double POINTS_PER_MM = 72 / 25.4;
    /** As a label printer prints. */
    private static final int DOTS_PER_INCH = 203;

    private final CarHistory car = DemoShop.histories(LocalDate.of(2026, 11, 25)).stream()
            .filter(history -> history.vehicle().id().equals("demo-08"))
            .findFirst()
            .orElseThrow();
    private final Visit visit = car.visits().getLast();
    private final Assessor assessor = new Assessor(LimitsFile.load());
    private final Optional<SetPlan> goingOn = assessor.plan(car, visit.id());
    private final Optional<SetPlan> stored = assessor.planStored(car, visit.id());

    /** The code is read from the printed page by a reader of ISO/IEC 18004. */
    @Test
    void eachPageOfTheRollIsOneWheelWhoseCodeIsItsTag() throws Exception {
        var free = Map.of(stored.orElseThrow().set().id(), new StorePlace("K-2-05", true));
        try (var tags =
                Loader.loadPDF(WheelTags.render(car, visit, goingOn, stored, free, Paper.ROLL, Reader.DEFAULT))) {
            assertThat(tags.getNumberOfPages()).isEqualTo(8);
            for (int i = 0; i < 8; i++) {
                var set = (i < 4 ? stored : goingOn).orElseThrow();
                var wheel = set.request().wheels().get(i % 4);
                assertThat(tags.getPage(i).getMediaBox().getWidth() / POINTS_PER_MM)
                        .isBetween(61.9, 62.1);
                assertThat(decode(tags, i)).isEqualTo(wheel.tag());
                assertThat(text(tags, i))
                        .contains(
                                wheel.tag(),
                                car.vehicle().plate(),
                                "Came off " + wheel.lastCorner(),
                                i < 4
                                        ? "Lay it at K-2-05"
                                        : "Store place " + set.set().storePlace(),
                                i < 4 ? "Next season " + at(set, wheel, 0) : "Goes to now " + at(set, wheel, 0),
                                "Next season " + at(set, wheel, i < 4 ? 0 : 1));
            }
        }
    }

    /** Wheels went on otherwise than planned: a tag says where its wheel is, and nothing of a plan that was not kept. */
    @Test
    void aTagThatIsPrintedAfterwardsSaysWhereTheWheelIs() throws Exception {
        var planned = goingOn.orElseThrow().plan().wheelAt();
        var crossed = Map.of(
                Corner.LF, String.valueOf(planned.get(Corner.RR)),
                Corner.RF, String.valueOf(planned.get(Corner.RF)),
                Corner.LR, String.valueOf(planned.get(Corner.LR)),
                Corner.RR, String.valueOf(planned.get(Corner.LF)));
        try (var tags = Loader.loadPDF(WheelTags.render(
                car, visit.withLeftOn(crossed), goingOn, stored, Map.of(), Paper.ROLL, Reader.DEFAULT))) {
            for (int i = 4; i < 8; i++) {
                var tag = goingOn.orElseThrow().request().wheels().get(i - 4).tag();
                var corner = crossed.entrySet().stream()
                        .filter(entry -> entry.getValue().equals(tag))
                        .map(Map.Entry::getKey)
                        .findFirst()
                        .orElseThrow();
                assertThat(text(tags, i)).contains("Goes to now " + corner);
                if (corner == Corner.LF || corner == Corner.RR) {
                    assertThat(text(tags, i)).doesNotContain("Next season");
                }
            }
        }
    }

    @Test
    void allTagsOfBothSetsAreOnOneSheetOfA4() throws Exception {
        try (var tags =
                Loader.loadPDF(WheelTags.render(car, visit, goingOn, stored, Map.of(), Paper.A4, Reader.DEFAULT))) {
            assertThat(tags.getNumberOfPages()).isEqualTo(1);
            assertThat(text(tags, 0)).contains("08S1", "08S4", "08W1", "08W4", depthsRead("08S3"));
        }
    }

    /** From the outside to the inside. */
    private String depthsRead(String tag) {
        return Stream.of(Spot.OUTER, Spot.CENTRE, Spot.INNER)
                .map(spot -> visit.readings().stream()
                        .filter(reading -> reading.measure() == Measure.TREAD_DEPTH)
                        .filter(reading -> tag.equals(reading.wheelTag()) && reading.spot() == spot)
                        .findFirst()
                        .orElseThrow()
                        .asWritten()
                        .replace(" mm", ""))
                .collect(Collectors.joining(" / ", "", "\u00a0mm"));
    }

    @Test
    void setThatWaitsIsPlannedFromTheDayItGoesOnAgain() {
        assertThat(stored.orElseThrow().seasons().from()).isEqualTo(LocalDate.of(2027, 4, 15));
        assertThat(goingOn.orElseThrow().seasons().from()).isEqualTo(visit.date());
    }

    /** It is planned with the four, and stays the spare here, as moving may gain nothing; its tag says where it lies. */
    @Test
    void aFullSizeSpareIsPlannedAndHasItsTag() throws Exception {
        var five = withSpare(new Tyre("Invented Winter", "", 102, "T", null, false, null, 8.0));
        var plan = assessor.plan(five, visit.id()).orElseThrow();
        assertThat(plan.request().wheels().getLast().tag()).isEqualTo("spare 5");
        assertThat(plan.plan().gains().getFirst().gainKm())
                .isGreaterThan(goingOn.orElseThrow().plan().gains().getFirst().gainKm());
        assertThat(plan.plan().wheelAt()).doesNotContainValue("spare 5");
        var open = visit.withLeftOn(Map.of());
        try (var tags = Loader.loadPDF(WheelTags.render(
                five, open, Optional.of(plan), Optional.empty(), Map.of(), Paper.ROLL, Reader.DEFAULT))) {
            assertThat(tags.getNumberOfPages()).isEqualTo(5);
            assertThat(text(tags, 4)).contains("spare 5", "Came off spare", "Goes to now spare", "Next season spare");
        }
    }

    /** Nobody knows the depth of a used tyre that was never read, and a temporary spare stays one: four are planned. */
    @Test
    void aSpareThatIsNotKnownOrTemporaryTakesNoPart() {
        for (var tyre : List.of(
                new Tyre(null, "225/55R18", 102, "T", null, false, null, null),
                new Tyre(null, "T125/80D16", 97, "M", null, false, null, 3.0))) {
            var plan = assessor.plan(withSpare(tyre), visit.id()).orElseThrow();
            assertThat(plan.request().wheels()).hasSize(4);
        }
    }

    /** The car with a fifth wheel in the set that goes on, and no tyre of it directional. */
    private CarHistory withSpare(Tyre spare) {
        var sets = new ArrayList<WheelSet>();
        for (var set : car.sets()) {
            var wheels = new ArrayList<Wheel>();
            for (var wheel : set.wheels()) {
                var tyre = wheel.tyre();
                wheels.add(new Wheel(
                        wheel.tag(),
                        new Tyre(
                                tyre.model(),
                                tyre.size(),
                                tyre.loadIndex(),
                                tyre.speedSymbol(),
                                tyre.tin(),
                                false,
                                tyre.asymmetric(),
                                tyre.newDepthMm()),
                        wheel.sensorId(),
                        wheel.details()));
            }
            if (set.id().equals(goingOn.orElseThrow().set().id())) {
                var size = wheels.getFirst().tyre().size();
                wheels.add(new Wheel(
                        "spare 5",
                        new Tyre(
                                spare.model(),
                                spare.size().startsWith("T") ? spare.size() : size,
                                spare.loadIndex(),
                                spare.speedSymbol(),
                                null,
                                false,
                                null,
                                spare.newDepthMm()),
                        null));
            }
            sets.add(new WheelSet(set.id(), set.season(), set.storePlace(), wheels));
        }
        return new CarHistory(car.vehicle(), car.customer(), sets, car.visits());
    }

    private static Corner at(SetPlan set, WheelState wheel, int season) {
        return set.plan().seasons().get(season).wheelAt().entrySet().stream()
                .filter(entry -> entry.getValue().equals(wheel.tag()))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    private static String decode(PDDocument document, int page) throws Exception {
        var image = new PDFRenderer(document).renderImageWithDPI(page, DOTS_PER_INCH);
        int width = image.getWidth();
        int height = image.getHeight();
        var pixels = image.getRGB(0, 0, width, height, null, 0, width);
        var source = new RGBLuminanceSource(width, height, pixels);
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)))
                .getText();
    }

    private static String text(PDDocument document, int page) throws Exception {
        var stripper = new PDFTextStripper();
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        return stripper.getText(document);
    }
}
