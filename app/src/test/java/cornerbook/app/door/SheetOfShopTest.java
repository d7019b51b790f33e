package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.link.VisitLinks;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetOfShopTest {
    @Test
    void theServedSheetNamesTheShopAndSaysThatTheDemonstrationIsInvented(@TempDir Path folder) throws Exception {
        var car = ServedShop.cars().getFirst();
        try (var shop = new ServedShop(folder, List.of(car));
                var document = Loader.loadPDF(
                        shop.getBytes(VisitLinks.handover(car.visits().getLast().id())))) {
            assertThat(new PDFTextStripper().getText(document)).contains(DemoShop.NAME, "Invented data");
        }
    }
}
