package cornerbook.app.desk.bench;

import cornerbook.app.bench.Question;
import cornerbook.app.book.price.PriceList;
import cornerbook.app.book.price.PriceRow;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.words.UnitSystem;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What the shop's price list says of a car's tyres, for the question of two or four. */
final class BenchPrices {
    private BenchPrices() {}

    /** The cheapest tyre of the season that the car stands on, in its size; of two sizes the dearer. Nothing where no price is known. */
    static Map<String, List<String>> of(Question question, PriceList prices, CarHistory history, UnitSystem system) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        if (question.name().equals("renew")) {
            standing(history).flatMap(set -> cheapest(set, prices)).ifPresent(tyre -> {
                values.put("price", List.of(amount(tyre).toPlainString()));
                var newMm = tyre.value().newTreadMm();
                if (newMm != null) {
                    values.put("new-tread", List.of(system.field(newMm, "mm")));
                }
            });
        }
        return values;
    }

    private static Optional<WheelSet> standing(CarHistory history) {
        return history.visits().reversed().stream()
                .map(BenchPrices::lastOn)
                .filter(wheelAt -> !wheelAt.isEmpty())
                .findFirst()
                .flatMap(history::findSetOn);
    }

    private static Map<Corner, String> lastOn(Visit visit) {
        return visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn();
    }

    private static Optional<PriceRow> cheapest(WheelSet set, PriceList prices) {
        return set.wheels().stream()
                .map(wheel -> wheel.tyre().size())
                .distinct()
                .flatMap(size -> prices.tyres(set.season(), size).stream().limit(1))
                .max(Comparator.comparing(BenchPrices::amount));
    }

    private static BigDecimal amount(PriceRow tyre) {
        return Objects.requireNonNull(tyre.value().amount()).getAmount();
    }
}
