package cornerbook.core.tread.judge;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.AnotherDriver;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.season.ChangeOver;
import cornerbook.core.season.SetSeasons;
import cornerbook.core.tread.Drivers;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.Placement;
import cornerbook.core.tread.SetOutlook;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.WearModel;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPosterior;
import cornerbook.core.tread.judge.SetForecast.BandPoint;
import cornerbook.core.tread.judge.SetForecast.DepthReading;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Brings one wheel set of a car to the wear model, and the model's answer back to corners and dates. */
public final class TreadForecaster {
    /** First readings that are on average so far from the stated depth are of a used tyre: twice the prior's spread. */
    private static final double USED_FROM_MM = 0.5;

    private static final double MOST_DAYS = 4 * 365.25;
    private static final int BAND_STEPS = 12;
    /** Standard normal quantile of 0.95: the band holds 90 %. */
    private static final double BAND_Z = 1.6448536269514722;

    private final CarHistory history;
    private final List<Visit> visits;
    private final Visit today;
    private final RunHistory runs;
    private final Knowledge knowledge;
    private final ChangeOver changeOver;
    private final Drivers drivers;
    private final Map<String, StandingReadings> currentByVisit = new HashMap<>();
    /** A judgement asks for each set some times over: for its forecast, its axles, its plan. */
    private final IdentityHashMap<WheelSet, WearPosterior> posteriors = new IdentityHashMap<>();

    private TreadForecaster(
            CarHistory history,
            List<Visit> visits,
            Visit today,
            RunHistory runs,
            Knowledge knowledge,
            ChangeOver changeOver) {
        this.history = history;
        this.visits = visits;
        this.today = today;
        this.runs = runs;
        this.knowledge = knowledge;
        this.changeOver = changeOver;
        // A season has the number of the visit that ends it.
        drivers = new Drivers(IntStream.range(1, visits.size())
                .filter(v -> AnotherDriver.came(visits.get(v)))
                .boxed()
                .toList());
    }

    /** Where no day is asked for, only depths. */
    public TreadForecaster(CarHistory history, List<Visit> visits, Visit today, RunHistory runs, Knowledge knowledge) {
        this(history, visits, today, runs, knowledge, ChangeOver.USUAL);
    }

    public TreadForecaster(Case given) {
        this(given.history(), given.visits(), given.visit(), given.runs(), given.knowledge(), given.changeOver());
        for (int v = 0; v < visits.size(); v++) {
            currentByVisit.put(visits.get(v).id(), given.readingsByVisit().get(v));
        }
    }

    private StandingReadings current(Visit visit) {
        return currentByVisit.computeIfAbsent(visit.id(), id -> new StandingReadings(visit));
    }

    /** Posterior of the set after every reading until this visit. */
    public WearPosterior posterior(WheelSet set) {
        return posteriors.computeIfAbsent(set, this::fit);
    }

    private WearPosterior fit(WheelSet set) {
        var wear = wearHistory(set);
        var model = new WearModel(parameters(set));
        return learned(set).isPresent()
                ? model.fitDoubting(wear.newDepths(), wear.readings(), drivers)
                : model.fit(wear.newDepths(), wear.readings(), drivers);
    }

    /** What the book knows of sets like this one, or the defaults. */
    WearParameters parameters(WheelSet set) {
        return learned(set)
                .map(row -> row.learned().forecasting())
                .orElse(WearParameters.defaults(history.vehicle().wearsAs()));
    }

    private Optional<WearKnowledge.Row> learned(WheelSet set) {
        return knowledge.wear(history.vehicle().wearsAs(), set.season(), model(set));
    }

    private static @Nullable String model(WheelSet set) {
        var models = set.wheels().stream()
                .map(wheel -> wheel.tyre().model())
                .distinct()
                .toList();
        return models.size() == 1 ? models.getFirst() : null;
    }

    private Said wearBasis(WheelSet set) {
        var usual = learned(set).map(row -> wearBasis(set, row)).orElse(TreadSaid.Label.WEAR_NOT_LEARNED);
        return drivers.changes().isEmpty()
                ? usual
                : new TreadSaid.OtherDriver(
                        usual, visits.get(drivers.changes().getLast()).date());
    }

    private Said wearBasis(WheelSet set, WearKnowledge.Row row) {
        var learned = row.learned();
        var others = knowledge.originOfWear(row.drive(), set.season(), row.tyreModel());
        var widened = learned.widening() > 1 ? new Amount(learned.widening(), "", 1) : null;
        return others != null && learned.cars() == 0
                ? new TreadSaid.LearnedElsewhere(others, set.season(), row.drive(), row.tyreModel(), widened)
                : new TreadSaid.LearnedFrom(
                        learned.readings(),
                        learned.cars(),
                        set.season(),
                        row.drive(),
                        row.tyreModel(),
                        Objects.requireNonNull(knowledge.learnedOn()),
                        widened,
                        others);
    }

