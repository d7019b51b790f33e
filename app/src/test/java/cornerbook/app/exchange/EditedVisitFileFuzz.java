package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.store.TemplateBook;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import java.util.List;

/**
 * Visit files that are sound but for some places. One that is accepted goes into a book, where it is sound and comes out
 * again as the same file.
 */
public final class EditedVisitFileFuzz implements FuzzTarget {
    private final EditedVisitFiles files = new EditedVisitFiles();
    private final TemplateBook empty = TemplateBook.of(List.of());

    @Override
    public void take(byte[] input) throws Exception {
        var text = files.text(new Input(input));
        var result = VisitFile.read(text, VisitFileFuzz.TODAY);
        VisitFileFuzz.check(result, text);
        if (result instanceof VisitFile.Read read) {
            var record = read.record();
            try (var copy = empty.copy()) {
                copy.book().records().add(List.of(record));
                assertThat(copy.book().check()).isEmpty();
                var kept = copy.book()
                        .records()
                        .find(record.history().vehicle().id())
                        .orElseThrow();
                assertThat(VisitFile.write(kept)).isEqualTo(VisitFile.write(record));
            }
        }
    }
}
