package cornerbook.core.reference;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** Reference data of the tests. */
public final class ReferenceLines {
    private ReferenceLines() {}

    /** Lines of a file under {@code /reference}, without remarks, which begin with #. */
    public static List<String> of(String name) {
        try {
            var resource = Objects.requireNonNull(ReferenceLines.class.getResource("/reference/" + name));
            return Files.readAllLines(Path.of(resource.toURI())).stream()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    public static List<Double> numbers(String line) {
        return Arrays.stream(line.split(",", -1)).map(Double::valueOf).toList();
    }
}
