package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.DriveEfficiencies;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.car.Tyre;
import cornerbook.core.cost.CostSaid;
import cornerbook.core.cost.DriveEnergy;
import cornerbook.core.cost.EnergySource;
import cornerbook.core.cost.RollingResistance;
import cornerbook.core.cost.TyreClass;
import cornerbook.core.cost.TyreCost;
import cornerbook.core.cost.TyreCosts;
import cornerbook.core.cost.TyreOffer;
import cornerbook.core.cost.TyreUse;
import cornerbook.core.quantity.AboutPart;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What tyres cost on the road, and of two kinds which one is cheaper. */
final class CostQuestion {
    private static final int USUAL_TYRES = 4;
    private static final double KM = 1000;
    private static final String OTHER = "other-";

    static final Question QUESTION = new Question(
            "cost",
            Title.COST,
            Description.COST,
            List.of(),
            List.of(new Group(
                    "side-by-side",
                    Title.COST_SIDE_BY_SIDE,
                    Note.COST_SIDE_BY_SIDE,
                    List.of(
                            Ask.number("price", Label.COST_PRICE, "", CostSaid.Input.PRICE, Help.COST_PRICE),
                            Ask.words("rolling", Label.COST_ROLLING, "B", Help.COST_ROLLING),
                            Ask.number("wear", Label.COST_WEAR, "mm", CostSaid.Input.WEAR, Help.COST_WEAR),
                            Ask.quantity(
                                    "new-tread",
                                    Label.COST_NEW_TREAD,
                                    "mm",
                                    CostSaid.Input.NEW_TREAD,
                                    new Otherwise(Help.COST_NEW_TREAD, Amount.of(Tyre.USUAL_NEW_DEPTH_MM, "mm"))),
                            Ask.number("other-price", Label.COST_OTHER_PRICE, "", null, Help.COST_OTHER_PRICE),
                            Ask.words("other-rolling", Label.COST_OTHER_ROLLING, "C", Help.COST_OTHER_ROLLING),
                            Ask.number("other-wear", Label.COST_OTHER_WEAR, "mm", null, Help.COST_OTHER_WEAR),
                            Ask.quantity(
                                    "other-new-tread",
                                    Label.COST_OTHER_NEW_TREAD,
                                    "mm",
                                    null,
                                    new Otherwise(Help.COST_NEW_TREAD, Amount.of(Tyre.USUAL_NEW_DEPTH_MM, "mm"))),
                            Ask.quantity(
                                    "end-tread",
                                    Label.COST_END_TREAD,
                                    "mm",
                                    CostSaid.Input.END_TREAD,
                                    new Otherwise(Help.COST_END_TREAD, Amount.of(TyreUse.USUAL_END_MM, "mm"))),
                            Ask.number(
                                    "tyres",
                                    Label.COST_TYRES,
                                    "",
                                    CostSaid.Input.TYRES,
                                    new Otherwise(Help.COST_TYRES, new Amount(USUAL_TYRES, "", 0))),
                            Ask.quantity(
                                    "carried", Label.COST_CARRIED, "kg", CostSaid.Input.CARRIED, Help.COST_CARRIED),
                            Ask.choice(
                                    "tyre-class",
                                    Label.COST_TYRE_CLASS,
                                    options(TyreClass.values()),
                                    Help.COST_TYRE_CLASS),
                            Ask.choice("energy", Label.COST_ENERGY, options(EnergySource.values()), Help.COST_ENERGY),
                            Ask.number(
                                    "energy-price",
                                    Label.COST_ENERGY_PRICE,
                                    "",
                                    CostSaid.Input.ENERGY_PRICE,
                                    Help.COST_ENERGY_PRICE),
                            Ask.number(
                                    "drive-efficiency",
                                    Label.COST_DRIVE_EFFICIENCY,
                                    "%",
                                    CostSaid.Input.DRIVE_EFFICIENCY,
                                    new DriveEfficiencies(
                                            Help.COST_DRIVE_EFFICIENCY,
                                            Amount.exact(EnergySource.ELECTRICITY.usualDriveEfficiencyPercent(), "%"),
                                            Amount.exact(EnergySource.PETROL.usualDriveEfficiencyPercent(), "%"))),
                            Ask.number(
                                    "charging-loss",
                                    Label.COST_CHARGING_LOSS,
                                    "%",
                                    CostSaid.Input.CHARGING_LOSS,
                                    new Otherwise(
                                            Help.COST_CHARGING_LOSS,
                                            Amount.exact(DriveEnergy.USUAL_CHARGING_LOSS_PERCENT, "%")))),
                    List.of("price", "rolling", "wear", "carried", "energy-price"),
                    CostQuestion::costs)),
            NothingAsked.COST,
            "cornerbook cost --price 150 --rolling B --wear 0.13 --other-price 110 --other-rolling D --other-wear 0.17 --carried 2100 --energy-price 0.35");

