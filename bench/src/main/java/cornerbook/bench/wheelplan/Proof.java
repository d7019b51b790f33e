package cornerbook.bench.wheelplan;

import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.search.WheelPlanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Compares planner and solver on many invented requests, all rules mixed on and off, and writes docs/proofs/wheelplan.md.
 * Arguments: the file, then how many requests of one set over 1, 2, 3 and 4 seasons, then how many pairs of sets over 1
 * and 2 seasons each, then the seed. Ends with 1 when an answer differs.
 */
public final class Proof {
    private static final int SINGLE = 4;
    private static final int PAIRS = 2;

    private final SplittableRandom random;
    private final List<String> rows = new ArrayList<>();
    private final Map<Rule, Integer> withRule = new EnumMap<>(Rule.class);
    private int requests;
    private int differing;

    private Proof(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Runs and writes the page. */
    public static void main(String[] arguments) throws IOException {
        long seed = Long.parseLong(arguments[1 + SINGLE + PAIRS]);
        var proof = new Proof(seed);
        for (int seasons = 1; seasons <= SINGLE; seasons++) {
            proof.single(seasons, Integer.parseInt(arguments[seasons]));
        }
        for (int seasons = 1; seasons <= PAIRS; seasons++) {
            proof.pairs(seasons, Integer.parseInt(arguments[SINGLE + seasons]));
        }
        var page = proof.page(String.join(" ", arguments), seed);
        Files.createDirectories(Path.of(arguments[0]).toAbsolutePath().getParent());
        Files.writeString(Path.of(arguments[0]), page);
        System.out.print(page);
        System.exit(proof.differing == 0 ? 0 : 1);
    }

    private void single(int seasons, int count) {
        int planned = 0;
        int agreeing = 0;
        double shortKm = 0;
        double overMm = 0;
        for (int i = 0; i < count; i++) {
            var request = next(seasons);
            var agreement = Agreement.of(request);
            planned += agreement.planned() ? 1 : 0;
            agreeing += agreement.agrees() ? 1 : 0;
            shortKm = Math.max(shortKm, Math.abs(agreement.distanceKm()));
            overMm = Math.max(overMm, Math.abs(agreement.spreadMm()));
            tell(agreement.agrees(), request);
        }
        differing += count - agreeing;
        rows.add("| one | %d | %,d | %,d | %,d | %,d | %.3f km | %.5f mm |"
                .formatted(seasons, count, planned, count - planned, agreeing, shortKm, overMm));
    }

    /** Both sets in one model: the longest sum of their distances. */
    private void pairs(int seasons, int count) {
        int planned = 0;
        int agreeing = 0;
        double offKm = 0;
        for (int i = 0; i < count; i++) {
            var summer = next(seasons);
            var winter = next(seasons);
            var apart = plannedKm(summer);
            var others = plannedKm(winter);
            var solved = SolverPlan.distanceKm(summer, winter);
            boolean both = apart >= 0 && others >= 0;
            planned += both ? 1 : 0;
            double off = both && solved.isPresent() ? apart + others - solved.get() : 0;
            boolean agrees = both == solved.isPresent() && off >= -2.004 && off <= 0.004;
            agreeing += agrees ? 1 : 0;
            offKm = Math.max(offKm, Math.abs(off));
            tell(agrees, summer);
        }
        differing += count - agreeing;
        rows.add("| two, alternating | %d each | %,d | %,d | %,d | %,d | %.3f km | – |"
                .formatted(seasons, count, planned, count - planned, agreeing, offKm));
    }

    private static double plannedKm(PlanRequest request) {
        return WheelPlanner.plan(request, List.of(), List.of())
                .filter(plan ->
                        plan.seasonsPlanned() == request.seasonsThousandKm().size())
                .map(plan -> plan.distanceKm())
                .orElse(-1.0);
    }

    private PlanRequest next(int seasons) {
        var request = Requests.any(random, seasons);
        for (var rule : List.of(Rule.DIRECTIONAL, Rule.SIZE)) {
            request = random.nextInt(4) == 0 ? request.withRules(request.rules().without(rule)) : request;
        }
        requests++;
        request.rules().kept().forEach(rule -> withRule.merge(rule, 1, Integer::sum));
        return request;
    }

    private static void tell(boolean agrees, PlanRequest request) {
        if (!agrees) {
            System.err.println("differs: " + request);
        }
    }

    private String page(String arguments, long seed) {
        var rules = new ArrayList<String>();
        withRule.forEach((rule, count) -> rules.add(
                "%s %,d".formatted(rule.name().toLowerCase(Locale.ROOT).replace('_', ' '), count)));
        return """
                # The wheel plan against a general-purpose solver

                Written by `cornerbook.bench.wheelplan.Proof %s`; not edited by hand.

                The planner's answer beside that of a constraint solver over integers (Google OR-Tools, CP-SAT), each level
                solved to its proven optimum: the longest distance, then the smallest spread within 1 km of it, then the
                fewest moves within 0.01 mm of that. Requests are invented (seed %d), with every mix of rules. Rules kept
                in %,d requests: %s.
                For two alternating sets both stand in one model, and the longest sum of their distances is compared with
                the sets planned apart.

                | sets | seasons | requests | with a plan | without, by both | the same | farthest apart, distance | spread |
                |---|---|---|---|---|---|---|---|
                %s

                The distance may be up to 1 km short of the longest by the planner's own band, per set, and the solver counts
                whole metres; the spread may be 0.01 mm more. Not the same: %d.
                """.formatted(arguments, seed, requests, String.join(", ", rules), String.join("\n", rows), differing);
    }
}
