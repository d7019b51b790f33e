package cornerbook.app.photo;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** The content of a photo as a JPEG file (ITU-T T.81); equal by its bytes. */
public final class Jpeg {
    private final byte[] content;

    public Jpeg(byte[] content) {
        this.content = content.clone();
    }

    public byte[] content() {
        return content.clone();
    }

    /** Its SHA-256 (FIPS 180-4) in hexadecimal. */
    public String sha256() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Jpeg jpeg && Arrays.equals(content, jpeg.content);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(content);
    }

    @Override
    public String toString() {
        return "JPEG of %s bytes, %s".formatted(content.length, sha256());
    }
}
