package cornerbook.app.exchange;

import cornerbook.app.exchange.CarField.Kind;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.DataGap;
import cornerbook.core.corner.Axle;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A car as a form: each field of owner, car and wheel set by its JSON pointer in the visit file, and back. What the visit
 * file refuses, the form refuses, at the same pointer.
 */
public final class CarForm {
    private static final double PERCENT = 100;
    /** Where the fields of a new wheel set stand; its four wheels are alike but for their tags. */
    public static final String SET = "/wheelSets/";

    private static final String VEHICLE = "/vehicle";
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final int WHEELS = 4;
    private static final String SET_OBJECT = "wheelSet";
    /** Given by the program, or found on the wheel: no field of a form. */
    private static final Set<String> IDENTITIES = Set.of("id", "tag");

    private CarForm() {}

    /** Pointer of the first field that fills a gap: it is on its form under this name. */
    public static String pointer(DataGap gap) {
        var axle = gap.axle() == Axle.REAR ? "/vehicle/rearAxle" : "/vehicle/frontAxle";
        return switch (gap.part()) {
            case DRIVE -> "/vehicle/drive";
            case POWER -> "/vehicle/electric";
            case PLACE -> "/vehicle/jurisdiction";
            case AXLE_LOAD -> axle + "/axleLoad";
            case SERVICE -> axle + "/loadIndex";
            case PLACARD_PRESSURE -> axle + "/placardPressure";
            case BRAKE -> axle + "/brake/caliper";
            case FASTENER -> "/vehicle/fastener/thread";
            case BATTERY -> "/vehicle/battery/chemistry";
            case TYRE -> SET + "0/wheels/0/tyre/model";
        };
    }

    /** The fields of owner and car, in the order of the schema. */
    public static List<CarField> fields() {
        var fields = new ArrayList<CarField>();
        var schema = VisitFileSchema.node();
        collect("/customer", "customer", schema.at("/properties/customer"), fields);
        collect("/vehicle", "vehicle", schema.at("/$defs/vehicle"), fields);
        return fields;
    }

    /** The fields of the wheel set that stands at this place of the list. */
    public static List<CarField> setFields(int place) {
        var group = SET + place;
        var fields = new ArrayList<CarField>();
        var schema = VisitFileSchema.node();
        collect(group, SET_OBJECT, schema.at("/$defs/wheelSet"), fields);
        fields.add(new CarField(
                group + "/tag", group, "tag", Kind.TEXT, CarItem.WHEEL_SET_TAG, List.of(), true, List.of()));
        collect(group + "/tyre", "tyre", schema.at("/$defs/tyre"), fields);
        return fields;
    }

    /** The fields of a wheel that the book has, at its place in the list of sets; its tag stays, as readings name it. */
    public static List<CarField> wheelFields(int set, int wheel) {
        var group = SET + set + "/wheels/" + wheel;
        var fields = new ArrayList<CarField>();
        collect(group, "wheel", VisitFileSchema.node().at("/$defs/wheelSet/properties/wheels/items"), fields);
        return fields;
    }

    /** The fields of a set that the book has, without its wheels. */
    public static List<CarField> knownSetFields(int set) {
        var fields = new ArrayList<CarField>();
        collect(SET + set, SET_OBJECT, VisitFileSchema.node().at("/$defs/wheelSet"), fields);
        return fields;
    }

    /** The fields of owner and car, and of all sets and wheels that the book has. */
    public static List<CarField> fields(CarHistory history) {
        var fields = fields();
        for (int set = 0; set < history.sets().size(); set++) {
            fields.addAll(knownSetFields(set));
            for (int wheel = 0; wheel < history.sets().get(set).wheels().size(); wheel++) {
                fields.addAll(wheelFields(set, wheel));
            }
        }
        return fields;
    }

    /** What stands in the file of a car, by pointer. */
    public static Map<String, String> values(CarHistory history) {
        return values(HistoryWriter.write(history), fields(history));
    }

