package cornerbook.core.battery;

import cornerbook.core.say.Said;

/**
 * Standard of a cold cranking rating, and its test. All test at −18 °C but JIS, which tests at −15 °C (JIS D 5301, from
 * memory); the numbers of two standards do not compare.
 */
public enum RatingStandard implements Said {
    SAE,
    EN,
    IEC,
    DIN,
    JIS
}
