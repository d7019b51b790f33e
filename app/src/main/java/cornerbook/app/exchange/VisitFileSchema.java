package cornerbook.app.exchange;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import cornerbook.core.finding.Problem;
import cornerbook.core.quantity.Quoted;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/** The published schema of the visit file. */
final class VisitFileSchema {
    private static final Schema SCHEMA = load();

    private VisitFileSchema() {}

    /** The schema itself. */
    static JsonNode node() {
        return SCHEMA.getSchemaNode();
    }

    static List<Problem> check(JsonNode root) {
        return SCHEMA.validate(root).stream()
                .limit(VisitFile.MOST_PROBLEMS)
                .map(VisitFileSchema::problem)
                .toList();
    }

    private static Problem problem(Error error) {
        var where = error.getInstanceLocation().toString();
        return switch (error.getKeyword()) {
            case "required" ->
                new Problem(
                        where + "/" + escaped(error.getProperty()),
                        "%s is missing, expected it here".formatted(Quoted.of(error.getProperty())));
            case "additionalProperties" ->
                new Problem(
                        where + "/" + escaped(error.getProperty()),
                        "%s is no property here, expected only those of the visit file's schema"
                                .formatted(Quoted.of(error.getProperty())));
            default ->
                new Problem(
                        where,
                        "%s does not fit, expected %s".formatted(shorten(error.getInstanceNode()), expected(error)));
        };
    }

    /** As RFC 6901, section 3, has a name stand in a pointer. */
    static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    /** What the keyword of the schema asks for, in words; the only pattern of the schema is that of dates. */
    private static String expected(Error error) {
        var asked = error.getSchemaNode();
        return switch (error.getKeyword()) {
            case "enum", "type" -> asked.isArray() ? "one of " + words(asked) : words(asked);
            case "pattern" -> "year-month-day as 2026-11-25";
            case "minLength" -> "some text";
            case "maxLength" -> "at most %s characters".formatted(asked);
            case "maxItems" -> "at most %s items".formatted(asked);
            case "minimum" -> "at least " + asked;
            case "maximum" -> "at most " + asked;
            default -> String.valueOf(asked);
        };
    }

    private static String words(JsonNode asked) {
        return asked.isArray()
                ? asked.valueStream().map(JsonNode::asString).collect(Collectors.joining(", "))
                : asked.asString();
    }

    static String shorten(JsonNode node) {
        var text = String.valueOf(node);
        return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }

    private static Schema load() {
        try (var schema = VisitFileSchema.class.getResourceAsStream("visit-file.schema.json")) {
            if (schema == null) {
                throw new IllegalStateException("the schema of the visit file is not in the program");
            }
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(schema);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
