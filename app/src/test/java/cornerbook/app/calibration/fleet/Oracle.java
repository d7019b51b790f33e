package cornerbook.app.calibration.fleet;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.NormalDistribution;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;

/**
 * A forecaster who knows the simulator's law to the last number and of a car no more than what the book has of its treads:
 * which wheels ran where, the odometer and the readings. What it says is the posterior of the simulator itself, so that no
 * forecast from the same readings can be better on average.
 *
 * <p>All that the simulator drew for a car is a row of standard normal numbers (its own code turns them into body, driver, place
 * and tyres, {@link OracleLaw}); their posterior is sampled by elliptical slices (Murray, Adams and MacKay 2010, AISTATS 9:541), block by
 * block, and each sample lives on by itself from the visit to the day asked. The braking that pads tell of is left out.
 */
public final class Oracle {
    private static final int CORNERS = Corner.values().length;
    private static final int GROOVES = Spot.values().length;
    /** Seasons before its last one before the first visit that a set may have run, none of them included. */
    private static final int EARLIER = 5;

    private static final int BODY = 8;
    private static final int ROUGH = BODY;
    private static final int WARM = BODY + 1;
    private static final int ROTATES = BODY + 2;
    private static final int FIRST_DRIVER = BODY + 3;
    private static final int OF_DRIVER = 5;
    private static final int TEMPER = FIRST_DRIVER;
    private static final int SEASONS = FIRST_DRIVER + OF_DRIVER;
    /** Wear of the season, whether somebody else drives from it on, and that driver. */
    private static final int OF_SEASON = 2 + OF_DRIVER;

    private static final int OF_SET = 1 + CORNERS * GROOVES * 2;
    /** Seasons that a set ran of which none is over. */
    private static final double NOTHING = 1e-4;

    private static final double ROTATING_SHARE = 0.35;
    private static final double ROUNDING = 0.1;
    private static final double READ_SD_MM =
            Math.sqrt(Sheet.TREAD_SD_MM * Sheet.TREAD_SD_MM + ROUNDING * ROUNDING / 12);
    /** Variance of the logarithm of what an earlier driver wore in half of the time, against the one who came. */
    private static final double OTHER_DRIVER = 0.2;

    private static final double STEP = 0.1;
    private static final int FUTURES = 3;
    private static final int LONGER_AT_FIRST = 3;

    /** A set as a latent thing. */
    private static final class Tyres {
        private final WheelSet set;
        private final OracleLaw.TreadLaw law;
        private final int at;
        /** Visit from which the book has it, and whether it was old then. */
        private final int since;

        private final boolean old;
        /** Logarithm of the kJ·km that its first tyre went through before the book. */
        private double logBefore;

        /** By visit: whether it left with the car, and whether its wheels stood front to rear. */
        private final BitSet on = new BitSet();

        private final BitSet turned = new BitSet();
        private final List<List<Read>> reads = new ArrayList<>();
        private final double[][] amount = new double[CORNERS][];
        private final double[] likelihood = new double[CORNERS];

        Tyres(WheelSet set, OracleLaw.TreadLaw law, int at, int since, boolean old) {
            this.set = set;
            this.law = law;
            this.at = at;
            this.since = since;
            this.old = old;
            for (int tyre = 0; tyre < CORNERS; tyre++) {
                reads.add(new ArrayList<>());
            }
        }
    }

    private record Read(int groove, int visit, double mm) {}

    /** What is asked of a visit. */
    public record Question(WheelSet set, double limitMm, LocalDate until) {}

    /**
     * What is answered.
     *
     * @param holds chance that it holds
     * @param lowestMm depth that is expected of its lowest groove now
     */
    public record Answer(double holds, double lowestMm) {}

