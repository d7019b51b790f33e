package cornerbook.app.mail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.certificate.ShopCertificates;
import cornerbook.app.mail.Delivery.Outcome;
import cornerbook.app.mail.MailServer.Security;
import cornerbook.core.say.Refused;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Properties;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** E-mails to a real server (SubEtha SMTP) on the loopback of this machine. People and addresses are invented. */
class MailerTest {
    private static final Instant AT = Instant.parse("2026-11-25T14:00:00Z");

    @TempDir
    private Path folder;

    private static Mail to(String address) {
        return new Mail(
                "5f0c1a52-0000-4000-8000-000000000001",
                address,
                "fr",
                "Votre Fjordling Volta, été",
                "Bonjour Zoé.\n.Une ligne qui commence par un point, l’hiver.",
                "ARRÊT");
    }

    private static MailServer server(LoopbackServer loopback, Security security, String login) {
        return new MailServer(LoopbackServer.HOST, loopback.port(), security, "shop@example.com", login);
    }

    private static Delivery send(MailServer server, @Nullable String password, SSLSocketFactory trust, String address) {
        return new Mailer(server, password, "Atelier de l’Étoile", trust).send(to(address), AT);
    }

    private static Delivery inTheOpen(LoopbackServer loopback, String address) {
        return send(
                server(loopback, Security.NONE, ""), null, (SSLSocketFactory) SSLSocketFactory.getDefault(), address);
    }

    private static SSLSocketFactory trusting(ShopCertificates certificates) throws Exception {
        var store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setCertificateEntry("authority", certificates.authority());
        var managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(store);
        var context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return context.getSocketFactory();
    }

