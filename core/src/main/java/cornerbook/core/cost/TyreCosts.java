package cornerbook.core.cost;

import cornerbook.core.cost.CostSaid.Caution;
import cornerbook.core.cost.CostSaid.Computed;
import cornerbook.core.cost.CostSaid.Origin;
import cornerbook.core.cost.CostSaid.Which;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What tyres cost in rubber and in energy, and of two kinds which one is cheaper:
 *
 * <pre>
 *   life L = (d₀ − d₁) / w              d₀ new, d₁ replaced, w worn for each km       (1)
 *   force F = C m g                   C coefficient of rolling resistance           (2)
 *   energy for a way s: F s k         k what is paid for each kWh at the wheels     (3)
 *   cost for each km: n p / L + F k q     n tyres at p, energy at q                 (4)
 *   paid until s: n p ⌈s/L⌉ + F k q s      a tyre is paid when it is bought          (5)
 * </pre>
 *
 * Assumes that a tyre wears as it wore, and rolls as it did when it was measured; both tyres are held to the same.
 *
 * @param other null where one tyre is looked at alone, as the next
 * @param cheaper for each km, over the whole life
 * @param lessPer1000Km by how much, of coefficients in the middle of their classes
 * @param paidBackKm from where on the one that costs more to buy has cost less, by (5); null where it never does
 */
public record TyreCosts(
        DriveEnergy energy,
        TyreUse use,
        TyreCost first,
        @Nullable TyreCost other,
        @Nullable Cheaper cheaper,
        @Nullable Double lessPer1000Km,
        @Nullable Double paidBackKm,
        Explanation explanation)
        implements Explained {
    private static final List<Said> CAUTIONS = List.of(Caution.GRIP_FIRST, Caution.MEASURED_NEW);

    /** Which of two kinds costs less. */
    public enum Cheaper {
        FIRST,
        OTHER,
        /** Their coefficients lie anywhere in their classes, and that decides. */
        NOT_TOLD
    }

    /** What was paid when a distance is driven. */
    public record Paid(double km, double money) {}

    /** (5) of one kind up to a distance, corner by corner: it rises with the energy and steps up where tyres are bought. */
    public List<Paid> course(TyreCost kind, double untilKm) {
        double set = use.tyres() * kind.offer().price();
        var course = new ArrayList<Paid>();
        for (int bought = 1; (bought - 1) * kind.lifeKm() < untilKm; bought++) {
            double fromKm = (bought - 1) * kind.lifeKm();
            double toKm = Math.min(bought * kind.lifeKm(), untilKm);
            course.add(new Paid(fromKm, bought * set + kind.energyPer1000Km() * fromKm / 1000));
            course.add(new Paid(toKm, bought * set + kind.energyPer1000Km() * toKm / 1000));
        }
        return course;
    }

    /**
     * What one kind costs, or two.
     *
     * @throws IllegalArgumentException with one sentence when a tyre would be replaced when new
     */
    public static TyreCosts of(TyreOffer first, @Nullable TyreOffer other, TyreUse use, DriveEnergy energy) {
        use.checkWears(first);
        var cost = TyreCost.of(first, use, energy);
        var steps = new ArrayList<Step>();
        steps.add(paidForEachKwh(energy));
        steps.addAll(cost.steps(Which.FIRST, use, energy));
        if (other == null) {
            return new TyreCosts(energy, use, cost, null, null, null, null, new Explanation(CAUTIONS, steps));
        }
        use.checkWears(other);
        var otherCost = TyreCost.of(other, use, energy);
        steps.addAll(otherCost.steps(Which.OTHER, use, energy));
        double less = Math.abs(cost.per1000Km().middle() - otherCost.per1000Km().middle());
        steps.add(new Step(
                Computed.DIFFERENCE,
                Formula.of(
                        "|{} − {}|",
                        Amount.significant(cost.per1000Km().middle(), "", 4),
                        Amount.significant(otherCost.per1000Km().middle(), "", 4)),
                less,
                "",
                Origin.DEFINITION));
        var cheaper = cheaper(cost, otherCost);
        var paidBackKm = paidBackKm(cost, otherCost, cheaper, use.tyres());
        if (paidBackKm != null) {
            steps.add(new Step(Computed.PAID_BACK, CostSaid.Way.AS_BOUGHT, paidBackKm, "km", Origin.DEFINITION));
        }
        return new TyreCosts(energy, use, cost, otherCost, cheaper, less, paidBackKm, new Explanation(CAUTIONS, steps));
    }

    private static Step paidForEachKwh(DriveEnergy energy) {
        var efficiency = Amount.significant(energy.driveEfficiencyPercent(), "%", 4);
        boolean electric = energy.source() == EnergySource.ELECTRICITY;
        return new Step(
                Computed.PAID_FOR_EACH_KWH,
                electric
                        ? Formula.of(
                                "100 % / {} / (1 − {})",
                                efficiency, Amount.significant(energy.chargingLossPercent(), "%", 4))
                        : Formula.of(
                                "100 % / {} × {}",
                                efficiency, Amount.significant(energy.source().perKwhAtShaft(), "", 4)),
                energy.perKwhAtWheels(),
                energy.source().unit(),
                electric ? Origin.BATTERY_CAR : Origin.ENGINE_WORK);
    }

    private static Cheaper cheaper(TyreCost first, TyreCost other) {
        return first.per1000Km().most() < other.per1000Km().least()
                ? Cheaper.FIRST
                : other.per1000Km().most() < first.per1000Km().least() ? Cheaper.OTHER : Cheaper.NOT_TOLD;
    }

    /** Where (5) of the kind that costs more to buy first comes down to that of the kind that costs less. */
    private static @Nullable Double paidBackKm(TyreCost first, TyreCost other, Cheaper cheaper, int tyres) {
        if (cheaper == Cheaper.NOT_TOLD) {
            return null;
        }
        var thrifty = cheaper == Cheaper.FIRST ? first : other;
        var wasteful = cheaper == Cheaper.FIRST ? other : first;
        double moreToBuy = tyres * (thrifty.offer().price() - wasteful.offer().price());
        if (moreToBuy <= 0) {
            return null;
        }
        double savedPerKm = (wasteful.energyPer1000Km() - thrifty.energyPer1000Km()) / 1000;
        for (int bought = 1; ; bought++) {
            double fromKm = (bought - 1) * wasteful.lifeKm();
            double owed = moreToBuy - (bought - 1) * tyres * wasteful.offer().price();
            if (owed <= savedPerKm * fromKm) {
                return fromKm;
            }
            double evenKm = owed / savedPerKm;
            if (savedPerKm > 0 && evenKm <= bought * wasteful.lifeKm()) {
                return evenKm;
            }
        }
    }
}
