package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.Notes;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.door.ServedShop;
import cornerbook.core.finding.Subject;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** All that a book has of a car goes out, into another book, and out again as the same bytes. */
class RecordRoundTripPropertyTest {
    private static final JsonMapper MAPPER = new JsonMapper();

    private static List<CarRecord> records(long seed) {
        var notes = new Notes(seed);
        return ServedShop.cars().stream().map(notes::ofCar).toList();
    }

    @Test
    void exportOfAnImportIsTheSameFile(@TempDir Path folder) {
        for (long seed = 1; seed <= 3; seed++) {
            try (var first = EmptyBook.open(folder.resolve("first" + seed));
                    var second = EmptyBook.open(folder.resolve("second" + seed))) {
                first.records().add(records(seed));
                for (var car : first.cars().list()) {
                    var file = VisitFile.write(first.records().find(car.id()).orElseThrow());
                    var read = (VisitFile.Read) VisitFile.read(file, ServedShop.TODAY);
                    second.records().add(List.of(read.record()));
                    assertThat(VisitFile.write(second.records().find(car.id()).orElseThrow()))
                            .isEqualTo(file);
                }
                assertThat(second.check()).isEmpty();
                assertThat(second.cars().list()).hasSameSizeAs(first.cars().list());
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "photos | sha256 | 00 | /sha256 | the content has the SHA-256",
                "photos | content | AAAA | /sha256 | the content has the SHA-256",
                "photos | content | ???? | /content | not in base64",
                "photos | type | image/svg+xml | /type | does not fit, expected",
                "photos | at | today | /at | is no moment",
                "rivals | standing | nothing | /standing | is no reading of this visit at this place",
                "ticks | done | perhaps | /done | does not fit",
                "takenBy | reading | nothing | /reading | is no reading of this visit"
            })
    void whatDoesNotFitIsRefusedAtItsPlace(String list, String name, String value, String where, String words) {
        var problems = refused(visit -> ((ObjectNode) visit.required(list).get(0)).put(name, value));
        assertThat(problems.problems().getFirst().where()).endsWith("/" + list + "/0" + where);
        assertThat(InEnglish.say(problems.problems().getFirst().message())).contains(words);
    }

    @Test
    void noteThatStandsTwiceIsRefused() {
        var problems = refused(visit -> {
            var ticks = visit.withArrayProperty("ticks");
            ticks.add(ticks.get(0));
        });
        assertThat(InEnglish.say(problems.problems().getFirst().message())).contains("stands twice");
    }

    @Test
    void noteWhoseIdTheBookHasKeepsTheWholeCarOut(@TempDir Path folder) {
        var records = records(7);
        try (var book = EmptyBook.open(folder)) {
            book.records().add(List.of(records.get(0)));
            var id = records.get(0).history().visits().getFirst().id();
            var other = records.get(1).history();
            var stolen = new CarRecord(
                    other,
                    java.util.Map.of(
                            other.visits().getFirst().id(), records.get(0).notesOf(id)),
                    List.of(),
                    List.of());
            assertThatThrownBy(() -> book.records().add(List.of(stolen)))
                    .extracting(InEnglish::told, STRING)
                    .contains("is in the book already");
            assertThat(book.cars().find(other.vehicle().id())).isEmpty();
        }
    }

    @Test
    void schemaKnowsEveryPartThatAPhotoMayBelongTo() {
        var parts = VisitFileSchema.node().at("/$defs/visit/properties/photos/items/properties/part/enum");
        assertThat(parts.valueStream().map(part -> part.stringValue()))
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(Subject.Part.values()).map(Spelling::of).toList());
    }

    /** Of the first visit that has some of everything. */
    private static VisitFile.Refused refused(Consumer<ObjectNode> change) {
        for (var record : records(5)) {
            var file = (ObjectNode) MAPPER.readTree(VisitFile.write(record));
            for (var visit : file.required("visits")) {
                if (Stream.of("ticks", "rivals", "photos", "takenBy").allMatch(visit::has)) {
                    change.accept((ObjectNode) visit);
                    return (VisitFile.Refused) VisitFile.read(MAPPER.writeValueAsString(file), ServedShop.TODAY);
                }
            }
        }
        throw new IllegalStateException("no visit has everything");
    }
}
