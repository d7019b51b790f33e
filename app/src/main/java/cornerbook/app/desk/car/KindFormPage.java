package cornerbook.app.desk.car;

import cornerbook.app.exchange.KindFile;
import cornerbook.app.request.Told;
import java.util.List;

/**
 * The data sheet of a kind of car as a form, as typed.
 *
 * @param was name under which it is kept; empty for a new one
 * @param car the car that it was made of; empty for none
 * @param kinds what cars of the book are called
 */
public record KindFormPage(String was, String car, List<String> kinds, CarFields form) {
    public KindFormPage {
        kinds = List.copyOf(kinds);
    }

    /** What a sheet has beside its vehicle. */
    public List<String> own() {
        return KindFile.OWN;
    }

    public String typed(String pointer) {
        return form.typed().getOrDefault(pointer, "");
    }

    /** What was left out is told in the words of the form. */
    public String error(String pointer) {
        var error = form.error(pointer);
        return !error.isEmpty() && typed(pointer).isEmpty()
                ? Told.labels("app/desk/car").of("left-out")
                : error;
    }

    /** "Make and model", with a star where it cannot be left out. */
    public String label(String pointer) {
        var w = Told.labels("app/desk/car");
        var label = w.of("kind-field", "field", pointer.substring(1));
        return pointer.equals(KindFile.VIN) ? label : w.of("required", "label", label);
    }

    public String help(String pointer) {
        return Told.labels("app/desk/car").of("kind-help", "field", pointer.substring(1));
    }

    public boolean isName(String pointer) {
        return pointer.equals(KindFile.NAME);
    }

    /** Whether a line of its own is needed for what is written there. */
    public boolean isLong(String pointer) {
        return pointer.equals(KindFile.SOURCE);
    }

    public List<CarFields.Group> groups() {
        return form.groups(KindFile.fields());
    }
}
