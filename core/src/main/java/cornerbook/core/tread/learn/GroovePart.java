package cornerbook.core.tread.learn;

/**
 * A part of a wheel set's readings that its other parts say nothing of. To the prior grooves are alike, so where those of a
 * tyre were read together, their sum and their differences are independent: a rotation of (inner, centre, outer) takes the
 * one problem of 3 × 8 unknowns and the seasons apart into one of 8 with the seasons and two of 8 without.
 */
enum GroovePart {
    /** (inner + centre + outer)/√3, where all three were read at each visit. */
    SUM(1, Math.sqrt(3), 0),
    /** A difference of grooves that were read together: what they share, car, corner, season and visit, is gone from it. */
    DIFFERENCE(1, 0, 0),
    /** The centre, and (inner + outer)/√2, where both shoulders were read at some visits and the centre at some. */
    CENTRE_WITH_SHOULDERS(2, 1, Math.sqrt(2)),
    /** (inner + outer)/√2, where no centre was read. */
    SHOULDERS(1, Math.sqrt(2), 0),
    /** One groove as it is. */
    ONE(1, 1, 0),
    /** Two grooves as they are. */
    TWO(2, 1, 1),
    /** Three grooves as they are. */
    THREE(3, 1, 1);

    private final int size;
    private final double first;
    private final double others;
    private final double square;

    GroovePart(int size, double first, double others) {
        this.size = size;
        this.first = first;
        this.others = others;
        square = first * first + (size - 1) * others * others;
    }

    /** How many values it has where everything of it was read. */
    int size() {
        return size;
    }

    /** How much of what all grooves share is in one of its values. */
    double load(int value) {
        return value == 0 ? first : others;
    }

    /** The squares of the loads, summed. */
    double square() {
        return square;
    }

    /** The load in the direction of all loads together, of length 1; where there is none, of the first value. */
    double direction(int value) {
        if (square == 0) {
            return value == 0 ? 1 : 0;
        }
        return load(value) / Math.sqrt(square);
    }
}
