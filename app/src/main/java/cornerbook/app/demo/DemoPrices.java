package cornerbook.app.demo;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.price.Job;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** What work and parts cost in the invented shop. Every price is invented; some work has none, and stays open on an estimate. */
public final class DemoPrices {
    public static final String PLACE = "CA-QC";

    public static final CurrencyUnit CURRENCY = CurrencyUnit.CAD;

    /** Such numbers are not given out: too few figures. */
    public static final List<String> REGISTRATIONS = List.of("INVENTED 1", "INVENTED 2");

    public static final Money HOUR = cad(11_500);

    /**
     * What a job takes.
     *
     * @param parts null where it takes none
     */
    public record Takes(int minutes, @Nullable Money parts) {}

    /** One tyre that may be bought. */
    public record Tyre(SeasonKind season, String size, String offer, Money price, double newTreadMm) {}

    private DemoPrices() {}

    public static Map<Job, Takes> work() {
        return Map.ofEntries(
                Map.entry(Job.WHEELS, new Takes(35, null)),
                Map.entry(Job.BRAKES, new Takes(90, cad(1_200))),
                Map.entry(Job.WHEELS_AND_BRAKES, new Takes(125, cad(1_200))),
                Map.entry(Job.RETORQUE, new Takes(0, cad(0))),
                Map.entry(Job.BRAKE_SERVICE, new Takes(25, cad(400))),
                Map.entry(Job.PADS, new Takes(50, cad(8_900))),
                Map.entry(Job.DISCS, new Takes(70, cad(18_900))),
                Map.entry(Job.BRAKE_FLUID, new Takes(40, cad(2_200))),
                Map.entry(Job.BATTERY, new Takes(20, cad(17_900))),
                Map.entry(Job.BATTERY_TEST, new Takes(15, null)),
                Map.entry(Job.PRESSURE_SENSOR, new Takes(20, cad(6_900))),
                Map.entry(Job.TYRE_REPAIR, new Takes(25, cad(600))),
                Map.entry(Job.OLD_TYRE, new Takes(0, cad(450))));
    }

    public static List<Tyre> tyres() {
        return List.of(
                new Tyre(SeasonKind.SUMMER, "235/50R19", "Plain, invented", cad(21_900), 8.0),
                new Tyre(SeasonKind.SUMMER, "235/50R19", "Longer, invented", cad(27_500), 9.0),
                new Tyre(SeasonKind.WINTER, "235/50R19", "Plain, invented", cad(23_900), 8.5),
                new Tyre(SeasonKind.WINTER, "215/60R16", "Plain, invented", cad(14_900), 8.5),
                new Tyre(SeasonKind.WINTER, "215/60R16", "Longer, invented", cad(18_900), 9.5));
    }

    private static Money cad(int cents) {
        return Money.ofMinor(CURRENCY, cents);
    }
}
