package cornerbook.app.desk.shop;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.Vehicle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Data sheets of kinds of cars at the desk. Cars and kinds are invented. */
class KindsTest {
    private static final Path EXAMPLE = Path.of("../docs/kinds/fjordling-volta.json");
    private static final String NAME = "Fjordling Volta";

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.cars().getFirst()));
    }

    private int keep(String file) throws Exception {
        return shop.post(ShopLinks.kinds(), Map.of("file", file)).statusCode();
    }

    @Test
    void aSheetIsKeptChangedTakenOutAndRemoved() throws Exception {
        assertThat(shop.get(ShopLinks.kinds()).body()).contains("None is kept yet.");
        var example = Files.readString(EXAMPLE);
        assertThat(keep(example)).isEqualTo(303);
        assertThat(shop.get(ShopLinks.kinds()).body()).contains(NAME, "by the VIN XFJVT3E4*T");
        assertThat(keep(example.replace("140 N·m", "130 N·m"))).isEqualTo(303);
        var file = shop.get(ShopLinks.kindFile(NAME));
        assertThat(file.headers().firstValue("content-disposition"))
                .contains("attachment; filename=\"kind-Fjordling-Volta.json\"");
        assertThat(file.body()).contains("130 N·m").doesNotContain("140 N·m");
        assertThat(shop.get(ShopLinks.kindText(NAME)).body()).contains("130 N·m");
        assertThat(shop.get(ShopLinks.kind(NAME)).body()).contains("value=\"130\"");
        assertThat(keep(file.body())).as("it goes in as it comes out").isEqualTo(303);
        assertThat(shop.post(ShopLinks.kinds() + "/remove", Map.of("kind", NAME))
                        .statusCode())
                .isEqualTo(303);
        assertThat(shop.get(ShopLinks.kind(NAME)).statusCode()).isEqualTo(404);
    }

    @Test
    void eachFaultIsToldAndNothingIsKept() throws Exception {
        var faulty = Files.readString(EXAMPLE).replace("\"cone\"", "\"cup\"").replace("140 N·m", "140 mm");
        var answer = shop.post(ShopLinks.kinds(), Map.of("file", faulty));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("<code>/vehicle/fastener/seat</code>", "140 mm", "role=\"alert\"");
        assertThat(keep("")).isEqualTo(422);
        assertThat(keep("{")).isEqualTo(422);
        assertThat(shop.book().kindSheets().list()).isEmpty();
    }

    @Test
    void aCarOfTheKindIsGivenWhatTheSheetHas() throws Exception {
        assertThat(keep(Files.readString(EXAMPLE))).isEqualTo(303);
        var id = UUID.randomUUID().toString();
        var typed = Map.of(
                "car", id,
                "/vehicle/plate", "QX 7007",
                "/vehicle/vin", "XFJVT3E47TB004417",
                "/customer/name", "Tamsin Orlavet",
                "/vehicle/frontAxle/tyreSize", "225/55R18",
                "/wheelSets/0/season", "SUMMER");
        var asked = shop.post(CarLinks.newCar(), typed);
        assertThat(asked.body()).contains("Data sheet of the shop, Fjordling Volta: same kind by the VIN");
        var chosen = new HashMap<>(typed);
        chosen.put("from", "sheet:" + NAME);
        assertThat(shop.post(CarLinks.newCar(), chosen).statusCode()).isEqualTo(303);
        var car = car(id);
        assertThat(Objects.requireNonNull(car.fastener()).torqueNm()).isEqualTo(140);
        assertThat(Objects.requireNonNull(car.front().placardPressureKpa())).isEqualTo(250);
        assertThat(car.front().brake().isKnown()).isTrue();
        assertThat(car.rear().tyreSize()).as("other tyres behind").isEqualTo("255/45R19");
        assertThat(Objects.requireNonNull(car.rear().placardPressureKpa())).isEqualTo(260);
        assertThat(car.plate()).isEqualTo("QX 7007");
        assertThat(car.details().copiedFrom()).isEqualTo("the data sheet Fjordling Volta");
    }

    /** What the book has of a car is a sheet at once, but for where its figures are from, and for what is of that car alone. */
    @Test
    void aCarOfTheBookMakesASheet() throws Exception {
        var car = shop.book().cars().list().getFirst();
        assertThat(shop.get(CarLinks.car(car.id())).body()).contains(ShopLinks.kindOf(car.id()));
        var page = shop.get(ShopLinks.kindOf(car.id())).body();
        assertThat(page).contains("name=\"/vehicle/frontAxle/tyreSize\"").doesNotContain("/vehicle/plate", car.plate());
        assertThat(shop.get(ShopLinks.kindOf("nobody")).statusCode()).isEqualTo(404);
    }

    private Vehicle car(String id) {
        return shop.book().cars().find(id).orElseThrow().vehicle();
    }
}
