package cornerbook.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.handover.ShelfLabels;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.corner.Corner;
import cornerbook.core.visit.Assessor;
import java.time.LocalDate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class WheelPageTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void wheelSaysWhereItRanAndWhereThePlanPutsIt() {
        var assessor = new Assessor(LimitsFile.load());
        var car = DemoShop.histories(TODAY).getFirst();
        var visit = car.visits().getLast();
        var plan = assessor.plan(car, visit.id()).orElseThrow();
        plan.plan()
                .wheelAt()
                .forEach((corner, tag) ->
                        assertThat(WheelPage.of(car, tag, assessor).next()).isEqualTo(corner));
        var tag = String.valueOf(visit.arrivedOn().get(Corner.LF));
        assertThat(WheelPage.of(car, tag, assessor).depths())
                .hasSize(3)
                .allSatisfy(depth -> assertThat(depth).endsWith("mm"));
    }

    @Test
    void eachStorePlaceHasItsLabel() throws Exception {
        var cars = DemoShop.histories(TODAY);
        long places = cars.stream()
                .flatMap(car -> car.sets().stream())
                .filter(set -> set.storePlace() != null)
                .count();
        for (var paper : ShelfLabels.Paper.values()) {
            try (var document = Loader.loadPDF(ShelfLabels.render(cars, paper))) {
                assertThat(document.getNumberOfPages())
                        .isEqualTo(paper == ShelfLabels.Paper.ROLL ? (int) places : Math.ceilDiv((int) places, 24));
                assertThat(new PDFTextStripper().getText(document))
                        .contains(cars.getFirst().vehicle().plate());
            }
        }
    }
}
