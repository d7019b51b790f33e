package cornerbook.words;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Day;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Margin;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import cornerbook.core.say.Verbatim;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is said, for other programs: which sentence it is, and its facts by name. A quantity is its value and its unit as the book has
 * them; dates are year-month-day; what is not known is left out.
 *
 * @param code the room and the name of the sentence: "core/tread/MayEnd"
 * @param facts of text, numbers, lists and maps
 */
public record Facts(String code, Map<String, Object> facts) {
    private static final String VALUE = "value";
    private static final String UNIT = "unit";

    public static Facts of(Said said) {
        var sentence = Sentence.of(said instanceof Enum<?> constant ? constant.getDeclaringClass() : said.getClass());
        return new Facts(sentence.room() + "/" + sentence.keyOf(said), named(said, sentence));
    }

    private static Map<String, Object> named(Said said, Sentence sentence) {
        return switch (said) {
            case Amount amount -> map(VALUE, amount.value(), UNIT, amount.unit());
            case Between between -> map("lowest", between.lowest(), "highest", between.highest(), UNIT, between.unit());
            case PlusMinus estimate -> map(VALUE, estimate.value(), "sd", estimate.sd(), UNIT, estimate.unit());
            case Margin margin -> map(VALUE, margin.value(), UNIT, margin.unit());
            case Listed listed -> map("items", plain(listed.items()));
            case Formula formula -> map("pattern", formula.pattern(), "numbers", plain(formula.numbers()));
            default -> {
                var facts = new LinkedHashMap<String, Object>();
                for (var name : sentence.names()) {
                    var fact = sentence.fact(said, name);
                    if (fact != null) {
                        facts.put(name, plain(fact));
                    }
                }
                yield facts;
            }
        };
    }

    private static Object plain(Object fact) {
        return switch (fact) {
            case Verbatim verbatim -> verbatim.text();
            case Day day -> day.date().toString();
            case Chance chance -> chance.probability();
            case Listed listed -> plain(listed.items());
            case Amount amount -> of(amount).facts();
            case Between between -> of(between).facts();
            case PlusMinus estimate -> of(estimate).facts();
            case Margin margin -> of(margin).facts();
            case Formula formula -> of(formula).facts();
            case Enum<?> constant -> constant.name();
            case Said said -> of(said);
            case List<?> items -> items.stream().map(Facts::plain).toList();
            case Number number -> number;
            case Boolean yes -> yes;
            case Object other -> other.toString();
        };
    }

    private static Map<String, Object> map(Object... namesAndValues) {
        var map = new LinkedHashMap<String, Object>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            map.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return map;
    }
}
