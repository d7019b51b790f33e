package cornerbook.app.cli;

import cornerbook.core.say.Saying;
import cornerbook.words.Reader;
import cornerbook.app.certificate.CertificateException;
import cornerbook.app.certificate.ShopCertificates;
import cornerbook.app.door.Door;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Where tablets reach the pages. */
final class DoorOptions {
    @CommandLine.Option(
            names = "--address",
            paramLabel = "ADDRESS",
            description =
                    "Address of this machine in the shop's network, as 192.168.1.10: paired tablets may use the pages, by https at the port after --port.")
    private @Nullable String address;

    @CommandLine.Option(
            names = "--origin",
            paramLabel = "URL",
            description =
                    "Address under which a proxy serves the pages with TLS, as https://bay.example. It passes requests on to --port; this machine's own pages are at the port after it, which the proxy must not reach.")
    private @Nullable URI origin;

    /**
     * Where the server listens.
     *
     * @param certificates folder for those of the shop, used only for tablets without a proxy
     */
    Door open(int port, Path certificates) {
        var given = address;
        var proxy = origin;
        if (given != null && !isOfThisMachine(given)) {
            throw refused("The address %s is none of this machine, expected one as 192.168.1.10.".formatted(given));
        }
        if (proxy != null) {
            if (!"https".equals(proxy.getScheme())
                    || proxy.getHost() == null
                    || !String.valueOf(proxy.getRawPath()).isEmpty()) {
                throw refused("The origin %s is not understood, expected one as https://bay.example.".formatted(proxy));
            }
            try {
                return Door.behindProxy(port, given, proxy);
            } catch (IllegalArgumentException e) {
                throw refused("Behind a proxy the %s.".formatted(Reader.DEFAULT.say(Saying.of(e))));
            }
        }
        if (given == null) {
            return Door.local(port);
        }
        try {
            return Door.forTablets(
                    port, given, ShopCertificates.of(certificates, given, LocalDate.now(ZoneId.systemDefault())));
        } catch (CertificateException e) {
            throw refused(Reader.DEFAULT.say(e.said()));
        } catch (IllegalArgumentException e) {
            throw refused("For tablets the %s.".formatted(Reader.DEFAULT.say(Saying.of(e))));
        }
    }

    private static CommandFailure refused(String sentence) {
        return new CommandFailure(CommandFailure.FILE_OR_PORT, sentence);
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
