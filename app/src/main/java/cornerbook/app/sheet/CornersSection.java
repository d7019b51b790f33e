package cornerbook.app.sheet;

import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.car.CarFromAbove;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tread.judge.SetForecast;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;

/** The four corners, as a picture and as a table of what was measured and set. */
final class CornersSection {
    private static final int LONGEST_TAG_IN_PICTURE = 12;
    private static final int LONGEST_MODEL = 30;
    private final Assessment assessment;
    private final StandingReadings readings;
    private final Map<Corner, String> wheelAt;
    private final Xhtml page;

    CornersSection(Assessment assessment, StandingReadings readings, Map<Corner, String> wheelAt, Xhtml page) {
        this.assessment = assessment;
        this.readings = readings;
        this.wheelAt = wheelAt;
        this.page = page;
    }

    void writePicture() {
        page.raw("<div class=\"car\">")
                .raw(Xhtml.described(CarFromAbove.svg(labels())))
                .raw("</div>\n");
    }

    void writeTable() {
        page.element("h2 class=\"clear\"", "The four corners");
        page.raw("<table class=\"corners\"><thead><tr>");
        for (var heading :
                List.of("Corner", "Tyre", "Lowest tread", "Pressure set", "Wheel torque", "Thinnest pad", "Disc")) {
            page.element("th scope=\"col\"", heading);
        }
        page.raw("</tr></thead><tbody>");
        for (var corner : Corner.values()) {
            page.row(SheetWords.corner(corner), cells(corner));
        }
        page.raw("</tbody></table>\n");
        page.element(
                "p class=\"small\"",
                "Left and right as seen from the driver's seat. Pressures as set that day; for cold tyres the placard counts. A dash: not measured at this visit."
                        + (assessment.visit().tightened().isEmpty()
                                ? ""
                                : " Ticked: every fastener tightened, no torque value read."));
    }

    private List<String> cells(Corner corner) {
        var tag = Optional.ofNullable(wheelAt.get(corner));
        return List.of(
                tag.flatMap(assessment.history()::findWheel)
                        .map(CornersSection::tyreWords)
                        .orElse("–"),
                lowestDepthMm(corner).map(SheetWords::millimetres).orElse("–"),
                words(tag.flatMap(wheel -> readings.ofWheel(Measure.PRESSURE_SET, wheel)), SheetWords::pressure),
                torque(corner, tag),
                words(lowest(Measure.PAD_THICKNESS, reading -> reading.corner() == corner), SheetWords::millimetres),
                words(lowest(Measure.DISC_THICKNESS, reading -> reading.corner() == corner), SheetWords::millimetres));
    }

    /** A wheel whose fasteners were ticked is tight, and its torque is not known. */
    private String torque(Corner corner, Optional<String> tag) {
        return tag.flatMap(wheel -> readings.ofWheel(Measure.WHEEL_TORQUE, wheel))
                .map(reading -> SheetWords.torque(reading.value()))
                .orElse(assessment.visit().tightened().contains(corner) ? "ticked" : "–");
    }

    private static String words(Optional<Reading> reading, DoubleFunction<String> unit) {
        return reading.map(found -> unit.apply(found.value())).orElse("–");
    }

    private static String tyreWords(Wheel wheel) {
        return "%s, %s %s"
                .formatted(
                        wheel.tag(),
                        Xhtml.shorten(wheel.tyre().model(), LONGEST_MODEL),
                        wheel.tyre().size());
    }

    private Map<Corner, CornerLabel> labels() {
        var labels = new EnumMap<Corner, CornerLabel>(Corner.class);
        wheelAt.forEach((corner, tag) -> labels.put(
                corner,
                lowestDepthMm(corner)
                        .map(depthMm -> label(corner, depthMm))
                        .orElseGet(() -> CornerLabel.ofWheel(
                                SheetFonts.forPicture(Xhtml.shorten(tag, LONGEST_TAG_IN_PICTURE)), "not measured"))));
        return labels;
    }

    /** The gravest of what was found at this corner and on the set as a whole. */
    private CornerLabel label(Corner corner, double depthMm) {
        var forecast = assessment.forecasts().stream()
                .filter(candidate -> candidate.role() == SetForecast.Role.GOING_ON)
                .findFirst();
        double limitMm = forecast.map(SetForecast::limitMm).orElse(0.0);
        double legalMm = forecast.map(SetForecast::legalLimitMm).orElse(0.0);
        var byDepth = depthMm < legalMm ? Verdict.UNSAFE : depthMm < limitMm ? Verdict.SPENT : Verdict.HOLDS;
        var verdict = assessment.findings().stream()
                .filter(finding -> isAt(finding.subject(), corner, forecast))
                .map(Finding::verdict)
                .reduce(byDepth, (first, second) -> first.compareTo(second) >= 0 ? first : second);
        double newMm = Optional.ofNullable(wheelAt.get(corner))
                .flatMap(assessment.history()::findWheel)
                .map(Wheel::tyre)
                .map(Tyre::newDepthMm)
                .orElse(depthMm);
        double lifeLeft = newMm > limitMm ? Math.clamp((depthMm - limitMm) / (newMm - limitMm), 0, 1) : 0;
        return CornerLabel.ofDepth(verdict, lifeLeft, depthMm);
    }

    /** A wheel that came off says nothing about the corner that it left. */
    private boolean isAt(Subject subject, Corner corner, Optional<SetForecast> goingOn) {
        if (subject.part() == Subject.Part.WHEEL_SET) {
            return goingOn.filter(forecast -> forecast.set().id().equals(subject.setId()))
                    .isPresent();
        }
        return subject.corner() == corner
                && (subject.wheelTag() == null || subject.wheelTag().equals(wheelAt.get(corner)));
    }

    private Optional<Double> lowestDepthMm(Corner corner) {
        return Optional.ofNullable(wheelAt.get(corner))
                .flatMap(tag -> lowest(Measure.TREAD_DEPTH, reading -> tag.equals(reading.wheelTag())))
                .map(Reading::value);
    }

    private Optional<Reading> lowest(Measure measure, Predicate<Reading> wanted) {
        return readings.all(measure).stream().filter(wanted).min(Comparator.comparingDouble(Reading::value));
    }
}
