package cornerbook.app.exchange;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Vin;
import cornerbook.core.finding.Problem;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The data sheet of a kind of car: what the shop has looked up once and proposes for each car of that kind, as JSON. Its vehicle is
 * that of a visit file without what is of a single car; what it means stands in docs/kind-file.md.
 */
public final class KindFile {
    private static final String FORMAT = "cornerbook-kind-file";
    private static final int LARGEST_BYTES = 100_000;
    private static final int LONGEST_TEXT = 200;
    private static final int WORDS_OF_NAME = 2;

    /** Positions 1 to 8 of the VIN, one that may be anything, and position 10. */
    private static final int VIN_LENGTH = 10;

    private static final int CHECK_POSITION = 8;
    private static final String ANY = "*";
    private static final String VEHICLE = "/vehicle";

    /** Make and model. */
    public static final String NAME = "/name";

    public static final String VIN = "/vin";
    public static final String SOURCE = "/source";

    /** What a sheet has beside its vehicle. */
    public static final List<String> OWN = List.of(NAME, VIN, SOURCE);

    private static final Set<String> PROPERTIES = Set.of("format", "version", "name", "vin", "source", "vehicle");

    /** What a car has for itself; of an object in the vehicle behind the name of that object. */
    private static final List<String> OF_ONE_CAR = List.of(
            "/id",
            "/name",
            "/plate",
            "/vin",
            "/jurisdiction",
            "/use",
            "/copiedFrom",
            "/battery/installedOn",
            "/brakeFluidChange/changedOn");

    private KindFile() {}

    /**
     * A kind of car.
     *
     * @param name make and model
     * @param source where the figures are from, as the manufacturer's handbook and its edition
     * @param vehicle what its cars have in common; by its name and VIN another car is taken for one of the kind
     */
    public record Kind(String name, String source, Vehicle vehicle) {
        /** As the sheet has it: positions 1 to 8, a star, and position 10; null where a car is told by its name only. */
        public @Nullable String vin() {
            var vin = vehicle.vin();
            return vin == null
                    ? null
                    : vin.substring(0, CHECK_POSITION) + ANY + vin.substring(VIN_LENGTH - 1, VIN_LENGTH);
        }
    }

    /** What came of reading. */
    public sealed interface Result {}

    /** A sheet that can stand. */
    public record Read(Kind kind) implements Result {}

    /**
     * Why it cannot be taken.
     *
     * @param problems at least one, at most {@link VisitFile#MOST_PROBLEMS}
     */
    public record Faulty(List<Problem> problems) implements Result {
        public Faulty {
            problems = problems.stream().limit(VisitFile.MOST_PROBLEMS).toList();
        }
    }

    /**
     * Reads a file in UTF-8.
     *
     * @param today the last date that is not in the future
     */
    public static Result read(Path file, LocalDate today) {
        try {
            return Files.size(file) > LARGEST_BYTES
                    ? faulty(new FileSaid.KindTooLarge())
                    : read(Files.readString(file), today);
        } catch (CharacterCodingException e) {
            return faulty(new FileSaid.NoUtf8(file.toString()));
        } catch (IOException e) {
            return faulty(new FileSaid.Unreadable(file.toString()));
        }
    }

    /**
     * Reads the text of a data sheet.
     *
     * @param today the last date that is not in the future
     */
    public static Result read(String json, LocalDate today) {
        if (json.isBlank()) {
            return faulty(new FileSaid.KindEmpty());
        }
        JsonNode root;
        try {
            root = VisitFile.tree(json);
        } catch (ProblemException e) {
            return new Faulty(List.of(e.problem()));
        }
        var problems = new ArrayList<Problem>();
        check(root, problems);
        if (!root.path("vehicle").isObject()) {
            return new Faulty(problems);
        }
        // What is wrong with the sheet itself keeps nobody from hearing what is wrong with its figures.
        return switch (VisitFile.read(
                asVisitFile(root, problems.isEmpty() ? text(root, "name") : "-").toString(), today)) {
            case VisitFile.Refused refused ->
                new Faulty(Stream.concat(problems.stream(), refused.problems().stream())
                        .toList());
            case VisitFile.Read read ->
                problems.isEmpty()
                        ? new Read(new Kind(
                                text(root, "name"),
                                text(root, "source"),
                                read.history().vehicle()))
                        : new Faulty(problems);
        };
    }

    /** The fields of a sheet as a form: those of a car, without what is of a single one. */
    public static List<CarField> fields() {
        return CarForm.fields().stream()
                .filter(field -> field.pointer().startsWith(VEHICLE + "/"))
                .filter(field -> OF_ONE_CAR.stream()
                        .noneMatch(pointer -> (field.pointer() + "/").startsWith(VEHICLE + pointer + "/")))
                .toList();
    }

    /** What stands in a sheet, by pointer: its own three and those of {@link #fields}. */
    public static Map<String, String> values(Kind kind) {
        var sheet = VisitFile.tree(write(kind));
        var values = CarForm.values(sheet, fields());
        OWN.forEach(pointer -> values.put(pointer, sheet.at(pointer).asString("")));
        return values;
    }

