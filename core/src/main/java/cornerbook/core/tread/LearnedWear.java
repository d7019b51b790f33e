package cornerbook.core.tread;

import java.util.EnumMap;
import java.util.Map;

/**
 * What a book's readings say about wear.
 *
 * @param standardErrors how sure, on each parameter's scale, so that 0.1 is ten percent (of the slowing, its own), allowing
 *     for readings of one car being alike
 * @param cars how many cars it comes from
 * @param readings how many readings of a groove
 * @param widening factor of every standard deviation where the book's own readings lay outside their bands too often; 1 where they did
 *     not, at most 3
 */
public record LearnedWear(
        WearParameters parameters, Map<WearParameter, Double> standardErrors, int cars, int readings, double widening) {
    public LearnedWear {
        standardErrors = Map.copyOf(standardErrors);
    }

    /** The same with a parameter that is known so surely. */
    public LearnedWear withError(WearParameter parameter, double standardError) {
        var errors = new EnumMap<>(standardErrors);
        errors.put(parameter, standardError);
        return new LearnedWear(parameters, errors, cars, readings, widening);
    }

    /** The same with this widening. */
    public LearnedWear widenedBy(double factor) {
        return new LearnedWear(parameters, standardErrors, cars, readings, factor);
    }

    /** The parameters to forecast with: the likeliest, widened. */
    public WearParameters forecasting() {
        return widening == 1 ? parameters : parameters.widened(widening);
    }
}
