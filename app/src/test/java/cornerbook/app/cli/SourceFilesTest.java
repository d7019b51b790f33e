package cornerbook.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.Book;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.say.Said;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many files come one after the other, in their order, and all or none. Cars are invented. */
class SourceFilesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path folder;

    private final List<Path> files = new ArrayList<>();

    @BeforeEach
    void write() throws IOException {
        for (var history : DemoShop.histories(TODAY)) {
            files.add(Files.writeString(
                    folder.resolve(history.vehicle().id() + ".json"), VisitFile.write(new CarRecord(history))));
        }
    }

    @Test
    void theyComeInTheirOrder() {
        var ids = new ArrayList<String>();
        new SourceFiles(files, (file, record) -> List.of(), record -> {})
                .forEach(record -> ids.add(record.history().vehicle().id()));
        assertThat(ids)
                .containsExactlyElementsOf(DemoShop.histories(TODAY).stream()
                        .map(history -> history.vehicle().id())
                        .toList());
    }

    @Test
    void afterOneThatCannotStandNoOtherIsGivenAndEachThatCannotIsTold() throws IOException {
        Files.writeString(files.get(1), "{}");
        Files.writeString(files.get(7), "no car");
        var given = new ArrayList<String>();
        var sources = new SourceFiles(
                files,
                (file, record) -> file.equals(files.get(4)) ? List.of(Said.verbatim("asked")) : List.of(),
                record -> given.add(record.history().vehicle().id()));
        assertThatThrownBy(() -> sources.forEach(record -> {}))
                .isInstanceOfSatisfying(
                        CommandFailure.class,
                        failure -> assertThat(failure.sentences())
                                .extracting(Object::toString)
                                .anyMatch(told -> told.contains(files.get(1).toString()))
                                .anyMatch(told -> told.contains(files.get(7).toString()))
                                .anyMatch(told -> told.contains("asked")));
        assertThat(given).hasSize(1);
    }

    @Test
    void aBookIsNotMadeOfSomeOfThem() throws IOException {
        Files.writeString(files.getLast(), "{}");
        var place = folder.resolve("book");
        assertThatThrownBy(() -> Book.make(
                        place,
                        book -> book.records().add(new SourceFiles(files, (file, record) -> List.of(), record -> {}))))
                .isInstanceOf(CommandFailure.class);
        assertThat(place).doesNotExist();
    }
}
