package cornerbook.core.air.judge;

import cornerbook.core.air.PressureCurve;
import cornerbook.core.car.Measure;
import cornerbook.core.car.UsedGauge;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** The tyre that was set nearest to its pressure warning, and its cold pressure over the temperature. */
public record PressureOutlook(Corner corner, PressureCurve curve) {
    /** Empty when no tyre was set, or the tyres' temperature was not read. */
    public static Optional<PressureOutlook> find(Case given) {
        var readings = given.readings();
        var leftOn = given.visit().leftOn();
        var gauge = UsedGauge.of(given.visit());
        return readings.ofVehicle(Measure.TYRE_TEMPERATURE)
                .flatMap(temperature -> Arrays.stream(Corner.values())
                        .flatMap(corner -> Stream.ofNullable(leftOn.get(corner))
                                .flatMap(tag -> readings.ofWheel(Measure.PRESSURE_SET, tag).stream())
                                .flatMap(set -> Stream.ofNullable(given.vehicle()
                                                .axle(corner.axle())
                                                .placardPressureKpa())
                                        .map(placardKpa -> new PressureOutlook(
                                                corner,
                                                PressureCurve.atSeaLevel(
                                                        gauge.kpa(set),
                                                        temperature.value(),
                                                        placardKpa,
                                                        PressureFindings.coldestC(given.climate()))))))
                        .min(Comparator.comparingDouble(
                                outlook -> outlook.curve.pressureKpa() - outlook.curve.warningKpa())));
    }
}
