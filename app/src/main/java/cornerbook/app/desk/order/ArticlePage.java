package cornerbook.app.desk.order;

import cornerbook.app.book.customer.Reach;
import cornerbook.app.book.order.NeedOfCar;
import cornerbook.app.book.order.OrderLine;
import cornerbook.app.book.order.OrderRow;
import cornerbook.core.say.Chance;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One article: the cars behind its number, what was ordered, and what became of it.
 *
 * @param shop the time by which days are told
 * @param reach who may be called about it
 * @param again what was typed and refused, to be put right
 */
public record ArticlePage(LocalDate today, Asked asked, OrderRow row, ZoneId shop, Reach reach, Again again) {
    private static final double NEARLY_NEVER = 0.005;
    private static final double NEARLY_ALWAYS = 0.995;

    /**
     * A form that was refused.
     *
     * @param error the sentence; empty when nothing was refused
     * @param line of which pieces were said to have come or not to come; empty where it was another form
     * @param pieces as they were typed
     * @param supplier as it was typed
     */
    public record Again(String error, String line, String pieces, String supplier) {
        static final Again NONE = new Again("", "", "", "");
    }

    /** So many pieces are enough with this chance. */
    public record Enough(int pieces, Chance chance) {}

    /** From where it matters to where more changes nothing; counts that can just be needed. */
    public List<Enough> enough() {
        var demand = row.demand();
        var steps = new ArrayList<Enough>();
        for (int pieces = 0; pieces <= demand.most(); pieces++) {
            double chance = demand.chanceEnough(pieces);
            boolean before = pieces > 0 && demand.chanceEnough(pieces - 1) > NEARLY_ALWAYS;
            if (demand.probability(pieces) > 0 && chance > NEARLY_NEVER && !before) {
                steps.add(new Enough(pieces, new Chance(chance)));
            }
        }
        return steps;
    }

    /** Cars that may well need it, and those that have it or do not want it. */
    public List<NeedOfCar> cars() {
        return row.cars().stream().filter(car -> !row.hardly().contains(car)).toList();
    }

    /** What stands in the field of how many to order. */
    public String piecesToOrder() {
        if (!again.error().isEmpty() && again.line().isEmpty()) {
            return again.pieces();
        }
        return row.toOrder() > 0 ? String.valueOf(row.toOrder()) : "";
    }

    /** What stands in the field of how many of this line. */
    public String piecesOf(OrderLine line) {
        return line.id().equals(again.line()) ? again.pieces() : String.valueOf(line.open());
    }

    public LocalDate dayOf(Instant moment) {
        return LocalDate.ofInstant(moment, shop);
    }

    /** When the customer was called last; null before anybody did. */
    public @Nullable LocalDate calledOn(NeedOfCar car) {
        var last = car.contact().last();
        return last == null ? null : dayOf(last.at());
    }

    /** Pieces that it would be given: those that are needed, as far as they are there. */
    public int toGive(NeedOfCar car) {
        var need = car.need().need();
        int wanted = need.twice() > need.once() ? 2 * need.pieces() : need.pieces();
        return Math.min(wanted, row.there());
    }

    /** What was ordered, the newest first. */
    public List<OrderLine> lines() {
        return row.lines().reversed();
    }
}
