package cornerbook.core.brake.burnish;

import cornerbook.core.corner.Axle;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;

/** What is said of a burnish drive: what it lacks, what to mind, and how it was found. */
public interface BurnishSaid extends Said {
    /** What a drive is planned from, as a person calls it. */
    enum Part implements BurnishSaid {
        MASS,
        ROTATING_MASS_FACTOR,
        FRONT_SHARE,
        ROLLING_CIRCUMFERENCE,
        SHARE_ON_FRONT_AXLE,
        CENTRE_HEIGHT,
        WHEELBASE,
        DISC_MASS,
        COOLING_AREA,
        SPECIFIC_HEAT,
        HEAT_SHARE,
        DISC_DIAMETER,
        SPEED_BEFORE,
        SPEED_AFTER,
        DECELERATION,
        REGENERATION_SHARE,
        AIR_TEMPERATURE,
        LOWEST_PEAK,
        HIGHEST_PEAK,
        LIMIT,
        FEWEST_STOPS,
        SHORTEST_SPACING,
        LONGEST_SPACING
    }

    /** What was computed. */
    enum Computed implements BurnishSaid {
        ENERGY,
        RISE,
        SPACING,
        LAST_PEAK,
        COOLING
    }

    /** How it was come by. */
    enum Ground implements BurnishSaid {
        KINETIC_ENERGY,
        HEAT_CAPACITY,
        COOLING_AND_BAND,
        ONE_LUMP
    }

    record KerbMass() implements BurnishSaid {}

    record FrontAxleShare() implements BurnishSaid {}

    /** Of which no drive is planned. */
    record HasDrums(Axle axle) implements BurnishSaid {}

    record DiscMass(Axle axle) implements BurnishSaid {}

    record DiscDiameter(Axle axle) implements BurnishSaid {}

    record PlanLacks(Listed missing) implements BurnishSaid {}

    record ExceedsLimit(Amount limit) implements BurnishSaid {}

    record GetsTooHot(Amount highest) implements BurnishSaid {}

    record StaysTooCold(Amount lowest) implements BurnishSaid {}

    record Regenerates() implements BurnishSaid {}

    record WhereTrafficAllows() implements BurnishSaid {}

    record MakersOutrank() implements BurnishSaid {}

    record EnergyFormula(Amount mass, Amount rotatingFactor, Amount from, Amount to, Amount regeneration)
            implements BurnishSaid {}

    record ShortestSpacing(Between spacing, Amount highest) implements BurnishSaid {}

    record StopsFromAir(int stops, Amount air) implements BurnishSaid {}

    record UntilNearAir(Amount speed, Amount within) implements BurnishSaid {}
}
