package cornerbook.app.sheet.label;

import cornerbook.app.picture.QrCode;
import cornerbook.app.sheet.SheetPage;
import cornerbook.core.store.Place;
import cornerbook.words.Reader;
import java.util.List;

/** A label for each place of a rack, empty or not: its name, its room, and a QR code of the name. */
public final class PlaceLabels {
    private PlaceLabels() {}

    /** Labels in the order of the places. */
    public static byte[] render(List<Place> places, LabelPlace from, Reader reader) {
        var labels = reader.labels(SheetPage.ROOM);
        return LabelSheets.of(
                        labels.of("shelf-labels"),
                        "",
                        places.stream()
                                .map(place -> new LabelSheets.Label(
                                        QrCode.svg(place.name(), labels.of("code-of-place", "place", place.name())),
                                        place.name(),
                                        false,
                                        List.of(LabelSheets.Line.of(place.room()))))
                                .toList(),
                        from,
                        labels.of("no-stored-set"),
                        reader)
                .render();
    }
}