    /** All readings of the set until this visit, as the wear model takes them. */
    private WearHistory wearHistory(WheelSet set) {
        var tags = set.wheels().stream().map(Wheel::tag).toList();
        var readings = new ArrayList<TreadReading>();
        var bald = new HashSet<String>();
        for (int v = 0; v < visits.size(); v++) {
            var visit = visits.get(v);
            for (var reading : current(visit).all(Measure.TREAD_DEPTH)) {
                var tag = reading.wheelTag();
                var spot = reading.spot();
                if (tag != null && spot != null && tags.contains(tag) && !bald.contains(tag + spot)) {
                    readings.add(new TreadReading(v, tags.indexOf(tag), spot, runs.run(visit, tag), reading.value()));
                    // What is worn to nothing wears no more: read again it would tell of a rate of nothing.
                    if (reading.value() <= 0) {
                        bald.add(tag + spot);
                    }
                }
            }
        }
        return new WearHistory(
                history.vehicle().id(),
                history.vehicle().wearsAs(),
                set.season(),
                model(set),
                set.wheels().stream().map(wheel -> newDepth(set, wheel)).toList(),
                readings);
    }

    /** The same driver by driver. */
    public List<WearHistory> wearByDriver(WheelSet set) {
        return wearHistory(set).byDriver(drivers);
    }

    /** The stated depth of a tyre that came new; of any other its readings tell. */
    private NewDepth newDepth(WheelSet set, Wheel wheel) {
        double statedMm = wheel.tyre().newDepthOrUsualMm();
        return wheel.tyre().newDepthMm() == null || (wasRead(wheel) && cameUsed(set))
                ? NewDepth.unknown(statedMm)
                : NewDepth.stated(statedMm);
    }

    /**
     * Whether a set ran before the book had it: the car came on it to its first visit, or a tyre read before it ran in the
     * book was not as deep as it is stated new. Its other tyres ran with it.
     */
    private boolean cameUsed(WheelSet set) {
        return set.wheels().stream().anyMatch(wheel -> cameOnIt(wheel) || wasReadWorn(wheel));
    }

    private boolean cameOnIt(Wheel wheel) {
        return visits.getFirst().arrivedOn().containsValue(wheel.tag());
    }

    private boolean wasReadWorn(Wheel wheel) {
        var stated = wheel.tyre().newDepthMm();
        if (stated == null) {
            return false;
        }
        double statedMm = stated;
        return visits.stream()
                .filter(visit -> runs.run(visit, wheel.tag()).total() == 0)
                .flatMap(visit -> current(visit).all(Measure.TREAD_DEPTH).stream())
                .filter(reading -> wheel.tag().equals(reading.wheelTag()))
                .mapToDouble(reading -> reading.value() - statedMm)
                .average()
                .stream()
                .anyMatch(off -> Math.abs(off) > USED_FROM_MM);
    }

    /** Whether any groove of the set was ever read. */
    public boolean wasRead(WheelSet set) {
        return set.wheels().stream().anyMatch(this::wasRead);
    }

    private boolean wasRead(Wheel wheel) {
        return visits.stream()
                .anyMatch(visit ->
                        current(visit).ofWheel(Measure.TREAD_DEPTH, wheel.tag()).isPresent());
    }

    /** Whether the depth of a wheel was ever read or stated: of another nothing is said, not what is usual. */
    private boolean isKnown(Wheel wheel) {
        return wheel.tyre().newDepthMm() != null || wasRead(wheel);
    }

    /** The same of every wheel of a set, one groove of which was read at least. */
    public boolean isKnown(WheelSet set) {
        return wasRead(set) && set.wheels().stream().allMatch(this::isKnown);
    }

    /**
     * How the tread of a set will go on.
     *
     * @param limitMm the minimum that it is judged by
     * @param legalLimitMm the legal minimum
     */
    SetForecast forecast(SetSpan span, double limitMm, double legalLimitMm) {
        var set = span.set();
        var posterior = posterior(set);
        var placements = placements(span);
        var corners = placements.stream().map(Placement::corner).toList();
        var outlook = posterior.outlook(placements);
        var distance = runs.next(set.season());
        double days = days(span);
        double holds = outlook.probabilityHolds(days, distance, limitMm);
        var horizon = outlook.horizonDays(distance, limitMm, Verdict.CONFIDENCE, MOST_DAYS);
        double aheadKm = Math.max(2000, distance.meanKm() * Math.max(days, 183) * 1.5);
        var tyres = new ArrayList<TyreForecast>();
        for (int i = 0; i < placements.size(); i++) {
            tyres.add(tyre(set.wheels().get(placements.get(i).tyre()), corners.get(i), i, outlook, posterior, aheadKm));
        }
        @Nullable LocalDate horizonDate = horizon.isPresent() ? dayAfter(span, (long) horizon.getAsDouble()) : null;
        return new SetForecast(
                set,
                span.role(),
                span.from(),
                span.until(),
                limitMm,
                legalLimitMm,
                holds,
                horizonDate,
                Verdict.CONFIDENCE,
                distance.meanKm(),
                distance.sdKm(),
                runs.distanceBasis(set.season()),
                new TreadSaid.StartRates(
                        new Amount(parameters(set).frontRateMmPer1000Km(), "mm/1000 km", 2),
                        new Amount(parameters(set).rearRateMmPer1000Km(), "mm/1000 km", 2),
                        new Amount(parameters(set).vehicleSpread() * 100, "%", 0)),
                wearBasis(set),
                tyres,
                List.of(
                        CornerContrast.of(posterior, Corner.LF, Corner.RF),
                        CornerContrast.of(posterior, Corner.LR, Corner.RR)));
    }