    private final Scenario law;
    private final CarHistory history;
    private final SplittableRandom random;
    private final Slices slices;
    private final double[] ofPlace = OracleLaw.ofPlace();
    private final double[] biteOfDay;
    private final double dayVariance;
    private double[] z = new double[SEASONS];
    private final List<Tyres> sets = new ArrayList<>();
    private final List<Double> offsets = new ArrayList<>();
    private final List<Integer> seasonAt = new ArrayList<>();
    private int visits;
    private boolean rotationKnown;
    private boolean rotated;

    private final double[] usualBite = new double[2];
    private final double[] usualDays = new double[2];
    private double[] biteOfSeason = new double[0];
    private double[] daysOfSeason = new double[0];

    // Of the state of z.
    private double[] firstWorks = new double[0];
    private double firstKmPerDay;
    private double[][] work = new double[0][];
    private double[] biting = new double[0];
    private double distances;

    public Oracle(Scenario law, CarHistory history, long seed) {
        this.law = law;
        this.history = history;
        random = new SplittableRandom(seed);
        slices = new Slices(random);
        var usual = OracleLaw.place(0, 0);
        biteOfDay = new double[367];
        for (int day = 1; day < biteOfDay.length; day++) {
            biteOfDay[day] = usual.bite(day);
        }
        double square = Math.exp(CarLife.DAYS_DIFFER * CarLife.DAYS_DIFFER);
        dayVariance = square / (1 - CarLife.STAYS_AT_HOME) - 1;
        for (int i = 0; i < z.length; i++) {
            z[i] = random.nextGaussian();
        }
    }

    private Visit visit(int number) {
        return history.visits().get(number);
    }

    /** Takes in what was read at the next visit, and answers what is asked of it. */
    public List<Answer> next(List<Question> questions, int burn, int samples) {
        take(visit(visits));
        visits++;
        calendar();
        if (visits == 1) {
            reckonBefore();
        }
        return sample(questions, visits == 1 ? LONGER_AT_FIRST * burn : burn, samples);
    }

    private void take(Visit visit) {
        int number = visits;
        for (var set : history.sets()) {
            boolean here = set.wheels().stream()
                    .anyMatch(wheel -> visit.leftOn().containsValue(wheel.tag())
                            || visit.arrivedOn().containsValue(wheel.tag()));
            if (here && sets.stream().noneMatch(known -> known.set.equals(set))) {
                boolean old = number == 0;
                var tyres = new Tyres(set, OracleLaw.tread(set, law), grow(OF_SET), number, old);
                sets.add(tyres);
            }
        }
        // The season that begins now.
        seasonAt.add(grow(OF_SEASON));
        offsets.add(random.nextGaussian());
        for (var reading : visit.readings()) {
            if (reading.measure() != Measure.TREAD_DEPTH) {
                continue;
            }
            for (int j = 0; j < sets.size(); j++) {
                var wheels = sets.get(j).set.wheels();
                for (int tyre = 0; tyre < wheels.size(); tyre++) {
                    if (wheels.get(tyre).tag().equals(reading.wheelTag())) {
                        sets.get(j)
                                .reads
                                .get(tyre)
                                .add(new Read(
                                        Objects.requireNonNull(reading.spot()).ordinal(), number, reading.value()));
                    }
                }
            }
        }
        for (var tyres : sets) {
            tyres.on.set(number, leaves(visit, tyres.set));
            tyres.turned.set(number, isTurned(visit, tyres.set));
        }
        turned(visit);
    }

    private int grow(int more) {
        int at = z.length;
        z = Arrays.copyOf(z, at + more);
        for (int i = at; i < z.length; i++) {
            z[i] = random.nextGaussian();
        }
        return at;
    }

    /** Corner of a tyre at a visit. */
    private static boolean isTurned(Visit visit, WheelSet set) {
        var tag = set.wheels().getFirst().tag();
        var on = visit.leftOn().containsValue(tag) ? visit.leftOn() : visit.arrivedOn();
        return !tag.equals(on.get(Corner.LF));
    }

