package cornerbook.app.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.bench.Questions;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.desk.link.BenchLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.SeasonKind;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench with a car's own data: nothing in them is refused before anybody has typed anything. */
class BenchOfCarTest {
    private static final Pattern PRICE = Pattern.compile("<input[^>]*name=\"price\"[^>]*>");
    private static final Pattern VALUE = Pattern.compile("value=\"([^\"]*)\"");
    private static final Pattern ERROR = Pattern.compile("(?<=class=\"error\")[^<]*");

    /** In the address of a page these two say which car, and whose units. */
    @Test
    void noQuestionBearsTheNameOfWhatAPageIsAskedFor() {
        assertThat(Questions.ALL)
                .flatExtracting(question -> question.asks())
                .extracting(ask -> ask.name())
                .doesNotContain("car", "units");
    }

    /** Of the invented shop's two tyres of that size the cheaper one, with its tread; what another size costs is nothing to it. */
    @Test
    void theShopsPriceOfATyreIsFilledIn(@TempDir Path folder) throws Exception {
        var car = ServedShop.car("demo-08");
        var visit = car.visits().getLast();
        var set = car.findSetOn(visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn())
                .orElseThrow();
        var size = set.wheels().getFirst().tyre().size();
        try (var shop = new ServedShop(folder, List.of(car))) {
            var address = BenchLinks.bench("renew", "demo-08");
            assertThat(price(shop, address)).isEmpty();
            var now = ServedShop.CLOCK.instant();
            var begins = ServedShop.TODAY.minusDays(1);
            shop.book().prices().keep("place", new TaxPlace("CA-QC", CurrencyUnit.CAD, begins, List.of()), "Ida", now);
            shop.book()
                    .prices()
                    .keep(
                            "tyres",
                            List.of(
                                    tyre(set.season(), size, "first", "204.50", begins),
                                    tyre(set.season(), size, "second", "168.00", begins),
                                    tyre(set.season(), "145/80R13", "", "70.00", begins)));
            assertThat(price(shop, address)).isEqualTo("168.00");
        }
    }

    private static PriceRow tyre(SeasonKind season, String size, String offer, String amount, LocalDate begins) {
        return new PriceRow(
                PriceKey.tyre(season, size, offer),
                PriceValue.of(Money.parse("CAD " + amount)),
                begins,
                "Ida",
                ServedShop.CLOCK.instant());
    }

    private static String price(ServedShop shop, String address) throws Exception {
        var field = PRICE.matcher(shop.get(address).body());
        assertThat(field.find()).isTrue();
        var value = VALUE.matcher(field.group());
        return value.find() ? value.group(1) : "";
    }

    @Test
    void everyCalculatorTakesWhatTheBookKnowsOfEachCar(@TempDir Path folder) throws Exception {
        List<CarHistory> cars = ServedShop.cars();
        var refused = new ArrayList<String>();
        try (var shop = new ServedShop(folder, cars)) {
            for (var car : cars) {
                for (var question : Questions.ALL) {
                    for (var more : List.of("", "&axle=rear", "&units=us")) {
                        var address =
                                BenchLinks.bench(question.name(), car.vehicle().id()) + more;
                        var answer = shop.get(address);
                        if (answer.statusCode() != 200) {
                            refused.add(address + ": "
                                    + ERROR.matcher(answer.body())
                                            .results()
                                            .map(MatchResult::group)
                                            .toList());
                        }
                    }
                }
            }
        }
        assertThat(refused).isEmpty();
    }
}