    /** What stands in a file at the pointers of these fields. */
    static Map<String, String> values(JsonNode file, List<CarField> fields) {
        var values = new LinkedHashMap<String, String>();
        for (var field : fields) {
            var node = file.at(field.pointer());
            if (!node.isMissingNode()) {
                values.put(
                        field.pointer(),
                        field.kind() == Kind.FLAG ? (node.booleanValue() ? "yes" : "no") : node.asString());
            }
        }
        return values;
    }

    /**
     * The car with what was typed in place of what stood there, of its wheels too, and with the wheel sets that were typed.
     *
     * @param before the car as the book has it, or one with nothing but ids
     * @param typed by pointer; an empty text is left out
     * @param newSets how many wheel sets the form has beside those of {@code before}; one without a tag is left out
     */
    public static VisitFile.Result read(CarHistory before, Map<String, String> typed, int newSets, LocalDate today) {
        var file = HistoryWriter.write(before);
        var customer = file.putObject("customer").put("id", before.customer().id());
        var vehicle = file.putObject("vehicle").put("id", before.vehicle().id());
        for (int set = 0; set < before.sets().size(); set++) {
            change(file, SET + set, knownSetFields(set), typed);
            for (int wheel = 0; wheel < before.sets().get(set).wheels().size(); wheel++) {
                change(file, SET + set + "/wheels/" + wheel, wheelFields(set, wheel), typed);
            }
        }
        return read(file, customer, vehicle, typed, before.sets().size(), newSets, today);
    }

    /** A car that the book does not have yet, without its wheels. */
    public static VisitFile.Result readNew(
            String vehicleId, String customerId, Map<String, String> typed, LocalDate today) {
        var file = JsonNodeFactory.instance.objectNode();
        file.put("format", "cornerbook-visit-file").put("version", 1);
        var customer = file.putObject("customer").put("id", customerId);
        var vehicle = file.putObject("vehicle").put("id", vehicleId);
        file.putArray("wheelSets");
        file.putArray("visits");
        return read(file, customer, vehicle, typed, 0, 0, today);
    }

    private static VisitFile.Result read(
            ObjectNode file,
            ObjectNode customer,
            ObjectNode vehicle,
            Map<String, String> typed,
            int sets,
            int newSets,
            LocalDate today) {
        var fields = fields();
        fields.stream()
                .filter(field -> !field.pointer().startsWith(VEHICLE))
                .forEach(field -> put(customer, field, typed, "/customer"));
        writeVehicle(
                vehicle,
                fields.stream()
                        .filter(field -> field.pointer().startsWith(VEHICLE))
                        .toList(),
                typed);
        for (int place = sets; place < sets + newSets; place++) {
            var tag = typed.getOrDefault(SET + place + "/tag", "");
            if (!tag.isBlank()) {
                addSet(file, place, tag, vehicle.get("id").asString(), typed);
            }
        }
        return VisitFile.read(MAPPER.writeValueAsString(file), today);
    }

    /** Writes what was typed of a vehicle's fields. */
    static void writeVehicle(ObjectNode vehicle, List<CarField> fields, Map<String, String> typed) {
        vehicle.putObject("frontAxle");
        vehicle.putObject("rearAxle");
        fields.forEach(field -> put(vehicle, field, typed, VEHICLE));
    }

    /** A field that the form did not have keeps what stands in the file; one that was emptied is taken out. */
    private static void change(ObjectNode file, String root, List<CarField> fields, Map<String, String> typed) {
        var node = (ObjectNode) file.at(root);
        for (var field : fields) {
            if (typed.containsKey(field.pointer())) {
                ((ObjectNode) file.at(field.group())).remove(field.name());
                put(node, field, typed, root);
            }
        }
    }

    private static void addSet(ObjectNode file, int place, String tag, String vehicleId, Map<String, String> typed) {
        var set = file.withArray("/wheelSets").addObject().put("id", vehicleId + "-" + tag);
        var group = SET + place;
        var wheels = set.putArray("wheels");
        for (var field : setFields(place)) {
            if (field.group().equals(group) && !field.name().equals("tag")) {
                put(set, field, typed, group);
            }
        }
        for (int n = 1; n <= WHEELS; n++) {
            var wheel = wheels.addObject().put("tag", tag + n);
            wheel.putObject("tyre");
            for (var field : setFields(place)) {
                if (field.group().equals(group + "/tyre")) {
                    put(wheel, field, typed, group);
                }
            }
        }
    }

