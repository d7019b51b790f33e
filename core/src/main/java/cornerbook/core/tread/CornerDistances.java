package cornerbook.core.tread;

import cornerbook.core.corner.Corner;

/** How far one tyre has run at each corner since it was new to the book, in thousands of km. */
public record CornerDistances(double leftFront, double rightFront, double leftRear, double rightRear) {
    /** A tyre that has not run yet. */
    public static final CornerDistances NONE = new CornerDistances(0, 0, 0, 0);

    public CornerDistances {
        if (!(leftFront >= 0 && rightFront >= 0 && leftRear >= 0 && rightRear >= 0)) {
            throw new IllegalArgumentException("distances run are %s, %s, %s, %s thousand km, expected none below 0"
                    .formatted(leftFront, rightFront, leftRear, rightRear));
        }
    }

    public double at(Corner corner) {
        return switch (corner) {
            case LF -> leftFront;
            case RF -> rightFront;
            case LR -> leftRear;
            case RR -> rightRear;
        };
    }

    /** The same with some more thousand km at one corner. */
    public CornerDistances plus(Corner corner, double thousandKm) {
        return new CornerDistances(
                leftFront + (corner == Corner.LF ? thousandKm : 0),
                rightFront + (corner == Corner.RF ? thousandKm : 0),
                leftRear + (corner == Corner.LR ? thousandKm : 0),
                rightRear + (corner == Corner.RR ? thousandKm : 0));
    }

    /** Over all corners, in thousands of km. */
    public double total() {
        return leftFront + rightFront + leftRear + rightRear;
    }
}
