package cornerbook.app.cars;

import cornerbook.app.exchange.VisitFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Cars that a technician meets, each a visit file with what must be said of it beside it. All in them is invented. */
public final class CarLibrary {
    private static final Path FOLDER = Path.of("src", "test", "resources", "cars");
    private static final String EXPECTED = ".expected.json";
    /** After the last visit of every car. */
    static final LocalDate TODAY = LocalDate.of(2026, 11, 29);

    /** A field that nobody reads would expect nothing. */
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private static final Assessor ASSESSOR = new Assessor(LimitsFile.load());

    private CarLibrary() {}

    /** The names of the cars of which today is said what is expected. */
    static List<String> namesOfToday() {
        return names().stream().filter(name -> expected(name).waits() == null).toList();
    }

    /** The names of the cars, in order. */
    public static List<String> names() {
        try (var files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(EXPECTED))
                    .map(name -> name.substring(0, name.length() - EXPECTED.length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String text(String name) {
        return read(name + ".json");
    }

    static ExpectedCar expected(String name) {
        return MAPPER.readValue(read(name + EXPECTED), ExpectedCar.class);
    }

    /** What comes of reading a visit file; a file is held against its schema as it is read. */
    static VisitFile.Result result(String text) {
        return VisitFile.read(text, TODAY);
    }

    /** The car of a visit file that can be taken. */
    public static CarHistory car(String text) {
        return switch (result(text)) {
            case VisitFile.Read read -> read.history();
            case VisitFile.Refused refused ->
                throw new AssertionError(refused.problems().toString());
        };
    }

    /** The last visit, judged as the verb assess judges it. */
    public static Assessment assess(CarHistory car) {
        return ASSESSOR.assess(car, car.visits().getLast().id());
    }

    private static String read(String file) {
        try {
            return Files.readString(FOLDER.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
