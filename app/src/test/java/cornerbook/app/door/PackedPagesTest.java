package cornerbook.app.door;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages travel to a tablet in gzip form (RFC 1952, unpacked by the JDK) where its browser takes it, and plain where not. */
class PackedPagesTest {
    @Test
    void aPageIsTheSamePackedAndPlain(@TempDir Path folder) throws Exception {
        try (var shop = new ServedShop(
                        folder, DemoShop.histories(LocalDate.of(2026, 11, 25)).subList(0, 1));
                var client = HttpClient.newHttpClient()) {
            var plain = get(client, shop, "identity");
            var packed = get(client, shop, "gzip, deflate, br");
            assertThat(plain.headers().firstValue("Content-Encoding")).isEmpty();
            assertThat(packed.headers().firstValue("Content-Encoding")).contains("gzip");
            assertThat(packed.headers().firstValue("Vary")).contains("Accept-Encoding");
            assertThat(packed.body()).hasSizeLessThan(plain.body().length / 2);
            try (var unpacked = new GZIPInputStream(new ByteArrayInputStream(packed.body()))) {
                assertThat(new String(unpacked.readAllBytes(), UTF_8)).isEqualTo(new String(plain.body(), UTF_8));
            }
        }
    }

    private static HttpResponse<byte[]> get(HttpClient client, ServedShop shop, String encodings) throws Exception {
        return client.send(
                HttpRequest.newBuilder(URI.create(shop.address("/bench")))
                        .header("Accept-Encoding", encodings)
                        .build(),
                BodyHandlers.ofByteArray());
    }
}
