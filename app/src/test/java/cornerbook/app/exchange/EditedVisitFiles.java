package cornerbook.app.exchange;

import cornerbook.app.book.store.TemplateBook;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.JsonEdits;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/** Visit files that are sound but for some places. The first line of an input names the file that is changed. */
final class EditedVisitFiles {
    private static final JsonMapper MAPPER = new JsonMapper();

    private final List<Base> bases = List.of(
            new Base("first-visit", example("first-visit")),
            new Base("seasonal-visit", example("seasonal-visit")),
            new Base("everything", new JsonEdits(MAPPER.readTree(VisitFile.write(TemplateBook.car())))));

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

    String text(Input edits) {
        return MAPPER.writeValueAsString(edits.choose(bases).edits().apply(new Input(edits.rest()).lines()));
    }
}
