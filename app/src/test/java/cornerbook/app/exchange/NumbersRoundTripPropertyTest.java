package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A number of a visit file goes through the book and out again to its last bit, whatever number it is. */
class NumbersRoundTripPropertyTest {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final int CARS = 12;

    /** Of the whole vehicle, with a unit; thousands are grouped in one of them. */
    private static final List<Measure> MEASURES = List.of(
            Measure.BATTERY_VOLTAGE,
            Measure.BATTERY_CRANKING_CURRENT,
            Measure.BATTERY_TEMPERATURE,
            Measure.TYRE_TEMPERATURE,
            Measure.OUTSIDE_TEMPERATURE);

    private final SplittableRandom random = new SplittableRandom(20_260_106);

    @Test
    void numbersComeOutAsTheyWentIn(@TempDir Path folder) {
        for (int i = 0; i < CARS; i++) {
            var sent = new ArrayList<Double>();
            var read = VisitFile.read(fileWith(sent), ServedShop.TODAY);
            assertThat(read).isInstanceOf(VisitFile.Read.class);
            var record = ((VisitFile.Read) read).record();
            assertThat(record.history().visits().stream()
                            .flatMap(visit -> visit.readings().stream())
                            .filter(reading -> MEASURES.contains(reading.measure()))
                            .map(Reading::value))
                    .containsExactlyElementsOf(
                            sent.stream().map(value -> value == 0 ? 0.0 : value).toList());
            try (var book = EmptyBook.open(folder.resolve("book" + i))) {
                book.records().add(List.of(record));
                var kept = book.records().find(record.history().vehicle().id()).orElseThrow();
                assertThat(kept).isEqualTo(record);
                assertThat(VisitFile.read(VisitFile.write(kept), ServedShop.TODAY))
                        .isEqualTo(read);
                assertThat(book.check()).isEmpty();
            }
        }
    }

    /** The file of a car whose readings of these measures are bare numbers; what they are is added. */
    private String fileWith(List<Double> sent) {
        var file = (ObjectNode) MAPPER.readTree(VisitFile.write(ServedShop.car("demo-08")));
        for (var visit : file.required("visits")) {
            var readings = (ArrayNode) visit.required("readings");
            readings.removeIf(reading -> MEASURES.stream()
                    .anyMatch(measure -> Spelling.of(measure)
                            .equals(reading.required("measure").asString())));
            for (var measure : MEASURES) {
                double value = number(measure);
                sent.add(value);
                readings.addObject().put("measure", Spelling.of(measure)).put("value", value);
            }
        }
        return MAPPER.writeValueAsString(file);
    }

    private double number(Measure measure) {
        return switch (random.nextInt(4)) {
            case 0 -> random.nextDouble(measure.lowest(), measure.highest());
            // Three digits behind a point, which could be taken for one that groups thousands.
            case 1 -> random.nextInt((int) (1000 * measure.highest())) / 1000.0;
            case 2 ->
                List.of(-0.0, 0.0, 1e-300, Double.MIN_VALUE, measure.highest()).get(random.nextInt(5));
            default ->
                random.longs()
                        .mapToDouble(Double::longBitsToDouble)
                        .filter(any -> any >= measure.lowest() && any <= measure.highest())
                        .findFirst()
                        .orElseThrow();
        };
    }
}
