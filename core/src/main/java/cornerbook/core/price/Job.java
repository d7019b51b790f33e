package cornerbook.core.price;

import cornerbook.core.say.Said;

/** Work that a shop's price list has a time and a price of parts for. */
public enum Job implements Said {
    WHEELS(Per.CAR),
    BRAKES(Per.CAR),
    WHEELS_AND_BRAKES(Per.CAR),
    RETORQUE(Per.CAR),
    BRAKE_SERVICE(Per.CORNER),
    PADS(Per.AXLE),
    DISCS(Per.AXLE),
    SHOES(Per.AXLE),
    DRUMS(Per.AXLE),
    CALIPER(Per.CORNER),
    BRAKE_HOSE(Per.CORNER),
    BRAKE_FLUID(Per.CAR),
    BATTERY(Per.CAR),
    BATTERY_TEST(Per.CAR),
    PRESSURE_SENSOR(Per.CORNER),
    TYRE_REPAIR(Per.CORNER),
    ALIGNMENT(Per.CAR),
    /** What is charged for an old tyre, beside the new one. */
    OLD_TYRE(Per.TYRE);

    private final Per per;

    Job(Per per) {
        this.per = per;
    }

    /** What one of it is done for. */
    public enum Per implements Said {
        CAR,
        AXLE,
        CORNER,
        TYRE
    }

    public Per per() {
        return per;
    }
}
