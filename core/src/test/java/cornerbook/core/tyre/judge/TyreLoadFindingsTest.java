package cornerbook.core.tyre.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Tyre;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Cases;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Verdict;
import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The car of these tests has 1100 kg per axle: 550 kg per tyre. UN R30: index 87 is 545 kg, index 88 is 560 kg. */
class TyreLoadFindingsTest {
    private final List<Said> notJudged = new ArrayList<>();

    @Test
    void aTyreUnderHalfTheAxleLoadIsSpent() {
        assertThat(judge(87, "T")).singleElement().satisfies(finding -> {
            assertThat(finding.verdict()).isEqualTo(Verdict.SPENT);
            assertThat(finding.title())
                    .isEqualTo(new SidewallSaid.CarriesTooLittle(
                            "W", Corner.RR, Amount.of(545, "kg"), Amount.of(550, "kg")));
            assertThat(finding.source()).isEqualTo(SidewallSaid.Ground.AXLE_LOAD_RULE);
        });
        assertThat(judge(88, "T")).isEmpty();
        assertThat(notJudged).isEmpty();
    }

    @Test
    void anUnknownServiceDescriptionIsNotJudged() {
        assertThat(judge(160, "T")).isEmpty();
        assertThat(judge(98, "X")).isEmpty();
        assertThat(notJudged)
                .containsExactly(
                        new SidewallSaid.LoadUnread(
                                "W",
                                new QuantitySaid.OutOfRange(
                                        TyreSaid.Input.LOAD_INDEX, new Amount(160, "", 0), new Between(0, 150, "", 0))),
                        new SidewallSaid.LoadUnread(
                                "W", new TyreSaid.NoSpeedSymbol(Quoted.of("X"), "L M N P Q R S T U H V W Y")));
    }

    /**
     * Load index 111 is 1090 kg in UN R30's table, and LT255/75R17 111 carries 2405 lb, 1091 kg, by a tyre maker's data sheet,
     * but at 50 psi; of LT245/75R16 with index 80 neither says anything. No light-truck tyre is held against the table for
     * passenger tyres, and no temporary spare.
     */
    @Test
    void lightTruckTyresAndSparesAreNotJudgedByThePassengerTable() {
        assertThat(judge("LT255/75R17", 111, "S")).isEmpty();
        assertThat(notJudged).isEmpty();
        assertThat(judge("LT245/75R16", 80, "S")).isEmpty();
        assertThat(judge("T145/80D18", 80, "M")).isEmpty();
        assertThat(notJudged)
                .containsExactly(
                        new SidewallSaid.LoadOnSidewall("W", "LT245/75R16", false),
                        new SidewallSaid.LoadOnSidewall("W", "T145/80D18", true));
        assertThat(judge("225/55R18", 80, "T"))
                .as("a passenger tyre with that index")
                .hasSize(1);
    }

    private List<Finding> judge(int loadIndex, String speedSymbol) {
        return judge("225/55R18", loadIndex, speedSymbol);
    }

    private List<Finding> judge(String size, int loadIndex, String speedSymbol) {
        var tyre = new Tyre("Invented tread", size, loadIndex, speedSymbol, null, false, false, 8.0);
        var set = new WheelSet("S", SeasonKind.WINTER, null, List.of(new Wheel("W", tyre, null)));
        var judged = TyreLoadFindings.judge(Cases.onlyOn(set, Corner.RR).last());
        notJudged.addAll(judged.notJudged());
        return judged.findings();
    }
}
