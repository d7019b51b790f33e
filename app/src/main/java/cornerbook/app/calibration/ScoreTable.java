package cornerbook.app.calibration;

import cornerbook.app.calibration.fleet.Fleet;
import cornerbook.app.calibration.fleet.Scenario;
import cornerbook.app.calibration.fleet.SimulatedCar;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.Learner;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Prints the scores. Arguments: cars scored, cars learned from, seed, then names of scenarios (none: all). */
public final class ScoreTable {
    private ScoreTable() {}

    public static void main(String[] args) {
        int cars = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        int learnedFrom = args.length > 1 ? Integer.parseInt(args[1]) : 150;
        long seed = args.length > 2 ? Long.parseLong(args[2]) : 20_261_129;
        var scenarios = args.length > 3
                ? Arrays.stream(args).skip(3).map(Scenario::valueOf).toList()
                : List.of(Scenario.values());
        System.out.println(header());
        scenarios.parallelStream().map(scenario -> rows(scenario, cars, learnedFrom, seed)).forEachOrdered(System.out::println);
    }

    private static String rows(Scenario scenario, int cars, int learnedFrom, long seed) {
        long start = System.nanoTime();
        var assessor = new Assessor(LimitsFile.load());
        var trained = Fleet.cars(scenario, learnedFrom, seed + 1).map(SimulatedCar::history).toList();
        long made = System.nanoTime();
        var knowledge = Learner.learn(trained, LocalDate.of(2020, 1, 1));
        long learnt = System.nanoTime();
        var byDefault = new ForecastScores(assessor);
        var learned = new ForecastScores(assessor.with(knowledge));
        Fleet.cars(scenario, cars, seed).forEach(car -> {
            byDefault.add(car);
            learned.add(car);
        });
        long end = System.nanoTime();
        return row(scenario + " default", byDefault) + "\n" + row(scenario + " learned", learned)
                + "\n" + curve("all, learned", learned.holds)
                + "\n" + curve("going on, learned", learned.holdsGoingOn)
                + "\n" + curve("all, default", byDefault.holds)
                + "\n" + curve("seizing, learned", learned.seizing)
                + "\n  seconds: fleet %.1f, learning %.1f, scoring %.1f".formatted((made - start) / 1e9, (learnt - made) / 1e9, (end - learnt) / 1e9);
    }

    private static String header() {
        return "%-24s %6s | %5s %5s | %5s %5s %5s %5s | %5s %5s | %5s %5s %5s | %5s %5s %5s".formatted(
                "", "bands", "P", "sure", "hzn", "first", "later", "seasn", "onCar", "1stOC", "Hfail", "SpHld", "P<.5", "pads", "seize", "km");
    }

    private static String row(String name, ForecastScores s) {
        return "%-24s %6.1f | %5.1f %5.1f | %5.1f %5.1f %5.1f %5.1f | %5.1f %5.1f | %5.1f %5.1f %5.1f | %5.1f %5.1f %5.1f   n: bands %d, P %d, hzn %d/%d/%d, H %d, Sp %d, <.5 %d, km %d".formatted(
                name,
                100 * s.bands.share(),
                100 * s.holds.worst(),
                100 * s.holds.surelyWorst(),
                100 * s.horizons.share(),
                100 * s.firstHorizons.share(),
                100 * s.laterHorizons.share(),
                100 * s.horizonsOfSeason.share(),
                100 * s.horizonsOnTheCar.share(),
                100 * s.firstHorizonsOnTheCar.share(),
                100 * s.holdsFailed.share(),
                100 * s.spentHeld.share(),
                100 * s.unlikelyHeld.share(),
                100 * s.pads.share(),
                100 * s.seizing.worst(),
                100 * s.distances.share(),
                s.bands.all(), s.holds.tenths().stream().mapToInt(Reliability.Tenth::count).sum(),
                s.horizons.all(), s.firstHorizons.all(), s.horizonsOfSeason.all(),
                s.holdsFailed.all(), s.spentHeld.all(), s.unlikelyHeld.all(), s.distances.all());
    }

    private static String curve(String name, Reliability reliability) {
        var line = new StringBuilder("  ").append(name).append(", said->came(n): ");
        reliability.tenths().forEach(tenth -> line.append(String.format(Locale.ROOT, "%.2f->%.2f(%d) ", tenth.said(), tenth.came(), tenth.count())));
        return line.toString();
    }
}
