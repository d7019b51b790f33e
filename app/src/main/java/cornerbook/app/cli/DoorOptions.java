package cornerbook.app.cli;

import cornerbook.app.certificate.CertificateException;
import cornerbook.app.certificate.ShopCertificates;
import cornerbook.app.door.Door;
import cornerbook.core.say.Said;
import cornerbook.core.say.Saying;
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
    @CommandLine.Option(names = "--address", paramLabel = "${bundle:label-address}", descriptionKey = "option-address")
    private @Nullable String address;

    @CommandLine.Option(names = "--origin", paramLabel = "${bundle:label-url}", descriptionKey = "option-origin")
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
            throw refused(new CliSaid.NotOfThisMachine(given));
        }
        if (proxy != null) {
            if (!"https".equals(proxy.getScheme())
                    || proxy.getHost() == null
                    || !String.valueOf(proxy.getRawPath()).isEmpty()) {
                throw refused(new CliSaid.OriginUnread(proxy.toString()));
            }
            try {
                return Door.behindProxy(port, given, proxy);
            } catch (IllegalArgumentException e) {
                throw refused(new CliSaid.BehindProxy(Saying.of(e)));
            }
        }
        if (given == null) {
            return Door.local(port);
        }
        try {
            return Door.forTablets(
                    port, given, ShopCertificates.of(certificates, given, LocalDate.now(ZoneId.systemDefault())));
        } catch (CertificateException e) {
            throw refused(e.said());
        } catch (IllegalArgumentException e) {
            throw refused(new CliSaid.ForTablets(Saying.of(e)));
        }
    }

    private static CommandFailure refused(Said sentence) {
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
