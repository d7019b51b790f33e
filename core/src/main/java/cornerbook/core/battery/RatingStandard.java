package cornerbook.core.battery;

/**
 * Standard of a cold cranking rating, and its test. All test at −18 °C but JIS, which tests at −15 °C (JIS D 5301, from
 * memory); the numbers of two standards do not compare.
 */
public enum RatingStandard {
    SAE("30 s to 7.2 V at −18 °C (SAE J537)"),
    EN("10 s to 7.5 V at −18 °C, then 60 % of the current to 6 V (EN 50342-1)"),
    IEC("60 s to 8.4 V at −18 °C (IEC 60095-1)"),
    DIN("30 s to 9.0 V at −18 °C (DIN 43539)"),
    JIS("150 or 300 A at −15 °C, voltage after 5 or 30 s and time to 6 V (JIS D 5301, from memory)");

    private final String test;

    RatingStandard(String test) {
        this.test = test;
    }

    /** Conditions of the test. */
    public String test() {
        return test;
    }
}
