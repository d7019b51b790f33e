package cornerbook.core.cost;

import cornerbook.core.say.Said;
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

    /** The regulation writes a class from a tenth above the end of the one before. */
    private static final double STEP = 0.1;

    private final double startOfA;
    private final double endOfA;
    private final double endOfB;
    private final double endOfC;
    private final double endOfD;
    private final double endOfE;

    TyreClass(double startOfA, double endOfA, double endOfB, double endOfC, double endOfD, double endOfE) {
        this.startOfA = startOfA;
        this.endOfA = endOfA;
        this.endOfB = endOfB;
        this.endOfC = endOfC;
        this.endOfD = endOfD;
        this.endOfE = endOfE;
    }

    /** The coefficients of a class of the label; empty for a letter that it has not. */
    Optional<RollingResistance> find(String letter) {
        return switch (letter) {
            case "A" -> Optional.of(new RollingResistance(startOfA, endOfA));
            case "B" -> Optional.of(new RollingResistance(endOfA + STEP, endOfB));
            case "C" -> Optional.of(new RollingResistance(endOfB + STEP, endOfC));
            case "D" -> Optional.of(new RollingResistance(endOfC + STEP, endOfD));
            case "E" -> Optional.of(new RollingResistance(endOfD + STEP, endOfE));
            default -> Optional.empty();
        };
    }
}