    /** The wheels of a set whose tread is known, each at its corner. */
    private List<Placement> placements(SetSpan span) {
        var set = span.set();
        var tags = set.wheels().stream().map(Wheel::tag).toList();
        var placements = new ArrayList<Placement>();
        for (var corner : Corner.values()) {
            var tag = span.wheelAt().get(corner);
            if (tag != null && tags.contains(tag) && isKnown(set.wheels().get(tags.indexOf(tag)))) {
                placements.add(new Placement(tags.indexOf(tag), runs.run(today, tag), corner));
            }
        }
        return placements;
    }

    private static double days(SetSpan span) {
        return Math.max(0, ChronoUnit.DAYS.between(span.from(), span.until()));
    }

    /**
     * How likely the tyres of each axle hold over the span of a forecast, by the same model.
     *
     * @param forecast of the span
     */
    AxlesHold axlesHold(SetSpan span, SetForecast forecast) {
        var below = forecast.axlesBelow();
        return new AxlesHold(
                below.contains(Axle.FRONT) ? 0 : holds(span, Axle.FRONT, forecast.limitMm()),
                below.contains(Axle.REAR) ? 0 : holds(span, Axle.REAR, forecast.limitMm()),
                below.isEmpty() ? forecast.probabilityHolds() : 0);
    }

    private double holds(SetSpan span, Axle axle, double limitMm) {
        var placements = placements(span).stream()
                .filter(placement -> placement.corner().axle() == axle)
                .toList();
        return placements.isEmpty()
                ? 1
                : posterior(span.set())
                        .outlook(placements)
                        .probabilityHolds(days(span), runs.next(span.set().season()), limitMm);
    }

    /** The day by which the set was on the car for so many days; between its seasons it is stored, if others go on then. */
    private LocalDate dayAfter(SetSpan span, long daysOnTheCar) {
        var kind = span.set().season();
        long thisSeason = ChronoUnit.DAYS.between(span.from(), span.until());
        boolean stored =
                kind != SeasonKind.ALL_SEASON && history.sets().stream().anyMatch(other -> other.season() != kind);
        if (!stored || daysOnTheCar <= thisSeason) {
            return span.from().plusDays(daysOnTheCar);
        }
        var others = kind == SeasonKind.WINTER ? SeasonKind.SUMMER : SeasonKind.WINTER;
        var again = changeOver.ofWheelsThatStay(span.until(), others);
        // At one km a day the distance is the days.
        return new SetSeasons(kind, again, 1, changeOver).dayAt((double) (daysOnTheCar - thisSeason));
    }

    private TyreForecast tyre(
            Wheel wheel, Corner corner, int placement, SetOutlook outlook, WearPosterior posterior, double aheadKm) {
        double runKm = runs.run(today, wheel.tag()).total() * 1000;
        var grooves = new ArrayList<GrooveForecast>();
        for (var spot : Spot.values()) {
            var readings = new ArrayList<DepthReading>();
            for (var visit : visits) {
                for (var reading : current(visit).all(Measure.TREAD_DEPTH)) {
                    if (wheel.tag().equals(reading.wheelTag()) && reading.spot() == spot) {
                        readings.add(new DepthReading(
                                runs.run(visit, wheel.tag()).total() * 1000, visit.date(), reading.value()));
                    }
                }
            }
            var band = new ArrayList<BandPoint>();
            for (int step = 0; step <= BAND_STEPS; step++) {
                double ahead = aheadKm * step / BAND_STEPS;
                var depth = outlook.depth(spot, placement, ahead);
                band.add(new BandPoint(
                        runKm + ahead,
                        Math.max(0, depth.mean()),
                        Math.max(0, depth.mean() - BAND_Z * depth.sd()),
                        Math.max(0, depth.mean() + BAND_Z * depth.sd())));
            }
            var now = outlook.depth(spot, placement, 0).left();
            var rate = posterior.rate(spot, corner);
            double lastReadMm = readings.isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : readings.getLast().depthMm();
            grooves.add(new GrooveForecast(
                    spot,
                    Math.min(now.mean(), lastReadMm),
                    now.sd(),
                    rate.mean(),
                    rate.sd(),
                    posterior.ownShareOfRate(spot, corner),
                    readings,
                    band));
        }
        return new TyreForecast(wheel, corner, grooves);
    }
}
