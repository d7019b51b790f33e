package cornerbook.core.lift;

import cornerbook.core.say.Said;

import java.util.List;

/** What holds at every lift. */
final class LiftCautions {
    static final List<Said> ALWAYS = List.of(
            LiftSaid.Sentence.PADS_AT_POINTS,
            LiftSaid.Sentence.DAMAGED_HIGH_VOLTAGE,
            LiftSaid.Sentence.RAISE_AND_LOOK);

    private LiftCautions() {}
}
