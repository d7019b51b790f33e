package cornerbook.app.desk.out;

import java.util.List;

/** What can be taken out, and how far that is. */
public record OutPage(OutState state) {
    public List<OutKind> kinds() {
        return List.of(OutKind.values());
    }
}
