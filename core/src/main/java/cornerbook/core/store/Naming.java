package cornerbook.core.store;

import cornerbook.core.say.Refused;
import cornerbook.core.store.StoreSaid.Counted;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * How the places of a rack are called: each run of {@code #} in the pattern becomes a number of at least as many digits. With two runs
 * the first counts the shelves from below and the second the places on a shelf from the left; a rack of one shelf, or of one place on
 * each, has one run; a single place has none.
 *
 * @param pattern at most 30 characters, as on a label: "A-#-##" gives A-1-01 to A-4-10
 * @param shelves 1 to 20
 * @param places on each shelf, 1 to 100
 */
public record Naming(String pattern, int shelves, int places) {
    public static final int LONGEST = 30;
    public static final int MOST_SHELVES = 20;
    public static final int MOST_PLACES = 100;

    private static final Pattern NUMBER = Pattern.compile("#+");

    public Naming {
        pattern = pattern.strip().replaceAll("\\s+", " ");
        if (pattern.isEmpty() || pattern.length() > LONGEST) {
            throw new Refused(new StoreSaid.NoPattern(LONGEST));
        }
        check(Counted.SHELVES, shelves, MOST_SHELVES);
        check(Counted.PLACES, places, MOST_PLACES);
        int asked = (shelves > 1 ? 1 : 0) + (places > 1 ? 1 : 0);
        int found = (int) NUMBER.matcher(pattern).results().count();
        if (found != asked) {
            throw new Refused(new StoreSaid.PatternLacksNumbers(asked, found));
        }
    }

    static void check(Counted counted, int count, int most) {
        if (count < 1 || count > most) {
            throw new Refused(new StoreSaid.CountOutOfRange(counted, 1, most));
        }
    }

    /**
     * What a place is called.
     *
     * @param shelf from 1, the lowest
     * @param place on the shelf, from 1
     */
    public String name(int shelf, int place) {
        var numbers = new ArrayList<Integer>();
        if (shelves > 1) {
            numbers.add(shelf);
        }
        if (places > 1) {
            numbers.add(place);
        }
        var next = List.copyOf(numbers).iterator();
        return NUMBER.matcher(pattern).replaceAll(run -> padded(next.next(), run.group().length()));
    }

    private static String padded(int number, int digits) {
        var written = Integer.toString(number);
        return "0".repeat(Math.max(0, digits - written.length())) + written;
    }
}
