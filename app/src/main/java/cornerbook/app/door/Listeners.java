package cornerbook.app.door;

import com.sun.management.UnixOperatingSystemMXBean;
import cornerbook.app.request.Connections;
import io.helidon.webserver.WebServer;
import io.helidon.webserver.WebServerConfig;
import io.helidon.webserver.http.HttpRouting;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The addresses at which the pages are served. One that the system took away, for want of descriptors, is opened again. */
final class Listeners implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Listeners.class.getName());
    /** A photo; each page and each entry has a smaller limit of its own. */
    private static final int LARGEST_BYTES = 9 * 1024 * 1024;

    private static final Duration LOOKS_EVERY = Duration.ofSeconds(2);
    /** Many times what a shop's tablets need, and in memory a small part of what the program has. */
    private static final int MOST_CONNECTIONS = 400;
    /** Of the descriptors: a request that is answered takes more of them, for the book. */
    private static final int DESCRIPTORS_EACH = 4;

    private final Door door;
    private final Consumer<HttpRouting.Builder> routes;
    private final Consumer<HttpRouting.Builder> certificate;
    private final Connections connections;
    private final Thread watch = Thread.ofVirtual().name("listeners").unstarted(this::watch);
    private WebServer server;
    private final int port;

    /**
     * Opens them.
     *
     * @param certificate the pages that tablets get without TLS
     * @throws DoorException with one sentence when a port is in use
     */
    Listeners(
            Door door,
            Consumer<HttpRouting.Builder> routes,
            Consumer<HttpRouting.Builder> certificate,
            Connections connections) {
        this.door = door;
        this.routes = routes;
        this.certificate = certificate;
        this.connections = connections;
        for (var address : addresses(door.port())) {
            if (!isFree(address)) {
                throw new DoorException(new DoorSaid.PortInUse(String.valueOf(address.getPort())));
            }
        }
        openWhatWaitingNeeds();
        this.server = open(door.port());
        this.port = server.port();
        watch.start();
    }

    /** Loads what every server needs, opens nothing: may run while the book is opened, which uses other classes. */
    static void prepare() {
        WebServer.builder().shutdownHook(false).routing(routing -> {}).build();
    }

    /**
     * The first virtual thread that waits for a socket makes the runtime open descriptors for all that will wait; should it get
     * none, every later request is answered with nothing for as long as the process lives (JVMS 5.5: a class whose initialization
     * failed). Here they are still to be had.
     */
    private static void openWhatWaitingNeeds() {
        var waiting = Thread.ofVirtual().start(() -> {
            try (var nobody = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
                nobody.setSoTimeout(1);
                nobody.accept().close();
            } catch (IOException e) {
                LOG.log(Level.FINE, "Nobody called, as expected", e);
            }
        });
        try {
            waiting.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** As many connections as this process can have with its descriptors. */
    static Connections bounded(Door door, Clock clock) {
        int most = MOST_CONNECTIONS;
        if (ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean system) {
            long left = system.getMaxFileDescriptorCount() - system.getOpenFileDescriptorCount();
            most = Math.clamp(left / DESCRIPTORS_EACH, 8, MOST_CONNECTIONS);
        }
        // A proxy brings everybody from one address.
        return new Connections(most, door.origin() == null ? Math.max(8, most / 4) : most, clock);
    }

    int port() {
        return port;
    }

    private WebServer open(int openedPort) {
        var builder = WebServer.builder()
                .address(door.listensOn())
                .port(openedPort)
                .maxPayloadSize(LARGEST_BYTES)
                .connectionOptions(connections.options())
                .shutdownHook(false)
                .shutdownGracePeriod(Duration.ofMillis(200))
                .routing(routes);
        listenForTablets(builder);
        listenForTheDesk(builder);
        var opened = builder.build();
        opened.start();
        if (!opened.isRunning()) {
            throw new DoorException(new DoorSaid.NotServed(String.valueOf(openedPort)));
        }
        return opened;
    }

    /** The same pages by TLS at the address of the shop's network, and the certificate for it without. */
    private void listenForTablets(WebServerConfig.Builder builder) {
        var certificates = door.certificates();
        var network = door.network();
        if (certificates == null || network == null) {
            return;
        }
        builder.putSocket(
                        "tablets",
                        socket -> socket.address(network)
                                .port(door.secondPort())
                                .maxPayloadSize(LARGEST_BYTES)
                                .connectionOptions(connections.options())
                                .tls(tls -> tls.sslContext(certificates.context())))
                .routing("tablets", routes)
                .putSocket(
                        "certificate",
                        socket -> socket.address(network).port(door.port()).connectionOptions(connections.options()))
                .routing("certificate", certificate);
    }

    /** Beside a proxy this machine has a port of its own, which the proxy does not know. */
    private void listenForTheDesk(WebServerConfig.Builder builder) {
        if (door.origin() != null) {
            builder.putSocket(
                            "desk",
                            socket -> socket.address(InetAddress.getLoopbackAddress())
                                    .port(door.secondPort())
                                    .maxPayloadSize(LARGEST_BYTES)
                                    .connectionOptions(connections.options()))
                    .routing("desk", routes);
        }
    }

    private List<InetSocketAddress> addresses(int firstPort) {
        var addresses = new ArrayList<InetSocketAddress>();
        addresses.add(new InetSocketAddress(door.listensOn(), firstPort));
        var network = door.network();
        if (door.certificates() != null && network != null) {
            addresses.add(new InetSocketAddress(network, firstPort));
            addresses.add(new InetSocketAddress(network, door.secondPort()));
        }
        if (door.origin() != null) {
            addresses.add(new InetSocketAddress(InetAddress.getLoopbackAddress(), door.secondPort()));
        }
        return addresses;
    }

    /** Whether nobody listens there, as far as can be told now; the server itself only logs that it could not, or stopped. */
    private static boolean isFree(InetSocketAddress address) {
        try (var probe = new ServerSocket(address.getPort(), 1, address.getAddress())) {
            return probe.isBound();
        } catch (IOException e) {
            return false;
        }
    }

    private void watch() {
        try {
            while (true) {
                Thread.sleep(LOOKS_EVERY);
                look();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized void look() {
        try {
            connections.closeLate();
            if (addresses(port).stream().anyMatch(Listeners::isFree)) {
                LOG.warning("The pages were not served any more, for want of descriptors; they are served again");
                server.stop();
                server = open(port);
            }
        } catch (RuntimeException e) {
            LOG.log(Level.WARNING, "The pages could not be served again yet", e);
        }
    }

    /** Returns when the last page is answered. */
    @Override
    public void close() {
        watch.interrupt();
        synchronized (this) {
            server.stop();
        }
    }
}
