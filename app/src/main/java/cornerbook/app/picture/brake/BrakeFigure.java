package cornerbook.app.picture.brake;

import cornerbook.words.Reader;
import cornerbook.core.assess.Assessment;
import cornerbook.core.brake.judge.BrakeMeasured;
import cornerbook.core.corner.Corner;
import java.util.List;

/**
 * The pictures of the brake at one corner, the same for page and sheet.
 *
 * @param pads the pads to scale
 * @param disc the disc around its points
 */
public record BrakeFigure(Corner corner, String pads, String disc) {
    /** Those of every corner at which a pad or the disc was read. */
    public static List<BrakeFigure> of(Assessment assessment, Reader reader) {
        return BrakeMeasured.of(assessment.history(), assessment.visit().id()).stream()
                .map(measured -> new BrakeFigure(measured.corner(), BrakePads.svg(measured, reader), DiscPoints.svg(measured, reader)))
                .toList();
    }
}
