package cornerbook.app.log;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LogTest {
    private static final JsonMapper JSON = new JsonMapper();

    @TempDir
    private Path book;

    private static LogRecord record(String logger, Level level, String message, @Nullable Throwable thrown) {
        var record = new LogRecord(level, message);
        record.setLoggerName(logger);
        record.setThrown(thrown);
        return record;
    }

    private JsonNode lastLine() throws IOException {
        return JSON.readTree(
                Files.readAllLines(book.resolve("log/cornerbook.jsonl")).getLast());
    }

    @Test
    void faultIsOneLineWithItsIdAndWhereItWasButNotWhatPeopleTyped() throws IOException {
        var file = new LogFile(book);
        file.publish(new FaultRecord(
                "1a2b3c4d", "answering GET /visits/v7", new IllegalStateException("Ida Invented, plate QX 0001")));
        var line = lastLine();
        assertThat(line.path("level").stringValue()).isEqualTo("severe");
        assertThat(line.path("fault").stringValue()).isEqualTo("1a2b3c4d");
        assertThat(line.path("what").stringValue()).isEqualTo("Fault 1a2b3c4d while answering GET /visits/v7");
        assertThat(line.path("time").stringValue()).matches("20[0-9]{2}-.*Z");
        assertThat(line.path("trace").toString())
                .contains("IllegalStateException", "LogTest.java")
                .doesNotContain("Ida", "QX 0001");
    }

    @Test
    void whatTheMachineAndCoreSayIsKept() throws IOException {
        var file = new LogFile(book);
        var ofCore = new IllegalArgumentException("wear rate at \"Ida\" is -0.0009");
        ofCore.setStackTrace(
                new StackTraceElement[] {new StackTraceElement("cornerbook.core.wear.Invented", "check", "I.java", 1)});
        file.publish(record("cornerbook.app.desk", Level.WARNING, "A page failed", ofCore));
        assertThat(lastLine().path("trace").toString()).contains("is -0.0009").doesNotContain("Ida");
        file.publish(
                record("cornerbook.app.desk", Level.WARNING, "A page failed", new ArithmeticException("/ by zero")));
        assertThat(lastLine().path("trace").toString()).contains("/ by zero");
        file.publish(record("org.library", Level.SEVERE, "No glyph for Ida", new RuntimeException("Ida")));
        assertThat(Files.readString(book.resolve("log/cornerbook.jsonl"))).doesNotContain("Ida");
    }

    @Test
    void whatAPersonIsToldIsNamedWithoutItsFacts() throws IOException {
        var file = new LogFile(book);
        file.publish(record("cornerbook.app.desk", Level.WARNING, "A page failed", new Refused(Said.verbatim("Ida"))));
        assertThat(lastLine().path("trace").toString())
                .contains("Refused: Verbatim")
                .doesNotContain("Ida");
    }

    @Test
    void onlyTheOwnerReadsItAndItStaysBounded() throws IOException {
        var file = new LogFile(book);
        var message = "x".repeat(200_000);
        for (int i = 0; i < 50; i++) {
            file.publish(record("cornerbook.app.desk", Level.INFO, message + i, null));
        }
        try (var files = Files.list(book.resolve("log"))) {
            var found = files.toList();
            assertThat(found).hasSize(LogFile.MOST_FILES);
            for (var each : found) {
                assertThat(Files.size(each)).isLessThanOrEqualTo(LogFile.LARGEST_BYTES);
                assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(each)))
                        .isEqualTo("rw-------");
            }
        }
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(book.resolve("log"))))
                .isEqualTo("rwx------");
        assertThat(lastLine().path("what").stringValue()).endsWith("x49");
    }

    @Test
    void logOfABookThatIsGoneIsNotMadeAnew() {
        new LogFile(book.resolve("gone")).publish(record("cornerbook", Level.INFO, "The pages are stopped", null));
        assertThat(book.resolve("gone")).doesNotExist();
    }

    @Test
    void whoRunsTheServerSeesWarningsAsOneLineEach() {
        var shown = new ByteArrayOutputStream();
        var lines = new LogLines(new PrintStream(shown, true, StandardCharsets.UTF_8));
        lines.publish(record("cornerbook.app.desk", Level.INFO, "Cornerbook serves its pages", null));
        lines.publish(new FaultRecord("1a2b3c4d", "learning from the book", new IllegalStateException("Ida")));
        assertThat(shown.toString(StandardCharsets.UTF_8).strip())
                .matches("20[0-9-]+ [0-9:]+ Fault 1a2b3c4d while learning from the book\\.");
    }
}
