package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A shop with one visit, and what a tablet may send of it. */
abstract class TabletEntries {
    final CarHistory car = BayShop.untouched("demo-08");

    final String visitId = car.visits().getLast().id();

    BayShop shop;

    @TempDir
    Path folder;

    @BeforeEach
    void open() {
        shop = new BayShop(folder, List.of(car));
    }

    @AfterEach
    void close() {
        shop.close();
    }

    /** The wheels that are planned go on. */
    Map<String, String> leave() throws Exception {
        var wheels = planned();
        assertThat(statuses(entry("leaving", Map.of("wheels", wheels, "shown", Map.of()))))
                .containsExactly("stored");
        return wheels;
    }

    Map<String, String> planned() throws Exception {
        return names(shop.get("/bay/visits/" + visitId + "/sheet.json")
                .path("en")
                .path("metric")
                .path("planned"));
    }

    static ObjectNode tick(String step, boolean done) {
        return entry("tick", Map.of("tick", step, "done", done));
    }

    JsonNode ticked(String step) throws Exception {
        return state().path("ticks").path(step);
    }

    String wheel() {
        return String.valueOf(car.visits().getLast().arrivedOn().get(Corner.LF));
    }

    ObjectNode tread(String spot, String written) {
        return with(reading("TREAD_DEPTH", "LF", wheel(), written), "spot", spot);
    }

    static ObjectNode reading(String measure, String corner, String wheel, String written) {
        return entry("reading", Map.of("measure", measure, "corner", corner, "wheel", wheel, "written", written));
    }

    static ObjectNode done(String measure, @Nullable String corner) {
        return entry("reading", Map.of("measure", measure, "written", "done")).put("corner", corner);
    }

    static ObjectNode entry(String kind, Map<String, ?> parts) {
        ObjectNode entry = BayShop.JSON.valueToTree(parts);
        return entry.put("id", UUID.randomUUID().toString())
                .put("kind", kind)
                .put("person", "Ada")
                .put("at", "2026-11-25T10:00:00Z");
    }

    static ObjectNode pad(String spot, String written) {
        return entry("reading", Map.of("measure", "PAD_THICKNESS", "corner", "LF", "spot", spot, "written", written));
    }

    static ObjectNode with(ObjectNode entry, String name, String value) {
        return entry.deepCopy().put(name, value);
    }

    JsonNode state() throws Exception {
        return shop.get("/bay/visits/" + visitId + "/state.json");
    }

    static Map<String, String> names(JsonNode object) {
        var names = new LinkedHashMap<String, String>();
        object.properties()
                .forEach(each -> names.put(each.getKey(), each.getValue().stringValue()));
        return names;
    }

    List<JsonNode> send(ObjectNode... entries) throws Exception {
        return send(List.of(entries));
    }

    List<JsonNode> send(List<ObjectNode> entries) throws Exception {
        var answer = shop.post(visitId, entries);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        var answers = new ArrayList<JsonNode>();
        BayShop.JSON.readTree(answer.body()).path("answers").forEach(answers::add);
        return answers;
    }

    List<String> statuses(ObjectNode... entries) throws Exception {
        return statuses(List.of(entries));
    }

    List<String> statuses(List<ObjectNode> entries) throws Exception {
        return send(entries).stream()
                .map(answer -> answer.path("status").stringValue())
                .toList();
    }
}
