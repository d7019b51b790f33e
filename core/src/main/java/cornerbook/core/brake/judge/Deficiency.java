package cornerbook.core.brake.judge;

import cornerbook.core.brake.judge.BrakeSaid.Category;
import cornerbook.core.finding.Evidence;

/**
 * What a periodic inspection calls a defect of a brake, in the categories of Directive 2014/45/EU (minor, major, dangerous). It is
 * named beside a finding and decides none: the verdicts follow the limits that are on file for the car's place. Its words are the
 * place where that is written.
 */
public enum Deficiency implements BrakeSaid {
    PAD_BELOW_LIMIT(Category.DANGEROUS),
    PAD_AT_INDICATOR(Category.MAJOR),
    PAD_WRONGLY_FITTED(Category.DANGEROUS),
    DISC_WORN(Category.MAJOR_WHEN_SIGNIFICANTLY_WORN),
    DISC_FRACTURED(Category.DANGEROUS),
    PARKING_BRAKE_WEAK(Category.MAJOR),
    PARKING_BRAKE_FAILS(Category.DANGEROUS);

    private final Category category;

    Deficiency(Category category) {
        this.category = category;
    }

    public Evidence evidence() {
        return new Evidence(Label.DIRECTIVE_CATEGORY, category, this);
    }
}
