package cornerbook.app.cli.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.knowledge.SigningKey;
import cornerbook.words.Reader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** From the book that taught to the one that takes in. All cars are invented. */
class KnowledgeVerbTest {
    private final LocalDate today = LocalDate.now(ZoneId.systemDefault());

    @TempDir
    private Path folder;

    /** What was printed, or the sentence that was refused. */
    private String run(String... arguments) {
        var out = new StringWriter();
        var refused = new StringWriter();
        var verb = new KnowledgeVerb(
                new Terminal(Reader.DEFAULT, new PrintWriter(out)),
                () -> EmptyBook.open(folder.resolve("small")),
                KnowledgeVerbTest::text);
        new CommandLine(verb)
                .setExecutionExceptionHandler((exception, line, parsed) -> {
                    refused.append(exception.toString());
                    return 3;
                })
                .execute(arguments);
        return out + refused.toString();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void whatABookTaughtIsTakenInByAnother() throws IOException {
        var key = folder.resolve("key").toString();
        var made = run("make-key", key);
        assertThat(made).contains("BEGIN PUBLIC KEY").doesNotContain("PRIVATE");
        var pub = Files.writeString(folder.resolve("pub"), made).toString();
        var file = folder.resolve("knowledge.txt");
        try (var book = EmptyBook.open(folder.resolve("many"))) {
            book.records().addCars(DemoShop.histories(today, 0, 30).toList());
            Files.writeString(file, book.knowledge().forOthers(today).write(SigningKey.read(Path.of(key))));
        }
        assertThat(run()).contains("Nothing was taken in");
        assertThat(run("take", file.toString())).contains("NotTrusted");
        assertThat(run("trust", pub)).contains("NoName");
        assertThat(run("trust", pub, "--name", "Réseau inventé")).contains("The shop trusts Réseau inventé");
        assertThat(run("look", file.toString()))
                .contains("30 cars of 1 shop, signed by Réseau inventé", "wear at the front", "with it");
        assertThat(run()).contains("Nothing was taken in");
        assertThat(run("take", file.toString())).startsWith("Taken in: from 30 cars of 1 shop");
        assertThat(run()).startsWith("What counts is from 30 cars of 1 shop");
        assertThat(run("take", file.toString())).contains("StandsAlready");
        assertThat(run("take-back")).startsWith("Taken back");
        assertThat(run("take-back")).contains("NothingStands");
        assertThat(run("distrust", pub)).contains("no longer");
        assertThat(run("take", file.toString())).contains("NotTrusted");
    }

    @Test
    void whatIsNotMeantIsRefused() {
        assertThat(run("take")).contains("NeedsFile");
        assertThat(run("show", "file")).contains("TakesNoFile");
        assertThat(run("teach")).contains("NoSuchAction");
        assertThat(run("make-key", folder.toString())).contains("KeyIsThere");
    }
}
