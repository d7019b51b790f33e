package cornerbook.app.demo;

import cornerbook.core.visit.CarHistory;
import java.time.LocalDate;
import java.util.List;

/**
 * The demonstration shop. All of it is made up: the shop, the town, the people, the plates, the cars, the tyre models and
 * every reading; likeness to anything real is chance.
 */
public final class DemoShop {
    /** Name of the shop, as it stands on pages and sheets. */
    public static final String NAME = "Garage Brisegel, Val-Ombrelune (invented)";

    private DemoShop() {}

    /**
     * Twelve cars with six or seven visits each.
     *
     * @param today the day that the latest visits are dated by; three of them are of this very day and not finished
     */
    public static List<CarHistory> histories(LocalDate today) {
        return Cast.members(today).stream()
                .map(member -> new VisitWriter(member, today).write())
                .toList();
    }
}
