package cornerbook.app.door;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.bay.BayRoom;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.Room;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher asks for while it prepares faster starts is there, and it says so when preparing failed. */
class PreparedStartTest {
    private static final Path LAUNCHER = Path.of("../cornerbook");
    private static final Pattern ASKED = Pattern.compile("(?m)^asked=\"([^\"]*)\"");

    @Test
    void allThatIsAskedForComesInBothLanguages(@TempDir Path folder) throws Exception {
        var asked = asked();
        assertThat(asked)
                .contains(
                        "/visits/VISIT/handover.pdf?language=en",
                        "/visits/VISIT/handover.pdf?language=fr",
                        "/visits/VISIT/findings",
                        "/bay/visits/VISIT");
        var car = DemoShop.histories(ServedShop.TODAY).getFirst();
        try (var shop = new ServedShop(folder, List.of(car), () -> new Room[] {new BayRoom()});
                var client = HttpClient.newHttpClient()) {
            for (var link : asked) {
                var address = shop.address(link.replace("CAR", car.vehicle().id())
                        .replace("VISIT", car.visits().getLast().id()));
                for (var language : List.of("en", "fr")) {
                    var answer = client.send(
                            HttpRequest.newBuilder(URI.create(address))
                                    .header("Accept-Language", language)
                                    .build(),
                            BodyHandlers.discarding());
                    assertThat(answer.statusCode()).as(link).isEqualTo(200);
                }
            }
        }
    }

    /** A JDK that cannot make a cache: the program runs all the same, and it is said that it starts slower. */
    @Test
    void aPreparationThatFailedIsSaidAndHindersNothing(@TempDir Path home) throws Exception {
        Files.copy(LAUNCHER, home.resolve("cornerbook"));
        Files.createDirectories(home.resolve("app/target/lib"));
        var jdk = home.resolve("jdk");
        Files.createDirectories(jdk.resolve("bin"));
        Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"25.0.1\"\n");
        script(jdk.resolve("bin/javac"), "");
        script(jdk.resolve("bin/java"), "case \"$*\" in *AOTCacheOutput*) exit 1 ;; *) echo ran ;; esac");
        for (var source : List.of("pom.xml", "core/pom.xml", "words/pom.xml", "app/pom.xml")) {
            Files.createDirectories(home.resolve(source).getParent());
            Files.createFile(home.resolve(source));
        }
        for (var source : List.of("core/src/main", "words/src/main", "app/src/main", "docs")) {
            Files.createDirectories(home.resolve(source));
        }
        Files.createFile(home.resolve("app/target/built"));
        var said = home.resolve("said");
        var builder = new ProcessBuilder("sh", home.resolve("cornerbook").toString(), "--version");
        builder.environment().put("JAVA_HOME", jdk.toString());
        var process = builder.redirectError(said.toFile()).start();
        var out = new String(process.getInputStream().readAllBytes(), UTF_8);
        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(Files.readString(said)).contains("The start stays slower");
        assertThat(out).isEqualTo("ran\n");
        assertThat(process.exitValue()).isZero();
    }

    private static List<String> asked() throws IOException {
        var list = ASKED.matcher(Files.readString(LAUNCHER));
        assertThat(list.find()).isTrue();
        return List.of(list.group(1).split("\\s+"));
    }

    private static void script(Path file, String text) throws IOException {
        Files.writeString(file, "#!/bin/sh\n" + text + "\n");
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }
}
