package cornerbook.core.quantity;

import cornerbook.core.say.Said;
import java.util.List;

/** Why what a person wrote is no quantity, or none that can be meant. */
public interface QuantitySaid extends Said {
    /** A unit as people write it, in a list of those that may be written. */
    record UnitWord(String unit) implements QuantitySaid {}

    record NotAQuantity(Quoted written, List<UnitWord> units) implements QuantitySaid {
        public NotAQuantity {
            units = List.copyOf(units);
        }
    }

    record OtherUnit(Quoted written, Quoted unit, List<UnitWord> units) implements QuantitySaid {
        public OtherUnit {
            units = List.copyOf(units);
        }
    }

    record TooLarge(Quoted written) implements QuantitySaid {}

    record TwoWays(Quoted written) implements QuantitySaid {}

    record DividesByZero(Quoted written) implements QuantitySaid {}

    record FractionWithoutUnit(Quoted written) implements QuantitySaid {}

    /**
     * A value outside the range in which it can be meant.
     *
     * @param what the part, as a person calls it: "wrench length"
     */
    record OutOfRange(Said what, Said value, Said range) implements QuantitySaid {}
}