    /**
     * Reads a form.
     *
     * @param typed by pointer; an empty text is left out, and a whole VIN stands for the kind of its car
     * @param today the last date that is not in the future
     */
    public static Result read(Map<String, String> typed, LocalDate today) {
        var sheet = JsonNodeFactory.instance.objectNode().put("format", FORMAT).put("version", 1);
        for (var pointer : OWN) {
            var text = typed.getOrDefault(pointer, "").strip();
            if (!text.isEmpty()) {
                sheet.put(pointer.substring(1), pointer.equals(VIN) ? ofKind(text) : text);
            }
        }
        CarForm.writeVehicle(sheet.putObject("vehicle"), fields(), typed);
        return read(sheet.toString(), today);
    }

    /** The symbols of a whole VIN that its kind has; anything else as it is. */
    private static String ofKind(String written) {
        try {
            var whole = Vin.parse(written).symbols();
            return whole.substring(0, CHECK_POSITION) + ANY + whole.charAt(VIN_LENGTH - 1);
        } catch (Refused e) {
            return written;
        }
    }

    /** The kinds of these sheets; one that can be read no more is left out. */
    public static List<Kind> readAll(List<String> sheets, LocalDate today) {
        return sheets.stream()
                .flatMap(sheet -> read(sheet, today) instanceof Read read ? Stream.of(read.kind()) : Stream.empty())
                .toList();
    }

    private static void check(JsonNode root, List<Problem> problems) {
        root.propertyNames().stream()
                .filter(name -> !PROPERTIES.contains(name))
                .forEach(name -> problems.add(
                        new Problem("/" + VisitFileSchema.escaped(name), new FileSaid.NoPropertyOfKind(name))));
        if (!text(root, "format").equals(FORMAT) || root.path("version").asInt(0) != 1) {
            problems.add(new Problem("/format", new FileSaid.KindFormat(FORMAT)));
        }
        for (var name : List.of("name", "source")) {
            var text = text(root, name);
            if (text.isBlank() || text.length() > LONGEST_TEXT) {
                problems.add(new Problem("/" + name, new FileSaid.KindText(name, LONGEST_TEXT)));
            }
        }
        if (root.has("vin")) {
            findVin(text(root, "vin"))
                    .ifPresentOrElse(
                            vin -> {}, () -> problems.add(new Problem(VIN, new FileSaid.KindVin(shown(root, "vin")))));
        } else if (text(root, "name").split("[^\\p{L}\\p{N}]+", -1).length < WORDS_OF_NAME) {
            problems.add(new Problem(NAME, new FileSaid.KindName(shown(root, "name"))));
        }
        if (!root.path("vehicle").isObject()) {
            problems.add(new Problem(VEHICLE, new FileSaid.Missing("vehicle")));
        }
        OF_ONE_CAR.stream()
                .filter(pointer -> !root.at(VEHICLE + pointer).isMissingNode())
                .forEach(pointer -> problems.add(new Problem(VEHICLE + pointer, new FileSaid.OfOneCar())));
    }

    /** A sheet's own car, which stands in no book. */
    private static ObjectNode asVisitFile(JsonNode root, String name) {
        var file = JsonNodeFactory.instance.objectNode();
        file.put("format", "cornerbook-visit-file").put("version", 1);
        file.putObject("customer").put("id", "kind").put("name", "-");
        var vehicle = ((ObjectNode) root.path("vehicle")).deepCopy();
        vehicle.put("id", "kind").put("name", name).put("plate", "-");
        if (root.has("vin")) {
            findVin(text(root, "vin")).ifPresent(vin -> vehicle.put("vin", vin.symbols()));
        }
        file.set("vehicle", vehicle);
        file.putArray("wheelSets");
        file.putArray("visits");
        return file;
    }

    /** A number that begins so; empty for what is none. */
    private static Optional<Vin> findVin(String written) {
        var plain = written.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
        try {
            return plain.length() == VIN_LENGTH
                    ? Optional.of(Vin.parse(
                            plain.substring(0, CHECK_POSITION) + "0" + plain.substring(CHECK_POSITION + 1) + "0000000"))
                    : Optional.empty();
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    private static String text(JsonNode root, String name) {
        return root.path(name).asString("");
    }

    private static String shown(JsonNode root, String name) {
        return VisitFileSchema.shorten(root.path(name));
    }

    private static Faulty faulty(Said said) {
        return new Faulty(List.of(new Problem("", said)));
    }

    /**
     * What the cars of one's kind have in common with it, to be looked through and kept.
     *
     * @param source where the figures are from; may be empty, and is asked for then
     */
    public static Kind of(Vehicle car, String source) {
        return new Kind(car.name().replaceFirst(",.*", ""), source, car);
    }

    /** The text of a sheet; reading it gives the same kind. */
    public static String write(Kind kind) {
        var sheet = JsonNodeFactory.instance.objectNode();
        sheet.put("format", FORMAT).put("version", 1).put("name", kind.name());
        var vin = kind.vin();
        if (vin != null) {
            sheet.put("vin", vin);
        }
        sheet.put("source", kind.source());
        var nobody = new Customer("kind", "-", null, null, null);
        var vehicle = (ObjectNode) HistoryWriter.write(new CarHistory(kind.vehicle(), nobody, List.of(), List.of()))
                .path("vehicle");
        for (var pointer : OF_ONE_CAR) {
            int end = pointer.lastIndexOf('/');
            if (vehicle.at(pointer.substring(0, end)) instanceof ObjectNode object) {
                object.remove(pointer.substring(end + 1));
            }
        }
        sheet.set("vehicle", vehicle);
        return sheet.toPrettyString() + "\n";
    }
}
