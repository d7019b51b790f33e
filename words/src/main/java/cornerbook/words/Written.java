package cornerbook.words;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Margin;
import cornerbook.core.say.PlusMinus;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** How numbers, quantities and days are written in one language and one system of units. */
final class Written {
    /** A figure keeps together with what follows it. */
    private static final char NARROW_BLANK = '\u202f';

    private static final char BLANK = '\u00a0';

    private static final String PER_1000_KM = "mm/1000 km";
    private static final String PER_1000_MI = "/32 in/1000 mi";
    private static final Map<String, String> FRENCH_UNITS = Map.ofEntries(
            Map.entry("in", "po"),
            Map.entry("ft", "pi"),
            Map.entry("psi", "lb/po²"),
            Map.entry("lbf·ft", "lbf·pi"),
            Map.entry("mph", "mi/h"),
            Map.entry("/32 in", "/32 po"),
            Map.entry("studs", "goujons"),
            Map.entry("clicks", "crans"),
            Map.entry("years", "ans"),
            Map.entry("d", "j"),
            Map.entry("km/day", "km par jour"),
            Map.entry("mi/day", "mi par jour"),
            Map.entry(PER_1000_KM, "mm aux 1\u202f000 km"),
            Map.entry(PER_1000_MI, "/32 po aux 1\u202f000 mi"));
    private static final Map<String, String> ENGLISH_UNITS = Map.of(
            "d",
            "days",
            "km/day",
            "km per day",
            "mi/day",
            "mi per day",
            PER_1000_KM,
            "mm per 1\u202f000 km",
            PER_1000_MI,
            "/32 in per 1\u202f000 mi");

    private static final Map<CurrencyUnit, String> CURRENCIES =
            Map.of(CurrencyUnit.CAD, "$", CurrencyUnit.EUR, "€", CurrencyUnit.GBP, "£");

    private final Language language;
    private final UnitSystem units;
    private final DateTimeFormatter day;
    private final DateTimeFormatter monthDay;
    private final DateTimeFormatter time;

    Written(Language language, UnitSystem units) {
        this.language = language;
        this.units = units;
        boolean french = language == Language.FRENCH;
        day = DateTimeFormatter.ofPattern("MMM uuuu", language.locale());
        monthDay = DateTimeFormatter.ofPattern("MMM", language.locale());
        time = DateTimeFormatter.ofPattern(french ? "H 'h' mm" : "HH:mm", language.locale());
    }

    String amount(Amount amount) {
        var shown = Measured.of(amount, amount.value(), units);
        return number(shown.value(), shown.decimals(), false) + unit(shown.unit());
    }

    String number(Amount amount) {
        var shown = Measured.of(amount, amount.value(), units);
        return number(shown.value(), shown.decimals(), false);
    }

    /** Both numbers in the unit in which the larger is read; the unit stands behind the second. */
    List<String> between(Between between) {
        double larger = Math.max(Math.abs(between.lowest()), Math.abs(between.highest()));
        var low = Measured.of(between.low(), larger, units);
        var high = Measured.of(between.high(), larger, units);
        return List.of(
                number(low.value(), low.decimals(), false),
                number(high.value(), high.decimals(), false) + unit(high.unit()));
    }

    String plusMinus(PlusMinus estimate) {
        var amount = Measured.of(
                new Amount(estimate.value(), estimate.unit(), estimate.decimals()), estimate.value(), units);
        var sd = Measured.margin(estimate.sd(), estimate.unit(), estimate.decimals(), estimate.value(), units);
        return number(amount.value(), amount.decimals(), false) + " ± " + number(sd.value(), amount.decimals(), false)
                + unit(amount.unit());
    }

    String margin(Margin margin) {
        var shown = Measured.margin(margin.value(), margin.unit(), margin.decimals(), margin.value(), units);
        return number(shown.value(), shown.decimals(), margin.signed()) + unit(shown.unit());
    }

    /** The sign of a currency before the figures in English, behind them in French; dollars of another country by their name. */
    String price(Money money) {
        var figures = figures(money.getAmount().abs(), false);
        var sign = money.isNegative() ? "−" : "";
        var currency = CURRENCIES.getOrDefault(
                money.getCurrencyUnit(), money.getCurrencyUnit().getCode());
        return language == Language.FRENCH
                ? sign + figures + BLANK + currency
                : sign + currency + (currency.length() > 1 ? String.valueOf(BLANK) : "") + figures;
    }

    String percent(double share) {
        return number(share * 100, 0, false) + unit("%");
    }

    String count(long count) {
        return number((double) count, 0, false);
    }

    String day(LocalDate date) {
        return ofMonth(date.getDayOfMonth()) + " " + day.format(date);
    }

    String monthDay(MonthDay date) {
        return ofMonth(date.getDayOfMonth()) + " " + monthDay.format(date);
    }

    String moment(ZonedDateTime moment) {
        return day(moment.toLocalDate()) + ", " + time(moment);
    }

    String time(ZonedDateTime moment) {
        return time.format(moment);
    }

    /** French counts the first day of a month and no other. */
    private String ofMonth(int dayOfMonth) {
        return language == Language.FRENCH && dayOfMonth == 1 ? "1er" : String.valueOf(dayOfMonth);
    }

    String unitName(String unit) {
        return (language == Language.FRENCH ? FRENCH_UNITS : ENGLISH_UNITS)
                .getOrDefault(unit, unit)
                .replace(' ', BLANK);
    }

    private String unit(String unit) {
        var named = unitName(unit);
        return unit.isEmpty() || unit.startsWith("/") ? named : BLANK + named;
    }

    /** With a real minus, thousands apart from ten thousand on, and no minus before nothing. */
    private String number(double value, int decimals, boolean signed) {
        return figures(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP), signed);
    }

    private String figures(BigDecimal rounded, boolean signed) {
        var digits = rounded.abs().toPlainString();
        int point = digits.indexOf('.');
        var whole = point < 0 ? digits : digits.substring(0, point);
        var grouped = new StringBuilder(whole);
        if (whole.length() > 3) {
            for (int at = whole.length() - 3; at > 0; at -= 3) {
                grouped.insert(at, NARROW_BLANK);
            }
        }
        var sign = rounded.signum() < 0 ? "−" : signed && rounded.signum() > 0 ? "+" : "";
        return sign
                + grouped
                + (point < 0 ? "" : (language == Language.FRENCH ? "," : ".") + digits.substring(point + 1));
    }
}
