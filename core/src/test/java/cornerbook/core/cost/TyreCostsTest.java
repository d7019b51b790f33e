package cornerbook.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.cost.CostSaid.NothingToWear;
import cornerbook.core.cost.CostSaid.RollingUnread;
import cornerbook.core.cost.TyreCosts.Cheaper;
import cornerbook.core.quantity.QuantitySaid.OutOfRange;
import cornerbook.core.say.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TyreCostsTest {
    private static final TyreUse USE = new TyreUse(2000, 4, 2);
    private static final DriveEnergy BATTERY = new DriveEnergy(EnergySource.ELECTRICITY, 0.3, 83, 10);
    private static final RollingResistance SEVEN = new RollingResistance(7, 7);

    private static TyreOffer offer(double price, double wear, String rolling) {
        return new TyreOffer(price, 8, wear, RollingResistance.parse(rolling, TyreClass.C1));
    }

    @Test
    void rubberByTheKilometre() {
        var cost = TyreCosts.of(offer(100, 0.1, "7"), null, USE, BATTERY).first();
        assertThat(cost.lifeKm()).isCloseTo(60_000, within(1e-6));
        assertThat(cost.rubberPer1000Km()).isCloseTo(400 / 60.0, within(1e-9));
        assertThat(cost.untilWorn().most() - 60 * 10 * 0.3 * cost.per100Km().most())
                .as("what is not energy is the price of the set")
                .isCloseTo(400, within(1e-6));
    }

    /** The same tyre with another price, wear or coefficient: the one that is worse in nothing is cheaper. */
    @Test
    void theOneThatIsWorseInNothingIsCheaper() {
        assertThat(TyreCosts.of(offer(100, 0.1, "7"), offer(110, 0.1, "7"), USE, BATTERY)
                        .cheaper())
                .isEqualTo(Cheaper.FIRST);
        assertThat(TyreCosts.of(offer(100, 0.1, "7"), offer(100, 0.09, "7"), USE, BATTERY)
                        .cheaper())
                .isEqualTo(Cheaper.OTHER);
        assertThat(TyreCosts.of(offer(100, 0.1, "B"), offer(100, 0.1, "D"), USE, BATTERY)
                        .cheaper())
                .isEqualTo(Cheaper.FIRST);
    }

    @Test
    void classesThatTouchTellNothingOfTyresElseAlike() {
        var costs = TyreCosts.of(offer(104, 0.1, "B"), offer(100, 0.1, "C"), USE, BATTERY);
        assertThat(costs.cheaper()).isEqualTo(Cheaper.NOT_TOLD);
        assertThat(costs.paidBackKm()).isNull();
    }

    @Test
    void aPriceThatIsLowerHasNothingToPayBack() {
        assertThat(TyreCosts.of(offer(90, 0.1, "7"), offer(100, 0.1, "8"), USE, BATTERY)
                        .paidBackKm())
                .isNull();
    }

    /** Without any saving of energy a tyre that lasts twice as long is paid back when the other has to be bought again. */
    @Test
    void aLongerLifeIsPaidBackWhereTheOtherIsBoughtAgain() {
        var costs = TyreCosts.of(offer(150, 0.1, "7"), offer(100, 0.2, "7"), USE, BATTERY);
        assertThat(costs.cheaper()).isEqualTo(Cheaper.FIRST);
        assertThat(costs.paidBackKm()).isCloseTo(30_000, within(1e-6));
    }

    /** It may even take more energy, as long as it lasts long enough. */
    @Test
    void aLongerLifeMayPayForMoreEnergy() {
        var costs = TyreCosts.of(offer(150, 0.05, "8"), offer(100, 0.3, "7"), USE, BATTERY);
        assertThat(costs.cheaper()).isEqualTo(Cheaper.FIRST);
        assertThat(costs.paidBackKm()).isCloseTo(20_000, within(1e-6));
    }

    @Test
    void whatIsPaidStepsUpWhereTyresAreBought() {
        var costs = TyreCosts.of(offer(100, 0.1, "7"), null, USE, new DriveEnergy(EnergySource.PETROL, 0, 90, 0));
        assertThat(costs.course(costs.first(), 90_000))
                .extracting(TyreCosts.Paid::money)
                .containsExactly(400.0, 400.0, 800.0, 800.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"F", "AB", "", "seven", "-7", "7 N"})
    void refusesWhatIsNeitherClassNorCoefficient(String text) {
        assertThatThrownBy(() -> RollingResistance.parse(text, TyreClass.C1))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isInstanceOf(RollingUnread.class));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> RollingResistance.parse("70", TyreClass.C1))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isInstanceOf(OutOfRange.class));
        assertThatThrownBy(() -> TyreCosts.of(new TyreOffer(1, 4, 0.1, SEVEN), null, new TyreUse(1000, 4, 4), BATTERY))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isInstanceOf(NothingToWear.class));
        assertThat(RollingResistance.parse("7,2 kg/t", TyreClass.C1)).isEqualTo(new RollingResistance(7.2, 7.2));
    }
}
