package cornerbook.app.desk.car;

import cornerbook.app.desk.Typed;
import cornerbook.app.exchange.CarField;
import cornerbook.app.exchange.CarForm;
import cornerbook.app.exchange.CarItem;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.request.Told;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Fields of a car on a form, as typed.
 *
 * @param typed by field
 * @param errors one sentence by field; those of no field stand under the empty name
 */
public record CarFields(Map<String, String> typed, Map<String, String> errors) {
    /** Objects that every car has. */
    private static final Set<String> ALWAYS =
            Set.of("/customer", "/vehicle", "/vehicle/frontAxle", "/vehicle/rearAxle");

    /** What may be not known and is looked up first; the rest is folded. */
    private static final Set<String> LOOKED_UP =
            Set.of("/vehicle/frontAxle/brake", "/vehicle/rearAxle/brake", "/vehicle/fastener", "/vehicle/battery");

    public CarFields {
        typed = Map.copyOf(typed);
        errors = Map.copyOf(errors);
    }

    /** Fields under one heading. */
    public record Group(String pointer, String title, boolean open, List<CarField> fields) {
        public Group {
            fields = List.copyOf(fields);
        }
    }

    /** These by the object that they are in. */
    List<Group> groups(List<CarField> fields) {
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
                || LOOKED_UP.contains(group)
                || !error(group).isEmpty()
                || isWrong(fields);
    }

    boolean isWrong(List<CarField> fields) {
        return fields.stream().anyMatch(field -> !error(field.pointer()).isEmpty());
    }

    public String typed(CarField field) {
        return Typed.withoutUnit(typed.getOrDefault(field.pointer(), ""), unit(field));
    }

    /** Beside the field, in the units that the form was opened with. */
    public String unit(CarField field) {
        return CarDataUnits.of(typed).unitOf(field);
    }

    /** The same as this person names it. */
    public String unitName(CarField field) {
        return Told.reader().in(CarDataUnits.of(typed).system()).unit(field.unit());
    }

    /** Name of these units. */
    public String units() {
        return CarDataUnits.of(typed).system().word();
    }

    /** What a field is, where its name alone does not say how it is written. */
    public String example(CarField field) {
        return field.item().isToldHowToWrite() ? Told.say(field.hint()) : "";
    }

    /** Places that have a law on file, offered where the place is typed; none for another field. */
    public List<PlaceOfLaw> offered(CarField field) {
        return field.item() == CarItem.VEHICLE_JURISDICTION
                ? new LimitTable(LimitsFile.load())
                        .places().stream().map(PlaceOfLaw::of).toList()
                : List.of();
    }

    public String error(String pointer) {
        return errors.getOrDefault(pointer, "");
    }

    /** Of a field, one that was left out in its own words. */
    public String error(CarField field) {
        var error = error(field.pointer());
        boolean wanted = !error.isEmpty() || (isAlwaysWanted(field) && !errors.isEmpty());
        return wanted && isRequired(field) && typed(field).isEmpty() ? labels().of("left-out") : error;
    }

    private boolean isAlwaysWanted(CarField field) {
        return isRequired(field) && ALWAYS.contains(field.group());
    }

    private boolean isRequired(CarField field) {
        return field.required()
                && field.insteadOf().stream()
                        .allMatch(other -> typed.getOrDefault(other, "").isBlank());
    }

    /** "Axle load", with a star where nothing can be left out. */
    public String label(CarField field) {
        var label = Told.say(field.label());
        return isAlwaysWanted(field) ? labels().of("required", "label", label) : label;
    }

    private static String title(String group) {
        if (group.startsWith(CarForm.SET)) {
            return labels().of(group.endsWith("/tyre") ? "its-tyres" : "new-set-of-four");
        }
        var parts = new ArrayList<Said>();
        for (var part : group.substring(1).split("/", -1)) {
            if (!part.equals("vehicle") || group.equals("/vehicle")) {
                parts.add(
                        isCorner(part)
                                ? Corner.valueOf(part)
                                : Said.verbatim(labels().of("group", "name", inWords(part))));
            }
        }
        return Told.begin(Listed.commas(parts));
    }

    private static boolean isCorner(String name) {
        return Arrays.stream(Corner.values()).anyMatch(corner -> corner.name().equals(name));
    }

    /** "frontAxle" as "front_axle". */
    private static String inWords(String name) {
        return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    private static Labels labels() {
        return Told.labels("app/desk/car");
    }
}
