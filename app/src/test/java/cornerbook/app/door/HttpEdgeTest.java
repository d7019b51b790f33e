package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Room;
import io.helidon.webserver.http.HttpRouting;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Requests as no browser sends them: each gets an answer of its own, none is a fault, and no inside of the program is shown. */
@Timeout(60)
class HttpEdgeTest {
    private ServedShop shop;

    /** A page with a fault. */
    private static final class FaultyRoom implements Room {
        @Override
        public void open(HttpRouting.Builder routing, Desk desk, Pages pages) {
            routing.get("/faulty", (request, response) -> {
                throw new IllegalStateException("Ida Invented");
            });
            routing.get("/endless", (request, response) -> {
                throw new StackOverflowError();
            });
        }

        @Override
        public void unpaired(String deviceId) {
            // Sends nothing.
        }

        @Override
        public void close() {
            // Has nothing open.
        }
    }

    @BeforeEach
    void serve(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car("demo-08")), () -> new Room[] {new FaultyRoom()});
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void whoIsTurnedAwayIsToldInTheLanguageOfTheBrowser() throws IOException {
        var french = "Host: 127.0.0.1\r\nConnection: close\r\nAccept-Language: fr-CA,en;q=0.5\r\n";
        assertThat(send("GET /faulty HTTP/1.1\r\n" + french + "\r\n")).contains("Le programme a fait une erreur");
        assertThat(send("GET /nowhere HTTP/1.1\r\n" + french + "\r\n")).contains("pas de page");
        assertThat(send("POST /shop/rules HTTP/1.1\r\n" + french
                        + "Origin: http://elsewhere.example\r\nContent-Length: 0\r\n\r\n"))
                .contains("autre site");
    }

    /** \r, \n and \0 stand for themselves; a Host is added behind the first line where none is. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "POST /shop/rules|Transfer-Encoding: chunked\\r\\n\\r\\nzz\\r\\na=1\\r\\n0\\r\\n\\r\\n|400",
                "POST /shop/rules|Transfer-Encoding: chunked\\r\\n\\r\\nfffffffff\\r\\na=1\\r\\n0\\r\\n\\r\\n|400",
                "POST /shop/rules|Transfer-Encoding: chunked\\r\\n\\r\\n-1\\r\\na=1\\r\\n0\\r\\n\\r\\n|400",
                "POST /shop/rules|Transfer-Encoding: chunked\\r\\n\\r\\n5\\r\\na=1|400",
                "POST /shop/rules|Content-Length: 50\\r\\n\\r\\na=1|400",
                "POST /shop/rules|Content-Length: x\\r\\n\\r\\na=1|400",
                "POST /shop/rules|Content-Length: -5\\r\\n\\r\\na=1|400",
                "POST /shop/rules|Content-Length: 99999999999999999999\\r\\n\\r\\na=1|400",
                "POST /shop/rules|Content-Type: application/x-www-form-urlencoded\\r\\nContent-Length: 5\\r\\n\\r\\na=%zz|400",
                "POST /shop/rules|Content-Type: application/x-www-form-urlencoded\\r\\nContent-Length: 5\\r\\n\\r\\na=%00|400",
                "POST /shop/rules|Content-Type: application/x-www-form-urlencoded\\r\\nContent-Length: 11\\r\\n\\r\\na=%ED%A0%80|400",
                "GET /cars/%zz|\\r\\n|400",
                "GET /cars/%|\\r\\n|400",
                "GET /cars/%00|\\r\\n|400",
                "GET /cars/a%0Ab|\\r\\n|404",
                "GET /cars/%C3%28|\\r\\n|404",
                "GET /visits/demo-08-v7/plan?without=%zz|\\r\\n|400",
                "GET /visits/demo-08-v7/plan?without=%00|\\r\\n|400",
                "GET /wheels?tag=%E0%80|\\r\\n|303",
                "GET /../../etc/passwd|\\r\\n|404",
                "GET //|\\r\\n|200",
                "GET /cars/..%2f..%2fx|\\r\\n|404",
                "DELETE /cars/demo-08|\\r\\n|404",
                "PUT /shop|Content-Length: 0\\r\\n\\r\\n|404",
                "HEAD /shop|\\r\\n|404",
                "FOO /shop|\\r\\n|404",
                "OPTIONS /shop|\\r\\n|404",
                "TRACE /shop|\\r\\n|404",
                "GET /shop|X: \\0\\r\\n\\r\\n|400",
                "GET /shop|Cookie: =;;;device=\\r\\n\\r\\n|200",
                "GET /shop|Cookie: device=..%00..\\r\\n\\r\\n|200",
                "GET /shop|Cookie: units=%zz; look=\\r\\n\\r\\n|200",
                "GET /shop|No colon here\\r\\n\\r\\n|400",
            })
    void oddRequestIsAnsweredAndNoFault(String start, String rest, int status) throws IOException {
        var answer = send(start + " HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n" + unescaped(rest));
        assertThat(answer).as(start).startsWith("HTTP/1.1 " + status);
        assertPlain(answer);
    }

    @Test
    void hugeHeadersAndAddressesAreRefused() throws Exception {
        assertThat(send("GET /" + "x".repeat(100_000) + " HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n"))
                .startsWith("HTTP/1.1 4");
        assertThat(send("GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nX: " + "x".repeat(100_000) + "\r\n\r\n"))
                .startsWith("HTTP/1.1 4");
        assertThat(send("what\r\n\r\n")).doesNotContain("Exception", "\tat ");
        assertThat(shop.get("/shop").statusCode()).isEqualTo(200);
    }

    @Test
    void faultHasAnIdOnThePageAndInTheLog() throws Exception {
        var noted = new ArrayList<LogRecord>();
        var listener = new Handler() {
            @Override
            public void publish(LogRecord record) {
                noted.add(record);
            }

            @Override
            public void flush() {
                // Kept in a list.
            }

            @Override
            public void close() {
                // Kept in a list.
            }
        };
        var logger = Logger.getLogger("cornerbook");
        logger.addHandler(listener);
        try {
            for (var path : List.of("/faulty", "/endless")) {
                noted.clear();
                var page = shop.get(path);
                assertThat(page.statusCode()).isEqualTo(500);
                assertThat(page.body())
                        .contains("what was stored before is safe")
                        .doesNotContain("Ida", "Exception");
                var id = page.body().replaceAll("(?s).*\\(fault ([0-9a-f]{8})\\).*", "$1");
                assertThat(noted)
                        .singleElement()
                        .satisfies(record -> assertThat(record.getMessage())
                                .isEqualTo("Fault " + id + " while answering GET " + path));
            }
        } finally {
            logger.removeHandler(listener);
        }
    }

    private static void assertPlain(String answer) {
        assertThat(answer).doesNotContain("Exception", "\tat ", "null", "io.helidon");
    }

    private static String unescaped(String text) {
        return text.replace("\\r", "\r").replace("\\n", "\n").replace("\\0", "\0");
    }

    private String send(String request) throws IOException {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), shop.port())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (SocketException e) {
            return "HTTP/1.1 4xx, cut off while it was sent";
        }
    }
}
