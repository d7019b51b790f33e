package cornerbook.app.log;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.file.OwnerOnly;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import tools.jackson.databind.json.JsonMapper;

/**
 * Keeps the log as lines of JSON (RFC 8259) in a file that only its owner may read; a full file is moved aside, and the oldest
 * goes. Lines are few, so the file is open only while one is written: several processes may write, and no descriptor is held.
 */
final class LogFile extends Handler {
    static final long LARGEST_BYTES = 1024 * 1024;
    /** The one that is written, and those before it. */
    static final int MOST_FILES = 5;

    private static final JsonMapper MAPPER = new JsonMapper();

    private final Path book;
    private final Path folder;

    /** In the folder of a book. */
    LogFile(Path book) {
        this.book = book;
        this.folder = book.resolve("log");
    }

    Path path() {
        return numbered(0);
    }

    @Override
    public synchronized void publish(LogRecord record) {
        // A log without its book belongs nowhere: the book was removed, or is none.
        if (!isLoggable(record) || !Files.isDirectory(book)) {
            return;
        }
        try {
            write(line(record));
        } catch (IOException e) {
            // The disk is full or may not be written: who asks for a page must not suffer from that. The line is lost
            // here, and a warning or fault is still shown where the server was started.
        }
    }

    private static String line(LogRecord record) {
        var line = new LinkedHashMap<String, Object>();
        line.put("time", record.getInstant().toString());
        line.put("level", record.getLevel().getName().toLowerCase(Locale.ROOT));
        line.put("what", LogWords.of(record));
        if (record instanceof FaultRecord fault) {
            line.put("fault", fault.id());
        }
        if (record.getThrown() != null) {
            line.put("trace", LogWords.trace(record.getThrown()));
        }
        return MAPPER.writeValueAsString(line) + "\n";
    }

    private void write(String line) throws IOException {
        OwnerOnly.createFolders(folder);
        var bytes = line.getBytes(UTF_8);
        if (Files.exists(path()) && Files.size(path()) + bytes.length > LARGEST_BYTES) {
            moveAside();
        }
        try (var out = OwnerOnly.openToAppend(path())) {
            out.write(ByteBuffer.wrap(bytes));
        }
    }

    private void moveAside() throws IOException {
        for (int number = MOST_FILES - 1; number > 0; number--) {
            if (Files.exists(numbered(number - 1))) {
                Files.move(numbered(number - 1), numbered(number), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private Path numbered(int number) {
        return folder.resolve(number == 0 ? "cornerbook.jsonl" : "cornerbook.%s.jsonl".formatted(number));
    }

    @Override
    public void flush() {
        // Each line is written at once.
    }

    @Override
    public void close() {
        // Nothing is open between lines.
    }
}
