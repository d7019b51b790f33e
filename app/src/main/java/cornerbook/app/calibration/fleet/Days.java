package cornerbook.app.calibration.fleet;

import cornerbook.core.corner.SeasonKind;

/** What each day of a car did to its wheels. */
final class Days {
    private final double[] kmUntil;
    private final double[] bitingKm;
    private final SeasonKind[] wheelsOn;
    private final double[][] workKjPerKm;

    Days(int days) {
        kmUntil = new double[days];
        bitingKm = new double[days];
        wheelsOn = new SeasonKind[days];
        workKjPerKm = new double[days][];
    }

    /**
     * Keeps a day.
     *
     * @param odometerKm at its end
     * @param biting distance, weighed with how road and season bite
     * @param on kind of wheels on the car
     * @param work at the contact by corner, kJ for every km
     */
    void keep(int day, double odometerKm, double biting, SeasonKind on, double[] work) {
        kmUntil[day] = odometerKm;
        bitingKm[day] = biting;
        wheelsOn[day] = on;
        workKjPerKm[day] = work;
    }

    int count() {
        return kmUntil.length;
    }

    /** Odometer at the end of a day. */
    double kmUntil(int day) {
        return kmUntil[day];
    }

    /** Wears tyres by a day, if they were on the car. */
    void wear(Tread tread, int day) {
        if (tread.set().season() == wheelsOn[day]) {
            tread.run(bitingKm[day], workKjPerKm[day]);
        }
    }
}
