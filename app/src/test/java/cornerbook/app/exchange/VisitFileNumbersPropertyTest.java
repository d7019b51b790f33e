package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Whatever number or quantity stands in a visit file, it is taken and judged, or refused in one sentence that says where. */
class VisitFileNumbersPropertyTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final int READINGS = 20;
    private static final JsonMapper MAPPER = JsonMapper.shared();
    private static final Assessor ASSESSOR = new Assessor(LimitsFile.load());

    static Stream<String> values() {
        return Stream.of(
                "1e300",
                "-1e300",
                "1e-300",
                "1e999",
                "-0.0",
                "0",
                "-1",
                "0.5",
                "94.5",
                "4.0",
                "2147483648",
                "4294967299",
                "1e19",
                "123456789012345678901234567890",
                "\"1e300\"",
                "\"NaN\"",
                "\"Infinity\"",
                "\"NaN mm\"",
                "\"1e300 mm\"",
                "\"-5 mm\"",
                "\"0x10 mm\"",
                "\"1e-300 kg\"",
                "\"\"",
                "true",
                "null",
                "[]",
                "{}");
    }

    @ParameterizedTest
    @MethodSource("values")
    void aNumberIsTakenOrRefusedInASentence(String value) throws IOException {
        var replacement = MAPPER.readTree(value);
        for (var name : List.of("first-visit.json", "seasonal-visit.json")) {
            var example = MAPPER.writeValueAsString(shortened(Path.of("../docs/examples", name)));
            int places = places(MAPPER.readTree(example)).size();
            assertThat(places).isGreaterThan(30);
            for (int place = 0; place < places; place++) {
                var root = MAPPER.readTree(example);
                places(root).get(place).accept(replacement);
                check(VisitFile.read(MAPPER.writeValueAsString(root), TODAY));
            }
        }
    }

    /** The car with its last visit and the first of its readings, as the others are of the same kinds. */
    private static JsonNode shortened(Path file) throws IOException {
        var root = MAPPER.readTree(Files.readString(file));
        var visits = (ArrayNode) root.required("visits");
        while (visits.size() > 1) {
            visits.remove(0);
        }
        var readings = (ArrayNode) visits.get(0).required("readings");
        while (readings.size() > READINGS) {
            readings.remove(READINGS);
        }
        return root;
    }

    private static void check(VisitFile.Result result) {
        switch (result) {
            case VisitFile.Read read -> {
                var history = read.history();
                history.visits()
                        .forEach(visit ->
                                assertThat(ASSESSOR.assess(history, visit.id())).isNotNull());
                assertThat(VisitFile.read(VisitFile.write(read.record()), TODAY))
                        .isEqualTo(read);
            }
            case VisitFile.Refused refused ->
                assertThat(refused.problems()).isNotEmpty().allSatisfy(problem -> {
                    assertThat(problem.where()).startsWith("/");
                    assertThat(InEnglish.say(problem.message()))
                            .contains("expected")
                            .doesNotContainPattern(
                                    "Exception|java\\.|cornerbook\\.|at null|\\bInfinity\\b.*\\bInfinity\\b");
                });
        }
    }

    /** Ways to replace each number and each text that begins with one. */
    private static List<Consumer<JsonNode>> places(JsonNode node) {
        var places = new ArrayList<Consumer<JsonNode>>();
        switch (node) {
            case ObjectNode object ->
                object.properties().forEach(property -> {
                    if (isNumber(property.getValue())) {
                        places.add(value -> object.set(property.getKey(), value));
                    }
                    places.addAll(places(property.getValue()));
                });
            case ArrayNode array -> array.forEach(element -> places.addAll(places(element)));
            default -> {}
        }
        return places;
    }

    private static boolean isNumber(JsonNode node) {
        return node.isNumber() || (node.isString() && node.stringValue().matches("-?\\d[\\d.]*( \\S+)?"));
    }
}
