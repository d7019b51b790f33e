package cornerbook.app.book.order;

import cornerbook.core.order.Article;
import cornerbook.core.order.Demand;
import java.util.List;

/**
 * What the shop needs of one article, and what it has and will have of it.
 *
 * @param cars that may need it, the likeliest first; those whose customer declined, or that have it, among them
 * @param lines all that were ordered of it, oldest first
 * @param demand of the cars that count
 * @param toHave pieces that are enough at the chosen level
 */
public record OrderRow(Article article, List<NeedOfCar> cars, List<OrderLine> lines, Demand demand, int toHave) {
    /** Cars that need it less likely make no number of cars; in the sum they count. */
    private static final double NAMED = 0.01;

    public OrderRow {
        cars = List.copyOf(cars);
        lines = List.copyOf(lines);
    }

    static OrderRow of(Article article, List<NeedOfCar> cars, List<OrderLine> lines, double level) {
        var demand = Demand.of(cars.stream()
                .filter(NeedOfCar::counts)
                .map(car -> car.need().need())
                .toList());
        return new OrderRow(article, cars, lines, demand, demand.quantity(level));
    }

    /** Cars that count, and may well need it: with a chance of one in a hundred, or more. */
    public List<NeedOfCar> likely() {
        return cars.stream()
                .filter(NeedOfCar::counts)
                .filter(car -> car.need().need().any() >= NAMED)
                .toList();
    }

    /** Cars that count, but hardly need it. */
    public List<NeedOfCar> hardly() {
        return cars.stream()
                .filter(NeedOfCar::counts)
                .filter(car -> car.need().need().any() < NAMED)
                .toList();
    }

    /** How many cars may well need it. */
    public int count() {
        return likely().size();
    }

    /** Pieces that are still to come. */
    public int open() {
        return lines.stream().mapToInt(OrderLine::open).sum();
    }

    /** Pieces that lie in the shop. */
    public int there() {
        return lines.stream().mapToInt(OrderLine::there).sum();
    }

    /** Pieces to order beside those that come or lie there. */
    public int toOrder() {
        return Math.max(0, toHave - open() - there());
    }

    /** Chance that what comes and lies there is enough, 0 to 1. */
    public double chanceEnough() {
        return demand.chanceEnough(open() + there());
    }

    /** Whether anything is to be ordered of it, comes, or lies there. */
    public boolean matters() {
        return toHave > 0 || open() > 0 || there() > 0;
    }
}
