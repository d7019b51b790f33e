package cornerbook.app.exchange;

import cornerbook.app.book.record.CarRecord;
import cornerbook.core.assess.IdentityRules;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.finding.Problem;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The visit file: one car with its owner, wheel sets and visits as JSON. Its form is docs/visit-file.schema.json, with
 * the measures that core declares; what it means stands in docs/visit-file.md.
 */
public final class VisitFile {
    /** So many problems are told of one file; the rest shows when these are mended. */
    public static final int MOST_PROBLEMS = 20;

    /** Some hundred photos of a car's years, and their text. */
    private static final long LARGEST_BYTES = 100_000_000;

    /** Sees a name that an object has twice when it is put into the tree. */
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** Keeps a list of the names of each object besides, and so tells where the second one stands. */
    private static final JsonMapper TELLING_WHERE = MAPPER.rebuild()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private VisitFile() {}

    /** What came of reading. */
    public sealed interface Result {}

    /** A car whose history keeps the rules. */
    public record Read(CarRecord record) implements Result {
        /** A car of which there is nothing but its history. */
        public Read(CarHistory history) {
            this(new CarRecord(history));
        }

        public CarHistory history() {
            return record.history();
        }
    }

    /**
     * Why the file cannot be taken.
     *
     * @param problems at least one, at most {@link #MOST_PROBLEMS}
     */
    public record Refused(List<Problem> problems) implements Result {
        public Refused {
            problems = problems.stream().limit(MOST_PROBLEMS).toList();
        }
    }

    /**
     * Reads a file in UTF-8.
     *
     * @param today the last date that is not in the future
     */
    public static Result read(Path file, LocalDate today) {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                return refused(new FileSaid.FileTooLarge(file.toString()));
            }
            return read(Files.readString(file), today);
        } catch (CharacterCodingException e) {
            return refused(new FileSaid.NoUtf8(file.toString()));
        } catch (IOException e) {
            return refused(new FileSaid.Unreadable(file.toString()));
        }
    }

    /**
     * Reads the text of a visit file.
     *
     * @param today the last date that is not in the future
     */
    public static Result read(String json, LocalDate today) {
        if (json.length() > LARGEST_BYTES) {
            return refused(new FileSaid.FileTooLarge(null));
        }
        JsonNode root;
        try {
            root = tree(json);
        } catch (ProblemException e) {
            return new Refused(List.of(e.problem()));
        }
        var beyond = FileNumbers.check(root);
        if (!beyond.isEmpty()) {
            return new Refused(beyond);
        }
        var misshapen = VisitFileSchema.check(root);
        if (!misshapen.isEmpty()) {
            return new Refused(misshapen);
        }
        var reader = new HistoryReader();
        var record = reader.read(root);
        if (record.isEmpty()) {
            return new Refused(reader.problems());
        }
        var broken = new ArrayList<>(IdentityRules.check(record.get().history()));
        broken.addAll(VisitRules.check(record.get().history(), today));
        return broken.isEmpty() ? new Read(record.get()) : new Refused(broken);
    }

    /**
     * What stands in a text.
     *
     * @throws ProblemException when it is no JSON, or has a name twice
     */
    static JsonNode tree(String json) {
        var text = withoutMark(json);
        JsonNode root;
        try {
            root = quickTree(text).orElseGet(() -> TELLING_WHERE.readTree(text));
        } catch (JacksonException e) {
            throw new ProblemException("", malformed(e));
        }
        if (root.isMissingNode()) {
            throw new ProblemException("", new FileSaid.Empty());
        }
        return root;
    }

    /** Empty when something is wrong with it. */
    private static Optional<JsonNode> quickTree(String json) {
        try {
            return Optional.of(MAPPER.readTree(json));
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    /** The schema that files are checked by, as JSON Schema 2020-12. */
    public static String schema() {
        return VisitFileSchema.node().toPrettyString();
    }

    /** The visit file of a history; reading it gives the same history. */
    public static String write(CarHistory history) {
        return write(new CarRecord(history));
    }

    /** The visit file of a car with all that the book has of it; reading it gives the same. */
    public static String write(CarRecord record) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(HistoryWriter.write(record)) + "\n";
    }

    /** Some editors begin a text in UTF-8 with a byte order mark, which RFC 8259, section 8.1, lets a reader pass over. */
    private static String withoutMark(String json) {
        return json.startsWith("\ufeff") ? json.substring(1) : json;
    }

    private static Said malformed(JacksonException e) {
        if (e instanceof StreamConstraintsException) {
            return new FileSaid.TooDeep();
        }
        var place = e.getLocation();
        // What the parser adds in brackets or after "enable" is about its own settings.
        var what = String.valueOf(e.getOriginalMessage()).replaceFirst("(?s)( \\(|: enable ).*", "");
        return place == null
                ? new FileSaid.NoJson(what)
                : new FileSaid.NoJsonAt(place.getLineNr(), place.getColumnNr(), what);
    }

    private static Refused refused(Said message) {
        return new Refused(List.of(new Problem("", message)));
    }
}
