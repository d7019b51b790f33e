package cornerbook.app.exchange;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.door.ServedShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads visit files in another order than they stand in, and writes what is found at the last visit of each. */
final class FindingsOfFiles {
    private static final JsonMapper MAPPER = new JsonMapper();
    /** Arrays whose order says nothing. A file has its visits in their order, and the wheels of a set in that of the corners. */
    private static final Set<String> UNORDERED = Set.of("readings", "tools", "wheelSets");

    private final Random random;

    private FindingsOfFiles(long seed) {
        random = new Random(seed);
    }

    /** Arguments: folder of the visit files, folder for the findings, seed of the order. */
    public static void main(String[] arguments) throws IOException {
        var texts = new TreeMap<String, String>();
        try (var files = Files.list(Path.of(arguments[0]))) {
            for (var file : files.toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        for (var found : of(texts, Long.parseLong(arguments[2])).entrySet()) {
            Files.writeString(Path.of(arguments[1], found.getKey()), found.getValue());
        }
    }

    /** The findings in each language, by name of the file and language. */
    static Map<String, String> of(Map<String, String> files, long seed) {
        var order = new FindingsOfFiles(seed);
        var cars = new TreeMap<String, CarHistory>();
        files.forEach((name, text) -> cars.put(name, order.read(text)));
        var today = ServedShop.TODAY;
        var assessor = new Assessor(LimitsFile.load())
                .with(Learner.learn(List.copyOf(cars.values()), today))
                .in(DemoShop.climate());
        var found = new TreeMap<String, String>();
        cars.forEach((name, car) -> {
            var assessment = assessor.assess(car, car.visits().getLast().id());
            for (var language : Language.values()) {
                found.put(name + "." + language.tag(), AssessmentJson.write(assessment, Reader.DEFAULT.in(language)));
            }
        });
        return found;
    }

    /** The car of a file in another order; the front wheels are ticked as tightened, their torque is not read. */
    private CarHistory read(String text) {
        var shuffled = MAPPER.writeValueAsString(shuffled(MAPPER.readTree(text)));
        var read = VisitFile.read(shuffled, ServedShop.TODAY);
        var car = ((VisitFile.Read) read).record().history();
        var visits = new ArrayList<>(car.visits());
        var last = visits.removeLast();
        var ticked = new ArrayList<>(List.of(Corner.LF, Corner.RF));
        Collections.shuffle(ticked, random);
        visits.add(last.withReadings(last.readings().stream()
                        .filter(reading ->
                                reading.measure() != Measure.WHEEL_TORQUE || !ticked.contains(reading.corner()))
                        .toList())
                .withTightened(new LinkedHashSet<>(ticked)));
        Collections.shuffle(visits, random);
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
    }

    private JsonNode shuffled(JsonNode node) {
        if (node instanceof ArrayNode array) {
            var copy = JsonNodeFactory.instance.arrayNode();
            array.forEach(each -> copy.add(shuffled(each)));
            return copy;
        }
        if (!(node instanceof ObjectNode object)) {
            return node;
        }
        var names = new ArrayList<>(object.propertyNames());
        Collections.shuffle(names, random);
        var copy = JsonNodeFactory.instance.objectNode();
        for (var name : names) {
            var value = shuffled(object.get(name));
            copy.set(name, UNORDERED.contains(name) ? reordered((ArrayNode) value) : value);
        }
        return copy;
    }

    /** What was read twice at one place stays in its order: the last one counts. */
    private ArrayNode reordered(ArrayNode array) {
        var items = new ArrayList<JsonNode>();
        array.forEach(items::add);
        var byPlace = new HashMap<String, ArrayDeque<JsonNode>>();
        items.forEach(item ->
                byPlace.computeIfAbsent(place(item), key -> new ArrayDeque<>()).add(item));
        Collections.shuffle(items, random);
        var copy = JsonNodeFactory.instance.arrayNode();
        items.forEach(item ->
                copy.add(Objects.requireNonNull(byPlace.get(place(item))).remove()));
        return copy;
    }

    private static String place(JsonNode item) {
        return item.has("measure")
                ? String.join(
                        " ",
                        Arrays.asList("measure", "wheel", item.has("wheel") ? "" : "corner", "spot").stream()
                                .map(name -> item.path(name).asString(""))
                                .toList())
                : item.path("id").asString("");
    }
}
