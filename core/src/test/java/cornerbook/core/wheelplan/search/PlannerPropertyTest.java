package cornerbook.core.wheelplan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.PlanRules;
import cornerbook.core.wheelplan.RotationPattern;
import cornerbook.core.wheelplan.WheelState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PlannerPropertyTest {
    private static final int REQUESTS = 200;
    private static final double SAME_THOUSAND_KM = 2e-3;

    @Test
    void leavingOutARuleNeverShortensThePlan() {
        var random = new SplittableRandom(41);
        for (int r = 0; r < REQUESTS; r++) {
            var request = RandomRequests.any(random, 1 + random.nextInt(5));
            double kept = thousandKm(request);
            for (var rule : request.rules().kept()) {
                double free = thousandKm(request.withRules(request.rules().without(rule)));
                assertThat(free).as("%s without %s", request, rule).isGreaterThanOrEqualTo(kept - SAME_THOUSAND_KM);
            }
        }
    }

    /** What a rule costs is searched above a floor only: against the whole plan without the rule. */
    @Test
    void aRuleCostsWhatThePlanWithoutItGainsOverAFloor() {
        var random = new SplittableRandom(48);
        int dear = 0;
        for (int r = 0; r < REQUESTS; r++) {
            var request = RandomRequests.any(random, 4 + r % 2);
            var best = PlanSearch.best(request);
            if (best.isEmpty()) {
                continue;
            }
            for (var rule : request.rules().kept()) {
                var free = request.withRules(request.rules().without(rule));
                double longest = thousandKm(free);
                double floor = best.get().thousandKm() + PlanSearch.SAME_THOUSAND_KM;
                var beyond = PlanSearch.longestBeyond(free, floor);
                if (longest > floor + SAME_THOUSAND_KM) {
                    dear++;
                    assertThat(beyond).as("%s without %s", request, rule).isPresent();
                    assertThat(beyond.get())
                            .as("%s without %s", request, rule)
                            .isCloseTo(longest, within(SAME_THOUSAND_KM));
                } else if (longest < floor - SAME_THOUSAND_KM) {
                    assertThat(beyond).as("%s without %s", request, rule).isEmpty();
                }
            }
        }
        assertThat(dear).as("rules that cost").isGreaterThan(REQUESTS / 10);
    }

    /** The last assignment goes on beyond the last season, so that each plan is also one of a season more. */
    @Test
    void aSeasonMoreNeverShortensAPlanWithoutRulesOnDepth() {
        var random = new SplittableRandom(42);
        for (int r = 0; r < REQUESTS; r++) {
            var request = RandomRequests.any(random, 6).withRules(PlanRules.TYRES_ONLY);
            for (int seasons = 1; seasons < 6; seasons++) {
                assertThat(thousandKm(request.withSeasons(seasons + 1)))
                        .as("%s", request)
                        .isGreaterThanOrEqualTo(thousandKm(request.withSeasons(seasons)) - SAME_THOUSAND_KM);
            }
        }
    }

    /** The search by endings and the one that drives forward share little: each checks the other where 24^S is too many. */
    @Test
    void bothSearchesFindTheSame() {
        var random = new SplittableRandom(47);
        for (int r = 0; r < REQUESTS; r++) {
            var request = RandomRequests.any(random, 4 + r % 2);
            var driven = ForwardSearch.best(new SetNumbers(request));
            var found = PlanSearch.best(request);
            assertThat(found.isPresent()).as("%s", request).isEqualTo(driven.isPresent());
            found.ifPresent(best -> {
                var other = driven.orElseThrow();
                assertThat(best.thousandKm()).as("%s", request).isCloseTo(other.thousandKm(), within(SAME_THOUSAND_KM));
                assertThat(best.moves()).as("%s", request).isEqualTo(other.moves());
            });
        }
    }

    @Test
    void theOrderInWhichWheelsAreNamedDoesNotMatter() {
        var random = new SplittableRandom(43);
        for (int r = 0; r < REQUESTS; r++) {
            var request = RandomRequests.any(random, 4);
            var turned = new ArrayList<>(request.wheels());
            Collections.rotate(turned, 1);
            // Wheels that never ran start in the order of the list, so their order does matter.
            if (turned.getFirst().lastCorner() != null) {
                same(request, withWheels(request, turned));
            }
        }
    }

    @Test
    void leftAndRightMayBeExchanged() {
        var random = new SplittableRandom(44);
        for (int r = 0; r < REQUESTS; r++) {
            var request = RandomRequests.any(random, 4);
            var wheels = new ArrayList<WheelState>();
            for (var wheel : request.wheels()) {
                var last = wheel.lastCorner();
                wheels.add(new WheelState(
                        wheel.tag(),
                        wheel.tyreSize(),
                        wheel.directional(),
                        wheel.depthsMm(),
                        last == null ? null : RotationPattern.ACROSS.from(last)));
            }
            var rates = new EnumMap<Corner, List<Double>>(Corner.class);
            for (var corner : Corner.values()) {
                rates.put(
                        RotationPattern.ACROSS.from(corner),
                        request.ratesMmPer1000Km().getOrDefault(corner, List.of()));
            }
            boolean ran = wheels.getFirst().lastCorner() != null;
            if (ran) {
                same(
                        request,
                        new PlanRequest(
                                wheels,
                                rates,
                                request.sizeAt(),
                                request.limitMm(),
                                request.seasonsThousandKm(),
                                request.rules()));
            }
        }
    }

    @Test
    void noCustomaryPatternAndNoRestRunsLonger() {
        var random = new SplittableRandom(45);
        for (int r = 0; r < REQUESTS; r++) {
            var request = RandomRequests.any(random, 4).withRules(new PlanRules(false, false, null, null, null));
            var plan = WheelPlanner.plan(
                            request,
                            RotationPattern.customary(DriveLayout.values()[r % 3], r % 2 == 0, r % 5 == 0),
                            List.of())
                    .orElseThrow();
            assertThat(plan.gains())
                    .allSatisfy(gain -> assertThat(gain.gainKm()).isGreaterThan(-1.001));
        }
    }

    /** Each set wears only in its own seasons: the best of all pairs of sequences is the pair of the bests. */
    @Test
    void twoSetsThatAlternateArePlannedApart() {
        var random = new SplittableRandom(46);
        for (int r = 0; r < 20; r++) {
            var summer = RandomRequests.any(random, 1).withRules(PlanRules.TYRES_ONLY);
            var winter = RandomRequests.any(random, 1).withRules(PlanRules.TYRES_ONLY);
            double jointly = 0;
            for (var one : EverySequence.outcomes(summer)) {
                for (var other : EverySequence.outcomes(winter)) {
                    jointly = Math.max(jointly, one.thousandKm() + other.thousandKm());
                }
            }
            assertThat(thousandKm(summer) + thousandKm(winter)).isCloseTo(jointly, within(SAME_THOUSAND_KM));
        }
    }

    private static void same(PlanRequest request, PlanRequest other) {
        var one = PlanSearch.best(request);
        var two = PlanSearch.best(other);
        assertThat(two.isPresent()).as("%s", request).isEqualTo(one.isPresent());
        one.ifPresent(best -> {
            var again = two.orElseThrow();
            assertThat(again.thousandKm()).as("%s", request).isCloseTo(best.thousandKm(), within(SAME_THOUSAND_KM));
            assertThat(again.moves()).as("%s", request).isEqualTo(best.moves());
        });
    }

    private static PlanRequest withWheels(PlanRequest request, List<WheelState> wheels) {
        return new PlanRequest(
                wheels,
                request.ratesMmPer1000Km(),
                request.sizeAt(),
                request.limitMm(),
                request.seasonsThousandKm(),
                request.rules());
    }

    private static double thousandKm(PlanRequest request) {
        return PlanSearch.best(request).map(PlanSearch.Sequence::thousandKm).orElse(0.0);
    }
}
