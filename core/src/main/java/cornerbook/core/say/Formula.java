package cornerbook.core.say;

import java.util.Arrays;
import java.util.List;

/**
 * Numbers put into a formula, for a person to follow: "{} × {} / 9.81" with its numbers. The signs are the same in every language;
 * the numbers are written as the reader writes numbers.
 *
 * @param pattern signs and symbols, with {} where a number goes
 */
public record Formula(String pattern, List<Said> numbers) implements Said {
    public Formula {
        numbers = List.copyOf(numbers);
    }

    public static Formula of(String pattern, Said... numbers) {
        return new Formula(pattern, Arrays.asList(numbers));
    }
}
