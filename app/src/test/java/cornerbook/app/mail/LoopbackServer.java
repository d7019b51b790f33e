package cornerbook.app.mail;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.UnaryOperator;
import javax.net.ssl.SSLContext;
import org.jspecify.annotations.Nullable;
import org.subethamail.smtp.MessageContext;
import org.subethamail.smtp.MessageHandler;
import org.subethamail.smtp.RejectException;
import org.subethamail.smtp.auth.EasyAuthenticationHandlerFactory;
import org.subethamail.smtp.auth.LoginFailedException;
import org.subethamail.smtp.server.SMTPServer;
import org.subethamail.smtp.server.Session;

/** An SMTP server on this machine that keeps what it is given; it refuses some, and breaks some lines. */
public final class LoopbackServer implements AutoCloseable {
    public static final String HOST = "127.0.0.1";

    private final List<String> taken = new CopyOnWriteArrayList<>();
    private final List<String> read = new CopyOnWriteArrayList<>();
    private final SMTPServer server;

    private LoopbackServer(UnaryOperator<SMTPServer.Builder> further) {
        server = further.apply(new SMTPServer.Builder()
                        .bindAddress(InetAddress.getLoopbackAddress())
                        .hostName("loopback.example")
                        .port(0)
                        .connectionTimeoutMs(10_000)
                        .messageHandlerFactory(Handler::new))
                .build();
        server.start();
    }

    /** In the open. */
    public static LoopbackServer open() {
        return new LoopbackServer(builder -> builder);
    }

    /** One that takes nothing before the line is encrypted. */
    static LoopbackServer closed(SSLContext keys) {
        return new LoopbackServer(builder -> builder.startTlsSocketFactory(keys).enableTLS().requireTLS());
    }

    /** The same, and it asks who is there. */
    static LoopbackServer asking(SSLContext keys, String login, String password) {
        return new LoopbackServer(builder -> builder.startTlsSocketFactory(keys)
                .enableTLS()
                .requireTLS()
                .requireAuth()
                .authenticationHandlerFactory(new EasyAuthenticationHandlerFactory(
                        (name, word, context) -> {
                            if (!name.equals(login) || !word.equals(password)) {
                                throw new LoginFailedException();
                            }
                        })));
    }

    public int port() {
        return server.getPortAllocated();
    }

    /** What it has taken upon itself, as it came over the line. */
    public List<String> taken() {
        return taken;
    }

    /** What it has read to the end, though it may not have said so. */
    public List<String> read() {
        return read;
    }

    @Override
    public void close() {
        server.stop();
    }

    private final class Handler implements MessageHandler {
        private final MessageContext context;
        private String receiver = "";

        Handler(MessageContext context) {
            this.context = context;
        }

        @Override
        public void from(String from) {}

        @Override
        public void recipient(String recipient) throws RejectException {
            receiver = recipient;
            if (recipient.startsWith("nobody")) {
                throw new RejectException(550, "5.1.1 no such mailbox here");
            }
        }

        @Override
        public @Nullable String data(InputStream data) throws RejectException, IOException {
            var text = new String(data.readAllBytes(), StandardCharsets.UTF_8);
            read.add(text);
            if (receiver.startsWith("lost")) {
                ((Session) context).closeSocket();
                throw new IOException("the line is broken on purpose");
            }
            if (receiver.startsWith("full")) {
                throw new RejectException(452, "4.2.2 the mailbox is full");
            }
            taken.add(text);
            return null;
        }

        @Override
        public void done() {}
    }
}
