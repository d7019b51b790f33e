package cornerbook.app.parquet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The bytes of worked examples. */
class PackedNumbersReferenceTest {
    /** Apache Parquet, Encodings.md: the numbers 0 to 7 in three bits each are 10001000 11000110 11111010. */
    @Test
    void theExampleOfTheFormat() {
        assertThat(PackedNumbers.run(3, 8, place -> place))
                .containsExactly(0b0000_0011, 0b1000_1000, 0b1100_0110, 0b1111_1010);
    }

    /** Apache Thrift, "Thrift Compact protocol encoding": 50399 as ULEB128 is DF 89 03. */
    @Test
    void theExampleOfTheCompactProtocol() {
        var out = new ByteArrayOutputStream();
        Varint.write(out, 50_399);
        assertThat(out.toByteArray()).containsExactly(0xDF, 0x89, 0x03);
    }

    /** The same: zigzag of 0, -1, 1, -2 is 0, 1, 2, 3; a field header is its distance and kind; a struct ends by 0. */
    @Test
    void aStruct() {
        assertThat(CompactStruct.of(struct -> struct.int32(1, -2).text(4, "ab").int32s(5, List.of(0, -1, 1))))
                .containsExactly(0x15, 3, 0x38, 2, 'a', 'b', 0x19, 0x35, 0, 1, 2, 0);
    }
}
