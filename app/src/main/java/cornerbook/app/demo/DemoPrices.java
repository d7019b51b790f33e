package cornerbook.app.demo;

import cornerbook.core.corner.SeasonKind;
import cornerbook.core.price.Job;
import java.util.ArrayList;
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

    private static final Map<String, Integer> PRICES_OF_SIZES = Map.of(
            "205/55R16", 12_900, "215/55R17", 16_900, "225/55R18", 18_900, "235/50R19", 21_900);

    private static final int LONGER = 4_500;
    private static final double PLAIN_MM = 8.0;
    private static final double LONGER_MM = 9.5;

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
        var tyres = new ArrayList<Tyre>();
        for (var season : List.of(SeasonKind.SUMMER, SeasonKind.WINTER)) {
            int dearer = season == SeasonKind.WINTER ? 1_500 : 0;
            PRICES_OF_SIZES.forEach((size, cents) -> {
                tyres.add(new Tyre(season, size, "Plain, invented", cad(cents + dearer), PLAIN_MM));
                tyres.add(new Tyre(season, size, "Longer, invented", cad(cents + dearer + LONGER), LONGER_MM));
            });
        }
        return tyres;
    }

    private static Money cad(int cents) {
        return Money.ofMinor(CURRENCY, cents);
    }
}
