package cornerbook.core.air;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.air.AirSaid.Caution;
import cornerbook.core.air.AirSaid.Computed;
import cornerbook.core.air.AirSaid.Input;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.why.Basis;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * Pressure that a tyre needs for its load: p = p_ref (L / L_ref)^(1/n), and what it may carry at a pressure: L = L_ref
 * (p / p_ref)^n, up to p_ref. The exponent n is a parameter because sources differ: 0.8 (commercial tyres: P = P_ref (L/L_ref)^1.25;
 * passenger tyres by one source), 0.65 (passenger tyres by another; both from memory). The placard outranks it.
 *
 * @param tyreLoadKg on the heavier side
 * @param neededKpa cold gauge pressure
 * @param placardKpa cold gauge pressure that is judged
 * @param capacityAtPlacardKg what the tyre may carry at the placard's pressure
 */
public record LoadPressure(
        double axleLoadKg,
        double tyreLoadKg,
        LoadIndex loadIndex,
        double referenceKpa,
        double exponent,
        double neededKpa,
        double placardKpa,
        double capacityAtPlacardKg,
        Explanation explanation)
        implements Explained {
    /** What the tyre may carry at a cold gauge pressure in kPa, not more than at the reference pressure. */
    public double capacityAtKg(double pressureKpa) {
        return capacityKg(Math.min(pressureKpa, referenceKpa), loadIndex.capacityKg(), referenceKpa, exponent);
    }

    /**
     * The pressure for an axle.
     *
     * @param heavierShare share of the axle load on its heavier wheel, 0.5 to 0.65
     * @param referenceKpa at which the load index holds: 250 kPa standard metric, 290 extra load, 240 (35 psi) P-metric
     * @param exponent n, 0.5 to 1
     * @throws IllegalArgumentException when the load is above the load index
     */
    public static LoadPressure of(
            double axleLoadKg,
            double heavierShare,
            LoadIndex loadIndex,
            double referenceKpa,
            double exponent,
            double placardKpa) {
        check(Input.AXLE_LOAD, axleLoadKg, 100, 4000, "kg");
        check(Input.HEAVIER_SHARE, heavierShare, 0.5, 0.65, "");
        check(Input.REFERENCE_PRESSURE, referenceKpa, 150, 900, "kPa");
        check(Input.LOAD_EXPONENT, exponent, 0.5, 1, "");
        check(Input.PLACARD_PRESSURE, placardKpa, 100, 900, "kPa");
        double tyreLoadKg = axleLoadKg * heavierShare;
        if (tyreLoadKg > loadIndex.capacityKg()) {
            throw new Refused(new AirSaid.LoadAboveIndex(
                    Amount.of(tyreLoadKg, "kg"), Amount.of(loadIndex.capacityKg(), "kg"), loadIndex.number()));
        }
        double neededKpa = pressureKpa(tyreLoadKg, loadIndex.capacityKg(), referenceKpa, exponent);
        double capacityKg =
                capacityKg(Math.min(placardKpa, referenceKpa), loadIndex.capacityKg(), referenceKpa, exponent);
        var cautions = placardKpa < neededKpa ? List.<Said>of(Caution.PLACARD_UNDER_NEED) : List.<Said>of();
        var source = new AirSaid.LoadRelation(Amount.significant(exponent, "", 4));
        return new LoadPressure(
                axleLoadKg,
                tyreLoadKg,
                loadIndex,
                referenceKpa,
                exponent,
                neededKpa,
                placardKpa,
                capacityKg,
                new Explanation(
                        cautions,
                        List.of(
                                new Step(
                                        Computed.LOAD_ON_HEAVIER_TYRE,
                                        new AirSaid.AxleShare(
                                                Amount.significant(axleLoadKg, "kg", 4),
                                                Amount.significant(heavierShare, "", 4)),
                                        tyreLoadKg,
                                        "kg",
                                        Basis.AS_ENTERED),
                                new Step(
                                        new AirSaid.CapacityOfIndex(loadIndex.number()),
                                        Basis.TABLE,
                                        loadIndex.capacityKg(),
                                        "kg",
                                        Said.verbatim("UN R30")),
                                new Step(
                                        Computed.PRESSURE_NEEDED,
                                        Formula.of(
                                                "p_ref (L/L_ref)^(1/n), p_ref = {}, n = {}",
                                                Amount.significant(referenceKpa, "kPa", 4),
                                                Amount.significant(exponent, "", 4)),
                                        neededKpa,
                                        "kPa",
                                        source),
                                new Step(
                                        Computed.CAPACITY_AT_PLACARD,
                                        new AirSaid.CapacityFormula(Amount.significant(placardKpa, "kPa", 4)),
                                        capacityKg,
                                        "kg",
                                        source))));
    }

    public static double pressureKpa(double loadKg, double referenceKg, double referenceKpa, double exponent) {
        return referenceKpa * Math.pow(loadKg / referenceKg, 1 / exponent);
    }

    public static double capacityKg(double pressureKpa, double referenceKg, double referenceKpa, double exponent) {
        return referenceKg * Math.pow(pressureKpa / referenceKpa, exponent);
    }
}
