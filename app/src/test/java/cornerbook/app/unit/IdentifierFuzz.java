package cornerbook.app.unit;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.Sentences;
import cornerbook.core.brake.fluid.BrakeFluid;
import cornerbook.core.car.Vin;
import cornerbook.core.torque.PropertyClass;
import cornerbook.core.torque.ScrewThread;
import cornerbook.core.torque.Seat;
import cornerbook.core.torque.ThreadState;
import cornerbook.core.tyre.DateCode;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.tyre.SpeedSymbol;
import cornerbook.core.tyre.Tin;
import cornerbook.core.tyre.TyreSize;
import java.util.List;
import java.util.function.Function;

/**
 * What stands on tyres, wheels, bolts and plates reads back equal once it is written, or is refused with a sentence. The
 * first line names what it is.
 */
public final class IdentifierFuzz implements FuzzTarget {
    private record Kind<T>(String name, Function<String, T> parse, Function<T, String> write) {
        void check(String text) {
            T read;
            try {
                read = parse.apply(text);
            } catch (IllegalArgumentException e) {
                Sentences.check(InEnglish.told(e), text);
                return;
            }
            var written = write.apply(read);
            assertThat(parse.apply(written)).as(written).isEqualTo(read);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static final List<Kind<?>> KINDS = List.of(
            new Kind<>("tin", Tin::parse, Tin::toString),
            new Kind<>("date code", DateCode::parse, DateCode::toString),
            new Kind<>("tyre size", TyreSize::parse, TyreSize::toString),
            new Kind<>("speed symbol", SpeedSymbol::parse, SpeedSymbol::name),
            new Kind<>("mounting", Mounting::parse, Mounting::written),
            new Kind<>("vin", Vin::parse, Vin::toString),
            new Kind<>("brake fluid", BrakeFluid::parse, BrakeFluid::label),
            // Shown by the nearest 64th of an inch.
            new Kind<>("thread", text -> ScrewThread.parse(text).toString(), shown -> shown),
            new Kind<>("seat", Seat::parse, Seat::word),
            new Kind<>("thread state", ThreadState::parse, ThreadState::word),
            new Kind<>("property class", PropertyClass::parse, PropertyClass::toString));

    @Override
    public void take(byte[] input) {
        var whole = new Input(input);
        whole.choose(KINDS).check(whole.rest());
    }
}
