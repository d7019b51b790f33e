package cornerbook.app.exchange;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import cornerbook.core.visit.Problem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The published schema of the visit file. */
final class VisitFileSchema {
    private static final Schema SCHEMA = load();

    private VisitFileSchema() {}

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
                        where + "/" + error.getProperty(),
                        "\"%s\" is missing, expected it here".formatted(error.getProperty()));
            case "additionalProperties" ->
                new Problem(
                        where + "/" + error.getProperty(),
                        "\"%s\" is no property here, expected only those of the visit file's schema"
                                .formatted(error.getProperty()));
            case "enum", "const", "type" ->
                new Problem(
                        where,
                        "%s does not fit, expected %s".formatted(shorten(error.getInstanceNode()), expected(error)));
            default -> new Problem(where, "%s: %s".formatted(shorten(error.getInstanceNode()), error.getMessage()));
        };
    }

    private static String expected(Error error) {
        var allowed = error.getSchemaNode();
        return allowed.isArray() ? "one of " + allowed : String.valueOf(allowed);
    }

    private static String shorten(JsonNode node) {
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
