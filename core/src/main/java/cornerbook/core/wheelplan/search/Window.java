package cornerbook.core.wheelplan.search;

/** What an ending has to reach to be of interest; narrowed while better ones are found. */
final class Window {
    /** Least distance, thousand km. */
    double thousandKm;
    /** Less than this distance, thousand km. */
    double belowThousandKm = Double.POSITIVE_INFINITY;
    /** How much deeper the two front wheels together may be than the rear ones when the last season is fitted, mm. */
    double frontOverRearMm = Double.POSITIVE_INFINITY;
    /** Greatest spread, mm. */
    double spreadMm;
    /** Fewer moves than this. */
    int moves;
    /** Options that may still be tried in joins; below 0 the search was given up. */
    long stepsLeft = Long.MAX_VALUE;

    Window(double thousandKm, double spreadMm, int moves) {
        this.thousandKm = thousandKm;
        this.spreadMm = spreadMm;
        this.moves = moves;
    }

    /** The same, and only what the rules on depth let be fitted for its last season, as far as the wheels' classes tell. */
    Window fittedWithin(SetNumbers numbers) {
        frontOverRearMm = numbers.mostFrontOverRearMm;
        return this;
    }
}
