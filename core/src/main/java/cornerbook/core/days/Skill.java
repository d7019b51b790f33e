package cornerbook.core.days;

import cornerbook.core.say.Said;
import java.util.EnumSet;
import java.util.Set;

/** What a person has to have learned for some of the work. Common practice, no source; rules of the place may ask for more. */
public enum Skill implements Said {
    /** Work on cars with a high-voltage battery. */
    HIGH_VOLTAGE,
    /** Work on brakes. */
    BRAKES;

    /**
     * What a visit asks for.
     *
     * @param highVoltage whether the car has a high-voltage battery, or nobody knows that it has none
     */
    public static Set<Skill> of(PlannedWork work, boolean highVoltage) {
        var skills = EnumSet.noneOf(Skill.class);
        if (highVoltage) {
            skills.add(HIGH_VOLTAGE);
        }
        switch (work) {
            case BRAKES, WHEELS_AND_BRAKES -> skills.add(BRAKES);
            case WHEELS, RETORQUE, OTHER -> {}
        }
        return skills;
    }
}
