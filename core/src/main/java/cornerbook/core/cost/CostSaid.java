package cornerbook.core.cost;

import cornerbook.core.quantity.AboutPart;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;

/** What is said of what tyres cost. */
public interface CostSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements CostSaid {
        PRICE,
        ROLLING,
        NEW_TREAD,
        WEAR,
        CARRIED,
        TYRES,
        END_TREAD,
        ENERGY_PRICE,
        DRIVE_EFFICIENCY,
        CHARGING_LOSS
    }

    /** What is computed. */
    enum Computed implements CostSaid {
        PAID_FOR_EACH_KWH,
        LIFE,
        RUBBER,
        FORCE,
        ENERGY,
        TOGETHER,
        DIFFERENCE,
        PAID_BACK
    }

    /** Whose number it is where two tyres are held against each other. */
    enum Which implements CostSaid {
        FIRST,
        OTHER
    }

    /** How it is computed, where no number goes in. */
    enum Way implements CostSaid {
        AS_BOUGHT
    }

    /** Where it comes from. */
    enum Origin implements CostSaid {
        AS_GIVEN,
        EVEN_WEAR,
        DEFINITION,
        COEFFICIENT,
        CLASSES,
        WORK,
        BATTERY_CAR,
        ENGINE_WORK
    }

    /** What to mind. */
    enum Caution implements CostSaid {
        GRIP_FIRST,
        MEASURED_NEW
    }

    /** A number of one of two tyres. */
    record OfTyre(CostSaid what, Which which) implements CostSaid {}

    record RollingUnread(Quoted written) implements CostSaid, AboutPart {
        @Override
        public Said what() {
            return Input.ROLLING;
        }
    }

    /** A tyre that is replaced before it is worn. */
    record NothingToWear(Amount newTread, Amount end) implements CostSaid, AboutPart {
        @Override
        public Said what() {
            return Input.NEW_TREAD;
        }
    }
}
