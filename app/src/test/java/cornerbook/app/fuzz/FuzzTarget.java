package cornerbook.app.fuzz;

/** A door of the program that takes what comes from outside, with the promise that it keeps for every input. */
public interface FuzzTarget {
    /** Hands the input in; fails when the promise does not hold. */
    void take(byte[] input) throws Exception;
}
