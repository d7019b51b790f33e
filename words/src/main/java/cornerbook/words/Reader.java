package cornerbook.words;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Day;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Margin;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Price;
import cornerbook.core.say.Said;
import cornerbook.core.say.Verbatim;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Who is told: turns what is said into words, in one language, with one person's units and the time of one place. Words are made here and
 * nowhere else.
 */
public final class Reader {
    /** Metric English, for logs and for whoever has not chosen. */
    public static final Reader DEFAULT = new Reader(Language.ENGLISH, UnitSystem.METRIC, ZoneOffset.UTC);

    private static final String OWN = "core/say";

    private final Language language;
    private final UnitSystem units;
    private final ZoneId place;
    private final Written written;

    public Reader(Language language, UnitSystem units, ZoneId place) {
        this.language = language;
        this.units = units;
        this.place = place;
        this.written = new Written(language, units);
    }

    public Language language() {
        return language;
    }

    public UnitSystem units() {
        return units;
    }

    /** The same person reading another language, as a customer's sheet. */
    public Reader in(Language other) {
        return new Reader(other, units, place);
    }

    /** The same with other units. */
    public Reader in(UnitSystem other) {
        return new Reader(language, other, place);
    }

    /** The same at another place, whose time counts. */
    public Reader at(ZoneId elsewhere) {
        return new Reader(language, units, elsewhere);
    }

    /** The time of day: "09:41". */
    public String time(Instant moment) {
        return written.time(moment.atZone(place));
    }

    /** How far this place is from UTC at a moment (ISO 8601): "UTC−05:00". */
    public String offset(Instant moment) {
        var offset = place.getRules().getOffset(moment);
        return offset.getTotalSeconds() == 0 ? "UTC" : "UTC" + offset.getId().replace('-', '\u2212');
    }

    /** The day that it is here. */
    public LocalDate date(Instant moment) {
        return LocalDate.ofInstant(moment, place);
    }

    /** A value as a person typed it, with the decimal mark of this language; what is read back may have either. */
    public String typed(String value) {
        return language == Language.FRENCH ? value.replaceAll("(\\d)\\.(?=\\d)", "$1,") : value;
    }

    /** The labels of a page, a sheet or a picture, by the path of its room: "app/desk/car". */
    public Labels labels(String room) {
        return new Labels(this, room);
    }

    /** The words of what is said. */
    public String say(Said said) {
        return switch (said) {
            case Verbatim verbatim -> verbatim.text();
            case Amount amount -> written.amount(amount);
            case Between between -> {
                var high = written.amount(between.high());
                var numbers = written.between(between);
                yield high.equals(written.amount(between.low()))
                        ? high
                        : own("between", Map.of("low", numbers.getFirst(), "high", numbers.getLast()));
            }
            case PlusMinus estimate -> written.plusMinus(estimate);
            case Margin margin -> written.margin(margin);
            case Price price -> written.price(price.money());
            case Day day -> written.day(day.date());
            case Chance chance -> chance(chance.probability());
            case Listed listed -> listed(listed);
            case Formula formula -> formula(formula);
            default -> sentence(said);
        };
    }

    /** The same with its first letter as at the beginning of a line. */
    public String begin(Said said) {
        return capital(say(said));
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** A quantity without its unit, where that stands beside others once. */
    public String number(Amount amount) {
        return written.number(amount);
    }

    /** The unit in which this person reads what the book keeps in another, as it stands beside a scale. */
    public String unit(String bookUnit) {
        return written.unitName(units.unitOf(bookUnit));
    }

    /** Name of a unit that is this person's already, as it stands beside a field. */
    public String unitName(String unit) {
        return written.unitName(unit);
    }

    /** A day as it is written in this language: "20 Oct 2027". */
    public String day(LocalDate day) {
        return written.day(day);
    }

    /** A message of a room by its key, with these facts. */
    String message(String room, String key, Map<String, ?> facts) {
        return Catalogue.of(room).get(key, language).fill(new Filling() {
            @Override
            @Nullable
            Object fact(String name) {
                if (!facts.containsKey(name)) {
                    throw new IllegalArgumentException("%s in %s wants the fact %s".formatted(key, room, name));
                }
                return facts.get(name);
            }
        });
    }

    private String sentence(Said said) {
        var type = said instanceof Enum<?> constant ? constant.getDeclaringClass() : said.getClass();
        var sentence = Sentence.of(type);
        return Catalogue.of(sentence.room()).get(sentence.keyOf(said), language).fill(new Filling() {
            @Override
            @Nullable
            Object fact(String name) {
                return sentence.fact(said, name);
            }
        });
    }

    private String own(String key, Map<String, ?> facts) {
        return message(OWN, key, facts);
    }

    private String chance(double probability) {
        if (probability > 0.99) {
            return own("chance-over", Map.of("percent", written.percent(0.99)));
        }
        return probability < 0.01
                ? own("chance-under", Map.of("percent", written.percent(0.01)))
                : written.percent(probability);
    }

    private String listed(Listed listed) {
        var items = listed.items().stream().map(this::say).toList();
        return switch (listed.join()) {
            case COMMAS -> String.join(", ", items);
            case SEMICOLONS -> String.join("; ", items);
            case SENTENCES -> String.join(" ", items);
            case AND -> joined(items, "and");
            case OR -> joined(items, "or");
        };
    }

    private String joined(List<String> items, String word) {
        return items.size() < 2
                ? String.join("", items)
                : own(
                        word,
                        Map.of(
                                "first",
                                String.join(", ", items.subList(0, items.size() - 1)),
                                "last",
                                items.getLast()));
    }

    private String formula(Formula formula) {
        var parts = formula.pattern().split("\\{\\}", -1);
        var text = new StringBuilder(parts[0]);
        for (int i = 1; i < parts.length; i++) {
            text.append(say(formula.numbers().get(i - 1))).append(parts[i]);
        }
        return text.toString();
    }

    /** Facts as a message asks for them. */
    private abstract class Filling implements Message.Facts {
        abstract @Nullable Object fact(String name);

        @Override
        public String words(String name) {
            return switch (fact(name)) {
                case null ->
                    throw new IllegalArgumentException(
                            "the fact %s is missing, expected a choice by none".formatted(name));
                case Said said -> say(said);
                case String text -> text;
                case LocalDate day -> written.day(day);
                case MonthDay day -> written.monthDay(day);
                case Instant moment -> written.moment(moment.atZone(place));
                case Integer count -> written.count(count);
                case Long count -> written.count(count);
                case List<?> items ->
                    listed(Listed.commas(items.stream().map(Said.class::cast).toList()));
                case Object other ->
                    throw new IllegalArgumentException("the fact %s is a %s, which has no words"
                            .formatted(name, other.getClass().getSimpleName()));
            };
        }

        @Override
        public long count(String name) {
            return fact(name) instanceof Number number ? number.longValue() : fail("%s is no count".formatted(name));
        }

        @Override
        public String choice(String name) {
            return switch (fact(name)) {
                case null -> "none";
                case Enum<?> constant -> constant.name();
                case Boolean yes -> yes.toString();
                case String text -> text;
                case Object other -> other.getClass().getSimpleName();
            };
        }

        private static long fail(String what) {
            throw new IllegalArgumentException(what);
        }
    }
}
