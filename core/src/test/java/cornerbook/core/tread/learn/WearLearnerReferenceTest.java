package cornerbook.core.tread.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.reference.ReferenceLines;
import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Against R's lme4 by maximum likelihood; script, versions, data and answers lie in reference/wear. */
class WearLearnerReferenceTest {
    /** Three significant digits. */
    private static final double PERCENT = 0.05;
    /** So wide that the prior has no say. */
    private static final double FLAT = 1e4;
    /** What the fit of lme4 knows nothing of, and how far that may move. */
    private static final double NOTHING = 3e-4;

    @Test
    void learnsWhatLme4Fits() {
        var fit = lines("hierarchical-wear-fit.csv").stream()
                .map(line -> line.split(",", -1))
                .collect(Collectors.toMap(cells -> cells[0], cells -> Double.parseDouble(cells[1])));

        var fitted = Set.of(
                WearParameter.READING_SD,
                WearParameter.NEW_DEPTH_SD,
                WearParameter.FRONT_RATE,
                WearParameter.REAR_RATE,
                WearParameter.VEHICLE_SPREAD,
                WearParameter.CORNER_SPREAD);
        var centre = WearParameters.defaults(DriveLayout.FRONT).with(WearParameter.SLOWING, 0);
        for (var other : List.of(WearParameter.VISIT_SD, WearParameter.GROOVE_SPREAD, WearParameter.SEASON_SD)) {
            centre = centre.with(other, NOTHING);
        }
        var prior = new WearPrior(
                centre,
                Arrays.stream(WearParameter.values())
                        .collect(Collectors.toMap(
                                parameter -> parameter, parameter -> fitted.contains(parameter) ? FLAT : NOTHING)));
        var learned = WearLearner.learn(histories(), prior).parameters();

        assertThat(learned.readingSdMm()).isCloseTo(of(fit, "readingSdMm"), withinPercentage(PERCENT));
        assertThat(learned.newDepthSdMm()).isCloseTo(of(fit, "newDepthSdMm"), withinPercentage(PERCENT));
        assertThat(learned.frontRateMmPer1000Km())
                .isCloseTo(of(fit, "frontRateMmPer1000Km"), withinPercentage(PERCENT));
        assertThat(learned.rearRateMmPer1000Km()).isCloseTo(of(fit, "rearRateMmPer1000Km"), withinPercentage(PERCENT));
        assertThat(learned.vehicleSpread()).isCloseTo(of(fit, "vehicleSpread"), withinPercentage(PERCENT));
        assertThat(learned.of(WearParameter.CORNER_SPREAD))
                .isCloseTo(of(fit, "cornerSpread"), withinPercentage(PERCENT));
        var at = new LikelihoodAt(learned);
        assertThat(histories().stream()
                        .mapToDouble(history ->
                                at.log(new SetLikelihood(history, learned), new double[WearParameter.values().length]))
                        .sum())
                .isCloseTo(of(fit, "logLikelihood"), withinPercentage(1e-4));
    }

    private static double of(Map<String, Double> fit, String parameter) {
        return Objects.requireNonNull(fit.get(parameter));
    }

    private static List<WearHistory> histories() {
        Map<String, List<TreadReading>> byCar = new TreeMap<>();
        for (var line : lines("hierarchical-wear-readings.csv")) {
            var cells = line.split(",", -1);
            int tyre = Integer.parseInt(cells[1]) - 1;
            var run = CornerDistances.NONE.plus(0, Corner.values()[tyre], Double.parseDouble(cells[2]));
            byCar.computeIfAbsent(cells[0], car -> new ArrayList<>())
                    .add(new TreadReading(0, tyre, Spot.CENTRE, run, Double.parseDouble(cells[3])));
        }
        return byCar.entrySet().stream()
                .map(entry -> new WearHistory(
                        entry.getKey(),
                        DriveLayout.FRONT,
                        SeasonKind.SUMMER,
                        null,
                        Collections.nCopies(4, NewDepth.stated(8)),
                        entry.getValue()))
                .toList();
    }

    private static List<String> lines(String name) {
        return ReferenceLines.of("wear/" + name).stream().skip(1).toList();
    }
}
