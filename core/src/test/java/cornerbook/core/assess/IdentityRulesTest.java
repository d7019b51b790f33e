package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.CarSaid;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Problem;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.tyre.TyreSaid;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class IdentityRulesTest {
    /** The sample of 49 CFR 565 with its check digit 4, and with another one. */
    private static final String SAMPLE = "1G4AH59H45G118341";

    private static final String WRONG_DIGIT = "1G4AH59H55G118341";

    @Test
    void theCheckDigitCountsInNorthAmericaOnly() {
        assertThat(check(SAMPLE, "CA-QC", "225/55R18", 98, "V", "3519")).isEmpty();
        assertThat(check(WRONG_DIGIT, "FI", "225/55R18", 98, "V", "3519")).isEmpty();
        for (var place : List.of("US", "CA-QC", "CA")) {
            assertThat(check(WRONG_DIGIT, place, "225/55R18", 98, "V", null))
                    .containsExactly(new Problem(
                            "/vehicle/vin", new AssessSaid.VinCheckDigit(Quoted.of(WRONG_DIGIT), Quoted.of("5"), "4")));
        }
        assertThat(check("1G4AH59", "FI", "225/55R18", 98, "V", null))
                .extracting(Problem::message)
                .containsExactly(new CarSaid.VinLength(Quoted.of("1G4AH59"), 7, 17));
    }

    @Test
    void thePartOfTheTyreThatCannotBeReadIsNamed() {
        assertThat(check(null, "FI", "225-55R18", 151, "X", "35"))
                .extracting(Problem::where)
                .containsExactly(
                        "/wheelSets/0/wheels/0/tyre/size",
                        "/wheelSets/0/wheels/0/tyre/loadIndex",
                        "/wheelSets/0/wheels/0/tyre/speedSymbol",
                        "/wheelSets/0/wheels/0/tyre/tin");
        assertThat(check(null, "FI", "225-55R18", 98, "V", null))
                .extracting(Problem::message)
                .containsExactly(new TyreSaid.SizeUnread(
                        Quoted.of("225-55R18"), new TyreSaid.SizeNeeds(Quoted.of("-55R18"), TyreSaid.SizePart.SLASH)));
    }

    private static List<Problem> check(
            @Nullable String vin,
            String jurisdiction,
            String size,
            int loadIndex,
            String speedSymbol,
            @Nullable String tin) {
        var car = Cars.vehicle();
        var vehicle = new Vehicle(
                car.id(),
                car.name(),
                car.plate(),
                vin,
                car.drive(),
                car.electric(),
                jurisdiction,
                car.front(),
                car.rear(),
                car.fastener(),
                car.battery(),
                null,
                VehicleDetails.NOT_KNOWN);
        var tyre = new Tyre("Invented tread", size, loadIndex, speedSymbol, tin, false, false, 8.0);
        var set = new WheelSet("S", SeasonKind.WINTER, null, List.of(new Wheel("W", tyre, null)));
        return IdentityRules.check(
                new CarHistory(vehicle, new Customer("c", "Invented Person", null, null), List.of(set), List.of()));
    }
}
