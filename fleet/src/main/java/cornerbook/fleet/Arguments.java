package cornerbook.fleet;

import cornerbook.core.say.Refused;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the verb was asked for.
 *
 * @param cars the folder to be judged; null where cars are to be made
 * @param make how many cars are to be made; 0 where a folder is to be judged
 * @param since the folder of tables of a night before, of which is taken over what did not move; null to begin anew
 * @param calibrate of how many cars forecasts at past visits are held against what came; 0 for none
 * @param climate a climate file; null where the climate of the place is not known
 * @param key a file with the pair of keys by which is signed what the night learns; null where nothing is signed
 */
record Arguments(
        @Nullable String cars,
        int make,
        String to,
        LocalDate day,
        @Nullable Since since,
        int calibrate,
        @Nullable String climate,
        @Nullable String key) {
    /**
     * The night before.
     *
     * @param tables folder of its tables
     * @param keepLearned whether is judged by what was learned that night
     */
    record Since(String tables, boolean keepLearned) {}

    private static final String TO = "--to";
    private static final String MAKE = "--make";
    private static final String DAY = "--day";
    private static final String SINCE = "--since";
    private static final String KEEP_LEARNED = "--keep-learned";
    private static final String CALIBRATE = "--calibrate";
    private static final String CLIMATE = "--climate";
    private static final String SIGN_WITH = "--sign-with";
    private static final String LANGUAGE = "--language";
    private static final Set<String> OPTIONS = Set.of(TO, MAKE, DAY, SINCE, CALIBRATE, CLIMATE, SIGN_WITH, LANGUAGE);

    /**
     * Reads the words behind the verb.
     *
     * @param today the day that is meant where none is named
     * @throws Refused with one sentence
     */
    static Arguments parse(LocalDate today, String... words) {
        @Nullable String cars = null;
        boolean keepLearned = false;
        Map<String, String> options = new HashMap<>();
        for (int place = 0; place < words.length; place++) {
            var word = words[place];
            boolean more = place + 1 < words.length;
            if (OPTIONS.contains(word) && more && options.putIfAbsent(word, words[place + 1]) == null) {
                place++;
            } else if (word.equals(KEEP_LEARNED) && !keepLearned) {
                keepLearned = true;
            } else if (cars == null && !word.startsWith("-")) {
                cars = word;
            } else {
                throw new Refused(new FleetSaid.Usage());
            }
        }
        var to = options.get(TO);
        var make = options.get(MAKE);
        if (to == null || (cars == null) == (make == null) || (make != null && !make.matches("[1-9]\\d{0,8}"))) {
            throw new Refused(new FleetSaid.Usage());
        }
        var since = options.get(SINCE);
        if (since == null ? keepLearned : cars == null) {
            throw new Refused(new FleetSaid.Usage());
        }
        var key = options.get(SIGN_WITH);
        // What is signed is what was learned tonight.
        if (key != null && (cars == null || keepLearned)) {
            throw new Refused(new FleetSaid.Usage());
        }
        var calibrate = options.get(CALIBRATE);
        if (calibrate != null && (cars == null || !calibrate.matches("[1-9]\\d{0,3}|10000"))) {
            throw new Refused(new FleetSaid.Usage());
        }
        var day = options.get(DAY);
        return new Arguments(
                cars,
                make == null ? 0 : Integer.parseInt(make),
                to,
                day == null ? today : day(day),
                since == null ? null : new Since(since, keepLearned),
                calibrate == null ? 0 : Integer.parseInt(calibrate),
                options.get(CLIMATE),
                key);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refused(new FleetSaid.NoDay(text));
        }
    }
}
