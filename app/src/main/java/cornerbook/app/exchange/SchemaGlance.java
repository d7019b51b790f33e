package cornerbook.app.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * Sees quickly that a file keeps a schema, which nearly all files do: the check by the library was 28 % of the time that a file
 * took to be read. It knows the keywords that the schema of the visit file has, and passes nothing that the library refuses; what
 * it does not pass is for the library to look at.
 */
final class SchemaGlance {
    private static final String PROPERTIES = "properties";
    private static final String OTHERS = "additionalProperties";

    private final JsonNode root;
    private final Map<String, Predicate<JsonNode>> referred = new HashMap<>();
    private final Predicate<JsonNode> check;

    /**
     * By a schema.
     *
     * @throws IllegalArgumentException when it has a keyword that is not known here
     */
    SchemaGlance(JsonNode schema) {
        root = schema;
        check = compile(schema);
    }

    /** Whether a file keeps the schema; false also where it is not plain to see. */
    boolean passes(JsonNode file) {
        return check.test(file);
    }

    private Predicate<JsonNode> compile(JsonNode schema) {
        var checks = new ArrayList<Predicate<JsonNode>>();
        for (var keyword : schema.properties()) {
            var asked = keyword.getValue();
            switch (keyword.getKey()) {
                case "type" -> checks.add(type(asked));
                case "required" -> checks.add(required(asked));
                case "items" -> checks.add(items(compile(asked)));
                case "maxItems" -> checks.add(value -> !value.isArray() || value.size() <= asked.intValue());
                case "enum" -> checks.add(words(asked));
                case "const" -> checks.add(asked::equals);
                case "pattern" -> checks.add(pattern(Pattern.compile(asked.stringValue())));
                case "minLength" -> checks.add(value -> !value.isString() || length(value) >= asked.intValue());
                case "maxLength" -> checks.add(value -> !value.isString() || length(value) <= asked.intValue());
                case "minimum" -> checks.add(value -> !value.isNumber() || value.doubleValue() >= asked.doubleValue());
                case "maximum" -> checks.add(value -> !value.isNumber() || value.doubleValue() <= asked.doubleValue());
                case "anyOf" -> checks.add(anyOf(asked));
                case "if" -> checks.add(conditional(schema));
                case "$ref" -> checks.add(reference(asked.stringValue()));
                case PROPERTIES, OTHERS -> {} // together, below
                case "then", "else" -> {} // with "if"
                case "$schema", "$defs", "title", "description" -> {} // ask for nothing
                case "contentEncoding", "contentMediaType" -> {} // nor do these
                default ->
                    throw new IllegalArgumentException(
                            "keyword is " + keyword.getKey() + ", expected one of the visit file's schema");
            }
        }
        if (schema.has(PROPERTIES) || schema.has(OTHERS)) {
            checks.add(properties(schema));
        }
        return all(checks);
    }

    private static Predicate<JsonNode> all(List<Predicate<JsonNode>> checks) {
        var each = List.copyOf(checks);
        return each.size() == 1
                ? each.getFirst()
                : value -> {
                    for (var check : each) {
                        if (!check.test(value)) {
                            return false;
                        }
                    }
                    return true;
                };
    }

    /** Definitions refer to each other, and each is compiled once. */
    private Predicate<JsonNode> reference(String pointer) {
        if (!referred.containsKey(pointer)) {
            referred.put(pointer, value -> referred(pointer).test(value));
            referred.put(pointer, compile(root.at(pointer.substring(1))));
        }
        return referred(pointer);
    }

    private Predicate<JsonNode> referred(String pointer) {
        var definition = referred.get(pointer);
        if (definition == null) {
            throw new IllegalStateException("no definition at " + pointer);
        }
        return definition;
    }

    private static Predicate<JsonNode> type(JsonNode asked) {
        var types = asked.isArray() ? asked.valueStream() : Stream.of(asked);
        List<Predicate<JsonNode>> any =
                types.map(each -> type(each.stringValue())).toList();
        return any.size() == 1 ? any.getFirst() : value -> any.stream().anyMatch(type -> type.test(value));
    }

    private static Predicate<JsonNode> type(String name) {
        return switch (name) {
            case "object" -> JsonNode::isObject;
            case "array" -> JsonNode::isArray;
            case "string" -> JsonNode::isString;
            case "boolean" -> JsonNode::isBoolean;
            case "number" -> JsonNode::isNumber;
            // 5.0 is one too, as the library may tell.
            case "integer" -> JsonNode::isIntegralNumber;
            case "null" -> JsonNode::isNull;
            default -> throw new IllegalArgumentException("type is " + name + ", expected one of JSON Schema");
        };
    }

    private Predicate<JsonNode> properties(JsonNode schema) {
        var checks = new HashMap<String, Predicate<JsonNode>>();
        schema.path(PROPERTIES)
                .properties()
                .forEach(property -> checks.put(property.getKey(), compile(property.getValue())));
        var others = schema.get(OTHERS);
        boolean open = others == null || (others.isBoolean() && others.booleanValue());
        return value -> {
            for (var member : value.properties()) {
                var check = checks.get(member.getKey());
                if (check == null ? !open : !check.test(member.getValue())) {
                    return false;
                }
            }
            return true;
        };
    }

    private static Predicate<JsonNode> required(JsonNode asked) {
        var names = asked.valueStream().map(JsonNode::stringValue).toList();
        return value -> {
            if (value.isObject()) {
                for (var name : names) {
                    if (!value.has(name)) {
                        return false;
                    }
                }
            }
            return true;
        };
    }

    private static Predicate<JsonNode> items(Predicate<JsonNode> check) {
        return value -> {
            if (value.isArray()) {
                for (var element : value.values()) {
                    if (!check.test(element)) {
                        return false;
                    }
                }
            }
            return true;
        };
    }

    private static Predicate<JsonNode> words(JsonNode asked) {
        var words = asked.valueStream().map(JsonNode::stringValue).collect(Collectors.toUnmodifiableSet());
        return value -> value.isString() && words.contains(value.stringValue());
    }

    /** What matches as a whole is found in any case. */
    private static Predicate<JsonNode> pattern(Pattern pattern) {
        return value ->
                !value.isString() || pattern.matcher(value.stringValue()).matches();
    }

    private static int length(JsonNode text) {
        var characters = text.stringValue();
        return characters.codePointCount(0, characters.length());
    }

    private Predicate<JsonNode> anyOf(JsonNode asked) {
        var any = asked.valueStream().map(this::compile).toList();
        return value -> any.stream().anyMatch(check -> check.test(value));
    }

    /** What decides must be seen exactly, not only safely: of the visit file it asks for members that are there or not. */
    private Predicate<JsonNode> conditional(JsonNode schema) {
        var condition = compile(schema.required("if"));
        var then = compile(schema.required("then"));
        var otherwise = compile(schema.required("else"));
        return value -> condition.test(value) ? then.test(value) : otherwise.test(value);
    }
}
