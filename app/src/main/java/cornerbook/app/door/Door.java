package cornerbook.app.door;

import cornerbook.app.certificate.ShopCertificates;
import cornerbook.core.quantity.Range;
import io.helidon.common.socket.PeerInfo;
import io.helidon.http.HeaderNames;
import io.helidon.http.ServerRequestHeaders;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where the server listens and under which names it answers: this machine by http, tablets by https, with certificates of
 * the shop or those of a proxy.
 *
 * @param port 0 takes any free one, where there is no second; with a proxy the one that it passes requests on to
 * @param address of this machine in the shop's network, null for this machine only
 * @param origin that a proxy serves with TLS, as https://bay.example, or null
 * @param certificates for the address, or null
 */
public record Door(
        int port,
        @Nullable String address,
        @Nullable URI origin,
        @Nullable ShopCertificates certificates) {
    private static final int MOST_PORT = 65_535;
    private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final List<String> OF_PROXIES = List.of("Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "Via");

    /** On this machine only. */
    public static Door local(int port) {
        return new Door(port, null, null, null);
    }

    /**
     * Behind a proxy that serves an origin, on this machine or, when an address is given, on another.
     *
     * @param port to which the proxy passes requests on; nobody who comes there is taken for this machine, whose own pages
     *     are at the one after it
     */
    public static Door behindProxy(int port, @Nullable String address, URI origin) {
        Range.check("port", port, 1, MOST_PORT - 1, "");
        return new Door(port, address, origin, null);
    }

    /**
     * For tablets in the shop's network.
     *
     * @param port of this machine's own pages and of the page that hands out the certificate; tablets have the one after it
     */
    public static Door forTablets(int port, String address, ShopCertificates certificates) {
        Range.check("port", port, 1, MOST_PORT - 1, "");
        return new Door(port, address, null, certificates);
    }

    /** Whether other machines can reach it. */
    public boolean isOpen() {
        return address != null || origin != null;
    }

    InetAddress listensOn() {
        return address == null || certificates != null
                ? InetAddress.getLoopbackAddress()
                : new InetSocketAddress(0).getAddress();
    }

    /** In the shop's network; null for this machine only. */
    @Nullable
    InetAddress network() {
        return address == null ? null : new InetSocketAddress(address, 0).getAddress();
    }

    /** The port at which tablets are served by https, or with a proxy this machine alone. */
    int secondPort() {
        return port + 1;
    }

    /** Whether tablets speak to it by TLS, its own or a proxy's. */
    boolean isEncrypted() {
        return certificates != null || origin != null;
    }

    /** Whether a request was meant for this server: against other names for its address (DNS rebinding). */
    boolean answersTo(String host) {
        var name = nameOf(host);
        return LOOPBACK_NAMES.contains(name)
                || name.equals(address)
                || (origin != null && host.equalsIgnoreCase(origin.getAuthority()));
    }

    /** Whether a change comes from one of these pages. */
    boolean isOrigin(String sent, String host) {
        return sent.equals("http://" + host)
                || (certificates != null && sent.equals("https://" + host))
                || (origin != null && sent.equalsIgnoreCase(origin.toString()));
    }

    /**
     * Whether a request was made on this machine, and by no proxy on behalf of another. What comes to the port that a proxy
     * knows never is: whatever stands in it, the proxy may have put there.
     */
    boolean isLocal(PeerInfo near, PeerInfo far, String host, ServerRequestHeaders headers) {
        return (origin == null || near.port() == secondPort())
                && far.address() instanceof InetSocketAddress internet
                && internet.getAddress().isLoopbackAddress()
                && LOOPBACK_NAMES.contains(nameOf(host))
                && OF_PROXIES.stream().noneMatch(name -> headers.contains(HeaderNames.create(name)));
    }

    /** The address of this machine's own pages. */
    public String deskAddress(int actualPort) {
        return "http://127.0.0.1:%s".formatted(origin == null ? actualPort : secondPort());
    }

    /** The address that tablets open. */
    public String publicAddress(int actualPort) {
        if (origin != null) {
            return origin.toString();
        }
        return certificates == null
                ? "http://%s:%s".formatted(address == null ? "127.0.0.1" : address, actualPort)
                : "https://%s:%s".formatted(address, secondPort());
    }

    /** The address at which a tablet gets the certificate; empty when none is needed. */
    public String certificateAddress() {
        return certificates == null ? "" : "http://%s:%s".formatted(address, port);
    }

    private static String nameOf(String host) {
        return host.toLowerCase(Locale.ROOT).replaceFirst(":[0-9]+$", "");
    }
}
