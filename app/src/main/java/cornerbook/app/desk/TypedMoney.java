package cornerbook.app.desk;

import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import java.math.BigDecimal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Amounts of money as people type them: figures, with at most as many behind the point or the comma as the coin has. */
public final class TypedMoney {
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private TypedMoney() {}

    /**
     * The amount.
     *
     * @throws PageException with one sentence when it is none
     */
    public static Money of(String text, CurrencyUnit currency) {
        var plain = text.replaceAll("[\\s\u00a0\u202f]", "").replace(',', '.');
        int decimals = currency.getDecimalPlaces();
        if (!plain.matches("\\d{1,7}" + (decimals > 0 ? "(\\.\\d{1," + decimals + "})?" : ""))) {
            throw new PageException(UNFIT, new DeskSaid.NoMoney(text, currency.getCode()));
        }
        return Money.of(currency, new BigDecimal(plain));
    }

    /** As a field shows it in the language of who asks, to be typed over. */
    public static String written(Money money) {
        return Told.reader().typed(money.getAmount().toPlainString());
    }
}
