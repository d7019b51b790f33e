package cornerbook.app.exchange;

import cornerbook.app.exchange.CarField.Kind;
import cornerbook.core.car.CarHistory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A car as a form: each field of owner, car and wheel set by its JSON pointer in the visit file, and back. What the visit
 * file refuses, the form refuses, at the same pointer.
 */
public final class CarForm {
    /** Where the fields of a new wheel set stand; its four wheels are alike but for their tags. */
    public static final String SET = "/wheelSets/";

    private static final JsonMapper MAPPER = new JsonMapper();
    private static final Pattern UNIT = Pattern.compile("bare number in ([^.]+)\\.$");
    private static final int WHEELS = 4;

    private CarForm() {}

    /** The fields of owner and car, in the order of the schema. */
    public static List<CarField> fields() {
        var fields = new ArrayList<CarField>();
        var schema = VisitFileSchema.node();
        collect("/customer", schema.at("/properties/customer"), fields);
        collect("/vehicle", schema.at("/$defs/vehicle"), fields);
        fields.removeIf(field ->
                field.pointer().equals("/vehicle/id") || field.pointer().equals("/customer/id"));
        return fields;
    }

    /** The fields of the wheel set that stands at this place of the list. */
    public static List<CarField> setFields(int place) {
        var group = SET + place;
        var fields = new ArrayList<CarField>();
        var schema = VisitFileSchema.node();
        collect(group, schema.at("/$defs/wheelSet"), fields);
        fields.removeIf(field -> field.name().equals("id"));
        fields.add(new CarField(
                group + "/tag",
                group,
                "tag",
                Kind.TEXT,
                "",
                "What the tags of the four wheels begin with; 1 to 4 follow, in the order LF, RF, LR, RR.",
                List.of(),
                true));
        collect(group + "/tyre", schema.at("/$defs/tyre"), fields);
        return fields;
    }

    /** The fields of a wheel that the book has, at its place in the list of sets; its tag stays, as readings name it. */
    public static List<CarField> wheelFields(int set, int wheel) {
        var group = SET + set + "/wheels/" + wheel;
        var fields = new ArrayList<CarField>();
        collect(group, VisitFileSchema.node().at("/$defs/wheelSet/properties/wheels/items"), fields);
        fields.removeIf(field -> field.name().equals("tag"));
        return fields;
    }

    /** The fields of a set that the book has, without its wheels. */
    public static List<CarField> knownSetFields(int set) {
        var fields = new ArrayList<CarField>();
        collect(SET + set, VisitFileSchema.node().at("/$defs/wheelSet"), fields);
        fields.removeIf(field -> field.name().equals("id"));
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
        var file = HistoryWriter.write(history);
        var values = new LinkedHashMap<String, String>();
        for (var field : fields(history)) {
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

    /** A car that the book does not have yet. */
    public static VisitFile.Result readNew(
            String vehicleId, String customerId, Map<String, String> typed, int newSets, LocalDate today) {
        var file = JsonNodeFactory.instance.objectNode();
        file.put("format", "cornerbook-visit-file").put("version", 1);
        var customer = file.putObject("customer").put("id", customerId);
        var vehicle = file.putObject("vehicle").put("id", vehicleId);
        file.putArray("wheelSets");
        file.putArray("visits");
        return read(file, customer, vehicle, typed, 0, newSets, today);
    }

    private static VisitFile.Result read(
            ObjectNode file,
            ObjectNode customer,
            ObjectNode vehicle,
            Map<String, String> typed,
            int sets,
            int newSets,
            LocalDate today) {
        for (var required : List.of("frontAxle", "rearAxle")) {
            vehicle.putObject(required).putObject("brake");
        }
        vehicle.putObject("fastener");
        vehicle.putObject("battery");
        for (var field : fields()) {
            boolean ofCustomer = field.pointer().startsWith("/customer");
            put(ofCustomer ? customer : vehicle, field, typed, ofCustomer ? "/customer" : "/vehicle");
        }
        for (int place = sets; place < sets + newSets; place++) {
            var tag = typed.getOrDefault(SET + place + "/tag", "");
            if (!tag.isBlank()) {
                addSet(file, place, tag, vehicle.get("id").asString(), typed);
            }
        }
        return VisitFile.read(MAPPER.writeValueAsString(file), today);
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
            case NUMBER -> putNumber(object, field.name(), text);
            case TEXT, QUANTITY, DATE -> object.put(field.name(), text);
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

    private static void collect(String group, JsonNode schema, List<CarField> into) {
        var required = new ArrayList<String>();
        schema.path("required").forEach(name -> required.add(name.asString()));
        schema.path("properties").forEachEntry((name, declared) -> {
            var node = resolved(declared);
            if (node.path("type").asString("").equals("object")) {
                collect(group + "/" + name, node, into);
            } else if (!node.path("type").asString("").equals("array")) {
                into.add(field(group, name, declared, node, required.contains(name)));
            }
        });
    }

    private static JsonNode resolved(JsonNode declared) {
        var reference = declared.path("$ref").asString("");
        return reference.isEmpty() ? declared : VisitFileSchema.node().at(reference.substring(1));
    }

    private static CarField field(String group, String name, JsonNode declared, JsonNode node, boolean required) {
        var description = declared.path("description").asString("");
        var unit = UNIT.matcher(description);
        var choices = new ArrayList<String>();
        node.path("enum").forEach(word -> choices.add(word.asString()));
        var kind = switch (node.path("type").asString("")) {
            case "boolean" -> Kind.FLAG;
            case "number", "integer" -> Kind.NUMBER;
            default ->
                declared.path("$ref").asString("").endsWith("/quantity")
                        ? Kind.QUANTITY
                        : node.has("pattern") ? Kind.DATE : Kind.TEXT;
        };
        if (kind == Kind.FLAG) {
            choices.addAll(List.of("yes", "no"));
        }
        return new CarField(
                group + "/" + name,
                group,
                name,
                kind,
                kind == Kind.QUANTITY && unit.find() ? unit.group(1) : "",
                description.replaceFirst(" A text with its unit.*", "").replaceFirst(" Year-month-day\\.", ""),
                choices,
                required);
    }
}
