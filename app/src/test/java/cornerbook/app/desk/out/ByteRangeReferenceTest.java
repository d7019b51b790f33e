package cornerbook.app.desk.out;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The examples of RFC 9110, section 14.1.2, for a representation of 10,000 bytes, and what follows from its rules. */
class ByteRangeReferenceTest {
    @ParameterizedTest
    @CsvSource({
        "bytes=0-499, 0, 499",
        "bytes=500-999, 500, 999",
        "bytes=-500, 9500, 9999",
        "bytes=9500-, 9500, 9999",
        "bytes=0-0, 0, 0",
        "bytes=-20000, 0, 9999",
        "bytes=9000-20000, 9000, 9999"
    })
    void oneRange(String header, long first, long last) {
        assertThat(ByteRange.of(header, 10_000)).contains(new ByteRange(first, last));
    }

    @ParameterizedTest
    @CsvSource({"bytes=10000-", "bytes=-0", "bytes=999999999999999999-"})
    void nothingOfTheFileIsInIt(String header) {
        assertThat(ByteRange.of(header, 10_000).orElseThrow().isIn(10_000)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"bytes=-", "lines=0-4", "bytes=5-2", "bytes=a-b", "'bytes=0-0,-1'", "bytes=9999999999999999999-"})
    void theWholeFileIsSent(String header) {
        assertThat(ByteRange.of(header, 10_000)).isEmpty();
    }
}
