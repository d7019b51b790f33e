package cornerbook.app.desk;

import cornerbook.app.judge.Judged;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import cornerbook.core.say.Said;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Renders the templates and sends pages. */
public final class Pages {
    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "cornerbook.app.pages");
    private final Assets assets = new Assets();

    public Pages() {
        engine.setBinaryStaticContent(false);
    }

    /**
     * A page before it is sent.
     *
     * @param model what the template takes
     */
    public record View(int status, String template, Object model) {}

    /** Sends a page whose template takes one model. */
    public void send(ServerResponse response, int status, String template, Object model) {
        send(response, status, render(template, model));
    }

    /**
     * Sends a page that rests on judging a car. Where judging or drawing it fails, the page that stands in says so, and
     * leads to where entries are put right.
     */
    public void sendJudged(ServerResponse response, Unjudged subject, Supplier<View> judging) {
        sendJudged(response, subject.what(), judging, faultId -> subject.view(200, faultId));
    }

    /** The same where something else stands in. */
    public void sendJudged(
            ServerResponse response, String what, Supplier<View> judging, Function<String, View> standIn) {
        var page = Judged.of(what, () -> {
            var view = judging.get();
            return new Rendered(view.status(), render(view.template(), view.model()));
        });
        switch (page) {
            case Judged.Made<Rendered> made ->
                send(response, made.value().status(), made.value().page());
            case Judged.Failed<Rendered> failed -> send(response, standIn.apply(failed.faultId()));
        }
    }

    private record Rendered(int status, String page) {}

    /**
     * The same for what is printed.
     *
     * @param without says why there is nothing to print
     */
    public void sendJudgedPdf(
            ServerResponse response,
            Unjudged subject,
            String name,
            Supplier<Optional<byte[]>> judging,
            String without) {
        switch (Judged.of(subject.what(), judging)) {
            case Judged.Made<Optional<byte[]>> made ->
                sendPdf(response, name, made.value().orElseThrow(() -> new PageException(404, Said.verbatim(without))));
            case Judged.Failed<Optional<byte[]>> failed -> send(response, subject.view(409, failed.faultId()));
        }
    }

    private void send(ServerResponse response, View view) {
        send(response, view.status(), view.template(), view.model());
    }

    private String render(String template, Object model) {
        var output = new StringOutput();
        engine.render(template + ".jte", Map.of("page", model, "assets", assets.basePath()), output);
        return output.toString();
    }

    private static void send(ServerResponse response, int status, String page) {
        response.status(status);
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        sendPacked(response, "text/html; charset=utf-8", page.getBytes(StandardCharsets.UTF_8));
    }

    /** Where style and modules are; the address changes with their content. */
    public String assetsPath() {
        return assets.basePath();
    }

    /** The page of any visit on a tablet: its content comes as data. */
    public void sendBayShell(ServerResponse response) {
        send(response, 200, "bay/bay", Assets.bayModules());
    }

    public void sendProblem(ServerResponse response, int status, String sentence) {
        send(response, status, "desk/problem", new ProblemPage(status, sentence));
    }

    public void sendAsset(ServerRequest request, ServerResponse response) {
        var asset = assets.find(pathValue(request, "name"))
                .orElseThrow(() -> new PageException(404, new DeskSaid.NoFile()));
        response.header(HeaderNames.CACHE_CONTROL, "public, max-age=31536000, immutable");
        send(response, asset);
    }

    /**
     * The service worker, under an address of its own: it may only serve what lies below it (Service Workers, W3C, "scope").
     */
    public void sendWorker(ServerRequest request, ServerResponse response) {
        var asset = assets.find("worker.mjs").orElseThrow();
        response.header(HeaderNames.CACHE_CONTROL, "no-cache");
        send(response, asset);
    }

    private static void send(ServerResponse response, Assets.Asset asset) {
        if (asset.packed()) {
            response.header(HeaderNames.CONTENT_TYPE, asset.type());
            response.send(asset.content());
        } else {
            sendPacked(response, asset.type(), asset.content());
        }
    }

    /** Sends in gzip form (RFC 1952) to browsers that take it. */
    public static void sendPacked(ServerResponse response, String type, byte[] content) {
        response.header(HeaderNames.CONTENT_TYPE, type);
        response.header(HeaderNames.VARY, "Accept-Encoding");
        if (Caller.current().unpacks()) {
            response.header(HeaderNames.CONTENT_ENCODING, "gzip");
            response.send(Assets.pack(content));
        } else {
            response.send(content);
        }
    }

    /** Shown in the browser; kept, it has this name. */
    public static void sendPdf(ServerResponse response, String name, byte[] pdf) {
        response.header(HeaderNames.CONTENT_TYPE, "application/pdf");
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        response.header(HeaderNames.CONTENT_DISPOSITION, "inline; filename=\"%s.pdf\"".formatted(name));
        response.send(pdf);
    }

    /** After a change: the browser asks for the page anew, so that reloading sends nothing twice. */
    public static void redirect(ServerResponse response, String path) {
        response.status(303);
        response.header(HeaderNames.LOCATION, path);
        response.send();
    }

    public static String pathValue(ServerRequest request, String name) {
        return request.path().pathParameters().get(name);
    }

    public static String queryValue(ServerRequest request, String name) {
        return request.query().first(name).orElse("").strip();
    }
}
