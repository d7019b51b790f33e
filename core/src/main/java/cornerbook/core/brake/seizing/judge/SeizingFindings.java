package cornerbook.core.brake.seizing.judge;

import cornerbook.core.brake.judge.BrakeSaid;
import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.brake.seizing.CensoredTime;
import cornerbook.core.brake.seizing.Chance;
import cornerbook.core.brake.seizing.PadsOfACar;
import cornerbook.core.brake.seizing.SaltClock;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.brake.seizing.judge.SeizingSaid.Ground;
import cornerbook.core.brake.seizing.judge.SeizingSaid.Label;
import cornerbook.core.brake.seizing.judge.SeizingSaid.NotJudged;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.OwnShare;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Finding on the pads of a car together: the chance that one of them seizes before the next visit. */
public final class SeizingFindings {
    private static final double EVEN = 0.5;
    private static final double PERCENT = 100;
    private static final long MOST_DAYS = 1461;

    private SeizingFindings() {}

    /** The finding; none when no service of the guides is in the book. */
    public static Judgement judge(Case given) {
        var date = given.visit().date();
        var nextVisit = given.nextVisit();
        var knowledge = given.knowledge();
        var risk = given.limit(Limit.Kind.SEIZING_RISK);
        var clocks = PadClock.of(given);
        var running =
                clocks.stream().map(PadClock::running).filter(Objects::nonNull).toList();
        if (running.isEmpty()) {
            return Judgement.missing(NotJudged.NO_CLEANING);
        }
        var curve = SeizingCurve.of(given);
        var exposure = curve.exposure();
        var seen = curve.seen();
        var ended = clocks.stream().flatMap(clock -> clock.ended().stream()).toList();
        var pads = new PadsTogether(curve.hazard(), exposure, running, ended, date, risk.value());
        double chance = pads.chance(nextVisit, PadsTogether.MIDDLE);
        var horizon = pads.horizon();
        var oldest = running.stream().min(LocalDate::compareTo).orElseThrow();
        double interval = pads.intervalMonths();
        // What was cleaned today cannot be cleaned now: it comes again sooner.
        var gravest = oldest.equals(date) ? Verdict.RUNS_OUT : Verdict.SPENT;
        var verdict = chance > EVEN ? gravest : chance > risk.value() ? Verdict.RUNS_OUT : Verdict.HOLDS;
        return Judgement.of(new Finding(
                        new Subject(Subject.Part.PAD_SEIZING, null, null, null),
                        verdict,
                        new SeizingSaid.Title(running.size(), told(chance)),
                        switch (verdict) {
                            case HOLDS -> new SeizingSaid.StayFree();
                            case RUNS_OUT -> new SeizingSaid.MaySeize();
                            case SPENT, UNSAFE -> new SeizingSaid.LikelyToSeize();
                        },
                        horizon,
                        1 - chance,
                        horizon == null ? 1 : Math.clamp(SaltClock.months(date, horizon) / interval, 0, 1),
                        List.of(
                                new Evidence(
                                        Label.GUIDES_CLEANED,
                                        oldest.equals(date)
                                                ? BrakeSaid.Label.AT_THIS_VISIT
                                                : new SeizingSaid.MonthsAgo(
                                                        new Amount(PadClock.months(oldest, date), "", 1)),
                                        new SeizingSaid.LongestAgo(running.size())),
                                new Evidence(
                                        Label.CHANCE_OF_SEIZING,
                                        new SeizingSaid.ChanceWithin(
                                                told(chance),
                                                new Between(
                                                        PERCENT * pads.chance(nextVisit, PadsTogether.LOWER),
                                                        PERCENT * pads.chance(nextVisit, PadsTogether.UPPER),
                                                        "%",
                                                        0)),
                                        basis(
                                                knowledge,
                                                seen.size(),
                                                OwnShare.of(pads.ownShare(nextVisit, knowledge.seizing() == null)))),
                                new Evidence(
                                        Label.INTERVAL,
                                        new SeizingSaid.Months((int) Math.max(1, Math.round(interval))),
                                        new SeizingSaid.KeepsChance(percent(risk.value()), risk.citation())),
                                new Evidence(
                                        Label.EXPOSURE,
                                        new SeizingSaid.Exposure(
                                                percent(exposure.saltShare()),
                                                exposure.garaged(),
                                                Amount.of(exposure.distanceKmPerYear(), "km"),
                                                percent(exposure.frictionBrakeShare())),
                                        given.vehicle().details().use().equals(CarUse.USUAL)
                                                ? Ground.USUAL_USE
                                                : Ground.USE_AS_NOTED)),
                        Ground.SEIZING)
                .todo(Todo.Action.SERVICE_BRAKE));
    }

