package cornerbook.app.desk.store;

import cornerbook.app.book.rack.KeptRack;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Typed;
import cornerbook.app.request.Told;
import cornerbook.core.say.Refused;
import cornerbook.core.store.FloorPoint;
import cornerbook.core.store.Naming;
import cornerbook.core.store.Rack;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/**
 * A rack as its form has it.
 *
 * @param id of the rack; empty for a new one
 * @param turn that the person saw
 * @param error why it was refused; empty when it was not
 */
public record RackForm(String id, String turn, Form typed, String error) {
    private static final String BOOK_UNIT = "m";

    static RackForm fresh() {
        return new RackForm(
                "", "0", new Form(Map.of("shelves", "1", "places", "10", "capacity", "1", "width", written(1))), "");
    }

    static RackForm of(KeptRack kept) {
        var rack = kept.rack();
        return new RackForm(
                kept.id(),
                Integer.toString(kept.turn()),
                new Form(Map.of(
                        "room",
                        rack.room(),
                        "pattern",
                        rack.naming().pattern(),
                        "shelves",
                        Integer.toString(rack.naming().shelves()),
                        "places",
                        Integer.toString(rack.naming().places()),
                        "capacity",
                        Integer.toString(rack.capacity()),
                        "x",
                        written(rack.first().xM()),
                        "y",
                        written(rack.first().yM()),
                        "along",
                        rack.along().name(),
                        "width",
                        written(rack.placeWidthM()))),
                "");
    }

    /** With its unit, as a person reads fields in units of their own. */
    private static String written(double metres) {
        return (metres == Math.rint(metres) ? String.format(Locale.ROOT, "%.0f", metres) : Double.toString(metres))
                + " " + BOOK_UNIT;
    }

    /**
     * The rack that was typed.
     *
     * @throws IllegalArgumentException with one sentence when it cannot be
     */
    static Rack rack(Form typed) {
        return new Rack(
                typed.get("room"),
                new Naming(typed.get("pattern"), whole(typed.get("shelves")), whole(typed.get("places"))),
                new FloorPoint(metres(typed.get("x")), metres(typed.get("y"))),
                typed.choice("along", List.of(Rack.Along.values())).orElse(Rack.Along.RIGHT),
                metres(typed.get("width")),
                whole(typed.get("capacity")));
    }

    private static int whole(String text) {
        if (!text.matches("\\d{1,6}")) {
            throw new Refused(new StoreSaid.NoWholeNumber(text));
        }
        return Integer.parseInt(text);
    }

    /** A field that was left empty is at the door. */
    private static double metres(String text) {
        return text.isEmpty() ? 0 : Typed.valueOf(text, BOOK_UNIT, Told.reader().units());
    }

    /** Tells the fields of several racks on one page apart. */
    public String fieldId(String name) {
        return name + "." + (id.isEmpty() ? "new" : id);
    }

    public String entryId() {
        return UUID.randomUUID().toString();
    }

    public boolean isNew() {
        return id.isEmpty();
    }
}
