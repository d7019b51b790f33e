package cornerbook.app.bench;

import cornerbook.core.corner.Corner;
import cornerbook.core.lift.LiftPoint;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Refused;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lift points that do not mirror each other, as "LF 650 750; RF 700 -740; LR 2150 745; RR 2150 -745". */
final class PointsOneByOne {
    private static final String LENGTH = "([+\\-−]?\\d[\\d.,]*(?:\\s*(?:mm|cm|in|m))?)";
    private static final Pattern POINT =
            Pattern.compile("\\s*(LF|RF|LR|RR)\\s+" + LENGTH + "\\s+" + LENGTH + "\\s*", Pattern.CASE_INSENSITIVE);

    private PointsOneByOne() {}

    /**
     * The four points; a bare number is in the person's unit.
     *
     * @throws Refused when they are not four of that form
     */
    static LiftPoints parse(String text, Given given) {
        var points = new EnumMap<Corner, LiftPoint>(Corner.class);
        for (var part : text.split(";", -1)) {
            var match = POINT.matcher(part);
            if (!match.matches()) {
                throw new Refused(new RefusalSaid.PointsUnread(Quoted.of(part)));
            }
            points.put(
                    Corner.valueOf(match.group(1).toUpperCase(Locale.ROOT)),
                    new LiftPoint(length(match, 2, given), length(match, 3, given)));
        }
        return new LiftPoints(
                get(points, Corner.LF), get(points, Corner.RF), get(points, Corner.LR), get(points, Corner.RR));
    }

    private static LiftPoint get(Map<Corner, LiftPoint> points, Corner corner) {
        return Optional.ofNullable(points.get(corner))
                .orElseThrow(
                        () -> new Refused(new RefusalSaid.PointsLack(corner, Listed.commas(List.of(Corner.values())))));
    }

    private static double length(Matcher match, int group, Given given) {
        return given.quantity(match.group(group), "mm");
    }
}
