package cornerbook.core.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a person may have meant who typed an odometer that the car can hardly have. Of what was typed, one digit is left out,
 * two neighbours are put in each other's place, or miles are taken for kilometres and the other way about; what then lies
 * where the odometer is expected is likely. Common practice, no source. {@code bay-odometer.mjs} says the same without a
 * link; both are held to one table, {@code reference/season/likely-odometers.csv}.
 *
 * @param value in the unit of what was typed, whole
 */
public record LikelyOdometer(Slip slip, double value) {
    /** How it may have been typed wrong, the most usual first. */
    public enum Slip implements SeasonSaid {
        DIGIT_TOO_MANY,
        DIGITS_SWAPPED,
        MILES_AND_KILOMETRES
    }

    /** The international mile (NIST SP 811, appendix B.8). */
    private static final double KM_PER_MILE = 1.609344;

    private static final int MOST = 2;

    /**
     * At most two, the likeliest first: by the slip, of a digit too many the last before the others, then by how near it is to
     * the middle of what is expected.
     *
     * @param typed 0 or more
     * @param low least that is expected, in the same unit
     * @param high most that is expected
     */
    public static List<LikelyOdometer> of(double typed, double low, double high) {
        long whole = Math.round(typed);
        var digits = String.valueOf(whole);
        var all = new ArrayList<LikelyOdometer>();
        for (int i = 0; i < digits.length() && digits.length() > 1; i++) {
            all.add(new LikelyOdometer(
                    Slip.DIGIT_TOO_MANY, Double.parseDouble(digits.substring(0, i) + digits.substring(i + 1))));
        }
        for (int i = 0; i + 1 < digits.length(); i++) {
            all.add(new LikelyOdometer(
                    Slip.DIGITS_SWAPPED,
                    Double.parseDouble(digits.substring(0, i)
                            + digits.charAt(i + 1)
                            + digits.charAt(i)
                            + digits.substring(i + 2))));
        }
        all.add(new LikelyOdometer(Slip.MILES_AND_KILOMETRES, Math.round(typed * KM_PER_MILE)));
        all.add(new LikelyOdometer(Slip.MILES_AND_KILOMETRES, Math.round(typed / KM_PER_MILE)));
        double middle = (low + high) / 2;
        var likely = new ArrayList<LikelyOdometer>();
        all.stream()
                .filter(each -> each.value >= low && each.value <= high && each.value != whole)
                .sorted(Comparator.comparing(LikelyOdometer::slip)
                        .thenComparing(each -> each.value != Math.floorDiv(whole, 10))
                        .thenComparingDouble(each -> Math.abs(each.value - middle)))
                .filter(each -> likely.stream().noneMatch(other -> other.value == each.value))
                .limit(MOST)
                .forEach(likely::add);
        return List.copyOf(likely);
    }
}
