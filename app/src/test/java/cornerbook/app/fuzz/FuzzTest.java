package cornerbook.app.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Searches for inputs that break a promise: Jazzer changes the kept ones, guided by the branches that they reach. Each
 * target gets its share of {@code -Dfuzz.seconds}, in a process of its own, and a new seed that stands in its log. What
 * fails is kept and printed; {@link CorpusRegressionTest} runs it once it stands in the corpus.
 */
@Tag("fuzz")
class FuzzTest {
    private static final Path WORK = Path.of("target", "fuzz");
    /** Of all targets together. */
    private static final int SECONDS = Integer.getInteger("fuzz.seconds", 60);

    private static final String DICTIONARY = "src/test/resources/fuzz/dictionary.txt";

    private static List<String> names() {
        var only = System.getProperty("fuzz.only", "");
        return only.isEmpty() ? FuzzTargets.names() : List.of(only.split(","));
    }

    @ParameterizedTest
    @MethodSource("names")
    void noInputBreaksThePromise(String name) throws IOException, InterruptedException {
        var folder = Files.createDirectories(WORK.resolve(name));
        var found = Files.createDirectories(folder.resolve("found"));
        var log = folder.resolve("log.txt");
        int exit = new ProcessBuilder(command(name, folder, found))
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start()
                .waitFor();
        var lines = Files.readAllLines(log, StandardCharsets.ISO_8859_1);
        lines.stream()
                .filter(line -> line.matches("INFO: Seed: .*|Done .*"))
                .forEach(line -> System.out.printf("%s: %s%n", name, line));
        assertThat(exit)
                .as(
                        "%s failed; its input is kept in %s, to be moved to %s%n%s",
                        name, folder, FuzzTargets.corpus(name), tail(lines))
                .isZero();
    }

    private static List<String> command(String name, Path folder, Path found) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx768m",
                "-XX:+UseSerialGC",
                "--enable-native-access=ALL-UNNAMED",
                "--sun-misc-unsafe-memory-access=allow",
                "-D" + FuzzEntry.TARGET + "=" + name,
                "-Djava.util.logging.config.file=" + System.getProperty("java.util.logging.config.file", ""),
                "-cp",
                System.getProperty("java.class.path"),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + FuzzEntry.class.getName(),
                "--instrumentation_includes=cornerbook.**",
                "--custom_hook_includes=cornerbook.**",
                "--reproducer_path=" + folder,
                "-max_total_time=" + Math.max(1, SECONDS / names().size()),
                "-max_len=65536",
                "-timeout=60",
                "-rss_limit_mb=0",
                "-dict=" + DICTIONARY,
                "-artifact_prefix=" + folder + File.separator,
                found.toString(),
                FuzzTargets.corpus(name).toString());
    }

    private static String tail(List<String> lines) {
        return String.join("\n", lines.subList(Math.max(0, lines.size() - 60), lines.size()));
    }
}
