package cornerbook.core.car;

import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Named words for what is judged by hand or by eye, mildest first. A reading keeps the place of its word, counted from 0; what the
 * words mean in a check is common practice, no source, unless the finding says otherwise.
 */
@SuppressWarnings("ImmutableEnumChecker") // every list is made by List.of
public enum Scale {
    MOVEMENT("free", "tight", "seized"),
    AMOUNT("none", "slight", "marked"),
    CONDITION("sound", "worn", "damaged"),
    /** Where the wear indicator of a pad stands, if it has one. */
    WEAR_INDICATOR("none fitted", "clear of the disc", "touches the disc", "wrong place"),
    HOLDING("holds", "holds weakly", "does not hold"),
    /** What went on a contact face. */
    LUBRICANT("none", "rubber-safe grease", "metal-contact paste"),
    /** Whether something was seen. */
    SIGN("no", "yes"),
    /** How grave it is what was seen. */
    STATE("sound", "watch", "put right now", "dangerous"),
    /** Where a hole is: between the outermost grooves, outside of them, or in the sidewall. */
    PUNCTURE("none", "tread centre", "shoulder", "sidewall"),
    KEY_PLACE("none needed", "glove box", "boot", "with the jack", "missing"),
    /** What a sidewall says of winter; the mountain and snowflake outranks M+S beside it. */
    WINTER_MARK("none", "mud and snow", "snowflake"),
    STUDS("none", "fitted"),
    /** How a tyre stands by the arrow, or by "outside", on its sidewall. */
    MOUNTED("as marked", "against its arrow", "inside out"),
    /** What a test showed; nobody can say it at a glance. */
    ANSWER("no", "yes"),
    /** How a wheel turns by hand with its brakes released. */
    TURNING("turns freely", "drags", "hardly turns"),
    /** A cylinder; a film of fluid behind its boots is no leak. */
    LEAKING("dry", "damp", "leaks"),
    DONE("not done", "done");

    private final List<String> words;

    Scale(String... words) {
        this.words = List.of(words);
    }

    /** The words in their order, as files and addresses spell them. */
    public List<String> words() {
        return words;
    }

    /** Whether a value says that nothing was done, or that nothing went on. */
    public boolean saysNotDone(double value) {
        return (this == DONE || this == LUBRICANT) && Math.round(value) == 0;
    }

    /** Whether its first word says that what was looked at is sound. */
    public boolean beginsSound() {
        return this == SIGN || this == STATE || this == PUNCTURE;
    }

    /** The words in their order, for people. */
    public List<ScaleWord> told() {
        return IntStream.range(0, words.size())
                .mapToObj(place -> new ScaleWord(this, place))
                .toList();
    }

    /** The word for people that stands for a value; a value between two words is that of the nearer one. */
    public ScaleWord told(double value) {
        return new ScaleWord(this, Math.clamp(Math.round(value), 0, words.size() - 1));
    }

    /** The word that stands for a value; a value between two words is that of the nearer one. */
    public String wordOf(double value) {
        return words.get(Math.clamp(Math.round(value), 0, words.size() - 1));
    }

    /**
     * The value of a word, or of its number.
     *
     * @throws Refused when there is no such word
     */
    public double parse(String written) {
        var word = written.strip().toLowerCase(Locale.ROOT);
        int place = words.indexOf(word);
        if (place >= 0) {
            return place;
        }
        for (int i = 0; i < words.size(); i++) {
            if (word.equals(String.valueOf(i))) {
                return i;
            }
        }
        throw new Refused(new CarSaid.NotOnScale(
                Quoted.of(written), words.stream().map(Said::verbatim).toList()));
    }
}
