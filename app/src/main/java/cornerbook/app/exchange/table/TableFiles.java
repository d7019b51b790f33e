package cornerbook.app.exchange.table;

import cornerbook.app.book.Book;
import cornerbook.app.book.out.CarRows;
import cornerbook.app.book.out.OutLedger;
import cornerbook.app.file.OwnerOnly;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Writes all tables of a book into a folder; a table passes through, however long it is. */
public final class TableFiles {
    private static final String UNFINISHED = ".cornerbook-unfinished";

    private TableFiles() {}

    /** Is told how far it is. */
    public interface Progress {
        void advance(int done, int all);
    }

    /**
     * Makes the folder of all tables. It appears under its name when all of them are whole; whoever is stopped before leaves a
     * folder beside it whose name says so.
     *
     * @param folder is not there, or is empty
     * @param withNames whether plates, names, marks and free words are in it
     * @return the files
     * @throws IOException when it cannot be written
     */
    public static List<Path> makeFolder(Book book, Path folder, TableForm form, boolean withNames, Progress progress)
            throws IOException {
        var place = folder.toAbsolutePath();
        var beside = Files.createTempDirectory(
                Objects.requireNonNullElse(place.getParent(), place), place.getFileName() + UNFINISHED);
        try {
            write(book, beside, form, withNames, progress);
            Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            remove(beside);
        }
        return BookTables.ALL.stream()
                .map(table -> folder.resolve(table.name() + form.ending()))
                .toList();
    }

    /** Writes the tables into a folder that is there; they are whole when this returns. */
    public static List<Path> write(Book book, Path folder, TableForm form, boolean withNames, Progress progress)
            throws IOException {
        var open = new ArrayList<OpenTable<?>>();
        try {
            for (var table : BookTables.ALL) {
                open.add(OpenTable.begin(table, folder, form, withNames));
            }
            book.out().walk(new OutLedger.Walker() {
                private int cars;

                @Override
                public void begin(int all) {
                    cars = all;
                }

                @Override
                public void take(CarRows car) {
                    for (var table : open) {
                        table.write(car, withNames);
                    }
                    progress.advance(car.number(), cars);
                }
            });
            for (var table : open) {
                table.writer().finish();
            }
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } finally {
            for (var table : open) {
                table.out().close();
            }
        }
        return open.stream().<Path>map(OpenTable::file).toList();
    }

    private record OpenTable<R>(BookTable<R> table, Path file, OutputStream out, TableWriter writer) {
        static <R> OpenTable<R> begin(BookTable<R> table, Path folder, TableForm form, boolean withNames)
                throws IOException {
            var file = folder.resolve(table.name() + form.ending());
            OwnerOnly.createFile(file);
            var out = new BufferedOutputStream(Files.newOutputStream(file));
            return new OpenTable<>(table, file, out, form.begin(out, table.columns(withNames)));
        }

        void write(CarRows car, boolean withNames) {
            try {
                table.write(car, withNames, writer);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (var file : (Iterable<Path>) files::iterator) {
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
    }
}
