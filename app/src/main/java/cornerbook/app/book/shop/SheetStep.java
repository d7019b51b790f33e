package cornerbook.app.book.shop;

/** The steps of the bay sheet, in the order in which it has them where a shop never said otherwise. */
public enum SheetStep {
    RECEIVE,
    LIFT,
    OFF,
    /** A step for each corner, in the order in which the person walks round the car. */
    BRAKES,
    /** Pedal, parking brake and fluid. */
    PEDAL,
    ON,
    PRESSURE,
    TORQUE,
    BATTERY,
    /** The drive that beds the brakes in. */
    BURNISH,
    DEPART;

    /** Whether a shop may move it: a car is received first and handed over last. */
    public boolean isMovable() {
        return this != RECEIVE && this != DEPART;
    }
}
