package cornerbook.core.air.judge;

import cornerbook.core.air.GasLaw;
import cornerbook.core.air.judge.PressureSaid.Ground;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
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
public record AirToSet(double placardKpa, double trueKpa, double gaugeKpa, boolean warmed, Said from) {
    /** How far the set pressure may lie from what was to be set. Common practice, no source. */
    private static final double SET_TOLERANCE_KPA = 10;

    /** By the temperatures and the gauge of a visit, for tyres with that placard. */
    public static AirToSet of(double placardKpa, Visit visit) {
        double offsetKpa = visit.card()
                .findTool(ShopTool.Kind.PRESSURE_GAUGE)
                .map(ShopTool::offset)
                .orElse(0.0);
        var readings = new StandingReadings(visit);
        var tyre = readings.ofVehicle(Measure.TYRE_TEMPERATURE);
        var outside = readings.ofVehicle(Measure.OUTSIDE_TEMPERATURE);
        if (tyre.isEmpty() || outside.isEmpty()) {
            return new AirToSet(placardKpa, placardKpa, placardKpa + offsetKpa, false, Ground.PLACARD_FOR_COLD_TYRES);
        }
        double tyreC = tyre.get().value();
        double outsideC = outside.get().value();
        double setKpa = GasLaw.gaugePressureKpa(placardKpa, outsideC, tyreC);
        return new AirToSet(
                placardKpa,
                setKpa,
                setKpa + offsetKpa,
                true,
                new PressureSaid.FromTemperatures(
                        Amount.of(placardKpa, "kPa"), Amount.of(outsideC, "°C"), Amount.of(tyreC, "°C")));
    }

    /** Between what pressures the gauge stands when the tyre at a corner is set. */
    public ReadingLimit limit(Corner corner) {
        return new ReadingLimit(
                Measure.PRESSURE_SET,
                new Subject(Subject.Part.PRESSURE, corner, null, null),
                gaugeKpa - SET_TOLERANCE_KPA,
                gaugeKpa + SET_TOLERANCE_KPA,
                Verdict.SPENT,
                new PressureSaid.SetAgain(Amount.of(gaugeKpa, "kPa")),
                new PressureSaid.SetSource(Amount.of(SET_TOLERANCE_KPA, "kPa")),
                null);
    }

    /** What to do, one sentence. */
    public Said sentence() {
        double offsetKpa = gaugeKpa - trueKpa;
        var gauge = Amount.of(gaugeKpa, "kPa");
        return offsetKpa == 0
                ? new PressureSaid.SetTo(gauge, from)
                : new PressureSaid.SetToByGauge(gauge, from, Amount.of(Math.abs(offsetKpa), "kPa"), offsetKpa > 0);
    }
}
