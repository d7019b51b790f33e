package cornerbook.core.cost.renew;

import cornerbook.core.corner.Axle;
import cornerbook.core.numeric.NormalDistribution;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Chance;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One way driven season by season, with the wear that is expected; what happens in each season is counted as it goes. */
final class RenewCourse {
    /** A pair that is likelier than this to be worn before the season is over is never left on. */
    private static final double MOST_CHANCE_OUT = 0.5;

    private final RenewWay way;
    private final RenewUse use;
    private final RenewPrices prices;
    private final RenewRules rules;
    private final List<PairOnAxle> axles;
    private final Axle firstAxle;
    private Pair front;
    private Pair rear;
    private RenewSaid.@Nullable Closed closed;
    private int seasons;
    private int oldGoneAfter = -1;
    private double bought;
    private double thrownAway;
    private double visits;
    private double chanceOfVisit;

    /** A pair wherever it runs; {@code paid} for each of the two. */
    private record Pair(double depthMm, double paid, boolean old) {
        double leftMm(RenewUse use) {
            return Math.max(0, depthMm - use.endMm());
        }

        double worth(RenewUse use) {
            return 2 * paid * leftMm(use) / use.usedUpMm();
        }

        Pair worn(double mm) {
            return new Pair(depthMm - mm, paid, old);
        }
    }

    RenewCourse(RenewWay way, PairOnAxle front, PairOnAxle rear, RenewUse use, RenewPrices prices, RenewRules rules) {
        this.way = way;
        this.use = use;
        this.prices = prices;
        this.rules = rules;
        axles = List.of(front, rear);
        this.front = new Pair(front.depthMm(), prices.tyre(), true);
        this.rear = new Pair(rear.depthMm(), prices.tyre(), true);
        firstAxle = kmLeft(front) <= kmLeft(rear) ? Axle.FRONT : Axle.REAR;
        firstVisit();
    }

    private double kmLeft(PairOnAxle pair) {
        return (pair.depthMm() - use.endMm()) / pair.wearMmPer1000Km();
    }

    private void firstVisit() {
        switch (way) {
            case FOUR_NOW -> buyFour();
            case TWO_AS_DUE -> {
                buy(firstAxle, prices.tyre());
                putDeeperAtRear();
            }
            case EACH_WHEN_DUE, FOUR_NEXT_SEASON -> {}
            case MOVE_THEN_FOUR -> move();
        }
        if (anyOld()) {
            checkAllHold();
            checkDifference();
        }
    }

    private void move() {
        if (!rules.oneSize()) {
            close(RenewSaid.ClosedBy.SIZES_DIFFER);
        }
        changePlaces();
        if (rules.deeperAtRear() && front.depthMm() > rear.depthMm()) {
            close(RenewSaid.ClosedBy.DEEPER_PAIR_WOULD_BE_IN_FRONT);
        }
    }

    private void changePlaces() {
        var wasFront = front;
        front = rear;
        rear = wasFront;
    }

    private void putDeeperAtRear() {
        if (rules.deeperAtRear() && rules.oneSize() && front.depthMm() > rear.depthMm()) {
            changePlaces();
        }
    }

    private void checkAllHold() {
        for (var axle : Axle.values()) {
            double out = chanceOut(axle);
            if (out > MOST_CHANCE_OUT) {
                close(new RenewSaid.WouldNotHold(axle, Amount.of(at(axle).depthMm(), "mm"), new Chance(1 - out)));
            }
        }
    }

    private void checkDifference() {
        var limitMm = rules.acrossAxlesMm();
        double differenceMm = Math.abs(front.depthMm() - rear.depthMm());
        if (limitMm != null && differenceMm > limitMm) {
            close(new RenewSaid.DifferTooMuch(
                    new Amount(differenceMm, "mm", 2), new Amount(limitMm, "mm", 2), seasons));
        }
    }

    /** What closed it first counts. */
    private void close(RenewSaid.Closed why) {
        if (closed == null) {
            closed = why;
        }
    }

    private Pair at(Axle axle) {
        return axle == Axle.FRONT ? front : rear;
    }