    /** Sums of rounded chances may leave 0 to 1 by the last digit. */
    private static cornerbook.core.say.Chance told(double chance) {
        return new cornerbook.core.say.Chance(Math.clamp(chance, 0, 1));
    }

    private static Amount percent(double share) {
        return Amount.of(PERCENT * share, "%");
    }

    private static Said basis(Knowledge knowledge, int ofThisCar, OwnShare own) {
        var learned = knowledge.seizing();
        var learnedOn = knowledge.learnedOn();
        if (learned == null || learnedOn == null) {
            return new SeizingSaid.FromThisCar(ofThisCar, own);
        }
        var others = knowledge.originOfSeizing();
        return others != null && learned.cars() == 0
                ? new SeizingSaid.FromOthers(others, own)
                : new SeizingSaid.FromTheBook(learned.padTimes(), learned.cars(), learnedOn, own, others);
    }

    /** Pads that move today, each with the day of its last service. */
    private static final class PadsTogether {
        static final ToDoubleFunction<Chance> LOWER = Chance::lower;
        static final ToDoubleFunction<Chance> MIDDLE = Chance::probability;
        static final ToDoubleFunction<Chance> UPPER = Chance::upper;

        private final SeizingHazard hazard;
        private final SeizingExposure exposure;
        private final List<LocalDate> serviced;
        private final List<CensoredTime> ended;
        private final LocalDate today;
        private final double risk;
        /** By months since a service: most pads of a car are serviced on the same days, and each day to come asks for those before. */
        private final Map<Double, Chance> chances = new HashMap<>();

        PadsTogether(
                SeizingHazard hazard,
                SeizingExposure exposure,
                List<LocalDate> serviced,
                List<CensoredTime> ended,
                LocalDate today,
                double risk) {
            this.hazard = hazard;
            this.exposure = exposure;
            this.serviced = serviced;
            this.ended = ended;
            this.today = today;
            this.risk = risk;
        }

        /** Chance that at least one seizes by a day. */
        double chance(LocalDate by, ToDoubleFunction<Chance> which) {
            var ofCar = ended(which);
            @Nullable LocalDate before = null;
            double now = 0;
            double then = 0;
            for (var day : serviced) {
                if (!day.equals(before)) {
                    now = until(SaltClock.months(day, today), which);
                    then = until(SaltClock.months(day, by), which);
                    before = day;
                }
                ofCar.free(now, then);
            }
            return ofCar.chance();
        }

        /**
         * How much of the chance this car's own pads are, 0 to 1. Were the hazard that is usual one unit higher in its
         * logarithm, the learned one would be higher by what the pads leave of it, and the car's factor takes its own share of
         * that away again: what of the unit is left is the product of what each leaves.
         *
         * @param learnedFromCar whether the hazard was learned from the pads of this car; else all of it is usual to it
         */
        double ownShare(LocalDate by, boolean learnedFromCar) {
            double months =
                    SaltClock.months(serviced.stream().min(LocalDate::compareTo).orElseThrow(), by);
            double ofHazard = learnedFromCar && months > 0 ? hazard.shareOfPads(exposure, months) : 0;
            return 1 - (1 - ofHazard) * (1 - soFar().ownShare());
        }

        /** From one cleaning of all pads that move today to the next. */
        double intervalMonths() {
            return hazard.serviceIntervalMonths(exposure, risk, serviced.size(), soFar());
        }

        private PadsOfACar soFar() {
            var soFar = ended(MIDDLE);
            serviced.forEach(day -> soFar.past(until(SaltClock.months(day, today), MIDDLE), false));
            return soFar;
        }

        private PadsOfACar ended(ToDoubleFunction<Chance> which) {
            var ofCar = new PadsOfACar();
            for (var time : ended) {
                ofCar.past(until(time.isOpen() ? time.after() : time.by(), which), !time.isOpen());
            }
            return ofCar;
        }

        private double until(double months, ToDoubleFunction<Chance> which) {
            return months > 0
                    ? which.applyAsDouble(chances.computeIfAbsent(months, since -> hazard.chance(exposure, 0, since)))
                    : 0;
        }

        /** The last day on which the chance is still taken; null when it is for years. */
        @Nullable
        LocalDate horizon() {
            if (chance(today.plusDays(MOST_DAYS), MIDDLE) <= risk) {
                return null;
            }
            long low = 0;
            long high = MOST_DAYS;
            while (high - low > 1) {
                long middle = (low + high) / 2;
                if (chance(today.plusDays(middle), MIDDLE) <= risk) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return today.plusDays(low);
        }
    }
}