    private CostQuestion() {}

    private static List<Ask.Option> options(Enum<?>[] constants) {
        return Arrays.stream(constants)
                .map(constant -> new Ask.Option(constant.name().toLowerCase(Locale.ROOT), (Said) constant))
                .toList();
    }

    private static List<Part> costs(Given given) {
        if (!given.any("price", "rolling", "wear", "energy-price", "other-price", "other-rolling", "other-wear")) {
            return List.of();
        }
        boolean two = given.any("other-price", "other-rolling", "other-wear", "other-new-tread");
        var source = given.choice("energy", EnergySource.class).orElse(EnergySource.ELECTRICITY);
        var energy = new DriveEnergy(
                source,
                given.number("energy-price"),
                given.number("drive-efficiency", source.usualDriveEfficiencyPercent()),
                given.number("charging-loss", DriveEnergy.USUAL_CHARGING_LOSS_PERCENT));
        var use = new TyreUse(
                given.quantity("carried"),
                given.any("tyres") ? given.whole("tyres") : USUAL_TYRES,
                given.quantity("end-tread", TyreUse.USUAL_END_MM));
        var costs = TyreCosts.of(offer(given, "", use), two ? offer(given, OTHER, use) : null, use, energy);
        return List.of(new Part("cost", lines(given, costs), costs));
    }

    /** What core refuses of a tyre stands at the field of that tyre. */
    private static TyreOffer offer(Given given, String which, TyreUse use) {
        var tyreClass = given.choice("tyre-class", TyreClass.class).orElse(TyreClass.C1);
        double price = given.number(which + "price");
        double newMm = given.quantity(which + "new-tread", Tyre.USUAL_NEW_DEPTH_MM);
        double wearMmPer1000Km = given.number(which + "wear");
        var rolling = given.reading(which + "rolling", text -> RollingResistance.parse(text, tyreClass));
        try {
            var offer = new TyreOffer(price, newMm, wearMmPer1000Km, rolling);
            use.checkWears(offer);
            return offer;
        } catch (IllegalArgumentException refusal) {
            var said = Refused.said(refusal);
            throw said instanceof AboutPart refused && refused.what() instanceof CostSaid.Input input
                    ? AskException.refused(which + field(input), said)
                    : refusal;
        }
    }

    private static String field(CostSaid.Input input) {
        return input.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static List<Said> lines(Given given, TyreCosts costs) {
        var lines = new ArrayList<Said>(lines(given, CostSaid.Which.FIRST, costs.first(), costs.energy()));
        var other = costs.other();
        var cheaper = costs.cheaper();
        var less = costs.lessPer1000Km();
        if (other != null && cheaper != null && less != null) {
            lines.addAll(lines(given, CostSaid.Which.OTHER, other, costs.energy()));
            lines.add(new AnswerSaid.Cheaper(cheaper, money(less), given.told(KM, "km")));
            var paidBackKm = costs.paidBackKm();
            if (paidBackKm != null) {
                lines.add(new AnswerSaid.PaidBack(given.told(hundreds(paidBackKm), "km")));
            }
        }
        return lines;
    }

    private static List<Said> lines(Given given, CostSaid.Which which, TyreCost cost, DriveEnergy energy) {
        return List.of(
                new AnswerSaid.TyreLasts(
                        which,
                        given.told(hundreds(cost.lifeKm()), "km"),
                        money(cost.per1000Km()),
                        given.told(KM, "km"),
                        money(cost.rubberPer1000Km()),
                        told(cost.untilWorn(), "", 0)),
                new AnswerSaid.RollingTakes(
                        which, told(cost.per100Km(), energy.source().unit(), 2), given.told(KM / 10, "km")));
    }

    private static Said money(double value) {
        return new Amount(value, "", 2);
    }

    private static Said money(TyreCost.Span span) {
        return told(span, "", 2);
    }

    private static Said told(TyreCost.Span span, String unit, int decimals) {
        return span.least() == span.most()
                ? new Amount(span.least(), unit, decimals)
                : new Between(span.least(), span.most(), unit, decimals);
    }

    /** Nobody knows a tyre's life to the kilometre. */
    private static double hundreds(double km) {
        return 100 * Math.rint(km / 100);
    }
}
