package cornerbook.app.request;

import io.helidon.common.socket.SocketOptions;
import io.helidon.webserver.http.ServerRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.System.Logger.Level;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.net.SocketOption;
import java.nio.channels.SocketChannel;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The connections that are open, on all addresses together. When they are as many as may be, the one gives way that has waited
 * longest for its next request; one that is being answered stays. One that brings no whole request in time, or takes an answer
 * too slowly, is closed. Safe for use by many threads.
 */
public final class Connections {
    /** Longer than browsers keep a connection that they do not use. Common practice, no source. */
    static final Duration WAITS_AT_MOST = Duration.ofSeconds(90);
    /** Enough for the largest photo at 15 kB a second. */
    static final Duration ANSWERED_WITHIN = Duration.ofMinutes(10);

    private static final System.Logger LOG = System.getLogger(Connections.class.getName());
    private static final ScopedValue<Runnable> GOES_ON = ScopedValue.newInstance();

    private final int most;
    private final int mostOfOneAddress;
    private final Clock clock;
    /** The one that waits longest first. */
    private final Map<Ends, Connection> open = new LinkedHashMap<>();

    /**
     * With bounds.
     *
     * @param mostOfOneAddress of another machine; this machine may have all
     */
    public Connections(int most, int mostOfOneAddress, Clock clock) {
        this.most = most;
        this.mostOfOneAddress = mostOfOneAddress;
        this.clock = clock;
    }

    private record Ends(SocketAddress near, SocketAddress far) {}

    private record Connection(SocketChannel channel, InetAddress address, boolean answered, Instant since) {}

    /** What a server does with each connection as soon as it has it. */
    public SocketOptions options() {
        return new Admitting(SocketOptions.create(), this);
    }

    /**
     * Takes a new one, if need be in the place of one that waits.
     *
     * @throws IllegalStateException when all are being answered
     */
    synchronized void add(SocketChannel channel) {
        try {
            var ends = new Ends(channel.getLocalAddress(), channel.getRemoteAddress());
            var address = ((InetSocketAddress) channel.getRemoteAddress()).getAddress();
            open.values().removeIf(each -> !each.channel.isOpen());
            if (!address.isLoopbackAddress()) {
                makeRoom(each -> each.address.equals(address), mostOfOneAddress);
            }
            makeRoom(each -> true, most);
            open.put(ends, new Connection(channel, address, false, clock.instant()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void makeRoom(Predicate<Connection> alike, int bound) {
        var found = open.entrySet().stream()
                .filter(each -> alike.test(each.getValue()))
                .toList();
        if (found.size() >= bound) {
            var waiting = found.stream()
                    .filter(each -> !each.getValue().answered)
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("every connection is being answered"));
            open.remove(waiting.getKey());
            close(waiting.getValue());
        }
    }

    /** Answers a request; meanwhile its connection stays. */
    public void answer(ServerRequest request, Runnable answer) {
        var ends = new Ends(request.localPeer().address(), request.remotePeer().address());
        change(ends, true);
        try {
            ScopedValue.where(GOES_ON, () -> change(ends, true)).run(answer);
        } finally {
            change(ends, false);
        }
    }

    /** An answer that has no end has just sent something: the other side is there. */
    public static void goesOn() {
        GOES_ON.orElse(() -> {}).run();
    }

    private synchronized void change(Ends ends, boolean answered) {
        var before = open.remove(ends);
        if (before != null) {
            open.put(ends, new Connection(before.channel, before.address, answered, clock.instant()));
        }
    }

    /** Closes those that have had their time. */
    public synchronized void closeLate() {
        var now = clock.instant();
        for (var each : new ArrayList<>(open.entrySet())) {
            var connection = each.getValue();
            var limit = connection.answered ? ANSWERED_WITHIN : WAITS_AT_MOST;
            if (connection.since.plus(limit).isBefore(now)) {
                open.remove(each.getKey());
                close(connection);
            }
        }
    }

    private static void close(Connection connection) {
        try {
            connection.channel.close();
        } catch (IOException e) {
            LOG.log(Level.DEBUG, "A connection was gone already", e);
        }
    }

    /** The usual options, but each connection is admitted first; one that is not is closed by the server. */
    private record Admitting(SocketOptions usual, Connections connections) implements SocketOptions {
        @Override
        public void configureSocket(SocketChannel channel) {
            usual.configureSocket(channel);
            connections.add(channel);
        }

        @Override
        public Map<SocketOption<?>, Object> socketOptions() {
            return usual.socketOptions();
        }

        @Override
        public Duration connectTimeout() {
            return usual.connectTimeout();
        }

        @Override
        public Duration readTimeout() {
            return usual.readTimeout();
        }

        @Override
        public Optional<Integer> socketReceiveBufferSize() {
            return usual.socketReceiveBufferSize();
        }

        @Override
        public Optional<Integer> socketSendBufferSize() {
            return usual.socketSendBufferSize();
        }

        @Override
        public boolean socketReuseAddress() {
            return usual.socketReuseAddress();
        }

        @Override
        public boolean socketKeepAlive() {
            return usual.socketKeepAlive();
        }

        @Override
        public boolean tcpNoDelay() {
            return usual.tcpNoDelay();
        }
    }
}
