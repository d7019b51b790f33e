package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.corner.Axle;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Which cars are of one kind (ISO 3779, 49 CFR 565.15: positions 1 to 8 and 10), and what one is given from another. */
class SameKindTest {
    /** The example of 49 CFR 565 that most references carry, check digit X. */
    private static final String KNOWN_VIN = "1M8GDM9AXKP042788";

    private static final Vehicle KNOWN = Cars.withBrake(BrakeSpecification.Caliper.SLIDING, true);

    @Test
    void positionsOneToEightAndTenTellTheKind() {
        assertThat(sign(KNOWN_VIN, "1M8GDM9A5KP999999"))
                .as("another serial, another check digit")
                .isTrue();
        assertThat(sign(KNOWN_VIN, "1M8GDM9AXLP042788"))
                .as("another model year")
                .isFalse();
        assertThat(sign(KNOWN_VIN, "1M8GDM9BXKP042788")).as("another engine").isFalse();
        assertThat(sign(KNOWN_VIN, "1m8gdm9a-5kp-999999"))
                .as("as people write it")
                .isTrue();
    }

    private static boolean sign(String vin, String other) {
        return SameKind.sign(bare("A", vin, "225/55R18"), bare("B", other, "225/55R18"))
                .filter(SameKind.Sign.VIN::equals)
                .isPresent();
    }

    @Test
    void makeAndModelTellItWhereAVinIsNotKnown() {
        assertThat(SameKind.sign(bare("Fjordling Volta", null, "x"), bare("fjordling volta, blue", KNOWN_VIN, "x")))
                .contains(SameKind.Sign.NAME);
        assertThat(SameKind.sign(bare("Fjordling Volta", null, "x"), bare("Fjordling Piko", null, "x")))
                .isEmpty();
        assertThat(SameKind.sign(bare("QX7007", null, "x"), bare("QX7007", null, "x")))
                .as("a plate is no make and model")
                .isEmpty();
        assertThat(SameKind.sign(
                        bare("Fjordling Volta", KNOWN_VIN, "x"), bare("Fjordling Volta", "1M8GDM9BXKP042788", "x")))
                .as("two VINs that differ outrank the name")
                .isEmpty();
    }

    @Test
    void whatIsNotKnownIsTakenAndWhatIsOfTheSingleCarStays() {
        var size = KNOWN.front().tyreSize();
        var given = SameKind.complete(bare("Fjordling Volta", null, size), KNOWN, "the other");
        assertThat(given.fastener()).isEqualTo(KNOWN.fastener());
        assertThat(given.front()).isEqualTo(KNOWN.front());
        assertThat(given.drive()).isEqualTo(KNOWN.drive());
        assertThat(given.jurisdiction()).isEqualTo(Vehicle.ANY_PLACE);
        assertThat(given.details().use()).isEqualTo(VehicleDetails.NOT_KNOWN.use());
        assertThat(given.battery())
                .isNotNull()
                .satisfies(battery -> assertThat(battery.installedOn()).isNull());
        assertThat(given.details().copiedFrom()).isEqualTo("the other");
        assertThat(SameKind.complete(KNOWN, bare("Fjordling Volta", null, size), "the other")
                        .front())
                .as("what is known stays")
                .isEqualTo(KNOWN.front());
    }

    @Test
    void thePlacardOfAnotherSizeIsNotTaken() {
        var given = SameKind.complete(bare("Fjordling Volta", null, "205/60R16"), KNOWN, "the other");
        assertThat(given.axle(Axle.FRONT).placardPressureKpa()).isNull();
        assertThat(given.axle(Axle.FRONT).loadIndex()).isNull();
        assertThat(given.axle(Axle.FRONT).axleLoadKg()).isEqualTo(KNOWN.front().axleLoadKg());
    }

    private static Vehicle bare(String name, @Nullable String vin, String size) {
        var axle = new AxleSpecification(null, size, null, null, null, BrakeSpecification.NOT_KNOWN);
        return new Vehicle(
                "bare",
                name,
                "QX 1",
                vin,
                null,
                null,
                Vehicle.ANY_PLACE,
                axle,
                axle,
                null,
                null,
                null,
                VehicleDetails.NOT_KNOWN);
    }
}
