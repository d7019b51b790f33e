package cornerbook.app.exchange;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.bay.RivalAnswer;
import cornerbook.app.book.bay.RivalReading;
import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.photo.Jpeg;
import cornerbook.app.photo.PhotoIntake;
import cornerbook.app.text.PlainText;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Subject;
import cornerbook.core.say.Refused;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads what was entered at one visit beside its readings. */
final class NotesReader {
    private static final Pattern FASTENER = Pattern.compile("FASTENER\\.(?:LF|RF|LR|RR)\\.\\d+");

    private final Visit visit;
    private final Set<String> seen;

    /**
     * Of a visit that was read already.
     *
     * @param seen ids of notes that the file has had so far; this reader adds its own
     */
    NotesReader(Visit visit, Set<String> seen) {
        this.visit = visit;
        this.seen = seen;
    }

    /** The notes that a visit of the file has. */
    VisitNotes read(JsonObject json) {
        var rivals = json.optionalChildren("rivals");
        return new VisitNotes(
                each(json, "ticks", this::tick),
                rivals.stream().map(this::rival).toList(),
                rivals.stream()
                        .filter(rival -> rival.has("answer"))
                        .map(NotesReader::answer)
                        .toList(),
                each(json, "departures", this::departure),
                each(json, "photos", this::photo),
                each(json, "takenBy", this::author),
                each(json, "remarks", this::remark),
                each(json, "declined", this::declined));
    }

    private static <T> List<T> each(JsonObject json, String name, Function<JsonObject, T> read) {
        return json.optionalChildren(name).stream().map(read).toList();
    }

    private WorkTick tick(JsonObject json) {
        return new WorkTick(
                id(json),
                tickName(json),
                json.optionalText("wheel"),
                new WorkTick.Answer(json.flag("done"), openReason(json)),
                !json.has("counts") || json.flag("counts"),
                json.has("seen") ? json.texts("seen") : List.of(),
                json.text("person"),
                madeAt(json));
    }

    /** What is done is not left open. */
    private static @Nullable String openReason(JsonObject json) {
        var reason = json.optionalText("reason");
        if (reason != null && json.flag("done")) {
            throw new ProblemException(json.where() + "/reason", new FileSaid.DoneWithReason());
        }
        return reason;
    }

    private Remark remark(JsonObject json) {
        return new Remark(
                id(json),
                json.constant("topic", Remark.Topic.class),
                json.text("words"),
                json.text("person"),
                madeAt(json));
    }

    private Declined declined(JsonObject json) {
        var person = json.optionalText("person");
        return new Declined(
                id(json),
                json.text("advice"),
                json.text("sentence"),
                json.flag("declined"),
                json.text("saidBy"),
                person == null ? "" : person,
                madeAt(json));
    }

    /** A fastener's tick names its corner, for what follows from it. */
    private static String tickName(JsonObject json) {
        var tick = json.text("tick");
        if (tick.startsWith(WorkTick.FASTENER) && !FASTENER.matcher(tick).matches()) {
            throw new ProblemException(json.where() + "/tick", new FileSaid.NoFastener(PlainText.shown(tick)));
        }
        return tick;
    }

    private RivalReading rival(JsonObject json) {
        id(json);
        var reading = HistoryReader.reading(visit.id(), json);
        var standing = json.text("standing");
        var stands = visit.readings().stream()
                .filter(other -> other.id().equals(standing))
                .findFirst()
                .filter(reading::isAtSamePlaceAs);
        if (stands.isEmpty()) {
            throw new ProblemException(
                    json.where() + "/standing", new FileSaid.NotAtThisPlace(PlainText.shown(standing)));
        }
        if (visit.readings().stream().map(Reading::id).anyMatch(reading.id()::equals)) {
            throw new ProblemException(json.where() + "/id", new FileSaid.IsReading(reading.id()));
        }
        return new RivalReading(reading, standing, json.text("person"), madeAt(json));
    }

    private static RivalAnswer answer(JsonObject rival) {
        var json = rival.child("answer");
        return new RivalAnswer(
                json.optionalText("id"),
                rival.text("id"),
                json.constant("kind", RivalAnswer.Kind.class),
                json.text("person"),
                madeAt(json));
    }

    private Departure departure(JsonObject json) {
        return new Departure(
                id(json),
                json.text("person"),
                madeAt(json),
                each(json, "reasons", NotesReader::reason),
                json.optionalText("acknowledgedBy"));
    }

    private static Departure.Reason reason(JsonObject json) {
        return new Departure.Reason(json.text("caution"), json.text("sentence"), json.text("reason"));
    }

    private ReadingAuthor author(JsonObject json) {
        var reading = json.text("reading");
        if (visit.readings().stream().map(Reading::id).noneMatch(reading::equals)) {
            throw new ProblemException(json.where() + "/reading", new FileSaid.NoReading(reading));
        }
        if (!seen.add("taken " + reading)) {
            throw new ProblemException(json.where() + "/reading", new FileSaid.TwoPeople(reading));
        }
        return new ReadingAuthor(reading, json.text("person"), madeAt(json));
    }

    private KeptPhoto photo(JsonObject json) {
        var photo = new Photo(
                id(json),
                json.optionalConstant("corner", Corner.class),
                json.optionalConstant("part", Subject.Part.class),
                json.text("person"),
                madeAt(json),
                json.flag("onSheet"));
        return new KeptPhoto(photo, content(json));
    }

    /** Refused when it is not what its digest says, before anything looks into it. */
    private static Jpeg content(JsonObject json) {
        try {
            var bytes = bytes(json);
            var digest = new Jpeg(bytes).sha256();
            if (!digest.equals(json.text("sha256"))) {
                throw new ProblemException(json.where() + "/sha256", new FileSaid.OtherDigest(digest));
            }
            return PhotoIntake.takeKept(bytes);
        } catch (Refused e) {
            throw new ProblemException(json.where() + "/content", e.said());
        }
    }

    private static byte[] bytes(JsonObject json) {
        try {
            return Base64.getDecoder().decode(json.text("content"));
        } catch (IllegalArgumentException e) {
            throw new ProblemException(json.where() + "/content", new FileSaid.NoBase64());
        }
    }

    private String id(JsonObject json) {
        var id = json.text("id");
        if (!seen.add(id)) {
            throw new ProblemException(json.where() + "/id", new FileSaid.StandsTwice(id));
        }
        return id;
    }

    private static Instant madeAt(JsonObject json) {
        try {
            return Instant.parse(json.text("at"));
        } catch (DateTimeException e) {
            throw new ProblemException(json.where() + "/at", new FileSaid.NoMoment(PlainText.shown(json.text("at"))));
        }
    }
}
