package cornerbook.app.web;

import cornerbook.app.picture.CarFromAbove;
import cornerbook.app.picture.CornerLabel;
import cornerbook.core.corner.Corner;
import cornerbook.core.visit.Assessment;
import cornerbook.core.visit.Visit;
import cornerbook.core.wheelplan.WheelPlan;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What one visit found out. */
public record FindingsPage(Assessment assessment) {
    /** Where each wheel goes, and where it ran before. */
    public String planPicture(WheelPlan plan) {
        var labels = new EnumMap<Corner, CornerLabel>(Corner.class);
        plan.wheelAt()
                .forEach((corner, tag) -> labels.put(
                        corner,
                        CornerLabel.ofWheel(
                                tag,
                                lastCorner(tag)
                                        .map(last -> last == corner ? "stays here" : "ran at " + last)
                                        .orElse("has not run yet"))));
        return CarFromAbove.svg(labels);
    }

    /** The corner that a wheel last left the shop on, before this visit. */
    private Optional<Corner> lastCorner(String tag) {
        return assessment.history().visits().reversed().stream()
                .filter(visit -> visit.date().isBefore(assessment.visit().date()))
                .map(Visit::leftOn)
                .flatMap(leftOn -> leftOn.entrySet().stream())
                .filter(entry -> entry.getValue().equals(tag))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
