package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.demo.DemoShop;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.HoistRating;
import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.tool.ToolSaid;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopToolTest {
    private static final LocalDate DUE = LocalDate.of(2027, 1, 31);

    private static ShopTool wrench(String id, double lowestNm, double highestNm) {
        return new ShopTool(id, ShopTool.Kind.TORQUE_WRENCH, "Invented wrench", lowestNm, highestNm, 0, DUE);
    }

    @Test
    void aToolIsKeptChangedAndRemoved(@TempDir Path folder) {
        try (var book = EmptyBook.open(folder)) {
            book.tools().put(wrench("W-1", 40, 200));
            book.tools().put(wrench("W-2", 5, 60));
            book.tools().put(wrench("W-1", 40, 210));
            assertThat(book.tools().list()).containsExactly(wrench("W-1", 40, 210), wrench("W-2", 5, 60));
            book.tools().remove("W-2");
        }
        try (var book = EmptyBook.open(folder)) {
            assertThat(book.tools().list()).containsExactly(wrench("W-1", 40, 210));
            assertThat(book.check()).isEmpty();
        }
    }

    /** A later calibration of the tool is none of the visit's that was worked with it before. */
    @Test
    void aVisitKeepsTheToolAsItWasOnTheDay(@TempDir Path folder) {
        var car = DemoShop.histories(DUE.minusDays(60)).getFirst();
        var visitId = car.visits().getFirst().id();
        var hoist = new ShopTool(
                "H-1",
                ShopTool.Kind.HOIST,
                "Invented hoist",
                100,
                1900,
                0,
                DUE,
                new Hoist(4, new HoistRating(4000, 1000.0, null), List.of(50.0), 1100.0, List.of(), 45.0, 3600.0));
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(List.of(car));
            book.tools().put(hoist);
            book.tools().put(wrench("W-1", 40, 200));
            book.usedTools().choose("choice-1", visitId, ShopTool.Kind.HOIST, "H-1");
            book.usedTools().choose("choice-2", visitId, ShopTool.Kind.TORQUE_WRENCH, "W-1");
            book.tools().put(wrench("W-1", 40, 340));
            book.tools().remove("H-1");
        }
        try (var book = EmptyBook.open(folder)) {
            var visit = book.visits().find(visitId).orElseThrow();
            assertThat(visit.card().findTool(ShopTool.Kind.HOIST)).contains(hoist);
            assertThat(visit.card().findTool(ShopTool.Kind.TORQUE_WRENCH)).contains(wrench("W-1", 40, 200));
            assertThat(book.cars().find(car.vehicle().id()).orElseThrow().getVisit(visitId))
                    .isEqualTo(visit);
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void theToolThatWasUsedLastIsOfferedFirst(@TempDir Path folder) {
        var car = DemoShop.histories(DUE.minusDays(60)).getFirst();
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(List.of(car));
            book.tools().put(wrench("A-1", 40, 200));
            book.tools().put(wrench("W-2", 40, 200));
            book.usedTools().choose("choice", car.visits().getLast().id(), ShopTool.Kind.TORQUE_WRENCH, "W-2");
            assertThat(book.usedTools().offer(ShopTool.Kind.TORQUE_WRENCH))
                    .extracting(ShopTool::id)
                    .containsExactly("W-2", "A-1");
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> wrench("", 40, 200))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said()).isEqualTo(new ToolSaid.UnfitMark(Quoted.of(""))));
        assertThatThrownBy(() -> wrench("W-1", 240, 200))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("240");
        assertThatThrownBy(() -> new ShopTool("G-1", ShopTool.Kind.PRESSURE_GAUGE, "Invented gauge", 0, 700, 90, DUE))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said())
                                .isEqualTo(new QuantitySaid.OutOfRange(
                                        ToolSaid.ToolNumber.OFFSET,
                                        new Amount(90, "kPa", 0),
                                        new Between(-70, 70, "kPa", 0))));
        assertThat(wrench("W-1", 40, 200).due(DUE)).isTrue();
        assertThat(wrench("W-1", 40, 200).due(DUE.minusDays(1))).isFalse();
    }
}
