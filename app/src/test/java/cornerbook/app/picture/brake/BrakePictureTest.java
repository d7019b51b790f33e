package cornerbook.app.picture.brake;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.judge.BrakeMeasured;
import cornerbook.core.brake.judge.BrakeMeasured.Pad;
import cornerbook.core.brake.seizing.CensoredTime;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.brake.seizing.judge.SeizingCurve;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.words.Reader;
import java.io.StringReader;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class BrakePictureTest {
    private static final BrakeSpecification BRAKE =
            new BrakeSpecification(BrakeSpecification.Caliper.SLIDING, true, 11, 3, 26, 24, 0.05, 0.016);

    private static BrakeMeasured measured(Corner corner) {
        return new BrakeMeasured(
                corner,
                BRAKE,
                List.of(new Pad(Spot.OUTER, 5.5, 5.5, 6.6), new Pad(Spot.INNER, 8.25, 2.75, null)),
                25.42,
                List.of(25.430, 25.434, 25.436, 25.434, 25.430, 25.426, 25.420, 25.426),
                false,
                false);
    }

    @Test
    void padsSayInWordsWhatTheyShow() throws Exception {
        var svg = parse(BrakePads.svg(measured(Corner.LF), Reader.DEFAULT));
        assertThat(svg.getAttribute("aria-label"))
                .isEqualTo(
                        "Brake pads of LF: outer 5.5\u00a0mm, at the visit before 6.6\u00a0mm; inner 8.3\u00a0mm/2.8\u00a0mm; limit 3.0\u00a0mm, new 11.0\u00a0mm");
    }

    /** What came off is drawn as it was found; nobody may take it for what is on the car now. */
    @Test
    void whatWasReplacedIsToldAsFound() throws Exception {
        var worn = new BrakeMeasured(
                Corner.LF, BRAKE, List.of(new Pad(Spot.INNER, 1.2, 1.2, null)), 23.4, List.of(), true, true);
        for (var svg : List.of(BrakePads.svg(worn, Reader.DEFAULT), DiscPoints.svg(worn, Reader.DEFAULT))) {
            assertThat(svg).contains(">as found, replaced since<");
            assertThat(parse(svg).getAttribute("aria-label")).endsWith("; as found, replaced since");
        }
        assertThat(BrakePads.svg(measured(Corner.LF), Reader.DEFAULT)).doesNotContain("replaced");
    }

    /** Half the material of a new pad is half as wide as the way from its plate to the disc. */
    @Test
    void frictionMaterialIsDrawnToScale() {
        var paths = Pattern.compile("<path d=\"M([0-9.]+) [0-9.]+L([0-9.]+) [0-9.]+L([0-9.]+)")
                .matcher(BrakePads.svg(measured(Corner.LF), Reader.DEFAULT))
                .results()
                .toList();
        assertThat(paths).hasSize(2);
        double plate = Double.parseDouble(paths.getFirst().group(1));
        double face = Double.parseDouble(paths.getFirst().group(2));
        double whenNew = 110 - 8 - plate;
        assertThat((face - plate) / whenNew)
                .as("outer pad, left on a left wheel")
                .isEqualTo(0.5);
        double innerPlate = Double.parseDouble(paths.getLast().group(1));
        double leading = innerPlate - Double.parseDouble(paths.getLast().group(2));
        double trailing = innerPlate - Double.parseDouble(paths.getLast().group(3));
        assertThat(leading / trailing).as("a wedge of three to one").isEqualTo(3);
    }

    @Test
    void outerPadLiesRightOnARightWheel() {
        assertThat(BrakePads.svg(measured(Corner.RF), Reader.DEFAULT))
                .isNotEqualTo(BrakePads.svg(measured(Corner.LF), Reader.DEFAULT));
    }

    @Test
    void discSaysItsPointsAndMarksTheThinnest() throws Exception {
        var svg = parse(DiscPoints.svg(measured(Corner.LF), Reader.DEFAULT));
        assertThat(svg.getAttribute("aria-label"))
                .startsWith(
                        "Disc of LF: thinnest 25.42\u00a0mm, minimum 24.00\u00a0mm; variation 0.016\u00a0mm over 8 points: 25.430\u00a0mm, ");
        var one = parse(DiscPoints.svg(
                new BrakeMeasured(Corner.LF, BRAKE, List.of(), 25.42, List.of(), false, false), Reader.DEFAULT));
        assertThat(one.getAttribute("aria-label"))
                .isEqualTo("Disc of LF: thinnest 25.42\u00a0mm, minimum 24.00\u00a0mm");
    }

    @Test
    void chanceOfSeizingSaysItsNumbers() throws Exception {
        var hazard = SeizingHazard.learn(List.of());
        var exposure = SeizingExposure.usual(15_000, false);
        var seen = List.of(
                CensoredTime.between(6, 12),
                CensoredTime.notBy(12),
                CensoredTime.notBy(24),
                CensoredTime.between(12, 24));
        var label = parse(SeizingOverMonths.svg(new SeizingCurve(hazard, exposure, seen), Reader.DEFAULT))
                .getAttribute("aria-label");
        assertThat(label).contains("beside the estimate from 4 looks at pads");
        assertThat(SeizingOverMonths.svg(new SeizingCurve(hazard, exposure, List.of()), Reader.DEFAULT))
                .isEmpty();
    }

    private static Element parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();
    }
}