    private void put(Axle axle, Pair pair) {
        if (axle == Axle.FRONT) {
            front = pair;
        } else {
            rear = pair;
        }
    }

    private void buy(Axle axle, double price) {
        thrownAway += at(axle).worth(use);
        bought += 2 * price;
        put(axle, new Pair(use.newMm(), price, false));
    }

    private void buyFour() {
        buy(Axle.FRONT, prices.tyreOfFour());
        buy(Axle.REAR, prices.tyreOfFour());
    }

    private boolean anyOld() {
        return front.old() || rear.old();
    }

    private double seasonMm(Axle axle) {
        return use.seasonMm(axles.get(axle == Axle.FRONT ? 0 : 1));
    }

    /** That the tread left on an axle is worn before the season is over: P(X > left/expected), X log-normal with median 1. */
    static double chanceOut(double leftMm, double seasonMm, RenewUse use) {
        return leftMm <= 0 ? 1 : NormalDistribution.cumulative(-Math.log(leftMm / seasonMm) / use.logSpread());
    }

    private double chanceOut(Axle axle) {
        return chanceOut(at(axle).leftMm(use), seasonMm(axle), use);
    }

    /** Whether leaving a pair on is not to be answered for, or costs more in visits than its tread is worth. */
    private boolean due(Axle axle) {
        double out = chanceOut(axle);
        return out > MOST_CHANCE_OUT || out * prices.visit() > at(axle).worth(use);
    }

    /** Drives a season, after what is bought at the visit before it. */
    void drive() {
        boolean withOld = anyOld();
        if (seasons > 0) {
            visit();
        }
        noteWhetherOldAreGone();
        if (withOld && (anyOld() || !way.fourTogether())) {
            checkDifference();
        }
        // Both axles ran the same season: what runs out on one by a long way or fast wear has the other run out, too.
        double chance = Math.max(chanceOut(Axle.FRONT), chanceOut(Axle.REAR));
        visits += chance * prices.visit();
        if (seasons == 0) {
            chanceOfVisit = chance;
        }
        wear();
        seasons++;
        noteWhetherOldAreGone();
        if (anyOld()) {
            checkDifference();
        }
    }

    private void visit() {
        if (way.fourTogether() && anyOld()) {
            if (way == RenewWay.FOUR_NEXT_SEASON || due(Axle.FRONT) || due(Axle.REAR)) {
                buyFour();
            }
            return;
        }
        boolean bothDue = due(Axle.FRONT) && due(Axle.REAR);
        for (var axle : Axle.values()) {
            if (due(axle)) {
                buy(axle, bothDue ? prices.tyreOfFour() : prices.tyre());
            }
        }
        if (anyOld()) {
            putDeeperAtRear();
        }
    }

    private void wear() {
        front = front.worn(seasonMm(Axle.FRONT));
        rear = rear.worn(seasonMm(Axle.REAR));
    }

    private void noteWhetherOldAreGone() {
        if (!anyOld() && oldGoneAfter < 0) {
            oldGoneAfter = seasons;
        }
    }

    boolean oldAreGone() {
        return oldGoneAfter >= 0;
    }

    /** Why it is not open, as far as it was driven; null where it is. */
    RenewSaid.@Nullable Closed closed() {
        return closed;
    }

    int seasons() {
        return seasons;
    }

    double worthNow() {
        return axles.stream()
                .mapToDouble(axle -> new Pair(axle.depthMm(), prices.tyre(), true).worth(use))
                .sum();
    }

    /**
     * What it came to so far.
     *
     * @param whyClosed of the whole way, which may be closed later than it was driven
     */
    WayCost cost(RenewSaid.@Nullable Closed whyClosed) {
        double left = front.worth(use) + rear.worth(use);
        double spent = worthNow() + bought - left + visits;
        return new WayCost(
                way,
                whyClosed,
                firstAxle,
                oldGoneAfter,
                new WayCost.Spent(bought, left, thrownAway, visits),
                chanceOfVisit,
                spent / (seasons * use.seasonKm()) * 1000);
    }
}
