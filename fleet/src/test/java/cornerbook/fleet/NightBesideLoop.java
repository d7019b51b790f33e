package cornerbook.fleet;

import com.sun.management.OperatingSystemMXBean;
import cornerbook.app.book.knowledge.InformingCars;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.CarShare;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.words.Language;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.spark.SparkConf;

/**
 * A night beside the plain loop over the same visit files, run by hand: {@code loop FOLDER} or {@code night FOLDER NEW-FOLDER}.
 * The loop keeps no car in memory either, reads each twice, learns from the same cars, and writes nothing.
 */
final class NightBesideLoop {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 30);
    private static final double NANOSECONDS_PER_SECOND = 1e9;

    private NightBesideLoop() {}

    public static void main(String[] words) throws IOException {
        var machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long begun = System.nanoTime();
        long cars = words[0].equals("loop") ? loop(Path.of(words[1])) : night(words[1], words[2]);
        System.out.printf(
                Locale.ROOT,
                "%s: %d cars, %.1f s by the clock, %.1f s of processor time with the start of the program%n",
                words[0],
                cars,
                (System.nanoTime() - begun) / NANOSECONDS_PER_SECOND,
                machine.getProcessCpuTime() / NANOSECONDS_PER_SECOND);
    }

    private static long night(String folder, String target) throws IOException {
        try (var spark = Fleet.session(new SparkConf())) {
            return new Night(DAY, null, Language.ENGLISH, InformingCars.OF_A_KIND)
                    .run(spark, CarLines.read(spark, folder), target)
                    .judged();
        }
    }

    private static long loop(Path folder) throws IOException {
        List<Path> files;
        try (var found = Files.list(folder)) {
            files = found.sorted().toList();
        }
        var seen = new LinkedHashMap<String, Set<InformingCars.Kind>>();
        var shares = new LinkedHashMap<String, CarShare>();
        for (var file : files) {
            var car = read(file);
            var id = car.vehicle().id();
            var kinds = Look.kinds(car);
            seen.put(id, kinds);
            shares.put(id, CarShare.of(car));
        }
        var chosen = new LinkedHashSet<>(InformingCars.choose(seen, InformingCars.OF_A_KIND));
        var ofChosen = new ArrayList<CarShare>();
        shares.forEach((id, share) -> {
            if (chosen.contains(id)) {
                ofChosen.add(share);
            }
        });
        var assessor = new Assessor(LimitsFile.load()).with(Learner.sum(ofChosen, DAY));
        long needs = 0;
        for (var file : files) {
            var car = read(file);
            needs += assessor.outcome(car, car.visits().getLast().id()).needs().size();
        }
        System.out.println(needs + " needs of cars; learned from " + ofChosen.size() + " cars");
        return files.size();
    }

    private static CarHistory read(Path file) {
        return ((VisitFile.Read) VisitFile.read(file, DAY)).history();
    }
}
