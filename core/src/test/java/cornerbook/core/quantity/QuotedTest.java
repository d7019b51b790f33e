package cornerbook.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class QuotedTest {
    @Test
    void shortWordsStandAsTheyAre() {
        assertThat(Quoted.of(" 7,2 mm ").line()).isEqualTo("7,2 mm");
        assertThat(Quoted.of("x".repeat(40)).line()).isEqualTo("x".repeat(40));
    }

    @Test
    void longWordsAreCutBetweenCharacters() {
        assertThat(Quoted.of("x".repeat(41)).line()).isEqualTo("x".repeat(40) + "…");
        assertThat(Quoted.of("x".repeat(39) + "🚗 blue").line()).isEqualTo("x".repeat(39) + "…");
    }

    @Test
    void whatIsQuotedIsOneLine() {
        assertThat(Quoted.of("7\r\n2\u2028\0mm").line()).isEqualTo("7 2 mm");
    }
}
