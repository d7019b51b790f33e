package cornerbook.app.exchange;

import cornerbook.app.book.bay.RivalAnswer;
import cornerbook.app.book.bay.RivalReading;
import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.record.VisitNotes;
import java.time.Instant;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what was entered at a visit beside its readings. */
final class NotesWriter {
    private NotesWriter() {}

    static void write(VisitNotes notes, ObjectNode json) {
        for (var tick : notes.ticks()) {
            var item = entry(json, "ticks", tick.id(), tick.person(), tick.madeAt())
                    .put("tick", tick.tick())
                    .put("done", tick.done());
            HistoryWriter.putIfPresent(item, "wheel", tick.wheelTag());
            HistoryWriter.putIfPresent(item, "reason", tick.reason());
            if (!tick.counts()) {
                item.put("counts", false);
            }
            if (!tick.seen().isEmpty()) {
                tick.seen().forEach(item.putArray("seen")::add);
            }
        }
        var answers = notes.answers().stream().collect(Collectors.toMap(RivalAnswer::rivalId, Function.identity()));
        notes.rivals().forEach(rival -> write(rival, answers, json));
        for (var departure : notes.departures()) {
            var item = entry(json, "departures", departure.id(), departure.person(), departure.madeAt());
            var reasons = item.putArray("reasons");
            if (departure.acknowledgedBy() != null) {
                item.put("acknowledgedBy", departure.acknowledgedBy());
            }
            departure
                    .reasons()
                    .forEach(reason -> reasons.addObject()
                            .put("caution", reason.caution())
                            .put("sentence", reason.sentence())
                            .put("reason", reason.reason()));
        }
        notes.remarks()
                .forEach(remark -> entry(json, "remarks", remark.id(), remark.person(), remark.madeAt())
                        .put("topic", Spelling.of(remark.topic()))
                        .put("words", remark.words()));
        for (var each : notes.declined()) {
            var item = list(json, "declined")
                    .addObject()
                    .put("id", each.id())
                    .put("advice", each.advice())
                    .put("sentence", each.sentence())
                    .put("declined", each.declined())
                    .put("saidBy", each.saidBy());
            HistoryWriter.putIfPresent(item, "person", each.person().isEmpty() ? null : each.person());
            item.put("at", each.madeAt().toString());
        }
        notes.photos().forEach(kept -> write(kept, json));
        notes.authors()
                .forEach(author -> list(json, "takenBy")
                        .addObject()
                        .put("reading", author.readingId())
                        .put("person", author.person())
                        .put("at", author.madeAt().toString()));
    }

    private static void write(RivalReading rival, Map<String, RivalAnswer> answers, ObjectNode json) {
        var item = list(json, "rivals").addObject();
        HistoryWriter.write(rival.reading(), item);
        item.put("standing", rival.standingId())
                .put("person", rival.person())
                .put("at", rival.madeAt().toString());
        var answer = answers.get(rival.reading().id());
        if (answer != null) {
            var given = item.putObject("answer");
            HistoryWriter.putIfPresent(given, "id", answer.id());
            given.put("kind", Spelling.of(answer.kind()))
                    .put("person", answer.person())
                    .put("at", answer.madeAt().toString());
        }
    }

    private static void write(KeptPhoto kept, ObjectNode json) {
        var photo = kept.photo();
        var item = entry(json, "photos", photo.id(), photo.person(), photo.madeAt());
        HistoryWriter.putIfPresent(item, "corner", photo.corner());
        var part = photo.part();
        HistoryWriter.putIfPresent(item, "part", part == null ? null : Spelling.of(part));
        item.put("onSheet", photo.onSheet())
                .put("type", "image/jpeg")
                .put("sha256", kept.jpeg().sha256())
                .put("content", kept.jpeg().content());
    }

    private static ObjectNode entry(ObjectNode json, String list, String id, String person, Instant madeAt) {
        return list(json, list).addObject().put("id", id).put("person", person).put("at", madeAt.toString());
    }

    private static ArrayNode list(ObjectNode json, String name) {
        return json.withArrayProperty(name);
    }
}
