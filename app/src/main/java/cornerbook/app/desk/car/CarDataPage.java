package cornerbook.app.desk.car;

import cornerbook.app.book.car.WheelChange;
import cornerbook.app.exchange.CarField;
import cornerbook.app.exchange.CarForm;
import cornerbook.app.request.Told;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.SetOf;
import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The data of a car as a form, as typed.
 *
 * @param name of the car
 * @param revision that the form was made from
 * @param sets wheel sets that the car has already
 * @param changes what was put right of their wheels, earliest first
 * @param newSets wheel sets that can be added
 * @param typed by field
 * @param errors one sentence by field; those of no field stand under the empty name
 */
public record CarDataPage(
        String vehicleId,
        String name,
        String revision,
        List<WheelSet> sets,
        List<WheelChange> changes,
        int newSets,
        Map<String, String> typed,
        Map<String, String> errors) {
    public CarDataPage {
        sets = List.copyOf(sets);
        changes = List.copyOf(changes);
        typed = Map.copyOf(typed);
        errors = Map.copyOf(errors);
    }

    /** All fields, by the object that they are in. */
    public List<CarFields.Group> groups() {
        var fields = new ArrayList<>(CarForm.fields());
        for (int place = sets.size(); place < sets.size() + newSets; place++) {
            fields.addAll(CarForm.setFields(place));
        }
        return form().groups(fields);
    }

    /** What stands in the fields. */
    public CarFields form() {
        return new CarFields(typed, errors);
    }

    /** The sets and wheels that the car has, each with its fields and what was put right of it. */
    public List<Known> known() {
        var known = new ArrayList<Known>();
        for (int set = 0; set < sets.size(); set++) {
            var title = Told.begin(new SetOf(sets.get(set).season()));
            known.add(known(sets.get(set).id(), title, CarForm.SET + set, CarForm.knownSetFields(set)));
            for (int place = 0; place < sets.get(set).wheels().size(); place++) {
                var tag = sets.get(set).wheels().get(place).tag();
                known.add(known(
                        tag,
                        labels().of("set-wheel", "set", title, "tag", tag),
                        CarForm.SET + set + "/wheels/" + place,
                        CarForm.wheelFields(set, place)));
            }
        }
        return known;
    }

    private Known known(String tag, String title, String pointer, List<CarField> fields) {
        return new Known(
                new CarFields.Group(pointer, title, form().isWrong(fields), fields),
                changes.stream().filter(change -> change.tag().equals(tag)).toList());
    }

    /** A set or a wheel that the car has. */
    public record Known(CarFields.Group group, List<WheelChange> changes) {
        public Known {
            changes = List.copyOf(changes);
        }
    }

    /** What was put right of a wheel, and from what to what. */
    public String change(WheelChange change) {
        var unknown = Said.verbatim(Told.labels("app/desk").of("not-known"));
        return Told.labels("app/desk")
                .of(
                        "changed",
                        "day",
                        change.on(),
                        "what",
                        change.label(),
                        "before",
                        change.findBefore().orElse(unknown),
                        "after",
                        change.findAfter().orElse(unknown));
    }

    private static Labels labels() {
        return Told.labels("app/desk/car");
    }
}
