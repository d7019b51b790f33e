package cornerbook.app.book.store;

import cornerbook.app.book.Book;
import cornerbook.app.book.Notes;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;

/** A book that is made once and copied for each use, so that a use leaves nothing behind for the next. */
public final class TemplateBook {
    private final byte[] content;

    private TemplateBook(byte[] content) {
        this.content = content;
    }

    /** With these cars. */
    public static TemplateBook of(List<CarRecord> cars) {
        var folder = newFolder();
        try {
            var backup = folder.resolve("backup.sqlite");
            try (var book = Book.open(folder.resolve("book"))) {
                book.records().add(cars);
                book.backup(backup);
            }
            return new TemplateBook(Files.readAllBytes(backup));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            delete(folder);
        }
    }

    /** An invented car that has some of everything, at two visits. */
    public static CarRecord car() {
        var car = ServedShop.car("demo-08");
        var visits = car.visits().subList(car.visits().size() - 2, car.visits().size());
        return new Notes(5).ofCar(new CarHistory(car.vehicle(), car.customer(), car.sets(), visits));
    }

    /** The file of the book. */
    public byte[] content() {
        return content.clone();
    }

    /** A book of its own. */
    public Copy copy() {
        var folder = newFolder();
        var file = folder.resolve(BookFile.NAME);
        // Its form is this program's: to look for migrations would take longer than all else that is done with it.
        var reading = BookFile.source(file, TransactionMode.DEFERRED);
        var writing = BookFile.source(file, TransactionMode.IMMEDIATE);
        // Nobody pulls the plug here, and to wait for the disk takes longer than the rest.
        writing.setSynchronous(SynchronousMode.OFF.getValue());
        try {
            Files.write(file, content);
            return new Copy(new Book(new BookFile(file, file, reading, writing)), folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A book that goes away when it is closed. */
    public record Copy(Book book, Path folder) implements AutoCloseable {
        @Override
        public void close() {
            book.close();
            delete(folder);
        }
    }

    public static Path newFolder() {
        try {
            return Files.createTempDirectory("cornerbook-fuzz");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
