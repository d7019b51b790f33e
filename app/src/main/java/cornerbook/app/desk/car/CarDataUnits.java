package cornerbook.app.desk.car;

import cornerbook.app.desk.UnitChoice;
import cornerbook.app.exchange.CarField;
import cornerbook.core.quantity.Quantities;
import cornerbook.words.UnitSystem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The units of the car's data on their page: those of the person who opened it. The book keeps its own. */
record CarDataUnits(UnitSystem system) {
    /** Thinner things would lose digits in inches; they stay in millimetres, with the unit written. */
    private static final double LEAST_IN_INCHES_MM = 1;

    /** The units that a form was opened with; of a form not sent yet those of this request. */
    static CarDataUnits of(Map<String, String> typed) {
        return new CarDataUnits(UnitSystem.find(typed.getOrDefault("units", "")).orElseGet(UnitChoice::current));
    }

    /** What the book has, as it stands in the fields. */
    Map<String, String> shown(Map<String, String> values, List<CarField> fields) {
        var shown = new HashMap<>(values);
        fields.stream()
                .filter(this::isForeign)
                .forEach(field -> shown.computeIfPresent(field.pointer(), (pointer, text) -> shown(field, text)));
        return shown;
    }

    private String shown(CarField field, String text) {
        double value = Quantities.parse(text, field.unit());
        return field.unit().equals("mm") && Math.abs(value) < LEAST_IN_INCHES_MM
                ? text
                : system.field(value, field.unit());
    }

    /** What was typed, as it was meant; a field that was not touched keeps its value in the book to the last digit. */
    Map<String, String> meant(Map<String, String> typed, Map<String, String> values, List<CarField> fields) {
        var meant = new HashMap<>(typed);
        fields.stream()
                .filter(this::isForeign)
                .forEach(field -> meant.computeIfPresent(field.pointer(), (pointer, text) -> {
                    var known = values.get(pointer);
                    return known != null && shown(field, known).equals(text)
                            ? known
                            : text.isBlank() ? text : system.withUnit(text, field.unit());
                }));
        return meant;
    }

    /** Beside the field. */
    String unitOf(CarField field) {
        return system.unitOf(field.unit());
    }

    private boolean isForeign(CarField field) {
        return field.kind() == CarField.Kind.QUANTITY && !unitOf(field).equals(field.unit());
    }
}
