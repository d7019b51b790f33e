package cornerbook.app.calibration;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Puts into words which figures leave the bounds that are asked of them. */
final class WhatIsOff {
    private WhatIsOff() {}

    /**
     * A sentence for each figure that is off.
     *
     * @param control whether the cars live as a textbook has it
     * @param learned whether it was learned from other cars
     */
    static List<Said> of(ForecastScores scores, boolean control, boolean learned) {
        var off = new ArrayList<Said>();
        Arrays.stream(Figure.values())
                .forEach(figure -> figure.of(scores).ifPresent(measured -> {
                    var asked = figure.asked(control, learned);
                    if (!asked.hold(measured)) {
                        off.add(said(figure, scores, measured.value(), measured.value() < asked.low()));
                    }
                }));
        return List.copyOf(off);
    }

    private static Said said(Figure figure, ForecastScores scores, double value, boolean below) {
        var share = new Amount(value, "%", 0);
        var points = new Amount(value, "", 0);
        return switch (figure) {
            case BANDS -> new CalibrationSaid.BandsOff(share, below);
            case CHANCES -> {
                var worst = scores.holds.worst().orElseThrow();
                yield new CalibrationSaid.ChancesOff(
                        worst.low(), points, Amount.exact(worst.from(), ""), Amount.exact(worst.until(), ""));
            }
            case HORIZONS -> new CalibrationSaid.HorizonsOff(false, share, below);
            case FIRST_HORIZONS -> new CalibrationSaid.HorizonsOff(true, share, below);
            case HOLDS_FAILED -> new CalibrationSaid.HoldsFailed(new Amount(value, "%", 1));
            case UNLIKELY_HELD -> new CalibrationSaid.UnlikelyHeld(share);
            case SPENT_HELD -> new CalibrationSaid.SpentHeld(share);
            case PADS -> new CalibrationSaid.PadsOff(share, below);
            case SEIZING -> {
                var worst = scores.seizing.worst().orElseThrow();
                yield new CalibrationSaid.SeizingOff(
                        worst.low(), points, Amount.exact(worst.from(), ""), Amount.exact(worst.until(), ""));
            }
            case DISTANCES -> new CalibrationSaid.DistancesOff(share, below);
            case UNEVEN_WEAR -> new CalibrationSaid.UnevenWear(share);
        };
    }
}
