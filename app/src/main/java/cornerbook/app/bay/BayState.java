package cornerbook.app.bay;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.visit.VisitState;
import cornerbook.app.book.work.Remark;
import cornerbook.core.corner.Corner;
import cornerbook.core.tool.ShopTool;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the book has of one visit at one moment, as it is sent to tablets: its parts are the JSON that their modules read.
 *
 * @param whereabouts where the car is
 * @param odometer as the book has it
 * @param leftOn the wheels that the car leaves on; empty until they are recorded
 * @param readings what stands, by field key
 * @param rivals readings that wait for an answer
 * @param now the moment by this machine's clock, from which tablets learn how theirs differ
 * @param ticks the tick that stands of each step, of fasteners on the wheels that it leaves on
 * @param tools mark of the tool of each kind that the visit names
 * @param air what pressure to set, by the tag of the language and the name of the units
 * @param unsafe what was found with which nobody should drive away unknowing
 * @param onCar who has the sheet open
 * @param departed null while the car is in the bay
 * @param remarks what stands written, by its topic
 * @param advised what the customer may decline, gravest first
 * @param asking what work that is charged for has been agreed, and who is asked about the rest; null where nothing of it can be said
 * @param plans where the wheels of each set go that was read as it came out of the store; none once wheels are recorded
 */
public record BayState(
        String now,
        VisitState whereabouts,
        StoredOdometer odometer,
        Map<Corner, String> leftOn,
        Map<String, Stored> readings,
        List<Rival> rivals,
        Map<String, Ticked> ticks,
        List<Photo> photos,
        Map<ShopTool.Kind, String> tools,
        Map<Corner, Map<String, Map<String, Air>>> air,
        List<Unsafe> unsafe,
        List<String> onCar,
        @Nullable Departed departed,
        Map<Remark.Topic, String> remarks,
        List<Advised> advised,
        @Nullable Asking asking,
        List<Plan> plans) {

    /**
     * What the odometer reads.
     *
     * @param written to the last digit, with its unit
     * @param shown what a field shows of it, by the name of the units
     */
    public record StoredOdometer(String written, Map<String, String> shown) {}

    /**
     * A set that may go on.
     *
     * @param hint where its corners come from, by the tag of the language and the name of the units
     */
    public record Plan(String set, Map<Corner, String> wheelAt, Map<String, Map<String, String>> hint) {}

    /**
     * A finding that is unsafe.
     *
     * @param key names it
     * @param sentence by the tag of the language and the name of the units
     */
    public record Unsafe(String key, Map<String, Map<String, String>> sentence) {}

    /**
     * Work that a finding asks for.
     *
     * @param key names it
     * @param sentence by the tag of the language and the name of the units
     * @param declinedBy who of the customer's side does not want it; null while nobody said so
     * @param corners where it is done; none where it is done at no corner
     * @param stop why it must not be begun, by the tag of the language and the name of the units: an estimate was given, and this is not
     *     agreed; null where it may be
     */
    public record Advised(
            String key,
            Map<String, Map<String, String>> sentence,
            @Nullable String declinedBy,
            List<Corner> corners,
            @Nullable Map<String, Map<String, String>> stop) {}

    /**
     * Who is asked about work that is not agreed.
     *
     * @param name of the customer
     * @param telephone null where there is none, or the customer does not want to be called
     * @param mayCall whether the customer may be called
     * @param law how far the bill may go, and where that comes from, by the tag of the language and the name of the units; null before an
     *     estimate
     * @param works all that the car can have
     * @param lines that were agreed and were typed by hand, so that nobody but a person knows which work they are about
     */
    public record Asking(
            String name,
            @Nullable String telephone,
            boolean mayCall,
            @Nullable Map<String, Map<String, String>> law,
            List<Work> works,
            List<Line> lines) {}

    /**
     * Work that is charged for.
     *
     * @param places of the sheet that say that it was done, by measure and corner
     * @param holds whether it waits for the customer's word: else it may be entered, and is only told
     * @param stop what is missing, by the tag of the language and the name of the units
     * @param amount what it costs with taxes, in the same way; null while it has no price
     * @param price the same before taxes, as the book writes it; null with {@code amount}
     * @param settled by whom it is agreed, or that it is without charge; null while it is neither
     * @param free whether it is without charge
     */
    public record Work(
            String key,
            List<String> places,
            boolean holds,
            Map<String, Map<String, String>> stop,
            @Nullable Map<String, Map<String, String>> amount,
            @Nullable String price,
            @Nullable Map<String, Map<String, String>> settled,
            boolean free) {}

    /** A line of an estimate. */
    public record Line(String key, String words) {}

    /**
     * A reading that stands.
     *
     * @param shown what a field shows of it, by the name of the units
     * @param person who took it at a tablet; null when it was typed elsewhere
     */
    public record Stored(
            String id,
            String written,
            Map<String, String> shown,
            @Nullable String person) {}

    /**
     * Two readings of one place.
     *
     * @param standing null when none stands there any more
     */
    public record Rival(
            String id,
            String key,
            String written,
            String person,
            @Nullable String standing) {}

    /**
     * What the gauge has to show, and why.
     *
     * @param limit how far from it the gauge may stand
     */
    public record Air(String set, String from, BaySheet.Limit limit) {}

    /**
     * Whether a step is done, and who said so.
     *
     * @param wheel the wheel whose fastener it is; null for every other step
     * @param seen ids of the ticks and readings that a check was made of
     * @param reason why it is left open; null where it is not
     */
    public record Ticked(
            String id,
            boolean done,
            String person,
            @Nullable String wheel,
            List<String> seen,
            @Nullable String reason) {}

    /** Who handed over, and each caution that was open with its reason. */
    public record Departed(String person, String time, List<Departure.Reason> reasons) {}
}
