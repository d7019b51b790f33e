package cornerbook.app.cli;

import cornerbook.app.web.Door;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.net.UnknownHostException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Where tablets reach the pages. */
final class DoorOptions {
    @CommandLine.Option(
            names = "--address",
            paramLabel = "ADDRESS",
            description =
                    "Address of this machine in the shop's network, as 192.168.1.10: paired tablets may use the pages.")
    private @Nullable String address;

    @CommandLine.Option(
            names = "--origin",
            paramLabel = "URL",
            description = "Address under which a proxy serves the pages with TLS, as https://bay.example.")
    private @Nullable URI origin;

    Door open(int port) {
        var given = address;
        if (given != null && !isOfThisMachine(given)) {
            throw new CommandFailure(
                    CommandFailure.FILE_OR_PORT,
                    "The address %s is none of this machine, expected one as 192.168.1.10.".formatted(given));
        }
        var proxy = origin;
        if (proxy != null
                && !("https".equals(proxy.getScheme())
                        && proxy.getHost() != null
                        && String.valueOf(proxy.getRawPath()).isEmpty())) {
            throw new CommandFailure(
                    CommandFailure.FILE_OR_PORT,
                    "The origin %s is not understood, expected one as https://bay.example.".formatted(proxy));
        }
        return new Door(port, given, proxy);
    }

    /** Names are not taken: whoever answers for a name could lead tablets elsewhere. */
    private static boolean isOfThisMachine(String given) {
        try {
            return given.matches("[0-9.]+") && NetworkInterface.getByInetAddress(InetAddress.getByName(given)) != null;
        } catch (UnknownHostException | SocketException e) {
            return false;
        }
    }
}
