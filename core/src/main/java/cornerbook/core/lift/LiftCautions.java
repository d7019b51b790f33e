package cornerbook.core.lift;

import cornerbook.core.say.Said;

import java.util.List;

/** What holds at every lift. */
final class LiftCautions {
    static final List<Said> ALWAYS = Said.verbatims(
            "Pads only at the lift points that the vehicle's maker names, never on a battery case or cooler.",
            "A damaged orange cable, a dented pack, coolant at the pack or an isolation warning: do not lift, call a high-voltage qualified person.",
            "Raise until the wheels are just clear, rock the car, look at each pad, then go on.");

    private LiftCautions() {}
}
