package cornerbook.app.desk.car;

import cornerbook.app.book.car.WheelChange;
import cornerbook.app.desk.Typed;
import cornerbook.app.exchange.CarField;
import cornerbook.app.exchange.CarForm;
import cornerbook.app.exchange.CarItem;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.request.Told;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The data of a car as a form, as typed.
 *
 * @param name of the car
 * @param revision that the form was made from
 * @param sets wheel sets that the car has already
 * @param changes what was put right of their wheels, earliest first
 * @param newSets wheel sets that can be added
 * @param typed by field
 * @param errors one sentence by field; those of no field stand under the empty name
 */
public record CarDataPage(
        String vehicleId,
        String name,
        String revision,
        List<WheelSet> sets,
        List<WheelChange> changes,
        int newSets,
        Map<String, String> typed,
        Map<String, String> errors) {
    /** Objects that every car has. */
    private static final Set<String> ALWAYS =
            Set.of("/customer", "/vehicle", "/vehicle/frontAxle", "/vehicle/rearAxle");

    /** What may be not known and is looked up first; the rest is folded. */
    private static final Set<String> LOOKED_UP =
            Set.of("/vehicle/frontAxle/brake", "/vehicle/rearAxle/brake", "/vehicle/fastener", "/vehicle/battery");

    private static final Set<String> CORNERS = Set.of("LF", "RF", "LR", "RR");

    public CarDataPage {
        sets = List.copyOf(sets);
        changes = List.copyOf(changes);
        typed = Map.copyOf(typed);
        errors = Map.copyOf(errors);
    }

    /** Fields under one heading. */
    public record Group(String pointer, String title, boolean open, List<CarField> fields) {
        public Group {
            fields = List.copyOf(fields);
        }
    }

    /** All fields, by the object that they are in. */
    public List<Group> groups() {
        var fields = new ArrayList<>(CarForm.fields());
        for (int place = sets.size(); place < sets.size() + newSets; place++) {
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

    /** The sets and wheels that the car has, each with its fields and what was put right of it. */
    public List<Known> known() {
        var known = new ArrayList<Known>();
        for (int set = 0; set < sets.size(); set++) {
            var title = Told.begin(new SetOf(sets.get(set).season()));
            known.add(known(sets.get(set).id(), title, CarForm.SET + set, CarForm.knownSetFields(set)));
            for (int place = 0; place < sets.get(set).wheels().size(); place++) {
                var tag = sets.get(set).wheels().get(place).tag();
                known.add(known(
                        tag,
                        labels().of("set-wheel", "set", title, "tag", tag),
                        CarForm.SET + set + "/wheels/" + place,
                        CarForm.wheelFields(set, place)));
            }
        }
        return known;
    }

    private Known known(String tag, String title, String pointer, List<CarField> fields) {
        boolean wrong =
                fields.stream().anyMatch(field -> !error(field.pointer()).isEmpty());
        return new Known(
                new Group(pointer, title, wrong, fields),
                changes.stream().filter(change -> change.tag().equals(tag)).toList());
    }

    /** A set or a wheel that the car has. */
    public record Known(Group group, List<WheelChange> changes) {
        public Known {
            changes = List.copyOf(changes);
        }
    }

    private boolean isOpen(String group, List<CarField> fields) {
        return ALWAYS.contains(group)
                || LOOKED_UP.contains(group)
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

    /** What was put right of a wheel, and from what to what. */
    public String change(WheelChange change) {
        var unknown = Said.verbatim(Told.labels("app/desk").of("not-known"));
        return Told.labels("app/desk")
                .of(
                        "changed",
                        "day",
                        change.on(),
                        "what",
                        change.label(),
                        "before",
                        change.findBefore().orElse(unknown),
                        "after",
                        change.findAfter().orElse(unknown));
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
                        CORNERS.contains(part)
                                ? Corner.valueOf(part)
                                : Said.verbatim(labels().of("group", "name", inWords(part))));
            }
        }
        return Told.begin(Listed.commas(parts));
    }

    /** "frontAxle" as "front_axle". */
    private static String inWords(String name) {
        return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    private static Labels labels() {
        return Told.labels("app/desk/car");
    }
}
