package cornerbook.app.desk.coming;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.coming.ComingCustomer;
import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.book.customer.ContactAnswer;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Customer;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Matter;
import cornerbook.core.coming.Purpose;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Customers are asked to come back from one page. Cars and people are invented. */
class ComingPagesTest {
    private static final Days DAYS = Days.until(Days.usualUntil(ServedShop.TODAY), ServedShop.TODAY);

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) throws InterruptedException {
        shop = new ServedShop(folder, ServedShop.cars());
        shop.waitUntilJudged();
    }

    private List<ComingCustomer> all() {
        return shop.book().coming().list(DAYS, 0, 100).list();
    }

    @Test
    void oneTapSaysWhatCameOfItAndAnotherAgreesADay() {
        var first = all().getFirst();
        var page = chromium.open(shop.address(CustomerLinks.coming()), 390);
        var row = page.locator(".coming").first();
        assertThat(row.innerText()).contains(first.customer().name());
        row.getByText("Not reached").click();
        page.locator(".coming .soft", new Page.LocatorOptions().setHasText("not reached"))
                .first()
                .waitFor();
        assertThat(all().getFirst().last())
                .hasValueSatisfying(answer -> assertThat(answer.kind()).isEqualTo(CallAnswer.Kind.NOT_REACHED));

        var day = ServedShop.TODAY.plusDays(2);
        row.locator("input[type=date]").fill(day.toString());
        row.getByText("Agree that day").click();
        page.getByText("Agreed for 27 Nov 2026.").waitFor();
        assertThat(shop.book().appointments().list(day, day))
                .extracting(agreed -> agreed.car().customerName())
                .containsOnly(first.customer().name());
        assertThat(all()).extracting(ComingCustomer::customer).doesNotContain(first.customer());
    }

    /** What is not ticked was not talked about. */
    @Test
    void onlyWhatIsTickedIsAnswered() {
        var customer = all().stream()
                .filter(each -> each.cars().getFirst().matters().size() == 1)
                .findFirst()
                .orElseThrow();
        var page = chromium.open(shop.address(CustomerLinks.coming()), 1180);
        var row = page.locator(
                ".coming",
                new Page.LocatorOptions().setHasText(customer.customer().name()));
        row.locator(".tick").click();
        row.getByText("Declined").click();
        page.getByText("Choose what the customer was asked about.").waitFor();
        assertThat(all()).extracting(ComingCustomer::customer).contains(customer.customer());
    }

    @Test
    void theMessageIsInTheCustomersLanguageAndOpensInOtherPrograms() throws Exception {
        var customer = all().getFirst().customer();
        var body = shop.get(CustomerLinks.coming()).body();
        assertThat(body)
                .contains("lang=\"en\">Hello " + customer.name() + ". ")
                .contains(
                        "href=\"sms:" + Objects.requireNonNull(customer.phone()).replace(" ", "") + "?body=Hello%20")
                .contains("href=\"mailto:" + customer.email() + "?subject=Your%20");
        assertThat(shop.send(shop.request(CustomerLinks.coming()).header("Accept-Language", "fr"))
                        .body())
                .contains("lang=\"fr\">Bonjour " + customer.name() + ". ");
    }

    /** A browser gives a page the clipboard only over an encrypted line or from the machine itself; else the text is marked. */
    @Test
    void theTextIsCopiedOrMarked() {
        var page = chromium.newPage(390, 844);
        page.context().grantPermissions(List.of("clipboard-read", "clipboard-write"));
        page.navigate(shop.address(CustomerLinks.coming()));
        var first = page.locator(".coming details").first();
        first.locator("summary").click();
        var text = first.locator("textarea").inputValue();
        first.getByText("Copy the text").click();
        first.getByText("Copied.").waitFor();
        assertThat(page.evaluate("navigator.clipboard.readText()")).isEqualTo(text);
        Axe.assertNoViolation(page, "a text that was copied");

        page.evaluate("Object.defineProperty(navigator, 'clipboard', {value: undefined})");
        first.getByText("Copy the text").click();
        first.getByText("The text is marked").waitFor();
        assertThat(page.evaluate("document.getSelection().toString()")).isEqualTo(text);
    }

    /** Who said no to one way is not offered it; what safety depends on was not declined with it. */
    @Test
    void aWayThatWasDeclinedIsNotOffered() throws Exception {
        var customer = all().stream()
                .filter(each -> each.matters().contains(Matter.NEXT_VISIT))
                .findFirst()
                .orElseThrow()
                .customer();
        var page = chromium.open(shop.address(CustomerLinks.customer(customer.id())), 390);
        page.locator("[name='purpose.SEASON']").check();
        page.locator("[name='channel.MESSAGE']").check();
        page.getByText("The customer declines").click();
        page.getByText("text message: no, declined").waitFor();
        assertThat(row(customer)).doesNotContain("href=\"sms:").contains("href=\"mailto:", "href=\"tel:");

        decline(customer, Purpose.SEASON, Channel.E_MAIL);
        assertThat(row(customer)).doesNotContain("href=\"mailto:").contains("href=\"tel:");
        decline(customer, Purpose.SEASON, Channel.TELEPHONE);
        assertThat(row(customer)).doesNotContain("href=\"tel:").contains("not to be called");

        var retorque = all().stream()
                .filter(each -> each.matters().contains(Matter.RETORQUE))
                .findFirst()
                .orElseThrow()
                .customer();
        decline(retorque, Purpose.SEASON, Channel.TELEPHONE);
        assertThat(row(retorque)).contains("href=\"tel:");
        decline(retorque, Purpose.SAFETY, Channel.TELEPHONE);
        assertThat(row(retorque)).doesNotContain("href=\"tel:");
    }

    private String row(Customer customer) throws Exception {
        var body = shop.get(CustomerLinks.coming()).body();
        int start = body.indexOf("href=\"" + CustomerLinks.customer(customer.id()));
        return body.substring(start, nextRow(body, start));
    }

    private static int nextRow(String body, int start) {
        int next = body.indexOf("<li class=\"coming\"", start);
        return next < 0 ? body.length() : next;
    }

    private void decline(Customer customer, Purpose purpose, Channel channel) {
        shop.book()
                .contacts()
                .add(
                        UUID.randomUUID().toString(),
                        customer.id(),
                        List.of(new ContactAnswer(
                                purpose, channel, false, "May we?", "Ida", ServedShop.CLOCK.instant())));
    }

    @Test
    void whatCannotBeIsOneSentenceAndChangesNothing() throws Exception {
        var before = all();
        var asked =
                "of." + before.getFirst().cars().getFirst().matters().getFirst().asked();
        refused(409, "Choose what the customer was asked about.", "/answer", Map.of("answer", "CALLED"));
        refused(409, "That is not due for this car", "/answer", Map.of("answer", "CALLED", "of.NEXT_VISIT:x", "yes"));
        refused(409, "That is not due for this car", "/answer", Map.of("answer", "CALLED", "of.SAIL", "yes"));
        refused(409, "The date is missing or not a date", "/agree", Map.of("day", "soon", asked, "yes"));
        refused(409, "is past", "/agree", Map.of("day", "2026-11-24", asked, "yes"));
        refused(400, "", "/answer", Map.of("answer", "SANG", asked, "yes"));
        refused(400, "", "/answer", Map.of("answer", "CALLED", "id", "", asked, "yes"));
        refused(400, "", "/answer", Map.of("answer", "CALLED", "until", "soon", asked, "yes"));
        for (var query : List.of("?until=soon", "?agreed=soon")) {
            assertThat(shop.get(CustomerLinks.coming() + query).statusCode())
                    .as(query)
                    .isEqualTo(400);
        }
        assertThat(shop.get(CustomerLinks.coming() + "?until=2020-01-01").statusCode())
                .isEqualTo(400);
        assertThat(shop.get(CustomerLinks.coming() + "?until=2020-01-01").body())
                .contains("The list begins on 28 Jul 2026: choose a day that is not before.");
        assertThat(shop.get(CustomerLinks.coming() + "?from=-1").statusCode()).isEqualTo(200);
        assertThat(all()).isEqualTo(before);
    }

    private void refused(int status, String sentence, String path, Map<String, String> fields) throws Exception {
        var answer = post(path, fields);
        assertThat(answer.statusCode()).as("%s %s", path, fields).isEqualTo(status);
        assertThat(answer.body()).contains(sentence).doesNotContain("Exception");
    }

    private HttpResponse<String> post(String path, Map<String, String> fields) throws Exception {
        var form = new HashMap<>(Map.of("id", UUID.randomUUID().toString(), "person", "Ida"));
        form.putAll(fields);
        return shop.post(CustomerLinks.coming() + path, form);
    }
}
