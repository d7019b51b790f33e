package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.store.TemplateBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Checked against the schema library, which is asked of each file too. */
class SchemaGlancePropertyTest {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final JsonNode SOUND = MAPPER.readTree(VisitFile.write(TemplateBook.car()));
    private static final SchemaGlance GLANCE = new SchemaGlance(VisitFileSchema.node());

    /** What may come to stand where something else is expected, or just beside what may stand there. */
    private static final List<String> VALUES = List.of(
            "null",
            "true",
            "{}",
            "[]",
            "[1]",
            "\"\"",
            "\"2026-11-30\"",
            "\"2026-11-30\\n\"",
            "\"26-11-30\"",
            "\"front\"",
            "\"" + "x".repeat(300) + "\"",
            "\"" + "\\ud83d\\ude97".repeat(80) + "\"",
            "-1",
            "0",
            "1",
            "1.0",
            "2.5",
            "1e11",
            "99999999999999999999");

    @Test
    void itPassesNothingThatTheLibraryRefusesAndNearlyAllThatItTakes() {
        var random = new Random(20_261_201);
        int taken = 0;
        int passed = 0;
        int refused = 0;
        for (int i = 0; i < 1000; i++) {
            var file = SOUND.deepCopy();
            change(file, random);
            boolean passes = GLANCE.passes(file);
            boolean sound = VisitFileSchema.checkAll(file).isEmpty();
            assertThat(passes && !sound).as(file.toString()).isFalse();
            taken += sound ? 1 : 0;
            passed += passes ? 1 : 0;
            refused += sound ? 0 : 1;
        }
        assertThat(refused).isGreaterThan(300);
        assertThat(passed).isGreaterThan(100).isGreaterThan(taken * 9 / 10);
    }

    @Test
    void aFileAsItIsWrittenIsSoundAtAGlance() {
        assertThat(GLANCE.passes(SOUND)).isTrue();
    }

    @Test
    void aKeywordThatItDoesNotKnowIsNotPassedOver() {
        var schema = MAPPER.readTree("{\"properties\": {\"depth\": {\"multipleOf\": 0.1}}}");
        assertThatThrownBy(() -> new SchemaGlance(schema))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("multipleOf");
    }

    /** Takes a member away, adds one, or puts something else in the place of a value, anywhere in a file. */
    private static void change(JsonNode file, Random random) {
        var places = new ArrayList<JsonNode>();
        gather(file, places);
        var value = MAPPER.readTree(VALUES.get(random.nextInt(VALUES.size())));
        switch (places.get(random.nextInt(places.size()))) {
            case ObjectNode object -> {
                var names = List.copyOf(object.propertyNames());
                var name = names.isEmpty() ? "extra" : names.get(random.nextInt(names.size()));
                switch (random.nextInt(4)) {
                    case 0 -> object.remove(name);
                    case 1 -> object.set("extra", value);
                    default -> object.set(name, value);
                }
            }
            case ArrayNode array -> array.add(value);
            default -> throw new IllegalStateException("no place in which something stands");
        }
    }

    private static void gather(JsonNode node, List<JsonNode> places) {
        if (node.isContainer()) {
            places.add(node);
            node.values().forEach(value -> gather(value, places));
        }
    }
}
