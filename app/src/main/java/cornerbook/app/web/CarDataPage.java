package cornerbook.app.web;

import cornerbook.app.exchange.CarField;
import cornerbook.app.exchange.CarForm;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The data of a car as a form, as typed.
 *
 * @param vehicleId born with the form of a new car, so that a form that is sent twice makes one car
 * @param name of a car that is in the book; empty for a new one
 * @param revision that the form was made from; empty for a new car
 * @param sets wheel sets that the car has already
 * @param newSets wheel sets that can be added
 * @param typed by field
 * @param errors one sentence by field; those of no field stand under the empty name
 */
public record CarDataPage(
        String vehicleId,
        String name,
        String revision,
        int sets,
        int newSets,
        Map<String, String> typed,
        Map<String, String> errors) {
    /** Objects that every car has; the others may be left empty, and are folded. */
    private static final Set<String> ALWAYS = Set.of(
            "/customer",
            "/vehicle",
            "/vehicle/frontAxle",
            "/vehicle/frontAxle/brake",
            "/vehicle/rearAxle",
            "/vehicle/rearAxle/brake",
            "/vehicle/fastener",
            "/vehicle/battery");

    public CarDataPage {
        typed = Map.copyOf(typed);
        errors = Map.copyOf(errors);
    }

    /** Fields under one heading. */
    public record Group(String pointer, String title, boolean open, List<CarField> fields) {
        public Group {
            fields = List.copyOf(fields);
        }
    }

    public boolean isNew() {
        return name.isEmpty();
    }

    /** All fields, by the object that they are in. */
    public List<Group> groups() {
        var fields = new ArrayList<>(CarForm.fields());
        for (int place = sets; place < sets + newSets; place++) {
            fields.addAll(CarForm.setFields(place));
        }
        var byGroup = new LinkedHashMap<String, List<CarField>>();
        fields.forEach(field ->
                byGroup.computeIfAbsent(field.group(), key -> new ArrayList<>()).add(field));
        return byGroup.entrySet().stream()
                .map(entry -> new Group(
                        entry.getKey(),
                        title(entry.getKey()),
                        isOpen(entry.getKey(), entry.getValue()),
                        entry.getValue()))
                .toList();
    }

    private boolean isOpen(String group, List<CarField> fields) {
        return ALWAYS.contains(group)
                || (isNew() && group.startsWith(CarForm.SET))
                || !error(group).isEmpty()
                || fields.stream().anyMatch(field -> !error(field.pointer()).isEmpty());
    }

    public String typed(CarField field) {
        return Typed.withoutUnit(typed.getOrDefault(field.pointer(), ""), unit(field));
    }

    /** Beside the field, in the units that the form was opened with. */
    public String unit(CarField field) {
        return CarDataUnits.of(typed).unitOf(field);
    }

    /** Name of these units. */
    public String units() {
        return CarDataUnits.of(typed).system().word();
    }

    /** What a field is, where its name alone does not say how it is written. */
    public String example(CarField field) {
        return field.hint().contains(" as ") || field.name().equals("tag") ? field.hint() : "";
    }

    public String error(String pointer) {
        return errors.getOrDefault(pointer, "");
    }

    /** "Axle load", with a star where nothing can be left out. */
    public String label(CarField field) {
        return words(field.name()) + (field.required() && ALWAYS.contains(field.group()) ? " *" : "");
    }

    private String title(String group) {
        if (group.startsWith(CarForm.SET)) {
            return group.endsWith("/tyre") ? "Its tyres" : "New wheel set of four";
        }
        var title = new StringBuilder();
        for (var part : group.substring(1).split("/", -1)) {
            if (!part.equals("vehicle") || group.equals("/vehicle")) {
                title.append(title.isEmpty() ? words(part) : ", " + words(part).toLowerCase(Locale.ROOT));
            }
        }
        return title.toString();
    }

    private static String words(String name) {
        if (name.equals(name.toUpperCase(Locale.ROOT)) || name.equals("vin")) {
            return name.toUpperCase(Locale.ROOT);
        }
        return Words.sentenceStart(
                name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT).strip());
    }
}
