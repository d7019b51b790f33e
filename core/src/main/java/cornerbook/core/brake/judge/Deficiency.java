package cornerbook.core.brake.judge;

import cornerbook.core.finding.Evidence;

/**
 * What a periodic inspection calls a defect of a brake, in the categories of Directive 2014/45/EU (minor, major, dangerous). It is
 * named beside a finding and decides none: the verdicts follow the limits that are on file for the car's place.
 */
public enum Deficiency {
    PAD_BELOW_LIMIT("dangerous", "UK inspection manual 1.1.13: under 1.5 mm"),
    PAD_AT_INDICATOR("major", "UK inspection manual 1.1.13: worn to the indicator"),
    PAD_WRONGLY_FITTED("dangerous", "UK inspection manual 1.1.13: missing or wrongly fitted"),
    DISC_WORN(
            "major when significantly worn",
            "UK inspection manual 1.1.14: below the maker's limit is not by itself a reason; 49 CFR 570.59(b), over 10 000 lb: within the thickness marked on the disc or the manufacturer's"),
    DISC_FRACTURED("dangerous", "UK inspection manual 1.1.14: insecure or fractured"),
    PARKING_BRAKE_WEAK("major", "UK inspection manual 1.4.2: efficiency below the minimum"),
    PARKING_BRAKE_FAILS("dangerous", "UK inspection manual 1.4.2: efficiency under 50 % of the required value");

    private final String category;
    private final String source;

    Deficiency(String category, String source) {
        this.category = category;
        this.source = source;
    }

    public Evidence evidence() {
        return new Evidence("category of Directive 2014/45/EU", category, source);
    }
}
