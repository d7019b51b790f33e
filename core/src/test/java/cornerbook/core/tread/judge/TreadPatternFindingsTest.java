package cornerbook.core.tread.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Cars;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tread.AlignmentSaid;
import cornerbook.core.tread.AxlePattern;
import cornerbook.core.tread.TreadPattern;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import cornerbook.core.tread.judge.TreadSaid.Label;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wear across a tyre, and one side against the other; its usual causes are common practice, no source. The set is invented. */
class TreadPatternFindingsTest {
    /** Depths of inner, centre and outer groove of a tyre that was 8 mm new. */
    @ParameterizedTest
    @CsvSource({
        "4.5, 6.5, 4.5, UNDER_INFLATION",
        "6.5, 4.5, 6.5, OVER_INFLATION",
        "4.5, 6.3, 6.5, INNER_ALIGNMENT",
        "6.5, 6.3, 4.5, OUTER_ALIGNMENT"
    })
    void theCauseFollowsTheLowGroove(double innerMm, double centreMm, double outerMm, TreadPattern.Cause cause) {
        assertThat(TreadPatternFindings.of(set(tyre(innerMm, centreMm, outerMm))))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.plainWords()).isEqualTo(new TreadSaid.UnevenBy(cause));
                    assertThat(finding.subject())
                            .isEqualTo(new Subject(Subject.Part.TREAD_PATTERN, Corner.LR, "W-LR", "WINTER-set"));
                    assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
                    // 4.5 mm of a tyre that is 8 mm new and done at 4 mm: an eighth.
                    assertThat(finding.lifeLeft()).isEqualTo(0.125);
                });
    }

    @Test
    void anEvenTyreIsNotMentioned() {
        assertThat(TreadPatternFindings.of(set(tyre(6, 6.1, 6)))).isEmpty();
    }

    /** Uneven wear that took a groove below the minimum of 4 mm has used the tyre up; at it, it has not. */
    @ParameterizedTest
    @CsvSource({"3.9, SPENT", "4.0, HOLDS"})
    void aLowShoulderBelowTheMinimumIsSpent(double innerMm, Verdict verdict) {
        assertThat(TreadPatternFindings.of(set(tyre(innerMm, 6.3, 6.5))))
                .extracting(Finding::verdict)
                .containsExactly(verdict);
    }

    /** With a groove that was never read the picture across is not known. */
    @Test
    void twoGroovesTellNoPattern() {
        var whole = tyre(3.9, 6.3, 6.5);
        var half =
                new TyreForecast(whole.wheel(), whole.corner(), whole.grooves().subList(0, 2));
        assertThat(TreadPatternFindings.of(set(half))).isEmpty();
    }

    /** 0.30 mm and 0.15 mm per 1000 km: twice as fast, told from a chance of 90 % on (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"0.9, true", "0.89, false"})
    void oneSideThatWearsMuchFasterIsNamed(double chance, boolean told) {
        var findings = TreadPatternFindings.of(Cars.forecast(
                SetSpan.Role.GOING_ON,
                0.95,
                List.of(tyre(6, 6, 6)),
                List.of(new CornerContrast(Corner.RF, 0.30, 0.15, chance))));
        assertThat(findings).hasSize(told ? 1 : 0).allSatisfy(finding -> {
            assertThat(finding.title()).isEqualTo(new TreadSaid.WearsFaster(Corner.RF, new Amount(2, "", 1)));
            assertThat(finding.subject())
                    .isEqualTo(new Subject(Subject.Part.TREAD_PATTERN, Corner.RF, null, "WINTER-set"));
        });
    }

    /** The inner shoulders of both tyres speak for toe out or both cambers, that of one for its own wheel: tread wear in the trade. */
    @ParameterizedTest
    @CsvSource({"4.5, BOTH_INNER", "6.4, LEFT_INNER"})
    void bothTyresOfAnAxleTellToeFromCamber(double rightInnerMm, AxlePattern.Cause cause) {
        var left = tyre(4.5, 6.3, 6.5);
        var right = at(Corner.RR, tyre(rightInnerMm, 6.3, 6.5));
        for (var tyres : List.of(List.of(left, right), List.of(right, left))) {
            var ofLeft = TreadPatternFindings.of(set(tyres)).stream()
                    .filter(finding -> finding.subject().corner() == Corner.LR)
                    .findFirst()
                    .orElseThrow();
            assertThat(value(ofLeft, Label.AXLE_POINTS_TO)).isEqualTo(new AlignmentSaid.PointsTo(cause));
        }
        assertThat(value(TreadPatternFindings.of(set(left)).getFirst(), Label.AXLE_POINTS_TO))
                .as("the other tyre was not read")
                .isNull();
        assertThat(value(
                        TreadPatternFindings.of(set(List.of(left, at(Corner.RF, tyre(4.5, 6.3, 6.5)))))
                                .getFirst(),
                        Label.AXLE_POINTS_TO))
                .as("a tyre of the other axle")
                .isNull();
    }

    @Test
    void airIsNoMatterOfTheAlignment() {
        var finding = TreadPatternFindings.of(set(List.of(tyre(4.5, 6.5, 4.5), at(Corner.RR, tyre(4.5, 6.5, 4.5)))))
                .getFirst();
        assertThat(value(finding, Label.AXLE_POINTS_TO)).isNull();
        assertThat(value(finding, Label.LEFT_AS_IT_IS_AND_SET_RIGHT)).isNull();
    }

    /** By hand: 0.5 mm are left to 4 mm; at 0.25 mm in 1000 km they go 2000 km, at the 0.10 mm of the others 5000 km. */
    @Test
    void aWrongAlignmentCostsDistance() {
        var tyre = tyre(4.5, 6.3, 6.5);
        assertThat(value(
                        TreadPatternFindings.of(set(faster(tyre, 0.25, 0.10))).getFirst(),
                        Label.LEFT_AS_IT_IS_AND_SET_RIGHT))
                .isEqualTo(new TreadSaid.TwoDistances(new Amount(2000, "km", 0), new Amount(5000, "km", 0)));
        assertThat(value(
                        TreadPatternFindings.of(set(faster(tyre, 0.10, 0.10))).getFirst(),
                        Label.LEFT_AS_IT_IS_AND_SET_RIGHT))
                .as("it wears no faster than the others")
                .isNull();
        assertThat(value(
                        TreadPatternFindings.of(set(faster(tyre(3.9, 6.3, 6.5), 0.25, 0.10)))
                                .getFirst(),
                        Label.LEFT_AS_IT_IS_AND_SET_RIGHT))
                .as("nothing is left")
                .isNull();
    }

    private static @Nullable Said value(Finding finding, Label what) {
        return finding.evidence().stream()
                .filter(evidence -> evidence.what() == what)
                .map(Evidence::value)
                .findFirst()
                .orElse(null);
    }

    private static TyreForecast at(Corner corner, TyreForecast tyre) {
        var wheel = Cars.set(SeasonKind.WINTER, "W-").wheels().get(corner.ordinal());
        return new TyreForecast(wheel, corner, tyre.grooves());
    }

    /** The inner groove wears at another rate than the others. */
    private static TyreForecast faster(TyreForecast tyre, double innerRate, double otherRate) {
        return new TyreForecast(
                tyre.wheel(),
                tyre.corner(),
                tyre.grooves().stream()
                        .map(groove -> new GrooveForecast(
                                groove.groove(),
                                groove.depthMm(),
                                groove.depthSdMm(),
                                groove.groove() == Spot.INNER ? innerRate : otherRate,
                                groove.rateSdMmPer1000Km(),
                                groove.ownShareOfRate(),
                                List.of(),
                                List.of()))
                        .toList());
    }

    private static SetForecast set(TyreForecast tyre) {
        return set(List.of(tyre));
    }

    private static SetForecast set(List<TyreForecast> tyres) {
        return Cars.forecast(SetSpan.Role.GOING_ON, 0.95, tyres, List.of());
    }

    private static TyreForecast tyre(double... depthsMm) {
        var grooves = new ArrayList<GrooveForecast>();
        for (var spot : Spot.values()) {
            grooves.add(new GrooveForecast(spot, depthsMm[spot.ordinal()], 0.1, 0.2, 0.03, 0.7, List.of(), List.of()));
        }
        var wheel = Cars.set(SeasonKind.WINTER, "W-").wheels().get(Corner.LR.ordinal());
        return new TyreForecast(wheel, Corner.LR, grooves);
    }
}
