package cornerbook.app.knowledge;

import static java.nio.charset.StandardCharsets.US_ASCII;

import cornerbook.core.say.Refused;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * A public key of Ed25519 (RFC 8032), by which is known who signed.
 *
 * @param base64 its SubjectPublicKeyInfo (RFC 8410, section 4)
 */
public record PublicKeyText(String base64) {
    static final String BEGIN = "-----BEGIN PUBLIC KEY-----";
    static final String END = "-----END PUBLIC KEY-----";

    private static final Pattern PEM = Pattern.compile(BEGIN + "\\s+([A-Za-z0-9+/=\\s]{1,400})" + END);
    private static final String ALGORITHM = "Ed25519";
    /** So many tell keys apart that people compare by eye or on the telephone. */
    private static final int SHOWN_BYTES = 8;

    private static final int GROUP = 4;

    /**
     * The key in a text, as it is handed over (RFC 7468).
     *
     * @throws Refused when there is none
     */
    public static PublicKeyText parse(String text) {
        var found = PEM.matcher(text);
        if (!found.find()) {
            throw new Refused(new KnowledgeSaid.NoPublicKey());
        }
        var key = new PublicKeyText(found.group(1).replaceAll("\\s", ""));
        try {
            return of(key.key());
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            throw new Refused(new KnowledgeSaid.NoPublicKey());
        }
    }

    static PublicKeyText of(PublicKey key) {
        return new PublicKeyText(Base64.getEncoder().encodeToString(key.getEncoded()));
    }

    /** The text by which it is handed over. */
    public String pem() {
        return BEGIN + "\n" + base64 + "\n" + END + "\n";
    }

    /** By which two people make sure that they have the same key: the first eight bytes of its SHA-256 digest, in groups. */
    public String fingerprint() {
        try {
            var digest = MessageDigest.getInstance("SHA-256")
                    .digest(Base64.getDecoder().decode(base64));
            return HexFormat.of().formatHex(digest, 0, SHOWN_BYTES).replaceAll("(.{%s})(?=.)".formatted(GROUP), "$1 ");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Whether the holder of the private key has signed these bytes. */
    boolean hasSigned(byte[] content, byte[] signature) {
        try {
            var verifier = Signature.getInstance(ALGORITHM);
            verifier.initVerify(key());
            verifier.update(content);
            return verifier.verify(signature);
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return false;
        }
    }

    private PublicKey key() throws GeneralSecurityException {
        return KeyFactory.getInstance(ALGORITHM)
                .generatePublic(new X509EncodedKeySpec(Base64.getDecoder().decode(base64.getBytes(US_ASCII))));
    }
}
