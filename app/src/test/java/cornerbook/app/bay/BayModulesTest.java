package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import cornerbook.words.Catalogue;
import cornerbook.words.Language;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The modules of the bay sheet that know nothing of a browser, run by Node.js; and the words that all of them say. */
class BayModulesTest {
    private static final Path TESTS = Path.of("src/test/js");
    private static final Path MODULES = Path.of("src/main/resources/cornerbook/app/assets");
    private static final long SLOWEST_SECONDS = 120;
    private static final Pattern SAID =
            Pattern.compile("(?:\\bsay\\([^\"()]*|key: |wheels: )\"(?<key>[\\w-]+)\"(?: : \"(?<other>[\\w-]+)\")?");

    @Test
    void modelsOfTheSheetWorkWithoutABrowser() throws Exception {
        var command = new ArrayList<>(List.of("node", "--test"));
        try (var files = Files.list(TESTS)) {
            files.map(Path::toString)
                    .filter(name -> name.endsWith(".test.mjs"))
                    .sorted()
                    .forEach(command::add);
        }
        run(
                command,
                "Node.js is missing, with which the modules of the bay sheet are tested; install the package nodejs.");
    }

    /** Those of the bay sheet and of the desk, the service worker, and the tests: types by JSDoc, nothing unused, no path that forgets to answer. */
    @ParameterizedTest
    @ValueSource(strings = {"jsconfig.json", "jsconfig.worker.json", "jsconfig.test.json"})
    void modulesKeepTheirTypes(String modules) throws Exception {
        run(
                List.of("tsc", "--pretty", "false", "--project", modules),
                "The compiler of TypeScript is missing, with which the modules of the pages are checked; install the package node-typescript.");
    }

    private static void run(List<String> command, String missing) throws Exception {
        var run = start(command, missing);
        var told = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor(SLOWEST_SECONDS, TimeUnit.SECONDS)).isTrue();
        assertThat(run.exitValue()).as(told).isZero();
    }

    private static Process start(List<String> command, String missing) {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).start();
        } catch (IOException e) {
            return fail(missing, e);
        }
    }

    @Test
    void modulesSayEachMessageOfTheirCatalogueAndNoOther() throws Exception {
        var said = new TreeSet<String>();
        try (var files = Files.newDirectoryStream(MODULES, "bay*.mjs")) {
            for (var file : files) {
                SAID.matcher(Files.readString(file)).results().forEach(match -> said.addAll(keys(match)));
            }
        }
        for (var language : Language.values()) {
            assertThat(Catalogue.of("app/bay/modules").texts(language).keySet())
                    .as(language.title())
                    .containsExactlyInAnyOrderElementsOf(said);
        }
    }

    private static Set<String> keys(MatchResult match) {
        return List.of("key", "other").stream()
                .map(match::group)
                .filter(key -> key != null)
                .collect(Collectors.toSet());
    }

    /** What a module fills knows names, plural and select, and no quoting. */
    @Test
    void messagesOfTheModulesAreWithinWhatTheyCanFill() {
        for (var language : Language.values()) {
            Catalogue.of("app/bay/modules")
                    .texts(language)
                    .forEach((key, text) -> assertThat(text)
                            .as(key)
                            .doesNotContain(
                                    "'{", "'}", "''", "offset:", ", number", ", date", ", time", ", selectordinal"));
        }
    }
}
