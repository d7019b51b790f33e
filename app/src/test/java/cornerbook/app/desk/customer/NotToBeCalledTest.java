package cornerbook.app.desk.customer;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.customer.ContactAnswer;
import cornerbook.app.desk.link.CallLinks;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Customer;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import cornerbook.core.days.PlannedWork;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who does not want to be called is called from no list. Cars and people are invented. */
class NotToBeCalledTest {
    private static final Pattern ARTICLE = Pattern.compile("href=\"(/order/article[^\"]+)\"");

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) throws InterruptedException {
        shop = new ServedShop(folder, ServedShop.cars());
        shop.waitUntilJudged();
        for (var car : ServedShop.cars()) {
            shop.book()
                    .appointments()
                    .make(
                            car.vehicle().id(),
                            car.vehicle().id(),
                            AppointmentState.BOOKED,
                            new Plan(ServedShop.TODAY.plusDays(60), null, PlannedWork.BRAKES, 30, null, null, ""),
                            new Appointment.Because(null, null, ServedShop.CLOCK.instant()),
                            ServedShop.TODAY);
        }
    }

    private static List<Customer> customers() {
        return ServedShop.cars().stream().map(car -> car.customer()).distinct().toList();
    }

    /** Every page and file on which customers stand below each other with a telephone. */
    private List<String> lists() throws Exception {
        var lists = new ArrayList<>(List.of(
                "/",
                CustomerLinks.coming() + "?until=" + ServedShop.TODAY.plusYears(1),
                StoreLinks.left() + "?months=1",
                StoreLinks.store() + ".csv",
                ShopLinks.year(),
                ShopLinks.year() + "/not-seen.csv",
                DayLinks.days(ServedShop.TODAY.plusDays(60))));
        ARTICLE.matcher(shop.get(ShopLinks.order() + "?until=" + ServedShop.TODAY.plusYears(1))
                        .body())
                .results()
                .map(found -> found.group(1))
                .map(href -> href.replace("&amp;", "&"))
                .forEach(lists::add);
        return lists;
    }

    private List<String> withTelephone(String list) throws Exception {
        var answer = shop.get(list);
        assertThat(answer.statusCode()).as(list).isEqualTo(200);
        return customers().stream()
                .flatMap(customer -> Stream.ofNullable(customer.phone()))
                .filter(phone -> answer.body().contains(phone) || answer.body().contains(CallLinks.call(phone)))
                .toList();
    }

    @Test
    void whoDeclinedEveryCallStandsWithoutTelephoneOnEveryList() throws Exception {
        var lists = lists();
        var shown = new ArrayList<String>();
        for (var list : lists) {
            if (!withTelephone(list).isEmpty()) {
                shown.add(list.replaceFirst("[?].*", ""));
            }
        }
        assertThat(shown)
                .as("before anybody declined")
                .contains("/", CustomerLinks.coming(), StoreLinks.left(), StoreLinks.store() + ".csv")
                .anyMatch(list -> list.startsWith("/order/"))
                .anyMatch(list -> list.startsWith(DayLinks.days()));
        for (var customer : customers()) {
            shop.book()
                    .contacts()
                    .add(
                            customer.id(),
                            customer.id(),
                            Stream.of(Purpose.values())
                                    .flatMap(purpose -> Stream.of(Channel.TELEPHONE, Channel.MESSAGE)
                                            .map(channel -> new ContactAnswer(
                                                    purpose,
                                                    channel,
                                                    false,
                                                    "May we?",
                                                    "Ida",
                                                    ServedShop.CLOCK.instant())))
                                    .toList());
        }
        for (var list : lists) {
            assertThat(withTelephone(list)).as(list).isEmpty();
        }
        assertThat(shop.get("/").body()).contains("not to be called");
    }

    /** Wheels to be tightened again are asked for, whoever wants no calls about the season. */
    @Test
    void whatSafetyDependsOnWasNotDeclinedWithTheSeason() throws Exception {
        var before = withTelephone("/");
        assertThat(before).isNotEmpty();
        for (var customer : customers()) {
            shop.book()
                    .contacts()
                    .add(
                            customer.id(),
                            customer.id(),
                            List.of(new ContactAnswer(
                                    Purpose.SEASON,
                                    Channel.TELEPHONE,
                                    false,
                                    "May we?",
                                    "Ida",
                                    ServedShop.CLOCK.instant())));
        }
        assertThat(withTelephone("/")).isEqualTo(before);
        assertThat(withTelephone(StoreLinks.left() + "?months=1")).isEmpty();
    }
}
