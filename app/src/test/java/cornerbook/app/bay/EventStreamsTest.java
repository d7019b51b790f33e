package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.Room;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import java.net.http.HttpClient;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Sheets that are open tell each other of changes, once each, and end when their tablet does. */
@Timeout(60)
class EventStreamsTest {
    private static final String VISIT = "demo-08-v7";

    @Test
    void changeIsMadeOnceForAllWhoWatchAndToldOnceHoweverOftenItCame() {
        try (var watch = new Watch()) {
            var watchers = new ArrayList<Watch.Watcher>();
            for (int i = 0; i < 10; i++) {
                watchers.add(watch.open(VISIT, "Ada", "tablet " + i));
            }
            watchers.forEach(watcher -> watcher.next(0));
            watch.tell(VISIT);
            watch.tell(VISIT);
            var made = new AtomicInteger();
            for (var watcher : watchers) {
                assertThat(watcher.next(0)).contains(true);
                assertThat(watcher.state(() -> "state " + made.incrementAndGet()))
                        .isEqualTo("state 1");
                assertThat(watcher.next(0)).contains(false);
            }
            watch.tell(VISIT);
            assertThat(watchers.getFirst().state(() -> "new")).isEqualTo("new");
        }
    }

    @Test
    void whoOpensIsToldToOthersOnlyWhenThePeopleChange() {
        try (var watch = new Watch();
                var first = watch.open(VISIT, "Ada", "one")) {
            first.next(0);
            first.state(() -> "old");
            try (var second = watch.open(VISIT, "Ada", "two")) {
                assertThat(first.next(0)).as("the same person again").contains(false);
                assertThat(second.state(() -> "new"))
                        .as("who opens never sees what was told before")
                        .isEqualTo("new");
            }
            try (var third = watch.open(VISIT, "Bo", "two")) {
                assertThat(first.next(0)).contains(true);
                assertThat(watch.people(VISIT)).containsExactly("Ada", "Bo");
                assertThat(third.next(0)).contains(true);
            }
            assertThat(first.next(0)).contains(true);
        }
    }

    @Test
    void oldestSheetOfATabletEndsWhenItHasTooMany() {
        try (var watch = new Watch();
                var other = watch.open(VISIT, "Bo", "another")) {
            var oldest = watch.open(VISIT, "Ada", "one");
            for (int i = 1; i < Watch.MOST_OF_ONE_DEVICE; i++) {
                watch.open("visit " + i, "Ada", "one");
            }
            assertThat(oldest.next(0)).isPresent();
            watch.open(VISIT, "Ada", "one");
            assertThat(oldest.next(0)).isEmpty();
            assertThat(other.next(0)).isPresent();
        }
    }

    @Test
    void tabletThatIsUnpairedOrWhosePersonIsRemovedIsSentNothingMore(@TempDir Path folder) throws Exception {
        CarHistory car = BayShop.untouched("demo-08");
        try (var shop = new ServedShop(folder, List.of(car), () -> new Room[] {new BayRoom()}, "127.0.0.1")) {
            shop.post("/devices/people", Map.of("person", "Ada", "pin", "4711"));
            var ofUnpaired = stream(shop, pair(shop));
            var device = shop.book().devices().listPaired().getFirst().id();
            shop.post("/devices/unpair", Map.of("device", device));
            ofUnpaired.get();
            var ofRemoved = stream(shop, pair(shop));
            shop.post("/devices/people/remove", Map.of("person", "Ada"));
            ofRemoved.get();
            assertThat(shop.book().devices().listPaired()).isEmpty();
        }
    }

    @Test
    void whatIsSaidAtTheDeskIsToldToOpenSheets(@TempDir Path folder) throws Exception {
        CarHistory car = BayShop.untouched("demo-08");
        try (var shop = new ServedShop(folder, List.of(car), () -> new Room[] {new BayRoom()}, "127.0.0.1")) {
            var told = new LinkedBlockingQueue<String>();
            var request = shop.request("/bay/visits/%s/events?person=Ada".formatted(VISIT))
                    .build();
            var heard = HttpClient.newHttpClient()
                    .sendAsync(request, BodyHandlers.ofLines())
                    .thenAccept(answer -> answer.body()
                            .filter(line -> line.startsWith("data:"))
                            .forEach(told::add));
            assertThat(told.poll(20, TimeUnit.SECONDS)).doesNotContain("BATTERY_VOLTAGE");
            var answer = shop.post(
                    "/visits/" + VISIT, Map.of("form", UUID.randomUUID().toString(), "BATTERY_VOLTAGE...", "12.34 V"));
            assertThat(answer.statusCode()).isEqualTo(303);
            assertThat(Stream.generate(() -> next(told)).limit(2)).anyMatch(line -> line.contains("BATTERY_VOLTAGE"));
            assertThat(heard).isNotCompletedExceptionally();
        }
    }

    private static String next(BlockingQueue<String> told) {
        try {
            return Objects.requireNonNull(told.poll(20, TimeUnit.SECONDS), "nothing was told any more");
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Completes when the stream has ended; it had begun when this returns. */
    private static CompletableFuture<Void> stream(ServedShop shop, String device) throws Exception {
        var begun = new CompletableFuture<Void>();
        var client =
                HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();
        var request = shop.request("/bay/visits/%s/events?person=Ada".formatted(VISIT))
                .header("Cookie", device)
                .build();
        var ended = client.sendAsync(request, BodyHandlers.ofLines())
                .thenAccept(answer -> answer.body().forEach(line -> begun.complete(null)));
        begun.get();
        return ended;
    }

    private static String pair(ServedShop shop) throws Exception {
        var code = shop.get("/devices").body().replaceAll("(?s).*class=\"code\">([0-9 ]+)<.*", "$1");
        var paired = shop.post("/pair", Map.of("code", code, "device", "Trolley", "person", "Ada", "pin", "4711"));
        return paired.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
    }
}
