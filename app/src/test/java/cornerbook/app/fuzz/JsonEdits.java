package cornerbook.app.fuzz;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A document of JSON with some places changed, so that a search need not find the braces first. Each line is a JSON
 * pointer (RFC 6901) and, behind a blank, what stands there then: a value of JSON, any other words as a text, or {@code @}
 * and the pointer to what is copied there. Nothing behind it takes the place away. A pointer to no place is some other.
 */
public final class JsonEdits {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final int MOST_EDITS = 12;

    private final JsonNode base;
    private final List<JsonPointer> places = new ArrayList<>();
    private final Set<String> names = new HashSet<>();

    public JsonEdits(JsonNode base) {
        this.base = base;
        gather(base, JsonPointer.empty());
    }

    /** The document with these lines applied in their order. */
    public JsonNode apply(List<String> lines) {
        var edited = base.deepCopy();
        lines.stream().filter(line -> !line.isEmpty()).limit(MOST_EDITS).forEach(line -> apply(line, edited));
        return edited;
    }

    private void apply(String line, JsonNode edited) {
        int blank = line.indexOf(' ');
        var place = place(blank < 0 ? line : line.substring(0, blank), edited);
        set(edited.at(place.head()), place.last(), blank < 0 ? null : value(line.substring(blank + 1), edited));
    }

    private JsonPointer place(String written, JsonNode edited) {
        try {
            var pointer = JsonPointer.compile(written);
            if (!pointer.matches() && isPlace(edited.at(pointer.head()), pointer.last())) {
                return pointer;
            }
        } catch (IllegalArgumentException e) {
            // No pointer: some place, always the same one for the same words.
        }
        return places.get(Math.floorMod(written.hashCode(), places.size()));
    }

    private boolean isPlace(JsonNode container, JsonPointer last) {
        return container.isObject()
                ? names.contains(last.getMatchingProperty())
                : container.isArray()
                        && (last.getMatchingIndex() >= 0
                                || last.getMatchingProperty().equals("-"));
    }

    private static @Nullable JsonNode value(String written, JsonNode edited) {
        try {
            return written.startsWith("@") ? edited.at(written.substring(1)).deepCopy() : MAPPER.readTree(written);
        } catch (JacksonException | IllegalArgumentException e) {
            return JsonNodeFactory.instance.stringNode(written);
        }
    }

    private static void set(JsonNode container, JsonPointer last, @Nullable JsonNode value) {
        boolean away = value == null || value.isMissingNode();
        if (container instanceof ObjectNode object) {
            if (away) {
                object.remove(last.getMatchingProperty());
            } else {
                object.set(last.getMatchingProperty(), value);
            }
        } else if (container instanceof ArrayNode array) {
            int index = last.getMatchingIndex();
            if (index < 0 || index >= array.size()) {
                array.add(away ? array.nullNode() : value);
            } else if (away) {
                array.remove(index);
            } else {
                array.set(index, value);
            }
        }
    }

    private void gather(JsonNode node, JsonPointer at) {
        if (!at.matches()) {
            places.add(at);
        }
        node.properties().forEach(property -> {
            names.add(property.getKey());
            gather(property.getValue(), at.appendProperty(property.getKey()));
        });
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            gather(node.get(i), at.appendIndex(i));
        }
    }
}
