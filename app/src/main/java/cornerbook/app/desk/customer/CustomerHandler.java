package cornerbook.app.desk.customer;

import com.fasterxml.jackson.annotation.JsonInclude;
import cornerbook.app.book.customer.ContactAnswers;
import cornerbook.app.book.customer.KeptOfCustomer;
import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.book.visit.Because;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.law.ContactRules;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import cornerbook.core.say.Said;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.ToStringSerializer;

/** Shows, gives out and erases what the book keeps of a customer. */
public final class CustomerHandler {
    private static final JsonMapper JSON = JsonMapper.builder()
            .addModule(new SimpleModule().addSerializer(Money.class, ToStringSerializer.instance))
            .changeDefaultPropertyInclusion(inclusion -> inclusion.withValueInclusion(JsonInclude.Include.NON_NULL))
            .build();

    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;

    public CustomerHandler(Desk desk, Pages pages, Letterhead letterhead) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, kept(request), Form.EMPTY, null);
    }

    /** The same as a file that other programs read. */
    public void sendFile(ServerRequest request, ServerResponse response) {
        var kept = kept(request);
        response.header(HeaderNames.CONTENT_TYPE, "application/json");
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        response.header(HeaderNames.CONTENT_DISPOSITION, "attachment; filename=\"customer.json\"");
        response.send(
                JSON.writerWithDefaultPrettyPrinter().writeValueAsString(kept).getBytes(StandardCharsets.UTF_8));
    }

    /** Nothing is erased unless the name is typed: it does not come back. */
    public void erase(ServerRequest request, ServerResponse response) {
        var kept = kept(request);
        var typed = Form.read(request);
        var person = typed.person();
        if (person == null || typed.get("reason").isEmpty()) {
            send(response, 422, kept, typed, new CustomerSaid.ReasonMissing());
        } else if (!typed.get("name").equals(kept.customer().name())) {
            send(
                    response,
                    422,
                    kept,
                    typed,
                    new CustomerSaid.OtherName(kept.customer().name()));
        } else {
            desk.book()
                    .customers()
                    .erase(
                            kept.customer().id(),
                            typed.has("plates"),
                            typed.has("words"),
                            new Because(null, typed.get("reason"), person, desk.today()));
            Pages.redirect(response, CustomerLinks.customer(kept.customer().id()));
        }
    }

    /** Whose cars were not here for so long that nothing has to be kept of them. */
    public void listGone(ServerRequest request, ServerResponse response) {
        var retention = Retention.at(desk.book().cars().findUsualPlace().orElse(""));
        pages.send(
                response,
                200,
                "desk/customer/gone",
                new GonePage(
                        retention,
                        desk.book().customers().listNotHereSince(desk.today().minusYears(retention.years()))));
    }

    /** What was typed on the page cannot be. */
    void sendRefused(ServerRequest request, ServerResponse response, Form typed, Said error) {
        send(response, 409, kept(request), typed, error);
    }

    private KeptOfCustomer kept(ServerRequest request) {
        return desk.book()
                .customers()
                .find(Pages.pathValue(request, "id"))
                .orElseThrow(() -> new PageException(404, new CustomerSaid.NoCustomer()));
    }

    private void send(ServerResponse response, int status, KeptOfCustomer kept, Form typed, @Nullable Said error) {
        pages.send(
                response,
                status,
                "desk/customer/customer",
                new CustomerPage(
                        kept,
                        contact(kept),
                        desk.reader(kept.customer()).say(new CustomerSaid.AskedToReach()),
                        new CustomerPage.AtShop(Told.reader().at(desk.clock().getZone()), letterhead, desk.today()),
                        Retention.at(desk.book().cars().findUsualPlace().orElse("")),
                        typed,
                        Caller.current().tablet().map(TabletAtWork::person).orElse(null),
                        error == null ? null : Typed.sentence(Told.say(error))));
    }

    /** Of whom no car was here yet, as of one who was here today. */
    private List<ContactState> contact(KeptOfCustomer kept) {
        var rules = ContactRules.at(desk.book().cars().findUsualPlace().orElse(""));
        var answers = new ContactAnswers(kept.contact());
        var reach = desk.reach();
        return Arrays.stream(Purpose.values())
                .flatMap(purpose -> Arrays.stream(Channel.values()).map(channel -> {
                    var rule = rules.get(purpose, channel);
                    var agreed = answers.agreed(purpose, channel);
                    return new ContactState(
                            purpose,
                            channel,
                            reach.permits(kept.customer().id(), purpose, channel),
                            agreed != null,
                            rule.source());
                }))
                .toList();
    }
}
