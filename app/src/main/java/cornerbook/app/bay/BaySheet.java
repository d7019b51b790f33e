package cornerbook.app.bay;

import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Subject;
import cornerbook.core.tool.ShopTool;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The sheet of one visit as it is sent to tablets, in the language and the units of one person: all that does not change while people enter.
 * It is kept there, so that the visit can be worked without the network. Its parts, and those of a field, are the JSON that the
 * tablet's modules read.
 *
 * @param assets address of the modules that this server has
 * @param car what people call the car
 * @param arrived wheel tag at each corner on arrival
 * @param planned where each wheel that goes on belongs
 * @param plannedHint where the plan comes from, one sentence
 * @param fills each set of the car, as it may go on
 * @param wheels every wheel of the car by its tag
 * @param partsSeen what a photo of a corner or of the car may belong to, with its words
 * @param people who worked on visits of this book
 * @param tools of the shop; none while it keeps none
 * @param limits what is told at once of a value that lies outside, gravest first; that of the pressure to set comes with the state
 * @param matters gravest first; none at a first visit
 */
public record BaySheet(
        String visit,
        String assets,
        String car,
        String plate,
        String day,
        Odometer odometer,
        List<Step> steps,
        Map<Corner, String> arrived,
        Map<Corner, String> planned,
        String plannedHint,
        List<Fill> fills,
        Map<String, WheelCard> wheels,
        @Nullable Fasteners fasteners,
        List<Caution> cautions,
        Map<Seen, Map<Subject.Part, String>> partsSeen,
        List<String> people,
        List<Tool> tools,
        List<Limit> limits,
        List<Matter> matters) {

    /**
     * What was asked for at the visit before, or left open there.
     *
     * @param words one sentence
     * @param day of that visit
     * @param set identity of the set that it is about; null when it is about the car
     */
    public record Matter(String words, String day, @Nullable String set) {}

    /**
     * The tools of one kind, the one that was used last first.
     *
     * @param steps where they are chosen
     */
    public record Tool(ShopTool.Kind kind, String title, List<String> steps, List<Option> options) {}

    /** One of them. */
    public record Option(String id, String label) {}

    /**
     * Wheels that may be filled in at once.
     *
     * @param hint where they come from, one sentence
     */
    public record Fill(String set, String hint, Map<Corner, String> wheelAt) {}

    /** What a photo shows. */
    public enum Seen {
        CORNER,
        CAR
    }

    /** How a step is shown. */
    public enum Kind {
        FIELDS,
        /** Fields at the corners of the car, drawn from above. */
        CAR,
        /** Which wheel goes to which corner. */
        WHEELS,
        /** A tick for each fastener. */
        TORQUE,
        DEPART
    }

    /**
     * One step of the work.
     *
     * @param tab its title where there is little room
     * @param corner null when it is not at one corner
     * @param cautions what hurts here
     */
    public record Step(
            String id,
            Kind kind,
            String title,
            String tab,
            @Nullable Corner corner,
            List<Mind> cautions,
            List<Group> groups,
            List<Tick> ticks) {
        public Step {
            cautions = List.copyOf(cautions);
            groups = List.copyOf(groups);
            ticks = List.copyOf(ticks);
        }
    }

    /**
     * One line of what to mind.
     *
     * @param source who says so; empty where the line says it, or the car's own data do
     * @param address where what is missing is given; null where nothing is
     */
    public record Mind(
            String words, String source, @Nullable String address) {
        public Mind(String words, String source) {
            this(words, source, null);
        }
    }

    /**
     * Fields that are taken together.
     *
     * @param title may be empty
     * @param hints what else to know, each one line
     * @param folded whether most visits do without it
     * @param soundAtOnce what one tap answers with the first word of its scale, where nothing was seen
     */
    public record Group(String title, List<Mind> hints, List<Field> fields, boolean folded, List<Measure> soundAtOnce) {
        public Group {
            soundAtOnce = List.copyOf(soundAtOnce);
            hints = List.copyOf(hints);
            fields = List.copyOf(fields);
        }
    }

    /**
     * A place for one reading. Its wheel is the one on arrival, or the one that goes on.
     *
     * @param goesOn whether it belongs to the wheel that the car leaves on
     * @param onlyNew whether it is left out when that wheel came on the car too
     * @param shortLabel where its measure is plain and there is little room: "outer"; null where there is none
     * @param unit stands beside the field: "mm", "/32″"
     * @param suffix what a bare number is written with: " mm", "/32 in"
     * @param words what may be chosen; empty where a value is typed
     * @param points whether it may be written as several points, parted by spaces
     * @param low lowest value that can be, in the field's unit
     * @param high highest value that can be, in the field's unit
     * @param last null when it was never read before, and for what belongs to a wheel
     * @param expected null where nothing is expected
     */
    public record Field(
            Measure measure,
            @Nullable Corner corner,
            @Nullable Spot spot,
            boolean ofWheel,
            boolean goesOn,
            boolean onlyNew,
            String label,
            @Nullable String shortLabel,
            String unit,
            String suffix,
            List<Choice> words,
            boolean points,
            double low,
            double high,
            @Nullable Last last,
            @Nullable Expected expected) {}

    /**
     * A word that may be chosen.
     *
     * @param written as entries and the book name it
     * @param undone whether it says that nothing was done
     */
    public record Choice(String written, String label, boolean undone) {}

    /** A thing to do that is ticked. */
    public record Tick(String key, String label) {}

    /** What was read at the last visit that read it; without its unit where that is the field's. */
    public record Last(String written, String day) {}

    /**
     * Values that need no second look.
     *
     * @param asks the sentence for a value outside
     */
    public record Expected(double low, double high, String asks) {}

    /**
     * The place for the odometer.
     *
     * @param unit stands beside it; what is typed is written with it
     * @param low lowest value that can be, in that unit
     * @param high highest value that can be
     * @param expected null for the first visit
     */
    public record Odometer(
            String label,
            String unit,
            double low,
            double high,
            @Nullable Expected expected) {}

    /**
     * Between what values a reading lies that needs no word.
     *
     * @param corner null for any
     * @param wheel its tag; null for any
     * @param low lowest that is allowed, in the field's unit
     * @param high highest that is allowed, in the field's unit
     * @param unsafe whether nobody should drive away with it
     * @param sentence what is asked, and what to do
     * @param endedBy what ends the matter when it is done at the same corner; null where nothing does
     * @param point what it opens before the car leaves, by its key; null where it opens nothing
     */
    public record Limit(
            Measure measure,
            @Nullable Corner corner,
            @Nullable String wheel,
            double low,
            double high,
            boolean unsafe,
            String sentence,
            @Nullable Measure endedBy,
            @Nullable String point) {}

    /**
     * One wheel.
     *
     * @param set identity of the set that it belongs to
     * @param setName as "winter set"
     * @param came the corner that it ran at last; null when it never ran
     * @param last by measure and spot, as "TREAD_DEPTH.OUTER"
     * @param expected by measure and spot
     */
    public record WheelCard(
            String set,
            String setName,
            String season,
            @Nullable String storePlace,
            @Nullable Corner came,
            String tyre,
            Map<String, Last> last,
            Map<String, Expected> expected) {}

    /**
     * The fasteners of each wheel.
     *
     * @param order in which they are tightened
     * @param torque the number before its unit
     * @param retorque distance after which they are tightened again
     */
    public record Fasteners(
            int count, List<Integer> order, String torque, String unit, String thread, String retorque) {}

    /**
     * Something that must be closed before the car leaves.
     *
     * @param key names it
     * @param openedBy any of these opens it: a reading by its field key up to the corner, or WHEELS_ON
     * @param closedBy the reading that closes it, the same way
     */
    public record Caution(String key, String sentence, List<String> openedBy, String closedBy) {
        public Caution {
            openedBy = List.copyOf(openedBy);
        }
    }
}
