package cornerbook.app.desk.car;

import cornerbook.app.exchange.CarField;
import cornerbook.app.exchange.CarForm;
import cornerbook.app.exchange.KindFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.request.Told;
import cornerbook.core.assess.SameKind;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.finding.PlaceOfLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A new car at the door, as typed: what is asked, and what may be given if it is at hand.
 *
 * @param vehicleId born with the form, so that a form that is sent twice makes one car
 * @param typed by pointer of the visit file
 * @param errors one sentence by pointer; those of no field stand under the empty name
 * @param alike cars of the same kind and data sheets of it, whose data may be copied; asked only when there are some
 * @param kinds what cars of the book are called
 */
public record NewCarPage(
        String vehicleId,
        Map<String, String> typed,
        Map<String, String> errors,
        List<Alike> alike,
        List<String> kinds) {
    static final String PLATE = "/vehicle/plate";
    /** Of a customer whom the book knows already. */
    static final String CUSTOMER = "customer";

    static final String OWNER = "/customer/name";
    static final String PHONE = "/customer/phone";
    static final String SIZE = "/vehicle/frontAxle/tyreSize";
    static final String SEASON = CarForm.SET + "0/season";
    static final String NAME = "/vehicle/name";
    static final String VIN = "/vehicle/vin";
    static final String REAR_SIZE = "/vehicle/rearAxle/tyreSize";
    static final String ELECTRIC = "/vehicle/electric";
    static final String HYBRID = "/vehicle/hybrid";
    static final String PLACE = "/vehicle/jurisdiction";
    /** Whether a fifth wheel lies in the car, as those of the front. */
    static final String SPARE = "spare";

    /** The car that the data are copied from; "none" when nothing is. */
    static final String FROM = "from";

    /** What cannot be left out. */
    static final List<String> ASKED = List.of(PLATE, OWNER, SIZE);

    /** Whose name in the data of a car does not say whose it is, out of its group. */
    private static final List<String> NAMED_HERE = List.of(OWNER, SIZE, REAR_SIZE, NAME);

    private static final List<String> FIRST = List.of(PLATE, OWNER, PHONE, SIZE);
    private static final List<String> MORE = List.of(NAME, VIN, REAR_SIZE, ELECTRIC, HYBRID, PLACE);

    public NewCarPage {
        typed = Map.copyOf(typed);
        errors = Map.copyOf(errors);
        alike = List.copyOf(alike);
        kinds = List.copyOf(kinds);
    }

    /** All fields of the page. */
    static List<CarField> fields() {
        var fields = new ArrayList<>(fields(FIRST));
        fields.addAll(fields(MORE));
        return fields;
    }

    private static List<CarField> fields(List<String> pointers) {
        var all = CarForm.fields();
        return pointers.stream()
                .map(pointer -> all.stream()
                        .filter(field -> field.pointer().equals(pointer))
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    /** Those without which nothing begins, and the telephone. */
    public List<CarField> first() {
        return fields(FIRST);
    }

    public List<CarField> more() {
        return fields(MORE);
    }

    /** Whether something that may be left out was typed, or is wrong. */
    public boolean moreIsOpen() {
        return MORE.stream().anyMatch(pointer -> !error(pointer).isEmpty());
    }

    public List<SeasonKind> seasons() {
        return List.of(SeasonKind.values());
    }

    public String season() {
        return SEASON;
    }

    public String spare() {
        return SPARE;
    }

    public String typed(String pointer) {
        return typed.getOrDefault(pointer, "");
    }

    public String error(String pointer) {
        return errors.getOrDefault(pointer, "");
    }

    /** The first field that is wrong, which the page opens at; before anything was typed the first of all. */
    public boolean isFirst(String pointer) {
        if (!alike.isEmpty()) {
            return false;
        }
        var order = new ArrayList<>(FIRST);
        order.add(SEASON);
        order.addAll(MORE);
        return order.stream()
                .filter(errors::containsKey)
                .findFirst()
                .orElse(PLATE)
                .equals(pointer);
    }

    /** As the page names the field. */
    public String name(CarField field) {
        var pointer = field.pointer();
        return NAMED_HERE.contains(pointer)
                ? Told.labels("app/desk/car")
                        .of("door-label", "field", pointer.substring(1).replace('/', '_'))
                : Told.say(field.label());
    }

    /** The same with a star where it cannot be left out. */
    public String label(CarField field) {
        return ASKED.contains(field.pointer())
                ? Told.labels("app/desk/car").of("required", "label", name(field))
                : name(field);
    }

    /** How it is typed: digits on a telephone, capitals for what has them. */
    public String keyboard(CarField field) {
        return field.pointer().equals(PHONE) ? "tel" : "text";
    }

    public String capitals(CarField field) {
        return field.pointer().equals(OWNER) || field.pointer().equals(NAME) ? "words" : "characters";
    }

    /** What is offered as it is typed; none for most fields. */
    public List<Offer> offered(CarField field) {
        return switch (field.pointer()) {
            case PLACE ->
                new LimitTable(LimitsFile.load())
                        .places().stream()
                                .map(code -> new Offer(code, Told.say(PlaceOfLaw.of(code))))
                                .toList();
            case NAME -> kinds.stream().map(kind -> new Offer(kind, kind)).toList();
            default -> List.of();
        };
    }

    /** Something to choose instead of typing it. */
    public record Offer(String word, String label) {}

    /**
     * A car of the same kind, or the data sheet of its kind.
     *
     * @param from id of the car; or the name of the sheet behind {@link #SHEET}
     * @param sign why it is taken for one
     * @param named as people tell it from others
     */
    public record Alike(String from, SameKind.Sign sign, String named) {
        /** Before the name of a data sheet, which no id of a car begins with. */
        static final String SHEET = "sheet:";

        static Alike ofSheet(KindFile.Kind kind, SameKind.Sign sign) {
            return new Alike(SHEET + kind.name(), sign, kind.name());
        }

        public boolean isSheet() {
            return from.startsWith(SHEET);
        }
    }

    /** As people tell it from others. */
    static String named(Vehicle vehicle) {
        return vehicle.name().equals(vehicle.plate())
                ? vehicle.plate()
                : "%s (%s)".formatted(vehicle.name(), vehicle.plate());
    }

    static String leftOut() {
        return Told.labels("app/desk/car").of("left-out");
    }
}
