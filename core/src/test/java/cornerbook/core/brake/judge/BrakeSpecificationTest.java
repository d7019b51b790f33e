package cornerbook.core.brake.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeDetails.ParkingBrake;
import cornerbook.core.brake.BrakePart;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.BrakeSpecification.ParkingBrakeRefusal;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.say.Refused;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a brake's data may say, and what was measured of an invented one beside it. */
class BrakeSpecificationTest {
    /** Pad new and minimum, disc new and minimum, limits of runout and thickness variation, refinish thickness. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.5 0.3 28 26 0.05 0.015 27 | PAD_NEW",
                "11 12 28 26 0.05 0.015 27 | PAD_MINIMUM",
                "11 3 70 26 0.05 0.015 27 | DISC_NEW",
                "11 3 28 29 0.05 0.015 28 | DISC_MINIMUM",
                "11 3 28 26 2 0.015 27 | RUNOUT_LIMIT",
                "11 3 28 26 0.05 2 27 | THICKNESS_VARIATION_LIMIT",
                "11 3 28 26 0.05 0.015 25.9 | REFINISH_THICKNESS"
            })
    void limitsThatContradictEachOtherAreRefused(String numbers, BrakePart named) {
        assertThatThrownBy(() -> brake(numbers))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refusal -> assertThat(refusal.said())
                                .isInstanceOfSatisfying(
                                        QuantitySaid.OutOfRange.class,
                                        range -> assertThat(range.what()).isEqualTo(named)));
    }

    @Test
    void aDiscMayBeMachinedToItsMinimumAtMost() {
        assertThatCode(() -> brake("11 3 28 26 0.05 0.015 26")).doesNotThrowAnyException();
    }

    private static BrakeSpecification brake(String numbers) {
        var n = List.of(numbers.split(" ")).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
        return new BrakeSpecification(
                Caliper.SLIDING,
                true,
                n[0],
                n[1],
                n[2],
                n[3],
                n[4],
                n[5],
                new BrakeDetails(null, n[6], null, null, null));
    }

    /** A parking brake with a motor is electric and no other is; shoes in a drum may be moved either way. */
    @ParameterizedTest
    @EnumSource(ParkingBrake.class)
    void aMotorMakesAParkingBrakeElectric(ParkingBrake kind) {
        var electric = switch (kind) {
            case MOTOR_ON_CALIPER, MOTOR_PULLING_CABLES -> List.of(true);
            case NONE, CABLE -> List.of(false);
            case DRUM_IN_DISC -> List.of(true, false);
        };
        for (boolean said : List.of(true, false)) {
            if (electric.contains(said)) {
                assertThatCode(() -> parking(kind, said)).doesNotThrowAnyException();
            } else {
                assertThatThrownBy(() -> parking(kind, said))
                        .isInstanceOfSatisfying(
                                Refused.class,
                                refusal -> assertThat(refusal.said())
                                        .isEqualTo(
                                                said
                                                        ? ParkingBrakeRefusal.ELECTRIC_WITHOUT_MOTOR
                                                        : ParkingBrakeRefusal.MOTOR_NOT_ELECTRIC));
            }
        }
    }

    private static BrakeSpecification parking(ParkingBrake kind, boolean electric) {
        var details = new BrakeDetails(kind, null, null, null, null);
        return new BrakeSpecification(Caliper.SLIDING, electric, 11, 3, 28, 26, 0.05, 0.015, details);
    }

    /** Outer pad first; a pad read at one place only is as thick at its other edge; a corner that nobody read is left out. */
    @Test
    void whatWasReadStandsBesideTheVisitBefore() {
        var before = visit("v1", pad(Spot.INNER, 9), pad(Spot.OUTER, 9.2));
        var now = visit(
                "v2",
                pad(Spot.INNER, 8),
                Cars.reading(Measure.PAD_THICKNESS_TRAILING, Corner.RR, null, Spot.INNER, 7.5),
                pad(Spot.OUTER, 8.4),
                Cars.reading(Measure.DISC_THICKNESS, Corner.LF, null, null, 27));
        var measured = BrakeMeasured.of(Cars.history(before, now), "v2");
        assertThat(measured).extracting(BrakeMeasured::corner).containsExactly(Corner.LF, Corner.RR);
        assertThat(measured.getFirst().discMm()).isEqualTo(27);
        assertThat(measured.getFirst().pads()).isEmpty();
        assertThat(measured.getLast().discMm()).isNull();
        assertThat(measured.getLast().pads())
                .extracting(
                        BrakeMeasured.Pad::side,
                        BrakeMeasured.Pad::leadingMm,
                        BrakeMeasured.Pad::trailingMm,
                        BrakeMeasured.Pad::beforeMm,
                        BrakeMeasured.Pad::thinnestMm)
                .containsExactly(tuple(Spot.OUTER, 8.4, 8.4, 9.2, 8.4), tuple(Spot.INNER, 8.0, 7.5, 9.0, 7.5));
    }

    /** Pads that were replaced at the visit before were as thick as new then, whatever was read of the old ones. */
    @Test
    void replacedPadsWereNewAtTheVisitBefore() {
        var replaced = visit("v1", pad(Spot.OUTER, 2), Cars.reading(Measure.PADS_REPLACED, Corner.RR, null, null, 1));
        assertThat(before(replaced, visit("v2", pad(Spot.OUTER, 10)))).containsExactly(11);
        assertThat(before(visit("v1"), visit("v2", pad(Spot.OUTER, 10))))
                .as("never read")
                .isEmpty();
        assertThat(before(visit("v0", pad(Spot.OUTER, 10.5)), visit("v1"), visit("v2", pad(Spot.OUTER, 10))))
                .as("read two visits ago")
                .containsExactly(10.5);
    }

    private static double[] before(Visit... visits) {
        return BrakeMeasured.of(Cars.history(visits), "v2").getLast().pads().stream()
                .flatMapToDouble(pad -> {
                    var beforeMm = pad.beforeMm();
                    return beforeMm == null ? DoubleStream.empty() : DoubleStream.of(beforeMm);
                })
                .toArray();
    }

    private static Reading pad(Spot side, double thicknessMm) {
        return Cars.reading(Measure.PAD_THICKNESS, Corner.RR, null, side, thicknessMm);
    }

    private static Visit visit(String id, Reading... readings) {
        return new Visit(id, Cars.AUTUMN, 48_000, Cars.at("S-"), Cars.at("S-"), List.of(readings));
    }
}
