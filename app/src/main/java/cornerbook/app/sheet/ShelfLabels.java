package cornerbook.app.sheet;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A label for each place in the store that a set lies at: the place, whose set it is, its wheels, and a QR code. */
public final class ShelfLabels {
    private ShelfLabels() {}

    private record Stored(String place, CarHistory history, WheelSet set) {}

    /** Labels of every set that lies at a place, by place. */
    public static byte[] render(List<CarHistory> histories, LabelPlace from) {
        var labels = histories.stream()
                .flatMap(history -> history.sets().stream()
                        .filter(set -> set.storePlace() != null)
                        .map(set -> new Stored(String.valueOf(set.storePlace()), history, set)))
                .sorted(Comparator.comparing(Stored::place))
                .map(stored -> new LabelSheets.Label(
                        stored.place(), "QR code of the store place " + stored.place(), page -> write(page, stored)))
                .toList();
        return LabelSheets.render("Shelf labels", "", labels, from, "No set lies at a place.");
    }

    private static void write(Xhtml page, Stored stored) {
        var vehicle = stored.history().vehicle();
        page.element("h1", Xhtml.shorten(stored.place(), 30));
        page.element(
                "p class=\"plate\"",
                "%s, %s set"
                        .formatted(
                                vehicle.plate(),
                                SheetWords.season(stored.set().season()).toLowerCase(Locale.ROOT)));
        page.element("p", Xhtml.shorten(vehicle.name(), 40));
        page.element(
                "p",
                Xhtml.shorten(stored.set().wheels().stream().map(Wheel::tag).collect(Collectors.joining(" ")), 60));
    }
}
