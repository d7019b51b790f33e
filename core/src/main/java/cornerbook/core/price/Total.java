package cornerbook.core.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What lines come to with their taxes:
 *
 * <pre>
 *   S = Σ lines                                     (1)
 *   Tᵢ = S × rᵢ / 100, half a cent up, for each tax i  (2)
 *   total = S + Σ Tᵢ                                (3)
 * </pre>
 *
 * Every tax is on the price before taxes, and is computed once on the sum of the lines: rounding line by line gives another cent. Half a
 * cent is away from zero, so that what is given back is what was taken. Source: Excise Tax Act (R.S.C. 1985, c. E-15), sections 165 and
 * 165.2; Revenu Québec, Calculating the Taxes.
 *
 * @param subtotal (1)
 * @param taxes (2), in the order in which they were given
 * @param total (3)
 */
public record Total(Money subtotal, List<Share> taxes, Money total) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal FIVE_CENTS = new BigDecimal("0.05");
    private static final CurrencyUnit WITHOUT_A_CENT = CurrencyUnit.CAD;

    /** One tax and what it comes to. */
    public record Share(Tax tax, Money amount) {}

    public Total {
        taxes = List.copyOf(taxes);
    }

    /**
     * The sum of lines of one currency.
     *
     * @param currency of the lines, and of nothing where there is none
     */
    public static Total of(CurrencyUnit currency, List<Money> lines, List<Tax> taxes) {
        var subtotal = Money.total(currency, lines);
        var shares = taxes.stream().map(tax -> share(tax, subtotal)).toList();
        return new Total(
                subtotal,
                shares,
                subtotal.plus(shares.stream().map(Share::amount).toList()));
    }

    private static Share share(Tax tax, Money subtotal) {
        // Exact before it is rounded once.
        var exact = subtotal.getAmount().multiply(tax.percent()).divide(HUNDRED);
        return new Share(tax, Money.of(subtotal.getCurrencyUnit(), exact, RoundingMode.HALF_UP));
    }

    /** What is paid for all of it in cash. */
    public Money inCash() {
        return inCash(total);
    }

    /**
     * What is paid in cash: Canada has no cent, and what is due after taxes goes to the nearest five cents. Elsewhere the amount itself.
     * Source: Government of Canada, Budget 2012, Rounding.
     */
    public static Money inCash(Money due) {
        if (!due.getCurrencyUnit().equals(WITHOUT_A_CENT)) {
            return due;
        }
        return Money.of(
                due.getCurrencyUnit(),
                due.getAmount()
                        .divide(FIVE_CENTS)
                        .setScale(0, RoundingMode.HALF_UP)
                        .multiply(FIVE_CENTS),
                RoundingMode.UNNECESSARY);
    }
}