    /** Whether the wheels of this car are turned is known once a set went on for the second time, or is seen turned. */
    private void turned(Visit visit) {
        for (var tyres : sets) {
            boolean on =
                    visit.leftOn().containsValue(tyres.set.wheels().getFirst().tag());
            if (isTurned(visit, tyres.set) && (on || visits == 0)) {
                rotationKnown = true;
                rotated = true;
            } else if (on && visits > 0 && tyres.since < visits && !rotationKnown) {
                rotationKnown = true;
                rotated = isTurned(visit, tyres.set) != isTurned(visit(tyres.since), tyres.set);
            }
        }
    }

    private boolean rotates() {
        return rotationKnown ? rotated : NormalDistribution.cumulative(z[ROTATES]) < ROTATING_SHARE;
    }

    /** A first guess at what tyres went through before the book: the likeliest number of seasons. */
    private void reckonBefore() {
        live();
        for (var tyres : sets) {
            double likeliest = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int earlier = 0; earlier < EARLIER; earlier++) {
                tyres.logBefore = usualBefore(tyres) + Math.log(Math.max(NOTHING, ran(tyres, earlier)));
                double likelihood = ofSet(sets.indexOf(tyres));
                if (likelihood > most) {
                    most = likelihood;
                    likeliest = tyres.logBefore;
                }
            }
            tyres.logBefore = likeliest;
        }
    }

    /** Of one season before the book. */
    private double usualBefore(Tyres tyres) {
        int number = goesOnFirst(tyres) ? 0 : 1;
        return Math.log(firstKmPerDay * usualDays[number] * usualBite[number] * firstWorks[0])
                + ofPlace[0] * z[ROUGH]
                + ofPlace[1] * z[WARM];
    }

    /** Log density of what its tyres went through before the book, over the numbers of seasons that go with its corners. */
    private double logBefore(Tyres tyres) {
        double density = 0;
        double usual = usualBefore(tyres);
        for (int earlier = 0; earlier < EARLIER; earlier++) {
            density += chanceBefore(tyres, usual, earlier);
        }
        return Math.log(density);
    }

    private double chanceBefore(Tyres tyres, double usual, int earlier) {
        int seasons = ran(tyres, earlier);
        int fittings = goesOnFirst(tyres) ? seasons : seasons - 1;
        if ((rotates() && fittings % 2 == 1) != tyres.turned.get(0)) {
            return 0;
        }
        if (seasons == 0) {
            // Nothing at all: as wide as hardly matters, and so little that no gauge sees it.
            return normal(tyres.logBefore, usual + Math.log(NOTHING), 0.04);
        }
        double days = usualDays[goesOnFirst(tyres) ? 0 : 1];
        double variance = kmVariance(days) + (law.has(Effect.SEASONS_DIFFER) ? Math.pow(CarLife.SEASON_WEAR_SD, 2) : 0);
        double ofSum = Math.log1p(Math.expm1(variance) / seasons);
        double mean = usual + Math.log(seasons) + kmShift(days) + variance / 2 - ofSum / 2;
        if (!law.has(Effect.DRIVERS_CHANGE)) {
            return normal(tyres.logBefore, mean, ofSum);
        }
        double same = Math.pow(1 - CarLife.NEW_DRIVER_EACH_SEASON, 2 * seasons - 1);
        return same * normal(tyres.logBefore, mean, ofSum)
                + (1 - same) * normal(tyres.logBefore, mean, ofSum + OTHER_DRIVER);
    }

    private static double normal(double x, double mean, double variance) {
        return Math.exp(-(x - mean) * (x - mean) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
    }

    /** Share of what came before that the wheels ran at the corners where they stood at the first visit. */
    private double shareAtOwn(Tyres tyres) {
        if (!rotates()) {
            return 1;
        }
        double usual = usualBefore(tyres);
        double all = 0;
        double own = 0;
        for (int earlier = 0; earlier < EARLIER; earlier++) {
            double chance = chanceBefore(tyres, usual, earlier);
            int seasons = Math.max(1, ran(tyres, earlier));
            all += chance;
            // It began at its own corners; the last season of a set that comes off is the one that just ended.
            int atOwn = (seasons + 1) / 2;
            own += chance * atOwn / seasons;
        }
        return all > 0 ? own / all : 1;
    }

    private boolean goesOnFirst(Tyres tyres) {
        return tyres.on.get(0);
    }

    private int ran(Tyres tyres, int count) {
        return goesOnFirst(tyres) ? count : count + 1;
    }

    private int season(int number) {
        return seasonAt.get(number);
    }

    /** Kind of wheels in a season. */
    private SeasonKind kind(int number) {
        var first = sets.stream()
                .filter(this::goesOnFirst)
                .findFirst()
                .orElseThrow()
                .set
                .season();
        return number % 2 == 0 ? first : OracleLaw.other(first);
    }

    private double bite(LocalDate from, LocalDate until) {
        double sum = 0;
        long days = Math.max(1, ChronoUnit.DAYS.between(from, until));
        for (long day = 0; day < days; day++) {
            sum += biteOfDay[from.plusDays(day).getDayOfYear()];
        }
        return sum / days;
    }

    private void calendar() {
        biteOfSeason = new double[visits];
        daysOfSeason = new double[visits];
        for (int number = 0; number < Math.max(2, visits); number++) {
            boolean winter = kind(number) == SeasonKind.WINTER;
            var from = LocalDate.ofYearDay(2013, winter ? Calendar.AUTUMN_DAY : Calendar.SPRING_DAY);
            var until = winter
                    ? LocalDate.ofYearDay(2014, Calendar.SPRING_DAY)
                    : LocalDate.ofYearDay(2013, Calendar.AUTUMN_DAY);
            usualBite[number % 2] = bite(from, until);
            usualDays[number % 2] = ChronoUnit.DAYS.between(from, until);
            if (number + 1 < visits) {
                biteOfSeason[number] =
                        bite(visit(number).date(), visit(number + 1).date());
                daysOfSeason[number] = ChronoUnit.DAYS.between(
                        visit(number).date(), visit(number + 1).date());
            }
        }
    }

    private double kmVariance(double days) {
        return Math.pow(CarLife.SEASON_DISTANCE_SD, 2) + Math.log1p(dayVariance / days);
    }

    private double kmShift(double days) {
        return -Math.log1p(dayVariance / days) / 2;
    }

    private boolean changes(int number) {
        return law.has(Effect.DRIVERS_CHANGE)
                && NormalDistribution.cumulative(z[season(number) + 1]) < CarLife.NEW_DRIVER_EACH_SEASON;
    }

    /** From the numbers to what tyres went through; returns how likely the distances are. */
    private void live() {
        int seasons = visits;
        var body = OracleLaw.body(history.vehicle().wearsAs(), electric(), Arrays.copyOf(z, BODY));
        double place = ofPlace[0] * z[ROUGH] + ofPlace[1] * z[WARM];
        work = new double[seasons][];
        biting = new double[seasons];
        distances = 0;
        var driver = OracleLaw.driver(Arrays.copyOfRange(z, FIRST_DRIVER, FIRST_DRIVER + OF_DRIVER));
        firstWorks = works(body, driver);
        firstKmPerDay = driver.kmPerDay();
        double[] works = firstWorks;
        for (int number = 0; number + 1 < seasons; number++) {
            int at = season(number);
            if (changes(number)) {
                driver = OracleLaw.driver(Arrays.copyOfRange(z, at + 2, at + 2 + OF_DRIVER));
                works = works(body, driver);
            }
            work[number] = works;
            double wear = law.has(Effect.SEASONS_DIFFER) ? CarLife.SEASON_WEAR_SD * z[at] : 0;
            double days = daysOfSeason[number];
            double km = visit(number + 1).odometerKm() - visit(number).odometerKm();
            double off = Math.log(km) - Math.log(driver.kmPerDay() * days) - kmShift(days);
            distances -= off * off / (2 * kmVariance(days));
            biting[number] = km * Math.exp(wear + place) * biteOfSeason[number];
        }
    }

    private static double[] works(Body body, Driver driver) {
        var works = new double[CORNERS];
        for (var corner : Corner.values()) {
            works[corner.ordinal()] = body.workKjPerKm(driver, corner);
        }
        return works;
    }

    private boolean electric() {
        return history.vehicle().electric();
    }

    private static int corner(int tyre, boolean turned) {
        return turned ? (tyre + CORNERS / 2) % CORNERS : tyre;
    }

    private void run(Tyres tyres) {
        double perKj = tyres.law.mmPerKj() * Math.exp(tyres.law.ofSet() * z[tyres.at]);
        double own = tyres.old ? shareAtOwn(tyres) : 1;
        for (int tyre = 0; tyre < CORNERS; tyre++) {
            var amount = new double[visits];
            double sum = 0;
            if (tyres.old) {
                double ofBoth = firstWorks[corner(0, false)] * own + firstWorks[corner(0, true)] * (1 - own);
                double ofThis = firstWorks[corner(tyre, false)] * own + firstWorks[corner(tyre, true)] * (1 - own);
                sum = Math.exp(tyres.logBefore) * ofThis / ofBoth;
            }
            for (int number = tyres.since; number < visits; number++) {
                if (number > tyres.since && tyres.on.get(number - 1)) {
                    sum += biting[number - 1] * work[number - 1][corner(tyre, tyres.turned.get(number - 1))];
                }
                amount[number] = sum * perKj;
            }
            tyres.amount[tyre] = amount;
        }
    }

    private static boolean leaves(Visit visit, WheelSet set) {
        return visit.leftOn().containsValue(set.wheels().getFirst().tag());
    }

    private double startMm(Tyres tyres, int tyre, int groove) {
        int at = law.has(Effect.GROOVES_ALIKE) ? 0 : groove;
        return tyres.law.newMm() + tyres.law.mouldMm() * z[tyres.at + 1 + (tyre * GROOVES + at) * 2];
    }

    private double depthMm(Tyres tyres, int tyre, int groove, double amount) {
        double wears = Math.exp(tyres.law.ofGroove() * z[tyres.at + 2 + (tyre * GROOVES + groove) * 2]);
        return tyres.law.worn(startMm(tyres, tyre, groove), wears * amount);
    }

    private double likelihood(int set, int tyre, int visit) {
        var tyres = sets.get(set);
        double sum = 0;
        for (var read : tyres.reads.get(tyre)) {
            if (visit < 0 || read.visit == visit) {
                double depth = depthMm(tyres, tyre, read.groove, tyres.amount[tyre][read.visit]);
                double offset = law.has(Effect.GAUGE_OFFSET) ? Sheet.OFFSET_SD_MM * offsets.get(read.visit) : 0;
                sum += logDensity(read.mm, depth + offset, tyres.law.newMm() + Sheet.DEEPER_THAN_NEW_MM);
            }
        }
        return sum;
    }

    private double logDensity(double mm, double expected, double mostMm) {
        double sd = READ_SD_MM;
        double off = (mm - expected) / sd;
        double density;
        if (mm <= 0) {
            density = NormalDistribution.cumulative((ROUNDING / 2 - expected) / sd) / ROUNDING * sd;
        } else {
            density = Math.exp(-off * off / 2) / Math.sqrt(2 * Math.PI);
        }
        if (law.has(Effect.GROSS_ERRORS)) {
            double wide = sd / Math.hypot(Sheet.GROSS_SD_MM, ROUNDING / Math.sqrt(12));
            density = (1 - Sheet.GROSS_SHARE) * density
                    + Sheet.GROSS_SHARE * wide * Math.exp(-off * off * wide * wide / 2) / Math.sqrt(2 * Math.PI);
        }
        double room = (mostMm + ROUNDING / 2 - expected) / sd;
        return Math.log(Math.max(Double.MIN_NORMAL, density))
                - (room < 5 ? Math.log(Math.max(1e-9, NormalDistribution.cumulative(room))) : 0);
    }

    private double all() {
        live();
        double sum = distances;
        for (int j = 0; j < sets.size(); j++) {
            sum += ofSet(j);
        }
        return sum;
    }

    private double ofSet(int j) {
        var tyres = sets.get(j);
        run(tyres);
        double sum = tyres.old ? logBefore(tyres) : 0;
        for (int tyre = 0; tyre < CORNERS; tyre++) {
            tyres.likelihood[tyre] = likelihood(j, tyre, -1);
            sum += tyres.likelihood[tyre];
        }
        return sum;
    }

    /** One elliptical slice through these places of z. */
    private void slice(int[] places, DoubleSupplier likelihood) {
        var before = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            before[i] = z[places[i]];
        }
        slices.elliptical(
                before,
                moved -> {
                    for (int i = 0; i < places.length; i++) {
                        z[places[i]] = moved[i];
                    }
                },
                likelihood);
    }

    private static int[] from(int at, int count) {
        var places = new int[count];
        for (int i = 0; i < count; i++) {
            places[i] = at + i;
        }
        return places;
    }

    private void sweep() {
        slice(from(0, ROTATES), this::all);
        slice(from(FIRST_DRIVER, OF_DRIVER), this::all);
        if (!rotationKnown) {
            slice(from(ROTATES, 1), this::all);
        }
        slice(levels(), this::all);
        int seasons = visits - 1;
        if (law.has(Effect.SEASONS_DIFFER) || law.has(Effect.DRIVERS_CHANGE)) {
            for (int number = 0; number < seasons; number++) {
                slice(from(season(number), OF_SEASON), this::all);
            }
        }
        all();
        for (int j = 0; j < sets.size(); j++) {
            int set = j;
            if (sets.get(j).old) {
                before(j);
            }
            slice(from(sets.get(j).at, 1), () -> ofSet(set));
            for (int tyre = 0; tyre < CORNERS; tyre++) {
                int which = tyre;
                slice(from(sets.get(j).at + 1 + tyre * GROOVES * 2, GROOVES * 2), () -> likelihood(set, which, -1));
            }
        }
        if (law.has(Effect.GAUGE_OFFSET)) {
            for (int visit = 0; visit < visits; visit++) {
                offset(visit);
            }
        }
    }

    /** What shifts the wear of all tyres. */
    private int[] levels() {
        var places = new ArrayList<Integer>(List.of(0, ROUGH, TEMPER, TEMPER + 1, TEMPER + 2, TEMPER + 3));
        sets.forEach(tyres -> places.add(tyres.at));
        return places.stream().mapToInt(Integer::intValue).toArray();
    }

    private void offset(int visit) {
        slices.elliptical(
                new double[] {offsets.get(visit)}, moved -> offsets.set(visit, moved[0]), () -> ofVisit(visit));
    }

    private double ofVisit(int visit) {
        double sum = 0;
        for (int j = 0; j < sets.size(); j++) {
            if (sets.get(j).since <= visit) {
                for (int tyre = 0; tyre < CORNERS; tyre++) {
                    sum += likelihood(j, tyre, visit);
                }
            }
        }
        return sum;
    }

    /** What a set went through before the book. */
    private void before(int set) {
        slices.stepping(sets.get(set).logBefore, STEP, moved -> at(set, moved));
    }

    private double at(int set, double logBefore) {
        sets.get(set).logBefore = logBefore;
        return ofSet(set);
    }

    private List<Answer> sample(List<Question> questions, int burn, int samples) {
        all();
        for (int sweep = 0; sweep < burn; sweep++) {
            sweep();
        }
        var held = new double[questions.size()];
        var lowest = new double[questions.size()][CORNERS * GROOVES];
        for (int sample = 0; sample < samples; sample++) {
            sweep();
            all();
            for (int q = 0; q < held.length; q++) {
                var question = questions.get(q);
                var tyres = sets.stream()
                        .filter(each -> each.set.equals(question.set))
                        .findFirst()
                        .orElseThrow();
                for (int tyre = 0; tyre < CORNERS; tyre++) {
                    for (int groove = 0; groove < GROOVES; groove++) {
                        lowest[q][tyre * GROOVES + groove] +=
                                depthMm(tyres, tyre, groove, tyres.amount[tyre][visits - 1]) / samples;
                    }
                }
                for (int future = 0; future < FUTURES; future++) {
                    held[q] += holds(tyres, question) ? 1.0 / (samples * FUTURES) : 0;
                }
            }
        }
        var answers = new ArrayList<Answer>();
        for (int q = 0; q < held.length; q++) {
            answers.add(new Answer(held[q], Arrays.stream(lowest[q]).min().orElseThrow()));
        }
        return answers;
    }

    /** Lives on from the visit to the day asked, once. */
    private boolean holds(Tyres tyres, Question question) {
        var now = visit(visits - 1);
        var driver = driverNow();
        var body = OracleLaw.body(history.vehicle().wearsAs(), electric(), Arrays.copyOf(z, BODY));
        double place = ofPlace[0] * z[ROUGH] + ofPlace[1] * z[WARM];
        boolean turned = isTurned(now, tyres.set);
        double perKj = tyres.law.mmPerKj() * Math.exp(tyres.law.ofSet() * z[tyres.at]);
        var amount = new double[CORNERS];
        var from = now.date();
        var kind = kind(visits - 1);
        while (from.isBefore(question.until)) {
            if (law.has(Effect.DRIVERS_CHANGE) && random.nextDouble() < CarLife.NEW_DRIVER_EACH_SEASON) {
                driver = Driver.any(random);
            }
            var change = change(from, kind);
            var until = change.isBefore(question.until) ? change : question.until;
            if (kind == tyres.set.season() && from.isBefore(until)) {
                double days = ChronoUnit.DAYS.between(from, until);
                double km = driver.kmPerDay()
                        * days
                        * Math.exp(kmShift(days) + Math.sqrt(kmVariance(days)) * random.nextGaussian());
                double wear = law.has(Effect.SEASONS_DIFFER) ? CarLife.SEASON_WEAR_SD * random.nextGaussian() : 0;
                double bitingKm = km * Math.exp(wear + place) * bite(from, until);
                var works = works(body, driver);
                for (int tyre = 0; tyre < CORNERS; tyre++) {
                    amount[tyre] += bitingKm * works[corner(tyre, turned)] * perKj;
                }
            }
            from = change;
            kind = OracleLaw.other(kind);
        }
        for (int tyre = 0; tyre < CORNERS; tyre++) {
            for (int groove = 0; groove < GROOVES; groove++) {
                if (depthMm(tyres, tyre, groove, tyres.amount[tyre][visits - 1] + amount[tyre]) < question.limitMm) {
                    return false;
                }
            }
        }
        return true;
    }

    private LocalDate change(LocalDate from, SeasonKind kind) {
        int day = kind == SeasonKind.WINTER ? Calendar.SPRING_DAY : Calendar.AUTUMN_DAY;
        int off = Math.clamp(Math.round(Calendar.SPREAD_DAYS * random.nextGaussian()), -20, 20);
        var change = LocalDate.ofYearDay(from.getYear(), day + off);
        return change.isAfter(from.plusDays(60)) ? change : LocalDate.ofYearDay(from.getYear() + 1, day + off);
    }

    private Driver driverNow() {
        int at = FIRST_DRIVER;
        for (int number = 0; number < visits - 1; number++) {
            if (changes(number)) {
                at = season(number) + 2;
            }
        }
        return OracleLaw.driver(Arrays.copyOfRange(z, at, at + OF_DRIVER));
    }
}
