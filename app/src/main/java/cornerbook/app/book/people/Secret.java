package cornerbook.app.book.people;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** What a machine shows to be let in: 256 random bits, so that nobody guesses it; the book keeps its SHA-256 alone. */
public final class Secret {
    private static final int OCTETS = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secret() {}

    /** A new one, in letters that an address takes (base64url, RFC 4648). */
    public static String make() {
        var secret = new byte[OCTETS];
        RANDOM.nextBytes(secret);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(secret);
    }

    /** What the book keeps of it. */
    public static String hash(String shown) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(shown.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** In a time that tells nothing about where they differ. */
    public static boolean isSame(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
