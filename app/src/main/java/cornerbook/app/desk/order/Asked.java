package cornerbook.app.desk.order;

import cornerbook.app.book.order.OrderLevel;
import cornerbook.app.book.order.OrderList;
import cornerbook.app.desk.Form;
import cornerbook.app.request.PageException;
import cornerbook.core.order.ServiceLevel;
import cornerbook.core.season.Climate;
import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a person asks of the order list, as the address of the page carries it.
 *
 * @param level chance with which the pieces are to be enough, 0 to 1
 * @param missing what one piece too few costs, as it was written; empty where the level was chosen
 * @param left what one piece too many costs, as it was written
 */
public record Asked(LocalDate until, double level, String missing, String left) {
    private static final int LEAST_PERCENT = 50;
    private static final int MOST_PERCENT = 99;
    private static final double HUNDRED = 100;
    private static final String PERCENT = "\\d{1,2}";
    /** Without groups of digits, with a comma or a point, to a hundredth of the coin. */
    private static final String COST = "\\d{1,6}([.,]\\d{1,2})?";

    /**
     * What the fields of a form or an address ask.
     *
     * @param kept what counts where they say nothing of the chance
     * @throws PageException with one sentence when one of them cannot be
     */
    static Asked of(Form typed, LocalDate today, Optional<Climate> climate, OrderLevel kept) {
        boolean saysNothing = Stream.of("level", "missing", "left")
                .allMatch(field -> typed.get(field).isEmpty());
        var missing = saysNothing ? kept.missing() : typed.get("missing");
        var left = saysNothing ? kept.left() : typed.get("left");
        var chosen = saysNothing ? String.valueOf(kept.percent()) : typed.get("level");
        boolean byCosts = !missing.isEmpty() || !left.isEmpty();
        return new Asked(
                until(typed.get("until"), today, climate),
                byCosts ? ServiceLevel.ofCosts(cost(missing), cost(left)) : level(chosen),
                missing,
                left);
    }

    private static LocalDate until(String text, LocalDate today, Optional<Climate> climate) {
        if (text.isEmpty()) {
            return OrderList.usualUntil(today, climate);
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new PageException(400, new OrderSaid.NoUntil());
        }
    }

    private static double level(String text) {
        int percent = text.matches(PERCENT) ? Integer.parseInt(text) : 0;
        if (percent < LEAST_PERCENT || percent > MOST_PERCENT) {
            throw new PageException(400, new OrderSaid.NoLevel(LEAST_PERCENT, MOST_PERCENT));
        }
        return percent / HUNDRED;
    }

    private static BigDecimal cost(String text) {
        var cost = text.matches(COST) ? new BigDecimal(text.replace(',', '.')) : BigDecimal.ZERO;
        if (cost.signum() <= 0) {
            throw new PageException(400, new OrderSaid.NoCost());
        }
        return cost;
    }

    /** The same as the shop keeps it. */
    OrderLevel toKeep() {
        return new OrderLevel(byCosts() ? null : Integer.valueOf(percent()), missing, left);
    }

    /** Whether the level follows from two costs. */
    public boolean byCosts() {
        return !missing.isEmpty();
    }

    /** In whole per cent, as it is chosen. */
    public String percent() {
        return String.format(Locale.ROOT, "%.0f", level * HUNDRED);
    }

    /** The same as an address carries it behind its question mark. */
    public String query() {
        return "until=" + until
                + (byCosts() ? "&missing=" + segment(missing) + "&left=" + segment(left) : "&level=" + percent());
    }

    private static String segment(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
