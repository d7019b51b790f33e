package cornerbook.app.book.backup;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TemplateBook;
import cornerbook.app.door.ServedShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.Sentences;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A damaged backup is refused with a sentence and leaves no book behind, or becomes a book that is sound and whose cars can
 * be taken out again. Each line damages it: {@code 4096 00ff} writes bytes, {@code cut 8192} shortens it, and
 * {@code text 6.7 mm=8.7 mm} writes other words over some, as many bytes.
 */
public final class RestoreFuzz implements FuzzTarget {
    private static final Pattern BYTES = Pattern.compile("(\\d{1,7}) ((?:[0-9a-f]{2}){1,40})");
    private static final Pattern CUT = Pattern.compile("cut (\\d{1,7})");
    private static final Pattern TEXT = Pattern.compile("text ([^=]+)=(.+)");

    private final byte[] sound = TemplateBook.of(List.of(TemplateBook.car())).content();

    @Override
    public void take(byte[] input) throws Exception {
        var folder = TemplateBook.newFolder();
        try {
            var backup = folder.resolve("backup.sqlite");
            Files.write(backup, damaged(new Input(input).lines()));
            var target = folder.resolve("book");
            try {
                Book.restore(backup, target);
            } catch (BookException e) {
                Sentences.check(InEnglish.told(e), "");
                assertThat(target).doesNotExist();
                return;
            }
            try (var book = Book.open(target)) {
                assertThat(book.check()).isEmpty();
                for (var car : book.cars().list()) {
                    var file = VisitFile.write(book.records().find(car.id()).orElseThrow());
                    assertThat(VisitFile.read(file, ServedShop.TODAY)).isInstanceOf(VisitFile.Read.class);
                }
            }
        } finally {
            TemplateBook.delete(folder);
        }
    }

    private byte[] damaged(List<String> lines) {
        var bytes = sound.clone();
        for (var line : lines) {
            var cut = CUT.matcher(line);
            var text = TEXT.matcher(line);
            var written = BYTES.matcher(line);
            if (cut.matches()) {
                bytes = Arrays.copyOf(bytes, Integer.parseInt(cut.group(1)) % sound.length);
            } else if (text.matches()) {
                bytes = latin(latin(bytes)
                        .replace(
                                latin(text.group(1).getBytes(StandardCharsets.UTF_8)),
                                fitted(text.group(1), text.group(2))));
            } else if (written.matches() && bytes.length > 0) {
                int at = Integer.parseInt(written.group(1));
                for (var each : HexFormat.of().parseHex(written.group(2))) {
                    bytes[at++ % bytes.length] = each;
                }
            }
        }
        return bytes;
    }

    /** As many bytes as there were. */
    private static String fitted(String old, String other) {
        return latin(
                Arrays.copyOf(other.getBytes(StandardCharsets.UTF_8), old.getBytes(StandardCharsets.UTF_8).length));
    }

    /** Each byte as one character, so that a file can be searched as text. */
    private static String latin(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static byte[] latin(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
