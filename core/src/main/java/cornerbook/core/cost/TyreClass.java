package cornerbook.core.cost;

import cornerbook.core.say.Said;
import java.util.List;
import java.util.Optional;

/**
 * A class of tyres with its classes of rolling resistance, A to E.
 *
 * <p>Regulation (EU) 2020/740, Annex I, part A. The limits to class C, and those of class D of C1 and C3, stand in the table of
 * Regulation (EC) 1222/2009 too, where they were read; the others from memory. Class A has no lower end and class E no upper
 * one: A is taken to be as wide as B (common practice, no source), and E to end at the limit of UN R117, stage 2, for tyres for
 * severe snow (from memory), above which no tyre is sold.
 */
public enum TyreClass implements Said {
    /** Passenger car. */
    C1(5.4, 6.5, 7.7, 9.0, 10.5, 11.5),
    /** Van. */
    C2(4.4, 5.5, 6.7, 8.0, 9.0, 10.0),
    /** Truck and bus. */
    C3(3.1, 4.0, 5.0, 6.0, 7.0, 7.5);

    private static final String LETTERS = "ABCDE";
    /** The regulation writes a class from a tenth above the end of the one before. */
    private static final double STEP = 0.1;

    private final List<Double> ends;

    TyreClass(Double... ends) {
        this.ends = List.of(ends);
    }

    /** The coefficients of a class of the label; empty for a letter that it has not. */
    Optional<RollingResistance> find(String letter) {
        int place = letter.length() == 1 ? LETTERS.indexOf(letter) : -1;
        return place < 0
                ? Optional.empty()
                : Optional.of(new RollingResistance(ends.get(place) + (place == 0 ? 0 : STEP), ends.get(place + 1)));
    }
}
