package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.visit.ShopTool;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopToolTest {
    private static final LocalDate DUE = LocalDate.of(2027, 1, 31);

    private static ShopTool wrench(String id, double lowestNm, double highestNm) {
        return new ShopTool(id, ShopTool.Kind.TORQUE_WRENCH, "Invented wrench", lowestNm, highestNm, 0, DUE);
    }

    @Test
    void aToolIsKeptChangedAndRemoved(@TempDir Path folder) {
        try (var book = Book.open(folder)) {
            book.putTool(wrench("W-1", 40, 200));
            book.putTool(wrench("W-2", 5, 60));
            book.putTool(wrench("W-1", 40, 210));
            assertThat(book.listTools()).containsExactly(wrench("W-1", 40, 210), wrench("W-2", 5, 60));
            book.removeTool("W-2");
        }
        try (var book = Book.open(folder)) {
            assertThat(book.listTools()).containsExactly(wrench("W-1", 40, 210));
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> wrench("", 40, 200)).hasMessageStartingWith("mark of the tool is \"\"");
        assertThatThrownBy(() -> wrench("W-1", 240, 200))
                .hasMessageStartingWith("bottom of the wrench's scale is 240 N·m");
        assertThatThrownBy(() -> new ShopTool("G-1", ShopTool.Kind.PRESSURE_GAUGE, "Invented gauge", 0, 700, 90, DUE))
                .hasMessageStartingWith("offset of the tool is 90 kPa");
        assertThat(wrench("W-1", 40, 200).due(DUE)).isTrue();
        assertThat(wrench("W-1", 40, 200).due(DUE.minusDays(1))).isFalse();
    }
}
