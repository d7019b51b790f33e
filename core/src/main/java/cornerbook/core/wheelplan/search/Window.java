package cornerbook.core.wheelplan.search;

/** What an ending has to reach to be of interest; narrowed while better ones are found. */
final class Window {
    /** Least distance, thousand km. */
    double thousandKm;
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
}
