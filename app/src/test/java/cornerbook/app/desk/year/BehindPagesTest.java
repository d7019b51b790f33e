package cornerbook.app.desk.year;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.book.year.MonthCount;
import cornerbook.app.book.year.PadsOfMonth;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.core.order.OrderPart;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each list behind a picture of the year comes to the numbers of the picture. Cars are invented. */
class BehindPagesTest {
    private static final LocalDate FIRST = LocalDate.of(2025, 11, 1);
    private static final LocalDate LAST = LocalDate.of(2027, 11, 30);

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) throws InterruptedException {
        shop = new ServedShop(folder, ServedShop.cars());
        shop.waitUntilJudged();
    }

    /** The lines of a file without its heads. */
    private List<String> csv(Behind behind) throws Exception {
        var answer = shop.get(ShopLinks.behind(behind.address()) + ".csv");
        assertThat(answer.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("text/csv"));
        return answer.body().lines().skip(1).toList();
    }

    @Test
    void visitsAreAsManyAsThePictureHas() throws Exception {
        double all = shop.book().year().visits(FIRST, ServedShop.TODAY).stream()
                .mapToDouble(MonthCount::count)
                .sum();
        assertThat(all).isPositive();
        assertThat(csv(Behind.VISITS))
                .hasSize((int) all)
                .allSatisfy(line -> assertThat(line).endsWith(",was here"));
    }

    @Test
    void setsAtRiskComeToWhatThePictureExpects() throws Exception {
        double all = shop.book().year().setsAtRisk(ServedShop.TODAY, LAST).stream()
                .mapToDouble(MonthCount::count)
                .sum();
        var lines = csv(Behind.SETS);
        assertThat(lines.stream()
                        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(',') + 1)) / 100)
                        .sum())
                .as("whole per cent")
                .isCloseTo(all, within(0.005 * lines.size()));
        assertThat(csv(Behind.TYRES))
                .anySatisfy(line -> assertThat(line).contains("235/50R19"))
                .allSatisfy(line -> assertThat(line).matches(".*,\\d+,\\d+\\.\\d"));
        assertThat(shop.get(ShopLinks.behind(Behind.TYRES.address())).body()).contains("part=TYRE");
    }

    @Test
    void seizedPadsAreThoseOfTheMonths() throws Exception {
        var since = ServedShop.TODAY.minusYears(3);
        int all = shop.book().year().pads(since).stream()
                .mapToInt(PadsOfMonth::stuck)
                .sum();
        assertThat(all).isPositive();
        assertThat(csv(Behind.SEIZED).stream()
                        .map(line -> line.split(",", -1))
                        .mapToInt(fields -> Integer.parseInt(fields[fields.length - 2]))
                        .sum())
                .isEqualTo(all);
    }

    @Test
    void callsSayWhatTheyWereAboutAndCameTo() throws Exception {
        assertThat(csv(Behind.CALLS)).isEmpty();
        assertThat(shop.get(ShopLinks.behind(Behind.CALLS.address())).body()).contains("There is none.");
        var need = shop.book().orders().listNeeds(ServedShop.TODAY, LAST).stream()
                .filter(each -> each.need().article().part() == OrderPart.TYRE)
                .findFirst()
                .orElseThrow();
        shop.book()
                .orders()
                .answer(
                        "call",
                        need.visitId(),
                        OrderPart.TYRE,
                        new CallAnswer(CallAnswer.Kind.WILL_COME, "Ines", ServedShop.CLOCK.instant()));
        assertThat(csv(Behind.CALLS))
                .singleElement()
                .satisfies(line ->
                        assertThat(line).contains(need.plate(), "2026-11-25,").endsWith(",tyres,Will come"));
        assertThat(shop.get(ShopLinks.behind(Behind.CALLS.address())).body())
                .contains(CarLinks.car(need.vehicleId()), "25 Nov 2026");
    }

    @Test
    void setsReadTwiceAreThoseOfTheStudy() throws Exception {
        assertThat(csv(Behind.READ_TWICE)).hasSameSizeAs(shop.book().knowledge().readTwice());
    }
}
