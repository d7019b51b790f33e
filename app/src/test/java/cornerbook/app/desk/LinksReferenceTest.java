package cornerbook.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.link.CallLinks;
import java.net.URI;
import org.junit.jupiter.api.Test;

/** Addresses that another program opens, against the examples of their standards. */
class LinksReferenceTest {
    /** RFC 5724, section 2.5: {@code sms:+15105550101?body=hello%20there}. */
    @Test
    void aMessageIsAsRfc5724HasIt() {
        assertThat(CallLinks.message("+1 (510) 555-0101", "hello there"))
                .isEqualTo("sms:+15105550101?body=hello%20there");
        assertThat(CallLinks.message("+15105550101", "À l’atelier & tôt?"))
                .as("UTF-8 in percent signs (RFC 5724, section 2.2)")
                .isEqualTo("sms:+15105550101?body=%C3%80%20l%E2%80%99atelier%20%26%20t%C3%B4t%3F");
    }

    /** RFC 6068, section 6.1: a body of two lines has %0D%0A between them; 6.1: caf%C3%A9 in a subject. */
    @Test
    void anEMailIsAsRfc6068HasIt() {
        assertThat(CallLinks.mail("infobot@example.com", "current-issue", "send current-issue\nsend index"))
                .isEqualTo(
                        "mailto:infobot@example.com?subject=current-issue&body=send%20current-issue%0D%0Asend%20index");
        assertThat(CallLinks.mail("user@example.org", "café", "caffè"))
                .isEqualTo("mailto:user@example.org?subject=caf%C3%A9&body=caff%C3%A8");
        assertThat(CallLinks.mail("gorby%kremvax@example.com", "a", "b"))
                .as("a percent sign in an address (RFC 6068, section 2)")
                .startsWith("mailto:gorby%25kremvax@example.com?");
        assertThat(URI.create(CallLinks.mail("a+b@example.org", "1 + 1", "&?=")).getScheme())
                .isEqualTo("mailto");
    }
}
