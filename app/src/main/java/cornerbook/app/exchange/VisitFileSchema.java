package cornerbook.app.exchange;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import cornerbook.app.text.PlainText;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Problem;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The published schema of the visit file, with the measures that there are. */
final class VisitFileSchema {
    /** More in one sentence are read by nobody. */
    private static final int MOST_CHOICES = 30;

    private static final String DESCRIPTION = "description";

    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final JsonNode NODE = load();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(withoutDescriptions(NODE));
    private static final SchemaGlance GLANCE = new SchemaGlance(NODE);

    private VisitFileSchema() {}

    /** The schema itself. */
    static JsonNode node() {
        return NODE;
    }

    static List<Problem> check(JsonNode root) {
        return GLANCE.passes(root) ? List.of() : checkAll(root);
    }

    /** By the library, which tells what is wrong and where. */
    static List<Problem> checkAll(JsonNode root) {
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
                        new FileSaid.Missing(PlainText.shown(error.getProperty())));
            case "additionalProperties" ->
                new Problem(
                        where + "/" + escaped(error.getProperty()),
                        new FileSaid.NoProperty(PlainText.shown(error.getProperty())));
            default -> new Problem(where, new FileSaid.Misfit(shorten(error.getInstanceNode()), expected(error)));
        };
    }

    /** As RFC 6901, section 3, has a name stand in a pointer. */
    static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    /** What the keyword of the schema asks for; the only pattern of the schema is that of dates. */
    private static Said expected(Error error) {
        var asked = error.getSchemaNode();
        return switch (error.getKeyword()) {
            case "enum" -> oneOf(asked.valueStream().map(word -> Said.verbatim(word.asString())));
            case "type" -> asked.isArray() ? oneOf(asked.valueStream().map(VisitFileSchema::type)) : type(asked);
            case "pattern" -> new FileSaid.YearMonthDay();
            case "minLength" -> new FileSaid.SomeText();
            case "maxLength" -> new FileSaid.AtMostCharacters(asked.intValue());
            case "maxItems" -> new FileSaid.AtMostItems(asked.intValue());
            case "minimum" -> new FileSaid.AtLeast(Amount.exact(asked.doubleValue(), ""));
            case "maximum" -> new FileSaid.AtMost(Amount.exact(asked.doubleValue(), ""));
            default -> Said.verbatim(String.valueOf(asked));
        };
    }

    private static Said oneOf(Stream<Said> choices) {
        var all = choices.toList();
        return all.size() <= MOST_CHOICES
                ? new FileSaid.OneOf(all)
                : new FileSaid.OneOfMany(all.subList(0, MOST_CHOICES), all.size() - MOST_CHOICES);
    }

    private static Said type(JsonNode name) {
        return JsonType.valueOf(name.asString().toUpperCase(Locale.ROOT));
    }

    static String shorten(JsonNode node) {
        var text = String.valueOf(node);
        return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }

    /** What can be read, as core declares it, so that the schema cannot fall behind. */
    private static void declareMeasures(ObjectNode node) {
        node.removeAll();
        node.put(
                DESCRIPTION,
                Arrays.stream(Measure.values())
                        .map(VisitFileSchema::described)
                        .collect(Collectors.joining("; ", "What was measured. ", ".")));
        var words = node.putArray("enum");
        Arrays.stream(Measure.values()).map(Spelling::of).forEach(words::add);
    }

    private static String described(Measure measure) {
        var scale = measure.scale();
        var spots = Arrays.stream(Spot.values())
                .filter(measure.spots()::contains)
                .map(Spelling::of)
                .toList();
        return "%s (%s; of the %s%s)"
                .formatted(
                        Spelling.of(measure),
                        scale == null ? measure.unit() : String.join(", ", scale.words()),
                        Spelling.of(measure.carrier()),
                        spots.isEmpty() ? "" : ", at " + String.join(", ", spots));
    }

    /** What is for people is a word to check by too, and asked of each value of a file. */
    private static JsonNode withoutDescriptions(JsonNode schema) {
        var copy = schema.deepCopy();
        copy.findParents(DESCRIPTION).stream()
                .filter(each -> each.required(DESCRIPTION).isString())
                .forEach(each -> ((ObjectNode) each).remove(DESCRIPTION));
        return copy;
    }

    private static JsonNode load() {
        try (var schema = VisitFileSchema.class.getResourceAsStream("visit-file.schema.json")) {
            if (schema == null) {
                throw new IllegalStateException("the schema of the visit file is not in the program");
            }
            var node = MAPPER.readTree(schema);
            declareMeasures((ObjectNode) node.at("/$defs/measure"));
            return node;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
