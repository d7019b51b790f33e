package cornerbook.app.desk.visit;

import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.UnitChoice;
import cornerbook.app.request.PageException;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What can be put right of a visit beside its readings, field by field, and what the form showed of it. A field that was not
 * sent stays as it is.
 */
record VisitForm(Visit visit, Form typed) {
    /** Before the name of a field: what it showed. */
    private static final String SEEN = "seen.";

    static final String CAME = "came.";
    static final String LEFT = "left.";

    /** The fields of a visit as they are shown, by their names. */
    static Map<String, String> fields(Visit visit) {
        var fields = new LinkedHashMap<String, String>();
        fields.put("date", visit.date().toString());
        fields.put("odometer", UnitChoice.current().field(visit.odometerKm(), "km"));
        fields.put("technician", text(visit.card().technician()));
        fields.put("notes", text(visit.card().notes()));
        for (var corner : Corner.values()) {
            fields.put(CAME + corner, text(visit.arrivedOn().get(corner)));
            fields.put(LEFT + corner, text(visit.leftOn().get(corner)));
        }
        return fields;
    }

    /** What the form has to bring back of a visit as it was shown, by name of the hidden field. */
    static Map<String, String> seenFields(Visit visit) {
        var seen = new LinkedHashMap<String, String>();
        fields(visit).forEach((name, value) -> seen.put(SEEN + name, value));
        seen.put("seenOdometer", String.valueOf(visit.odometerKm()));
        seen.put("seenDate", visit.date().toString());
        return seen;
    }

    /** The visit as the form showed it. */
    Visit seen() {
        try {
            return with(SEEN, LocalDate.parse(typed.get("seenDate")), Double.parseDouble(typed.get("seenOdometer")));
        } catch (DateTimeException | NumberFormatException e) {
            throw new PageException(400, new DeskSaid.FormNotUnderstood());
        }
    }

    /** The visit as it is to stand. */
    Visit after(LocalDate today) {
        return with("", EntryHandler.dateOf(typed.get("date"), today), odometerKm());
    }

    /** A field that still says what it showed keeps the value to the last digit, whatever units it was shown in. */
    private double odometerKm() {
        var text = AskedOdometer.of(typed);
        return typed.has(SEEN + "odometer") && text.equals(typed.get(SEEN + "odometer"))
                ? seen().odometerKm()
                : Typed.valueOf(text, "km", EntryUnits.of(typed).system());
    }

    private Visit with(String prefix, LocalDate date, double odometerKm) {
        var card = visit.card();
        return visit.withOdometer(date, odometerKm)
                .withArrivedOn(wheels(prefix + CAME, visit.arrivedOn()))
                .withLeftOn(wheels(prefix + LEFT, visit.leftOn()))
                .withCard(new JobCard(
                        value(prefix + "technician", card.technician()),
                        card.workDone(),
                        value(prefix + "notes", card.notes()),
                        card.nextVisitDue(),
                        card.tools()));
    }

    private @Nullable String value(String field, @Nullable String stands) {
        return !typed.has(field) ? stands : typed.get(field).isEmpty() ? null : typed.get(field);
    }

    private Map<Corner, String> wheels(String prefix, Map<Corner, String> stands) {
        var wheelAt = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            var tag = value(prefix + corner, stands.get(corner));
            if (tag != null) {
                wheelAt.put(corner, tag);
            }
        }
        return wheelAt;
    }

    private static String text(@Nullable String value) {
        return value == null ? "" : value;
    }
}
