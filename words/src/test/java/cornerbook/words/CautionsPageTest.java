package cornerbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Caution;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The list of all cautions in the documents says what the declaration says. */
class CautionsPageTest {
    private static final Reader FRENCH = new Reader(Language.FRENCH, UnitSystem.METRIC, ZoneOffset.UTC);

    @Test
    void pageFollowsFromTheDeclaration() throws IOException {
        var rows = Arrays.stream(Caution.values())
                .map(each -> "| %s | %s | %s | %s |\n"
                        .formatted(
                                each.steps().stream().map(Reader.DEFAULT::say).collect(Collectors.joining(", ")),
                                Reader.DEFAULT.say(each),
                                FRENCH.say(each),
                                Reader.DEFAULT.say(each.source())))
                .collect(Collectors.joining());
        assertThat(Files.readString(Path.of("../docs/cautions.md")))
                .as("docs/cautions.md, below its first lines")
                .endsWith("| --- | --- | --- | --- |\n" + rows);
    }
}
