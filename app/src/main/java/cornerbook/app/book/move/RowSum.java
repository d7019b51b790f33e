package cornerbook.app.book.move;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.jspecify.annotations.Nullable;

/**
 * What all rows of a table come to: how many there are, and the sum of their SHA-256 (FIPS 180-4) modulo 2<sup>256</sup>. Two
 * databases give their rows in two orders; the sum does not depend on it, and one bit of one value makes it another.
 */
final class RowSum {
    private static final BigInteger MODULUS = BigInteger.ONE.shiftLeft(256);

    private final MessageDigest digest = sha256();
    private BigInteger sum = BigInteger.ZERO;
    private long rows;

    /** Adds a row by its values, which are text, whole numbers, binary64 numbers, bytes or none. */
    void add(@Nullable Object[] row) {
        for (var value : row) {
            addValue(value);
        }
        sum = sum.add(new BigInteger(1, digest.digest())).mod(MODULUS);
        rows++;
    }

    private void addValue(@Nullable Object value) {
        switch (value) {
            case null -> digest.update((byte) 0);
            case String text -> addBytes(1, text.getBytes(UTF_8));
            case byte[] bytes -> addBytes(2, bytes);
            case Double number -> addBits(3, Double.doubleToLongBits(number));
            // PostgreSQL has a smaller kind of whole number for what SQLite keeps in one kind.
            case Integer number -> addBits(4, number);
            case Long number -> addBits(4, number);
            default ->
                throw new IllegalArgumentException(
                        "a value of " + value.getClass().getName() + ", expected text, a number or bytes");
        }
    }

    private void addBytes(int kind, byte[] bytes) {
        addBits(kind, bytes.length);
        digest.update(bytes);
    }

    private void addBits(int kind, long bits) {
        digest.update(ByteBuffer.allocate(9).put((byte) kind).putLong(bits).flip());
    }

    long rows() {
        return rows;
    }

    boolean isSameAs(RowSum other) {
        return rows == other.rows && sum.equals(other.sum);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("the JDK lacks SHA-256", e);
        }
    }
}
