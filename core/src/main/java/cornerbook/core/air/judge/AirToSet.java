package cornerbook.core.air.judge;

import cornerbook.core.air.GasLaw;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.tool.ShopTool;

/**
 * The pressure that the tyres at one corner have to be set to at a visit, so that they have the placard's where the car will
 * stand: ideal gas between the temperature of the tyres and that of the air there. While one of the two is not read, the
 * placard's, which is meant for tyres as cold as that air. The vehicle's placard outranks it.
 *
 * @param placardKpa cold
 * @param trueKpa what the tyre has to have now
 * @param gaugeKpa what the visit's gauge shows then, which may show too much or too little
 * @param warmed whether both temperatures were read
 * @param from what it is computed from, in kPa and °C
 */
public record AirToSet(double placardKpa, double trueKpa, double gaugeKpa, boolean warmed, String from) {

    /** By the temperatures and the gauge of a visit, for tyres with that placard. */
    public static AirToSet of(double placardKpa, Visit visit) {
        double offsetKpa = visit.findTool(ShopTool.Kind.PRESSURE_GAUGE)
                .map(ShopTool::offset)
                .orElse(0.0);
        var readings = new StandingReadings(visit);
        var tyre = readings.ofVehicle(Measure.TYRE_TEMPERATURE);
        var outside = readings.ofVehicle(Measure.OUTSIDE_TEMPERATURE);
        if (tyre.isEmpty() || outside.isEmpty()) {
            return new AirToSet(
                    placardKpa,
                    placardKpa,
                    placardKpa + offsetKpa,
                    false,
                    "the placard, for tyres as cold as the air where the car will stand");
        }
        double tyreC = tyre.get().value();
        double outsideC = outside.get().value();
        double setKpa = GasLaw.gaugePressureKpa(placardKpa, outsideC, tyreC);
        return new AirToSet(
                placardKpa,
                setKpa,
                setKpa + offsetKpa,
                true,
                "the placard's %.0f kPa at %.0f °C outside, tyres at %.0f °C"
                        .formatted(placardKpa, outsideC, tyreC)
                        .replace('-', '−'));
    }

    /** What to do, one sentence. */
    public String sentence() {
        double offsetKpa = gaugeKpa - trueKpa;
        return "Set %.0f kPa: %s%s."
                .formatted(
                        gaugeKpa,
                        from,
                        offsetKpa == 0
                                ? ""
                                : "; the gauge shows %.0f kPa too %s"
                                        .formatted(Math.abs(offsetKpa), offsetKpa > 0 ? "much" : "little"));
    }
}
