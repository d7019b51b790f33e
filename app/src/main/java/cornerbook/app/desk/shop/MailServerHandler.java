package cornerbook.app.desk.shop;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.mail.MailPassword;
import cornerbook.app.mail.MailServer;
import cornerbook.app.request.PageException;
import cornerbook.core.say.Refused;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The server that takes the shop's e-mails. Its password is neither shown nor asked for: the program is started with it. */
public final class MailServerHandler {
    /** Addresses that stay on this machine (RFC 6890, section 2.2.2; RFC 6761, section 6.3; RFC 4291, section 2.5.3). */
    private static final Pattern THIS_MACHINE =
            Pattern.compile("localhost|127(\\.\\d{1,3}){3}|::1", Pattern.CASE_INSENSITIVE);

    private static final Form USUAL = new Form(Map.of("port", "587", "security", MailServer.Security.STARTTLS.name()));

    private final Desk desk;
    private final Pages pages;

    public MailServerHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var server = desk.book().mails().findServer();
        send(response, 200, server.map(MailServerHandler::fields).orElse(USUAL), server.isPresent(), "");
    }

    private static Form fields(MailServer server) {
        return new Form(Map.of(
                "host", server.host(),
                "port", Integer.toString(server.port()),
                "security", server.security().name(),
                "sender", server.sender(),
                "login", server.login()));
    }

    public void save(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            desk.book().mails().putServer(server(typed));
            Pages.redirect(response, ShopLinks.mailServer());
        } catch (Refused e) {
            send(response, 422, typed, desk.book().mails().findServer().isPresent(), Typed.sentence(e));
        }
    }

    /** What customers are written is not sent in the open to another machine. */
    private static MailServer server(Form typed) {
        var server = read(typed);
        if (server.security() == MailServer.Security.NONE
                && !THIS_MACHINE.matcher(server.host()).matches()) {
            throw new Refused(new ShopSaid.MailInTheOpen());
        }
        return server;
    }

    private static MailServer read(Form typed) {
        return new MailServer(
                typed.get("host"),
                typed.get("port").matches("\\d{1,7}") ? Integer.parseInt(typed.get("port")) : 0,
                typed.choice("security", List.of(MailServer.Security.values()))
                        .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood())),
                typed.get("sender"),
                typed.get("login"));
    }

    public void remove(ServerRequest request, ServerResponse response) {
        desk.book().mails().removeServer();
        Pages.redirect(response, ShopLinks.mailServer());
    }

    private void send(ServerResponse response, int status, Form typed, boolean kept, String error) {
        boolean known;
        try {
            known = MailPassword.find(System.getenv()).isPresent();
        } catch (Refused e) {
            known = false;
        }
        pages.send(response, status, "desk/shop/mail", new MailServerPage(typed, kept, known, error));
    }
}
