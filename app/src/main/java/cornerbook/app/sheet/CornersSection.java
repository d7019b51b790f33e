package cornerbook.app.sheet;

import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.car.CarFromAbove;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The four corners of the car from above, with the lowest tread of each and the gravest of what was found there. */
public final class CornersSection {
    private static final int LONGEST_TAG_IN_PICTURE = 12;

    private final Assessment assessment;
    private final StandingReadings readings;
    private final Map<Corner, String> wheelAt;
    private final Reader reader;
    private final Labels labels;

    CornersSection(Assessment assessment, StandingReadings readings, Map<Corner, String> wheelAt, Reader reader) {
        this.assessment = assessment;
        this.readings = readings;
        this.wheelAt = wheelAt;
        this.reader = reader;
        this.labels = reader.labels(SheetPage.ROOM);
    }

    public String picture() {
        return SheetTemplates.described(CarFromAbove.svg(pictureLabels(), reader));
    }

    /** In full with its letters, as "Left front (LF)". */
    static String name(Corner corner, Reader reader) {
        return "%s (%s)".formatted(reader.begin(new CornerName(corner)), reader.say(corner));
    }

    private Map<Corner, CornerLabel> pictureLabels() {
        var pictureLabels = new EnumMap<Corner, CornerLabel>(Corner.class);
        wheelAt.forEach((corner, tag) -> pictureLabels.put(
                corner,
                lowestDepthMm(corner)
                        .map(depthMm -> label(corner, depthMm))
                        .orElseGet(() -> CornerLabel.ofWheel(
                                SheetFonts.forPicture(SheetText.shorten(tag, LONGEST_TAG_IN_PICTURE)),
                                labels.of("not-measured")))));
        return pictureLabels;
    }

    /** The lowest depth, and the gravest of what was found at this corner; that of the set counts where its lowest groove is. */
    private CornerLabel label(Corner corner, double depthMm) {
        boolean lowestOfAll = wheelAt.keySet().stream()
                .flatMap(other -> lowestDepthMm(other).stream())
                .allMatch(otherMm -> otherMm >= depthMm);
        return assessment.ofCar().stream()
                .filter(finding -> isAt(finding.subject(), corner, lowestOfAll))
                .max(Comparator.comparing(Finding::verdict))
                .map(gravest -> CornerLabel.ofDepth(gravest, depthMm, reader))
                .orElseGet(() -> CornerLabel.ofDepth(depthMm, reader));
    }

    /** A wheel that came off says nothing about the corner that it left. */
    private boolean isAt(Subject subject, Corner corner, boolean lowestOfAll) {
        if (subject.part() == Subject.Part.WHEEL_SET) {
            return lowestOfAll
                    && assessment.forecasts().stream()
                            .filter(forecast -> forecast.role() == SetSpan.Role.GOING_ON)
                            .anyMatch(forecast -> forecast.set().id().equals(subject.setId()));
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
