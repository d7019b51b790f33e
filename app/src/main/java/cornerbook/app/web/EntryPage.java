package cornerbook.app.web;

import cornerbook.app.book.OpenRetorque;
import cornerbook.core.corner.Corner;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Visit;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The entry form of a visit.
 *
 * @param formId born with the form, so that a form that is sent twice stores once
 * @param problem what cannot stand and belongs to no single field, may be empty
 * @param saved how many readings were just stored; null when the page was only asked for
 * @param retorque null when none is open
 */
public record EntryPage(
        CarHistory history,
        Visit visit,
        String formId,
        List<Section> corners,
        Section vehicle,
        String problem,
        int errors,
        @Nullable Integer saved,
        Leaving leaving,
        @Nullable OpenRetorque retorque,
        RetorqueForm retorqueForm) {
    public EntryPage {
        corners = List.copyOf(corners);
    }

    /** The fields of one corner, or of the whole vehicle. */
    public record Section(@Nullable Corner corner, List<Group> groups) {
        public Section {
            groups = List.copyOf(groups);
        }
    }

    /** Fields that are taken together, with the caution that belongs to the hands. */
    public record Group(String title, String note, List<Field> fields) {
        public Group {
            fields = List.copyOf(fields);
        }
    }

    /**
     * One field.
     *
     * @param typed what stands in it
     * @param shownId the reading that it shows, empty when there is none
     * @param choice whether it is a choice of pad movements rather than a number
     * @param error one sentence, empty when it is sound
     * @param reason why a stored value changes, may be empty
     * @param reasonAsked whether the reason is asked for now
     */
    public record Field(
            String key,
            String label,
            String unit,
            String typed,
            String shownId,
            boolean choice,
            String error,
            String reason,
            boolean reasonAsked) {
        public boolean stored() {
            return !shownId.isEmpty();
        }
    }

    /**
     * The wheels that leave on the car.
     *
     * @param chosen wheel tag at each corner, empty where none is chosen
     * @param recorded whether they are in the book already
     * @param hint where the choice that is filled in comes from
     */
    public record Leaving(Map<Corner, String> chosen, boolean recorded, String hint, String error) {
        public Leaving {
            chosen = Map.copyOf(chosen);
        }

        public String at(Corner corner) {
            return chosen.getOrDefault(corner, "");
        }
    }

    /** The re-torque as typed. */
    public record RetorqueForm(String date, String odometer, String torque, String error) {}
}
