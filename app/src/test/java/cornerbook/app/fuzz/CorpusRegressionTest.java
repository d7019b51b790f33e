package cornerbook.app.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kept input of every target, once: those that the search starts from, and those that it once failed with. */
class CorpusRegressionTest {
    private static List<String> names() {
        return FuzzTargets.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyKeptInputIsTakenAsPromised(String name) throws Exception {
        var target = FuzzTargets.open(name);
        var inputs = FuzzTargets.inputs(name);
        assertThat(inputs).isNotEmpty();
        for (var input : inputs) {
            take(target, input);
        }
    }

    private static void take(FuzzTarget target, Path input) throws Exception {
        try {
            target.take(Files.readAllBytes(input));
        } catch (RuntimeException | AssertionError e) {
            throw new AssertionError("with " + input, e);
        }
    }
}
