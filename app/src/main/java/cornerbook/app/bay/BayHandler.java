package cornerbook.app.bay;

import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.VisitState;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.asked.WheelProposal;
import cornerbook.app.log.Faults;
import cornerbook.app.request.Caller;
import cornerbook.app.request.Connections;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.assess.Advice;
import io.helidon.http.HeaderNames;
import io.helidon.http.sse.SseEvent;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import io.helidon.webserver.sse.SseSink;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/** Sends sheets and states to tablets, and takes their entries. */
final class BayHandler {
    private static final Logger LOG = Logger.getLogger(BayHandler.class.getName());
    /** Shorter than the time after which proxies give up a silent answer. Common practice, no source. */
    private static final int STILL_HERE_SECONDS = 20;

    private static final String PRELOADS =
            "<%s/sheet.json>; rel=preload; as=fetch; crossorigin, <%s/state.json>; rel=preload; as=fetch; crossorigin";

    private final Desk desk;
    private final Pages pages;
    private final Watch watch;

    BayHandler(Desk desk, Pages pages, Watch watch) {
        this.desk = desk;
        this.pages = pages;
        this.watch = watch;
    }

    void showShell(ServerRequest request, ServerResponse response) {
        pages.sendBayShell(response);
    }

    void showSheet(ServerRequest request, ServerResponse response) {
        desk.getVisit(Pages.pathValue(request, "id"));
        var path = request.path().rawPath();
        // The tablet asks for both while it still loads the modules (RFC 8288; preload, WHATWG HTML Standard).
        response.header(HeaderNames.create("Link"), PRELOADS.formatted(path, path));
        showShell(request, response);
    }

    /** The visits of today, so that a tablet can keep them before the network is gone. */
    void sendToday(ServerRequest request, ServerResponse response) {
        var ids = desk.book().visits().list(desk.today()).stream()
                .map(visit -> visit.visitId())
                .toList();
        send(response, 200, ids);
    }

    /** Who works on the tablet that asks, and how that person wants the sheet. */
    void sendMe(ServerRequest request, ServerResponse response) {
        send(response, 200, Me.of(Caller.current(), desk.book().devices()));
    }

    void sendSheet(ServerRequest request, ServerResponse response) {
        var open = desk.getOpenVisit(Pages.pathValue(request, "id"));
        var sheet = BayJson.write(new BaySheets(desk).makeForAll(open, pages.assetsPath()));
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        Pages.sendPacked(response, "application/json", sheet.getBytes(StandardCharsets.UTF_8));
    }

    void sendState(ServerRequest request, ServerResponse response) {
        send(response, 200, state(Pages.pathValue(request, "id")));
    }

    /** The state at once, and again after each change (server-sent events, WHATWG HTML Standard, section 9.2). */
    void sendEvents(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        desk.getHistoryOfVisit(visitId);
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        var deviceId = Caller.current().tablet().map(TabletAtWork::deviceId).orElse("");
        try (var watcher = watch.open(visitId, Pages.queryValue(request, "person"), deviceId);
                var sink = response.sink(SseSink.TYPE)) {
            sink.emit(event(visitId, watcher));
            for (var changed = watcher.next(STILL_HERE_SECONDS);
                    changed.isPresent();
                    changed = watcher.next(STILL_HERE_SECONDS)) {
                sink.emit(
                        changed.get()
                                ? event(visitId, watcher)
                                : SseEvent.builder().comment("still here").build());
                Connections.goesOn();
            }
        } catch (UncheckedIOException e) {
            LOG.log(Level.FINE, "A tablet went away", e);
        }
    }

    void takeEntries(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        try {
            desk.getVisit(visitId);
            var intake = new EntryIntake(desk, visitId);
            var answers = intake.take(BayJson.read(request));
            if (intake.changed()) {
                watch.tell(visitId);
                intake.movedTo().stream().filter(to -> !to.equals(visitId)).forEach(watch::tell);
            }
            send(response, 200, new Answers(answers, stateIfAny(visitId)));
        } catch (PageException e) {
            send(response, e.status(), new Refusal(Told.say(e.said()), ""));
        } catch (RefusedEntry e) {
            send(response, 400, new Refusal(EntryAnswer.sentence(e.said()), e.pointer()));
        } catch (BookException e) {
            LOG.log(Level.WARNING, "Entries could not be stored", e);
            send(response, 503, new Refusal(Told.say(e.said()), ""));
        }
    }

    /** Somebody says at the desk where a car is; the tablets hear it at once. */
    void sayState(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var typed = Form.read(request);
        var state = VisitState.byHand().stream()
                .filter(each -> each.name().equals(typed.get("state")))
                .findFirst()
                .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood()));
        desk.getVisit(visitId);
        desk.book()
                .visits()
                .say(
                        typed.identity("id"),
                        visitId,
                        state,
                        Caller.current().tablet().map(TabletAtWork::person).orElse(""),
                        desk.now());
        watch.tell(visitId);
        Pages.redirect(response, "/");
    }

    /** What was answered stands, even where the state cannot be said. */
    private @Nullable BayState stateIfAny(String visitId) {
        try {
            return state(visitId);
        } catch (RuntimeException e) {
            Faults.note("saying the state of visit " + visitId, e);
            return null;
        }
    }

    private record Answers(
            List<EntryAnswer> answers, @Nullable BayState state) {}

    private record Refusal(String sentence, String pointer) {}

    private SseEvent event(String visitId, Watch.Watcher watcher) {
        return SseEvent.builder()
                .name("state")
                .data(watcher.state(() -> BayJson.write(state(visitId))))
                .build();
    }

    private BayState state(String visitId) {
        var open = desk.getOpenVisit(visitId);
        var findings = desk.findings(open);
        var advice = Advice.of(open.history(), open.visit(), findings);
        return BayStates.of(
                desk.getVisitInBay(visitId),
                desk.book().visits().getState(visitId),
                findings,
                advice,
                desk.book().estimates().of(visitId),
                new WorkAsked(desk, open, advice).asking(),
                new WheelProposal(desk.assessor(), open).readOutOfStore(),
                watch.people(visitId),
                desk.now());
    }

    static void send(ServerResponse response, int status, Object value) {
        response.status(status);
        response.header(HeaderNames.CONTENT_TYPE, "application/json");
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        response.send(BayJson.write(value));
    }
}
