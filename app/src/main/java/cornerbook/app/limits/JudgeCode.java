package cornerbook.app.limits;

import cornerbook.core.assess.Assessor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** Tells one program that judges from another, so that what an older one judged is not taken for what this one would. */
public final class JudgeCode {
    /** So many tell all programs apart that there will be. */
    private static final int SHOWN_BYTES = 16;

    private JudgeCode() {}

    /** The judges' code is read once: it does not change while it runs. */
    private static final class Once {
        private static final byte[] CODE = code();
    }

    /** A digest of the code of the judges and of the limits that they judge by. */
    public static String digest(Assessor assessor) {
        var digest = sha256();
        digest.update(Once.CODE);
        digest.update(assessor.limits().toString().getBytes(StandardCharsets.UTF_8));
        return text(digest.digest());
    }

    /** A digest of the code of the judges alone, and of all that they know. */
    public static String digest() {
        return text(Once.CODE);
    }

    private static String text(byte[] digest) {
        return HexFormat.of().formatHex(digest, 0, SHOWN_BYTES);
    }

    private static byte[] code() {
        try {
            var place = Path.of(Assessor.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            var digest = sha256();
            for (var file : files(place)) {
                digest.update(Files.readAllBytes(file));
            }
            return digest.digest();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the program's own files have no path", e);
        }
    }

    /** An archive, or each file of a folder of classes. */
    private static List<Path> files(Path place) throws IOException {
        try (var files = Files.walk(place)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
