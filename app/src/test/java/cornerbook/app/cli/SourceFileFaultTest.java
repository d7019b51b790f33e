package cornerbook.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.demo.DemoShop;
import cornerbook.words.Reader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.Map;
import org.assertj.core.api.Assertions;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fault with one car is told with its id, and keeps no other car back. */
class SourceFileFaultTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void aFaultOfJudgingIsOneSentenceWithVisitFileAndId() {
        var visit = DemoShop.histories(TODAY).getFirst().visits().getLast();
        var failure = catchThrowableOfType(
                CommandFailure.class,
                () -> SourceFiles.judge(Path.of("car.json"), visit, () -> {
                    throw new IllegalStateException("wear rate at LR is -0.05");
                }));
        assertThat(failure.exitCode()).isEqualTo(1);
        assertThat(failure.sentences())
                .singleElement()
                .extracting(Reader.DEFAULT::say, Assertions.as(InstanceOfAssertFactories.STRING))
                .contains("Visit " + visit.id() + " of car.json could not be judged")
                .containsPattern("[0-9a-f]{8} in the log")
                .doesNotContain("wear rate", "Exception");
        assertThat(SourceFiles.judge(Path.of("car.json"), visit, () -> "judged"))
                .isEqualTo("judged");
    }

    @Test
    void aCarThatCannotBeReadKeepsNoOtherFromBeingWritten(@TempDir Path folder) throws Exception {
        var cars = DemoShop.histories(TODAY).subList(0, 3);
        var data = folder.resolve("book");
        try (var book = EmptyBook.open(data)) {
            book.records().addCars(cars);
        }
        var damaged = cars.get(1).vehicle().id();
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve("book.sqlite"));
                var statement = connection.createStatement()) {
            statement.execute("update vehicle set fastener_seat = 'GLUED' where id = '" + damaged + "'");
        }
        var target = Files.createDirectory(folder.resolve("out"));
        var err = new StringWriter();
        int exitCode = Main.run(
                Map.of(),
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                "export",
                "--all",
                "-o",
                target.toString(),
                "--data",
                data.toString());
        assertThat(exitCode).isEqualTo(4);
        assertThat(err.toString()).contains(damaged).doesNotContain("Exception", "\tat ");
        try (var files = Files.list(target)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            cars.get(0).vehicle().id() + ".json",
                            cars.get(2).vehicle().id() + ".json");
        }
    }
}
