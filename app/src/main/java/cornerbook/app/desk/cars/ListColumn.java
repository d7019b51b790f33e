package cornerbook.app.desk.cars;

import cornerbook.app.exchange.CarForm;
import cornerbook.app.request.Told;
import cornerbook.words.Language;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a column of a list may have of a car. */
public enum ListColumn {
    PLATE("/vehicle/plate"),
    OWNER("/customer/name"),
    PHONE("/customer/phone"),
    EMAIL("/customer/email"),
    LANGUAGE("/customer/language"),
    SIZE("/vehicle/frontAxle/tyreSize"),
    REAR_SIZE("/vehicle/rearAxle/tyreSize"),
    /** Of the wheels that it stands on. */
    SEASON(CarForm.SET + "0/season"),
    NAME("/vehicle/name"),
    VIN("/vehicle/vin"),
    ELECTRIC("/vehicle/electric"),
    HYBRID("/vehicle/hybrid"),
    PLACE("/vehicle/jurisdiction");

    private final String pointer;

    ListColumn(String pointer) {
        this.pointer = pointer;
    }

    /** Its place in the visit file. */
    String pointer() {
        return pointer;
    }

    /** For people. */
    public String label() {
        return Told.labels(CarList.WORDS).of("column", "column", name());
    }

    /** The one that people call so, in any language; empty when no one does. */
    static Optional<ListColumn> ofHead(String head) {
        var asked = folded(head);
        return Arrays.stream(values())
                .filter(column -> Arrays.stream(Language.values())
                        .flatMap(language -> Arrays.stream(Told.reader()
                                .in(language)
                                .labels(CarList.WORDS)
                                .of("heads", "column", column.name())
                                .split(";", -1)))
                        .anyMatch(name -> folded(name).equals(asked)))
                .findFirst();
    }

    /** Without accents, capitals, and what is neither letter nor digit. */
    static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("[^\\p{L}\\p{N}]", "")
                .toLowerCase(Locale.ROOT);
    }
}
