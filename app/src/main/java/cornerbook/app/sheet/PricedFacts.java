package cornerbook.app.sheet;

import cornerbook.core.car.CarHistory;
import cornerbook.core.price.Tax;
import cornerbook.core.price.Total;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Price;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What every paper with prices says alike: of which car and whose, and what the lines come to with each tax. */
public final class PricedFacts {
    private PricedFacts() {}

    /** The car, as it came to a visit, and its customer. */
    public static List<SheetPage.Fact> of(CarHistory history, String visitId, Reader reader) {
        var w = reader.labels(SheetPage.ROOM);
        var vehicle = history.vehicle();
        var odometer = Amount.of(history.getVisit(visitId).odometerKm(), "km");
        return List.of(
                new SheetPage.Fact(w.of("plate"), vehicle.plate()),
                new SheetPage.Fact(
                        w.of("vin"), Optional.ofNullable(vehicle.vin()).orElse("–")),
                new SheetPage.Fact(w.of("odometer"), reader.say(odometer)),
                new SheetPage.Fact(w.of("customer"), history.customer().name()));
    }

    /**
     * A sum with its taxes.
     *
     * @param before what the sum before taxes is called
     * @param registrations under which the shop collects each tax, in their order; one may be empty
     */
    public static List<SheetPage.Fact> totals(Total total, String before, List<String> registrations, Reader reader) {
        var totals = new ArrayList<SheetPage.Fact>();
        totals.add(new SheetPage.Fact(before, reader.say(new Price(total.subtotal()))));
        for (int at = 0; at < total.taxes().size(); at++) {
            var share = total.taxes().get(at);
            totals.add(new SheetPage.Fact(
                    tax(share.tax(), registrations.get(at), reader), reader.say(new Price(share.amount()))));
        }
        totals.add(new SheetPage.Fact(
                reader.labels(SheetPage.ROOM).of("priced-total"), reader.say(new Price(total.total()))));
        return totals;
    }

    /** A tax with its rate, and the shop's number where there is one. */
    public static String tax(Tax tax, String registration, Reader reader) {
        return reader.labels(SheetPage.ROOM)
                .of(
                        "priced-tax",
                        "tax",
                        tax.name(),
                        "percent",
                        reader.typed(tax.percent().toPlainString()),
                        "registration",
                        registration.isEmpty() ? null : registration);
    }
}
