package cornerbook.app.sheet.label;

import cornerbook.app.picture.QrCode;
import cornerbook.app.sheet.SheetPage;
import cornerbook.app.sheet.SheetText;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.SetOf;
import cornerbook.words.Reader;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A label for each place in the store that a set lies at: the place, whose set it is, its wheels, and a QR code. */
public final class ShelfLabels {
    private static final int LONGEST_PLACE = 30;
    private static final int LONGEST_CAR = 40;
    private static final int LONGEST_TAGS = 60;

    private ShelfLabels() {}

    private record Stored(String place, CarHistory history, WheelSet set) {}

    /** Labels of every set that lies at a place, by place. */
    public static byte[] render(Stream<CarHistory> histories, LabelPlace from, Reader reader) {
        var labels = reader.labels(SheetPage.ROOM);
        return LabelSheets.of(
                        labels.of("shelf-labels"),
                        "",
                        histories
                                .flatMap(history -> history.sets().stream()
                                        .filter(set -> set.storePlace() != null)
                                        .map(set -> new Stored(String.valueOf(set.storePlace()), history, set)))
                                .sorted(Comparator.comparing(Stored::place))
                                .map(stored -> label(stored, reader))
                                .toList(),
                        from,
                        labels.of("no-stored-set"),
                        reader)
                .render();
    }

    private static LabelSheets.Label label(Stored stored, Reader reader) {
        var vehicle = stored.history().vehicle();
        var tags = stored.set().wheels().stream().map(Wheel::tag).collect(Collectors.joining(" "));
        return new LabelSheets.Label(
                QrCode.svg(stored.place(), reader.labels(SheetPage.ROOM).of("code-of-place", "place", stored.place())),
                SheetText.shorten(stored.place(), LONGEST_PLACE),
                false,
                List.of(
                        LabelSheets.Line.plate(vehicle.plate() + ", "
                                + reader.say(new SetOf(stored.set().season()))),
                        LabelSheets.Line.of(SheetText.shorten(vehicle.name(), LONGEST_CAR)),
                        LabelSheets.Line.of(SheetText.shorten(tags, LONGEST_TAGS))));
    }
}
