package cornerbook.core.air;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    public LoadPressure {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

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
        check("axle load", axleLoadKg, 100, 4000, "kg");
        check("share of the heavier wheel", heavierShare, 0.5, 0.65, "");
        check("reference pressure", referenceKpa, 150, 900, "kPa");
        check("exponent of load on pressure", exponent, 0.5, 1, "");
        check("placard pressure", placardKpa, 100, 900, "kPa");
        double tyreLoadKg = axleLoadKg * heavierShare;
        if (tyreLoadKg > loadIndex.capacityKg()) {
            throw new IllegalArgumentException(
                    "axle load puts %.0f kg on a tyre, which is above the %.0f kg of load index %d at any pressure"
                            .formatted(tyreLoadKg, loadIndex.capacityKg(), loadIndex.number()));
        }
        double neededKpa = pressureKpa(tyreLoadKg, loadIndex.capacityKg(), referenceKpa, exponent);
        double capacityKg =
                capacityKg(Math.min(placardKpa, referenceKpa), loadIndex.capacityKg(), referenceKpa, exponent);
        var cautions = placardKpa < neededKpa
                ? Said.verbatims(
                        "The placard's pressure is under what this load needs by the formula: look at the maker's table for full load.")
                : List.<Said>of();
        var source =
                "tyre standards' load and pressure relation; exponent %s as entered".formatted(Step.digits(exponent));
        return new LoadPressure(
                axleLoadKg,
                tyreLoadKg,
                loadIndex,
                referenceKpa,
                exponent,
                neededKpa,
                placardKpa,
                capacityKg,
                cautions,
                List.of(
                        new Step(
                                "load on the heavier tyre",
                                "axle %s kg × %s".formatted(Step.digits(axleLoadKg), Step.digits(heavierShare)),
                                tyreLoadKg,
                                "kg",
                                "as entered"),
                        new Step(
                                "load capacity of index " + loadIndex.number(),
                                "table",
                                loadIndex.capacityKg(),
                                "kg",
                                "UN R30"),
                        new Step(
                                "pressure needed",
                                "p_ref (L/L_ref)^(1/n), p_ref = %s kPa, n = %s"
                                        .formatted(Step.digits(referenceKpa), Step.digits(exponent)),
                                neededKpa,
                                "kPa",
                                source),
                        new Step(
                                "capacity at the placard's pressure",
                                "L_ref (p/p_ref)^n, p = %s kPa, not above p_ref".formatted(Step.digits(placardKpa)),
                                capacityKg,
                                "kg",
                                source)));
    }

    public static double pressureKpa(double loadKg, double referenceKg, double referenceKpa, double exponent) {
        return referenceKpa * Math.pow(loadKg / referenceKg, 1 / exponent);
    }

    public static double capacityKg(double pressureKpa, double referenceKg, double referenceKpa, double exponent) {
        return referenceKg * Math.pow(pressureKpa / referenceKpa, exponent);
    }
}
