package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.TemplateBook;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.JsonEdits;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/**
 * Visit files that are sound but for some places. One that is accepted goes into a book, where it is sound and comes out
 * again as the same file. The first line names the file that is changed.
 */
public final class EditedVisitFileFuzz implements FuzzTarget {
    private static final JsonMapper MAPPER = new JsonMapper();

    private final List<Base> bases = List.of(
            new Base("first-visit", example("first-visit")),
            new Base("seasonal-visit", example("seasonal-visit")),
            new Base("everything", new JsonEdits(MAPPER.readTree(VisitFile.write(TemplateBook.car())))));
    private final TemplateBook empty = TemplateBook.of(List.of());

    private record Base(String name, JsonEdits edits) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static JsonEdits example(String name) {
        try {
            return new JsonEdits(MAPPER.readTree(Files.readString(Path.of("..", "docs", "examples", name + ".json"))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void take(byte[] input) throws Exception {
        var edits = new Input(input);
        var text = MAPPER.writeValueAsString(edits.choose(bases).edits().apply(new Input(edits.rest()).lines()));
        var result = VisitFile.read(text, VisitFileFuzz.TODAY);
        VisitFileFuzz.check(result, text);
        if (result instanceof VisitFile.Read read) {
            var record = read.record();
            try (var copy = empty.copy()) {
                copy.book().addRecords(List.of(record));
                assertThat(copy.book().check()).isEmpty();
                var kept =
                        copy.book().findRecord(record.history().vehicle().id()).orElseThrow();
                assertThat(VisitFile.write(kept)).isEqualTo(VisitFile.write(record));
            }
        }
    }
}
