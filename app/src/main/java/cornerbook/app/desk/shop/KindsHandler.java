package cornerbook.app.desk.shop;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.exchange.KindFile;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** The data sheets of kinds of cars: listed, removed, taken in and out as files. */
public final class KindsHandler {
    private static final String KIND = "kind";
    private static final String FILE = "file";

    private final Desk desk;
    private final Pages pages;

    public KindsHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var kind = Pages.queryValue(request, KIND);
        send(response, 200, kind.isEmpty() ? "" : sheet(kind), List.of());
    }

    private String sheet(String kind) {
        return desk.book()
                .kindSheets()
                .find(kind)
                .orElseThrow(() -> new PageException(404, new ShopSaid.NoSuchKind(kind)));
    }

    public void sendFile(ServerRequest request, ServerResponse response) {
        var kind = Pages.queryValue(request, KIND);
        var sheet = sheet(kind);
        response.header(HeaderNames.CONTENT_TYPE, "application/json");
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        response.header(
                HeaderNames.CONTENT_DISPOSITION,
                "attachment; filename=\"kind-%s.json\"".formatted(kind.replaceAll("[^A-Za-z0-9]+", "-")));
        response.send(sheet.getBytes(StandardCharsets.UTF_8));
    }

    public void save(ServerRequest request, ServerResponse response) {
        var file = Form.readLines(request).get(FILE);
        switch (KindFile.read(file, desk.today())) {
            case KindFile.Faulty faulty ->
                send(
                        response,
                        422,
                        file,
                        faulty.problems().stream()
                                .map(problem -> new KindsPage.Fault(
                                        problem.where(), Typed.sentence(Told.say(problem.message()))))
                                .toList());
            case KindFile.Read read -> {
                desk.book().kindSheets().put(Map.of(read.kind().name(), KindFile.write(read.kind())));
                Pages.redirect(response, ShopLinks.kinds());
            }
        }
    }

    public void remove(ServerRequest request, ServerResponse response) {
        desk.book().kindSheets().remove(Form.read(request).get(KIND));
        Pages.redirect(response, ShopLinks.kinds());
    }

    private void send(ServerResponse response, int status, String file, List<KindsPage.Fault> errors) {
        pages.send(
                response,
                status,
                "desk/shop/kinds",
                new KindsPage(
                        KindFile.readAll(desk.book().kindSheets().list(), desk.today()),
                        desk.book().cars().listKinds(),
                        file,
                        errors));
    }
}
