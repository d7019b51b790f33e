package cornerbook.app.desk.visit;

import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.book.work.Remark;
import cornerbook.app.desk.BrakeDust;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.asked.ToolChoice;
import cornerbook.app.desk.asked.WheelProposal.Fill;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import cornerbook.words.UnitSystem;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is entered at a visit.
 *
 * @param saved how many readings were just stored; null when the page was only asked for
 * @param retorque null when none is open
 * @param written of this visit beside its readings
 * @param dust of the week of the visit
 * @param tools that the visit may be worked with, kind by kind; none while the shop keeps none
 */
public record EntryPage(
        OpenVisit open,
        ReadingsForm readings,
        @Nullable Integer saved,
        Leaving leaving,
        @Nullable DueRetorque retorque,
        Written written,
        BrakeDust dust,
        List<ToolChoice> tools) {
    public EntryPage {
        tools = List.copyOf(tools);
    }

    /**
     * What is written of the visit beside its readings.
     *
     * @param changes what was put right of it, earliest first
     * @param remarks those that count
     * @param gone whether the car was handed over
     * @param left what it left with open, or what hands left open, with the reason
     * @param agreed what was agreed of its work, done without charge, and declined
     * @param tightenedAgain how its wheels were; null while nobody recorded it
     */
    public record Written(
            List<VisitChange> changes,
            List<Remark> remarks,
            boolean gone,
            List<Said> left,
            List<Said> agreed,
            @Nullable Said tightenedAgain) {
        public Written {
            changes = List.copyOf(changes);
            remarks = List.copyOf(remarks);
            left = List.copyOf(left);
            agreed = List.copyOf(agreed);
        }
    }

    /**
     * The form for readings as it was typed.
     *
     * @param id born with the form, so that a form that is sent twice stores once
     * @param units of bare readings
     * @param problem what cannot stand and belongs to no single field, may be empty
     * @param errors how many fields could not be read
     */
    public record ReadingsForm(
            String id,
            UnitSystem units,
            List<Section> corners,
            Section vehicle,
            String problem,
            int errors,
            Questions questions) {
        public ReadingsForm {
            corners = List.copyOf(corners);
        }

        /** Corners whose wheel must not stay on. */
        public List<Corner> stops() {
            return corners.stream()
                    .filter(section -> section.groups().stream()
                            .anyMatch(group -> !group.stop().isEmpty()))
                    .map(Section::corner)
                    .filter(Objects::nonNull)
                    .toList();
        }
    }

    /**
     * Readings that were typed and are incredible after the visits before.
     *
     * @param readingIds their identities, apart by a space: what the tick that stores them stands for
     */
    public record Questions(int count, String readingIds) {}

    /** The fields of one corner, or of the whole vehicle. */
    public record Section(@Nullable Corner corner, List<Group> groups) {
        public Section {
            groups = List.copyOf(groups);
        }
    }

    /**
     * Fields that are taken together.
     *
     * @param note the caution that belongs to the hands, may be empty
     * @param stop why the wheel must not stay on, may be empty
     * @param hints what else to know, each one line
     * @param folded whether it is rarely needed and opens on demand
     */
    public record Group(
            String title, String note, String stop, List<String> hints, List<Field> fields, boolean folded) {
        public Group {
            hints = List.copyOf(hints);
            fields = List.copyOf(fields);
        }

        /** Folded, it says how much stands in it. */
        public long stored() {
            return fields.stream().filter(Field::stored).count();
        }

        /** Folded, it opens by itself when something in it was just typed, cannot stand or is asked about. */
        public boolean opens() {
            return fields.stream()
                    .anyMatch(field -> field.describedBy() != null
                            || (!field.stored() && !field.typed().isEmpty()));
        }
    }

    /** A word to choose: as files spell it, and for people. */
    public record Choice(String value, String words) {}

    /**
     * One field: a part for each thing that its template shows.
     *
     * @param typed what stands in it
     * @param shownId the reading that it shows, empty when there is none
     * @param choices the words to choose from; empty for a number
     * @param error one sentence, empty when it is sound
     * @param question asks to read again, empty when the value is credible
     * @param reason why a stored value changes, may be empty
     * @param reasonAsked whether the reason is asked for now
     */
    public record Field(
            String key,
            String label,
            String unit,
            String typed,
            String shownId,
            List<Choice> choices,
            String error,
            String question,
            String reason,
            boolean reasonAsked) {
        public Field {
            choices = List.copyOf(choices);
        }

        /** Whether it may be written as several points, parted by spaces. */
        public boolean points() {
            return Measure.valueOf(key.substring(0, key.indexOf('.'))).mayBePoints();
        }

        public boolean stored() {
            return !shownId.isEmpty();
        }

        /** The element that says what is wrong or asked; null when there is none. */
        public @Nullable String describedBy() {
            return !error.isEmpty() ? "error." + key : !question.isEmpty() ? "question." + key : null;
        }
    }

    /**
     * The wheels that leave on the car.
     *
     * @param typed whether they were typed and are not in the book yet
     * @param recorded whether wheels are in the book already
     * @param hint where the choice that is filled in comes from
     * @param error what cannot stand and belongs to no single corner, may be empty
     * @param fills the sets that may be filled in instead
     */
    public record Leaving(
            List<Place> places, boolean typed, boolean recorded, String hint, String error, List<Fill> fills) {
        public Leaving {
            places = List.copyOf(places);
            fills = List.copyOf(fills);
        }

        public boolean refused() {
            return !error.isEmpty()
                    || places.stream().anyMatch(place -> !place.error().isEmpty());
        }
    }

    /**
     * The wheel chosen at a corner, and what was read off it.
     *
     * @param tag empty where none is chosen
     * @param dateCode last four of the TIN as typed, may be empty
     * @param sensorId as typed, may be empty
     * @param error one sentence, empty when it is sound
     */
    public record Place(Corner corner, String tag, String dateCode, String sensorId, String error) {}

    /**
     * The re-torque as typed.
     *
     * @param asked the odometer that is to be typed again
     */
    public record RetorqueForm(
            String date, String odometer, String torque, String person, String error, AskedOdometer asked) {}

    /**
     * The re-torque that is due, and what was typed of it.
     *
     * @param person who works on the tablet that asks; null where the name is typed
     */
    public record DueRetorque(
            OpenRetorque due, RetorqueForm form, @Nullable String person) {}
}