    private static MimeMessage parsed(String received) throws Exception {
        return new MimeMessage(
                Session.getInstance(new Properties()),
                new ByteArrayInputStream(received.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void whatArrivesIsWhatWasWritten() throws Exception {
        try (var loopback = LoopbackServer.open()) {
            assertThat(inTheOpen(loopback, "zoe@example.org").outcome()).isEqualTo(Outcome.TAKEN);
            assertThat(loopback.taken()).hasSize(1);
            var arrived = parsed(loopback.taken().getFirst());
            assertThat(arrived.getSubject()).isEqualTo("Votre Fjordling Volta, été");
            assertThat(arrived.getContent().toString().replace("\r\n", "\n").strip())
                    .isEqualTo("Bonjour Zoé.\n.Une ligne qui commence par un point, l’hiver.");
            var from = (InternetAddress) arrived.getFrom()[0];
            assertThat(from.getAddress()).isEqualTo("shop@example.com");
            assertThat(from.getPersonal()).isEqualTo("Atelier de l’Étoile");
            assertThat(arrived.getMessageID()).isEqualTo("<5f0c1a52-0000-4000-8000-000000000001@example.com>");
            assertThat(arrived.getSentDate().toInstant()).isEqualTo(AT);
            assertThat(arrived.getHeader("Content-Language")).containsExactly("fr");
            assertThat(arrived.getHeader("List-Unsubscribe"))
                    .as("RFC 2369, section 3.2, with the address of RFC 6068")
                    .containsExactly("<mailto:shop@example.com?subject=ARR%C3%8AT>");
            assertThat(loopback.taken().getFirst().lines())
                    .as("what goes over the line is ASCII, in lines of at most 998 (RFC 5322, section 2.1.1)")
                    .allMatch(line -> line.length() <= 998)
                    .allMatch(line -> line.chars().allMatch(sign -> sign < 128));
        }
    }

    @Test
    void aClosedLineIsOpenedByStarttlsWithWhoIsTrusted() throws Exception {
        var certificates = ShopCertificates.of(folder, LoopbackServer.HOST, LocalDate.now(ZoneOffset.UTC));
        var trust = trusting(certificates);
        try (var loopback = LoopbackServer.asking(certificates.context(), "shop", "secret")) {
            var server = server(loopback, Security.STARTTLS, "shop");
            assertThat(send(server, "secret", trust, "zoe@example.org").outcome()).isEqualTo(Outcome.TAKEN);
            assertThat(loopback.taken()).hasSize(1);
            assertThat(send(server, "wrong", trust, "zoe@example.org"))
                    .satisfies(delivery -> assertThat(delivery.outcome()).isEqualTo(Outcome.NOT_SENT))
                    .satisfies(delivery -> assertThat(delivery.answer()).doesNotContain("wrong"));
            assertThat(send(
                                    server,
                                    "secret",
                                    (SSLSocketFactory) SSLSocketFactory.getDefault(),
                                    "zoe@example.org")
                            .outcome())
                    .as("a server that nobody vouches for gets no password")
                    .isEqualTo(Outcome.NOT_SENT);
            assertThat(loopback.taken()).hasSize(1);
        }
        try (var loopback = LoopbackServer.open()) {
            assertThat(send(server(loopback, Security.STARTTLS, ""), null, trust, "zoe@example.org")
                            .outcome())
                    .as("a server that cannot encrypt gets nothing")
                    .isEqualTo(Outcome.NOT_SENT);
            assertThat(loopback.read()).isEmpty();
        }
    }

    @Test
    void aServerThatWantsAClosedLineRefusesAnOpenOne() throws Exception {
        var certificates = ShopCertificates.of(folder, LoopbackServer.HOST, LocalDate.now(ZoneOffset.UTC));
        try (var loopback = LoopbackServer.closed(certificates.context())) {
            assertThat(inTheOpen(loopback, "zoe@example.org").outcome()).isEqualTo(Outcome.REFUSED);
            assertThat(loopback.read()).isEmpty();
        }
    }

    @Test
    void whatTheServerRefusesIsTold() {
        try (var loopback = LoopbackServer.open()) {
            assertThat(inTheOpen(loopback, "nobody@example.org"))
                    .satisfies(delivery -> assertThat(delivery.outcome()).isEqualTo(Outcome.REFUSED))
                    .satisfies(delivery -> assertThat(delivery.answer()).contains("550", "no such mailbox here"));
            assertThat(inTheOpen(loopback, "full@example.org"))
                    .satisfies(delivery -> assertThat(delivery.outcome()).isEqualTo(Outcome.REFUSED))
                    .satisfies(delivery -> assertThat(delivery.answer()).contains("452"));
            assertThat(inTheOpen(loopback, "two words").outcome()).isEqualTo(Outcome.REFUSED);
            assertThat(loopback.taken()).isEmpty();
        }
    }

    /** RFC 5321, section 4.2.5 and 6.1: without a reply to the end of the data nobody knows who has the message. */
    @Test
    void aLineThatBreaksAfterTheDataLeavesItOpen() {
        try (var loopback = LoopbackServer.open()) {
            assertThat(inTheOpen(loopback, "lost@example.org").outcome()).isEqualTo(Outcome.UNKNOWN);
            assertThat(loopback.read()).hasSize(1);
        }
    }

    @Test
    void aServerThatIsNotThereHasNothing() throws IOException {
        int nobody;
        try (var free = new ServerSocket(0)) {
            nobody = free.getLocalPort();
        }
        var server = new MailServer(LoopbackServer.HOST, nobody, Security.NONE, "shop@example.com", "");
        assertThat(send(server, null, (SSLSocketFactory) SSLSocketFactory.getDefault(), "zoe@example.org")
                        .outcome())
                .isEqualTo(Outcome.NOT_SENT);
    }

    @Test
    void aServerThatCannotBeIsRefused() {
        assertThatThrownBy(() -> new MailServer("mail server", 587, Security.STARTTLS, "shop@example.com", ""))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new MailServer("mail.example.com", 0, Security.STARTTLS, "shop@example.com", ""))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new MailServer("mail.example.com", 587, Security.STARTTLS, "shop", ""))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new MailServer("mail.example.com", 587, Security.NONE, "shop@example.com", "shop"))
                .as("no password over an open line")
                .isInstanceOf(Refused.class);
    }

    @Test
    void thePasswordStandsInTheEnvironmentOrAFileThatItNames() throws IOException {
        var file = Files.writeString(folder.resolve("word"), "in the file\nsecond line\n");
        assertThat(MailPassword.find(Map.of())).isEmpty();
        assertThat(MailPassword.find(Map.of(MailPassword.VARIABLE, "said"))).contains("said");
        assertThat(MailPassword.find(Map.of(MailPassword.FILE_VARIABLE, file.toString())))
                .contains("in the file");
        assertThatThrownBy(() -> MailPassword.find(Map.of(MailPassword.FILE_VARIABLE, folder + "/nothing")))
                .isInstanceOf(Refused.class);
    }
}
