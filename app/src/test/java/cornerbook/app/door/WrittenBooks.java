package cornerbook.app.door;

import cornerbook.app.book.EmptyBook;
import cornerbook.core.car.CarHistory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Books of the same cars are written once and copied: to write one anew for each test took longer than many a test. */
final class WrittenBooks {
    private static final Map<List<CarHistory>, byte[]> WRITTEN = new ConcurrentHashMap<>();

    private WrittenBooks() {}

    /** Puts a book of these cars into an empty folder, or adds them to the book that is there. */
    static void place(Path folder, List<CarHistory> cars) {
        var file = folder.resolve("book.sqlite");
        if (Files.exists(file)) {
            add(folder, cars);
            return;
        }
        var written = WRITTEN.get(cars);
        try {
            if (written == null) {
                add(folder, cars);
                WRITTEN.put(cars, Files.readAllBytes(file));
            } else {
                Files.createDirectories(folder);
                Files.write(file, written);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void add(Path folder, List<CarHistory> cars) {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(cars);
        }
    }
}
