package cornerbook.bench.start;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;

/** The web server of the JDK with one page of a line. */
public final class BareServer {
    private BareServer() {}

    /** Serves on the port given until the process is ended. */
    public static void main(String[] arguments) throws IOException {
        var server = HttpServer.create(
                new InetSocketAddress(InetAddress.getLoopbackAddress(), Integer.parseInt(arguments[0])), 0);
        var page = "<!DOCTYPE html><title>bare</title>".getBytes(StandardCharsets.UTF_8);
        server.createContext("/", exchange -> {
            exchange.sendResponseHeaders(200, page.length);
            try (var out = exchange.getResponseBody()) {
                out.write(page);
            }
        });
        server.start();
    }
}
