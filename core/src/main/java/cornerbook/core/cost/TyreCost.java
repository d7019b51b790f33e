package cornerbook.core.cost;

import cornerbook.core.cost.CostSaid.Computed;
import cornerbook.core.cost.CostSaid.Input;
import cornerbook.core.cost.CostSaid.Origin;
import cornerbook.core.cost.CostSaid.Which;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * What one kind of tyre costs. Where the class of its rolling resistance is known and not the coefficient, what depends on it lies
 * between a least and a most.
 *
 * @param lifeKm from new to the tread at which it is replaced
 * @param per100Km energy that rolling takes, in kWh or litres as they are paid
 * @param rubberPer1000Km share of the tyres' price
 * @param per1000Km rubber and energy
 * @param untilWorn the same over the life
 */
public record TyreCost(
        TyreOffer offer, double lifeKm, Span per100Km, double rubberPer1000Km, Span per1000Km, Span untilWorn) {
    /** Standard acceleration of free fall, exact by definition (3rd CGPM, 1901). */
    private static final double GRAVITY_M_PER_S2 = 9.80665;

    /** A force of 1 N along 100 km is 100 000 J, and 1 kWh is 3 600 000 J. */
    private static final double NEWTON_PER_KWH_IN_100_KM = 36;

    private static final double HUNDREDS_IN_1000_KM = 10;

    /** What it is at least and at most. */
    public record Span(double least, double most) {
        double middle() {
            return (least + most) / 2;
        }

        private Span times(double factor) {
            return new Span(least * factor, most * factor);
        }

        private Span plus(double more) {
            return new Span(least + more, most + more);
        }
    }

    static TyreCost of(TyreOffer offer, TyreUse use, DriveEnergy energy) {
        double lifeKm = offer.lifeKm(use.endMm());
        double rubber = use.tyres() * offer.price() / lifeKm * 1000;
        var per100Km = new Span(
                per100Km(offer.rolling().lowest(), use, energy),
                per100Km(offer.rolling().highest(), use, energy));
        var per1000Km = per100Km.times(HUNDREDS_IN_1000_KM * energy.price()).plus(rubber);
        return new TyreCost(offer, lifeKm, per100Km, rubber, per1000Km, per1000Km.times(lifeKm / 1000));
    }

    private static double forceN(double coefficient, TyreUse use) {
        return coefficient / 1000 * use.carriedKg() * GRAVITY_M_PER_S2;
    }

    private static double per100Km(double coefficient, TyreUse use, DriveEnergy energy) {
        return forceN(coefficient, use) / NEWTON_PER_KWH_IN_100_KM * energy.perKwhAtWheels();
    }

    double energyPer1000Km() {
        return per1000Km.middle() - rubberPer1000Km;
    }

    /** How it was found; of rolling with the coefficient in the middle. */
    List<Step> steps(Which which, TyreUse use, DriveEnergy energy) {
        double coefficient = offer.rolling().middle();
        double forceN = forceN(coefficient, use);
        var unit = energy.source().unit();
        return List.of(
                new Step(
                        new CostSaid.OfTyre(Computed.LIFE, which),
                        Formula.of(
                                "1000 × ({} − {}) / {}",
                                Amount.significant(offer.newMm(), "mm", 4),
                                Amount.significant(use.endMm(), "mm", 4),
                                Amount.significant(offer.wearMmPer1000Km(), "mm", 4)),
                        lifeKm,
                        "km",
                        Origin.EVEN_WEAR),
                new Step(
                        new CostSaid.OfTyre(Computed.RUBBER, which),
                        Formula.of(
                                "1000 × {} × {} / {}",
                                new Amount(use.tyres(), "", 0),
                                Amount.significant(offer.price(), "", 6),
                                Amount.significant(lifeKm, "km", 4)),
                        rubberPer1000Km,
                        "",
                        Origin.DEFINITION),
                new Step(
                        new CostSaid.OfTyre(Input.ROLLING, which),
                        offer.rolling().lowest() == offer.rolling().highest()
                                ? Origin.AS_GIVEN
                                : Formula.of(
                                        "({} + {}) / 2",
                                        Amount.significant(offer.rolling().lowest(), "", 4),
                                        Amount.significant(offer.rolling().highest(), "", 4)),
                        coefficient,
                        "N/kN",
                        offer.rolling().lowest() == offer.rolling().highest() ? Origin.COEFFICIENT : Origin.CLASSES),
                new Step(
                        new CostSaid.OfTyre(Computed.FORCE, which),
                        Formula.of(
                                "{} / 1000 × {} × 9.80665",
                                Amount.significant(coefficient, "", 4),
                                Amount.significant(use.carriedKg(), "kg", 4)),
                        forceN,
                        "N",
                        Origin.COEFFICIENT),
                new Step(
                        new CostSaid.OfTyre(Computed.ENERGY, which),
                        Formula.of(
                                "{} / 36 × {}",
                                Amount.significant(forceN, "N", 4),
                                Amount.significant(energy.perKwhAtWheels(), "", 4)),
                        per100Km.middle(),
                        unit,
                        Origin.WORK),
                new Step(
                        new CostSaid.OfTyre(Computed.TOGETHER, which),
                        Formula.of(
                                "{} + 10 × {} × {}",
                                Amount.significant(rubberPer1000Km, "", 4),
                                Amount.significant(per100Km.middle(), unit, 4),
                                Amount.significant(energy.price(), "", 4)),
                        per1000Km.middle(),
                        "",
                        Origin.DEFINITION));
    }
}
