package cornerbook.app.desk.out;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.Book;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.exchange.table.TableFiles;
import cornerbook.app.exchange.table.TableForm;
import cornerbook.app.judge.Judged;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The whole book in one zip file; a car, or a piece of a table, is in memory at a time. */
final class BookZip {
    private BookZip() {}

    /**
     * Writes into a file that is there and empty; gives how many cars could not be written.
     *
     * @param place takes the tables until they are in the file
     */
    static int write(Book book, Path place, Path file, OutKind kind, boolean withNames, TableFiles.Progress progress)
            throws IOException {
        try (var zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            var form = kind.tables();
            if (form == null) {
                return writeCars(book, zip, progress);
            }
            writeTables(book, zip, place, form, withNames, progress);
            return 0;
        }
    }

    /** Parquet is packed already. */
    private static void writeTables(
            Book book, ZipOutputStream zip, Path place, TableForm form, boolean withNames, TableFiles.Progress progress)
            throws IOException {
        zip.setLevel(form == TableForm.PARQUET ? Deflater.NO_COMPRESSION : Deflater.DEFAULT_COMPRESSION);
        var folder = Files.createTempDirectory(place, "tables");
        try {
            for (var table : TableFiles.write(book, folder, form, withNames, progress)) {
                zip.putNextEntry(new ZipEntry(String.valueOf(table.getFileName())));
                Files.copy(table, zip);
                zip.closeEntry();
                Files.delete(table);
            }
        } finally {
            try (var files = Files.list(folder)) {
                for (var left : files.toList()) {
                    Files.delete(left);
                }
            }
            Files.delete(folder);
        }
    }

    /** A car that cannot be taken out keeps no other back. */
    private static int writeCars(Book book, ZipOutputStream zip, TableFiles.Progress progress) throws IOException {
        var ids = book.cars().list().stream().map(VehicleSummary::id).toList();
        var names = new HashSet<String>();
        int left = 0;
        for (int i = 0; i < ids.size(); i++) {
            var content = content(book, ids.get(i));
            if (content.isPresent()) {
                zip.putNextEntry(new ZipEntry(name(ids.get(i), names)));
                zip.write(content.get().getBytes(UTF_8));
                zip.closeEntry();
            } else {
                left++;
            }
            progress.advance(i + 1, ids.size());
        }
        return left;
    }

    private static Optional<String> content(Book book, String id) {
        return Judged.<Optional<String>>of(
                        "car " + id, () -> book.records().find(id).map(VisitFile::write))
                .orElse(Optional.empty());
    }

    /** Two ids may come to one name when what files do not bear is taken out of them. */
    private static String name(String id, Set<String> taken) {
        var plain = id.replaceAll("[^A-Za-z0-9._-]", "_");
        var name = plain;
        for (int i = 2; !taken.add(name); i++) {
            name = plain + "-" + i;
        }
        return name + ".json";
    }
}