    private static void put(ObjectNode into, CarField field, Map<String, String> typed, String root) {
        var text = typed.getOrDefault(field.pointer(), "");
        if (text.isBlank()) {
            return;
        }
        var group = field.group().substring(root.length());
        var object = group.isEmpty() ? into : into.withObject(group);
        switch (field.kind()) {
            case FLAG -> object.put(field.name(), text.equals("yes"));
            case NUMBER -> putNumber(object, field.name(), field.item().isShare() ? share(text) : text);
            case TEXT, QUANTITY, DATE -> object.put(field.name(), text);
        }
    }

    /** "48 %" and "48" are 0.48; what is no number stays as it is. */
    static String share(String text) {
        var number = text.replace("%", "").strip().replace(',', '.');
        try {
            double value = Double.parseDouble(number);
            return text.contains("%") || value > 1 ? String.valueOf(value / PERCENT) : number;
        } catch (NumberFormatException e) {
            return text;
        }
    }

    /** What is no number stays text, so that the schema refuses it with what stands there. */
    private static void putNumber(ObjectNode object, String name, String text) {
        try {
            double value = Double.parseDouble(text.replace(',', '.'));
            if (value == Math.rint(value)) {
                object.put(name, (int) value);
            } else {
                object.put(name, value);
            }
        } catch (NumberFormatException e) {
            object.put(name, text);
        }
    }

    /**
     * The fields of an object, and of those in it.
     *
     * @param object its name in the schema
     */
    private static void collect(String group, String object, JsonNode schema, List<CarField> into) {
        var required = names(schema.path("required"));
        // What one of two kinds has, where nothing of the other kind is given.
        var otherwise = names(schema.path("else").path("required"));
        var insteadOf = schema.path("if")
                .path("anyOf")
                .valueStream()
                .flatMap(each -> names(each.path("required")).stream())
                .map(name -> group + "/" + name)
                .toList();
        schema.path("properties").forEachEntry((name, declared) -> {
            var node = resolved(declared);
            if (node.path("type").asString("").equals("object")) {
                collect(group + "/" + name, nameOf(declared, name), node, into);
            } else if (!node.path("type").asString("").equals("array") && !IDENTITIES.contains(name)) {
                into.add(field(
                        group,
                        object,
                        name,
                        declared,
                        node,
                        required.contains(name) || otherwise.contains(name),
                        otherwise.contains(name) ? insteadOf : List.of()));
            }
        });
    }

    private static List<String> names(JsonNode list) {
        return list.valueStream().map(JsonNode::asString).toList();
    }

    /** The schema names an object that it has in several places. */
    private static String nameOf(JsonNode declared, String name) {
        var reference = declared.path("$ref").asString("");
        return reference.isEmpty() ? name : reference.substring(reference.lastIndexOf('/') + 1);
    }

    private static JsonNode resolved(JsonNode declared) {
        var reference = declared.path("$ref").asString("");
        return reference.isEmpty() ? declared : VisitFileSchema.node().at(reference.substring(1));
    }

    private static CarField field(
            String group,
            String object,
            String name,
            JsonNode declared,
            JsonNode node,
            boolean required,
            List<String> insteadOf) {
        var choices = new ArrayList<CarField.Choice>();
        node.path("enum").forEach(word -> choices.add(CarField.Choice.of(word.asString())));
        var kind = switch (node.path("type").asString("")) {
            case "boolean" -> Kind.FLAG;
            case "number", "integer" -> Kind.NUMBER;
            default ->
                declared.path("$ref").asString("").endsWith("/quantity")
                        ? Kind.QUANTITY
                        : node.has("pattern") ? Kind.DATE : Kind.TEXT;
        };
        if (kind == Kind.FLAG) {
            choices.add(CarField.Choice.of("yes"));
            choices.add(CarField.Choice.of("no"));
        }
        return new CarField(
                group + "/" + name, group, name, kind, CarItem.of(object, name), choices, required, insteadOf);
    }
}
