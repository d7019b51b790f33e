package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.Notes;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.store.TemplateBook;
import cornerbook.app.door.Desks;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.JsonEdits;
import cornerbook.app.fuzz.Sentences;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/**
 * A batch of a tablet with some places changed: each entry is answered, none with a fault; sent again they store nothing;
 * the book is sound afterwards.
 */
public final class BayEntriesFuzz implements FuzzTarget {
    private static final List<String> STATUSES = List.of("stored", "already", "conflict", "refused");

    /** What says how something stands, and not that something happened: it is set again, to the same. */
    private static final Set<String> SETS = Set.of("photo choice");

    private final String visitId;
    private final TemplateBook template;
    private final JsonEdits batch;

    public BayEntriesFuzz() {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        var record = new Notes(5).ofCar(car);
        template = TemplateBook.of(List.of(record));
        var photo = record.notesOf(visitId).photos().getFirst().photo().id();
        batch = new JsonEdits(BayShop.JSON.readTree(batchOf(car).replace("PHOTO", photo)));
    }

    /** One entry of each kind, of readings some; {@code #} stands for the beginning of an identity. */
    private static String batchOf(CarHistory car) {
        var visit = car.visits().getLast();
        var onCar = BayShop.JSON.writeValueAsString(visit.arrivedOn());
        var other = car.sets().stream()
                .filter(set -> set.wheels().stream()
                        .noneMatch(wheel -> visit.arrivedOn().containsValue(wheel.tag())))
                .findFirst()
                .orElseThrow();
        var stored = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            stored.put(corner, other.wheels().get(corner.ordinal()).tag());
        }
        return """
                {"entries": [
                {"id": "#01", "kind": "reading", "measure": "TREAD_DEPTH", "corner": "LF", "wheel": "LF-TAG", "spot": "OUTER", "written": "5.2"},
                {"id": "#02", "kind": "reading", "measure": "TREAD_DEPTH", "corner": "LF", "wheel": "LF-TAG", "spot": "OUTER", "written": "5.3", "shown": "#01", "reason": "Misread."},
                {"id": "#03", "kind": "reading", "measure": "TREAD_DEPTH", "corner": "LF", "wheel": "LF-TAG", "spot": "OUTER", "written": "6/32 in"},
                {"id": "#04", "kind": "answer", "rival": "#03", "take": true},
                {"id": "#05", "kind": "reading", "measure": "DISC_RUNOUT", "corner": "RF", "written": "stud 2: 0 20 35 10 µm"},
                {"id": "#06", "kind": "reading", "measure": "DISC_THICKNESS_VARIATION", "corner": "RF", "written": "24.91; 24.92; 24.90; 24.91"},
                {"id": "#07", "kind": "reading", "measure": "PAD_MOVEMENT", "corner": "RR", "spot": "INNER", "written": "tight"},
                {"id": "#08", "kind": "reading", "measure": "BATTERY_VOLTAGE", "written": "12.61 V"},
                {"id": "#09", "kind": "reading", "measure": "PRESSURE_FOUND", "corner": "LR", "wheel": "LR-TAG", "written": "36 psi"},
                {"id": "#10", "kind": "tick", "tick": "FASTENER.LF.1", "done": true},
                {"id": "#11", "kind": "photo choice", "photo": "PHOTO", "part": "DISC", "onSheet": true},
                {"id": "#12", "kind": "tool", "tool": "PRESSURE_GAUGE", "toolId": ""},
                {"id": "#13", "kind": "leaving", "wheels": STORED, "shown": {}, "dateCode.LF": "3521", "sensor.LF": "0A1B2C3D"},
                {"id": "#14", "kind": "leaving", "wheels": ON-CAR, "shown": STORED},
                {"id": "#15", "kind": "departure", "reasons": {"PEDAL": "Towed to the next shop.", "CALIPER.LF": "Towed.", "TORQUE.LF": "Towed."}}
                ]}
                """.replace("\"kind\"", "\"person\": \"Ada\", \"at\": \"2026-11-25T10:00:00Z\", \"kind\"")
                .replace("#", "00000000-0000-4000-8000-0000000000")
                .replace("LF-TAG", visit.arrivedOn().get(Corner.LF))
                .replace("LR-TAG", visit.arrivedOn().get(Corner.LR))
                .replace("STORED", BayShop.JSON.writeValueAsString(stored))
                .replace("ON-CAR", onCar);
    }

    @Override
    public void take(byte[] input) {
        var text = new Input(input);
        var sent = batch.apply(text.lines());
        try (var copy = template.copy()) {
            var desk = Desks.of(copy.book());
            try {
                var answers = answers(new EntryIntake(desk, visitId), sent, text.text());
                var before = record(copy.book());
                var accepted = accepted(sent, answers);
                var again = answers(new EntryIntake(desk, visitId), accepted, text.text());
                for (int i = 0; i < again.size(); i++) {
                    var kind = accepted.path("entries").path(i).path("kind").asString("");
                    assertThat(again.get(i).status())
                            .isIn(SETS.contains(kind) ? List.of("stored") : List.of("already", "conflict"));
                }
                assertThat(record(copy.book())).isEqualTo(before);
            } finally {
                desk.learning().close();
            }
            assertThat(copy.book().check()).isEmpty();
        }
    }

    /** Those that the tablet would send again, had it not heard the answer: one that is refused may do better later. */
    private static JsonNode accepted(JsonNode sent, List<EntryAnswer> answers) {
        var accepted = BayShop.JSON.createObjectNode();
        var entries = accepted.putArray("entries");
        for (int i = 0; i < answers.size(); i++) {
            if (!answers.get(i).status().equals("refused")) {
                entries.add(sent.path("entries").get(i));
            }
        }
        return accepted;
    }

    private static Optional<CarRecord> record(Book book) {
        return book.records().find(book.cars().list().getFirst().id());
    }

    private static List<EntryAnswer> answers(EntryIntake intake, JsonNode sent, String text) {
        List<EntryAnswer> answers;
        try {
            answers = intake.take(sent);
        } catch (RefusedEntry e) {
            Sentences.check(InEnglish.told(e), text);
            return List.of();
        }
        assertThat(answers).hasSize(sent.path("entries").size());
        for (var answer : answers) {
            assertThat(answer.status()).isIn(STATUSES);
            if (answer.status().equals("refused")) {
                Sentences.check(answer.sentence(), sent.toString());
                assertThat(answer.pointer()).startsWith("/entries/");
            }
        }
        return answers;
    }
}
