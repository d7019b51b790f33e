package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;

import cornerbook.core.assess.SameKind;
import cornerbook.core.car.Vehicle;
import cornerbook.core.finding.Problem;
import cornerbook.words.Reader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Data sheets of kinds of cars. All kinds are invented. */
class KindFileTest {
    private static final Path EXAMPLE = Path.of("../docs/kinds/fjordling-volta.json");
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);

    private static String example() throws IOException {
        return Files.readString(EXAMPLE);
    }

    private static KindFile.Kind kind(String json) {
        return switch (KindFile.read(json, TODAY)) {
            case KindFile.Read read -> read.kind();
            case KindFile.Faulty faulty -> throw new AssertionError(faulty.problems());
        };
    }

    private static List<String> faults(String json) {
        return switch (KindFile.read(json, TODAY)) {
            case KindFile.Read read -> throw new AssertionError(read.kind());
            case KindFile.Faulty faulty ->
                faulty.problems().stream().map(Problem::where).toList();
        };
    }

    @Test
    void theExampleIsReadAndWrittenAsItIs() throws IOException {
        var kind = kind(example());
        assertThat(kind.name()).isEqualTo("Fjordling Volta");
        assertThat(kind.vin()).isEqualTo("XFJVT3E4*T");
        assertThat(kind.vehicle().rear().tyreSize()).isEqualTo("255/45R19");
        assertThat(kind(KindFile.write(kind))).isEqualTo(kind);
    }

    /** By positions 1 to 8 and 10, whatever stands between and behind them (ISO 3779; 49 CFR 565.15). */
    @Test
    void aCarIsOneOfTheKindByItsVin() throws IOException {
        var kind = kind(example()).vehicle();
        assertThat(SameKind.sign(car("Other", "XFJVT3E47TB004417"), kind)).contains(SameKind.Sign.VIN);
        assertThat(SameKind.sign(car("Fjordling Volta, blue", "XFJVT3E47SB004417"), kind))
                .as("another model year")
                .isEmpty();
        assertThat(SameKind.sign(car("Fjordling Volta, blue", null), kind)).contains(SameKind.Sign.NAME);
    }

    private static Vehicle car(String name, @Nullable String vin) {
        var values = new HashMap<>(Map.of(
                "/customer/name", "Oriel Tambrec",
                "/vehicle/name", name,
                "/vehicle/plate", "QX 1",
                "/vehicle/frontAxle/tyreSize", "225/55R18",
                "/vehicle/rearAxle/tyreSize", "225/55R18"));
        if (vin != null) {
            values.put("/vehicle/vin", vin);
        }
        return CarForm.readNew("car", "owner", values, TODAY) instanceof VisitFile.Read read
                ? read.history().vehicle()
                : fail("the car is refused");
    }

    /** Each fault at its place, all of them at once. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cornerbook-kind-file|cornerbook-visit-file|/format",
                "Fjordling Volta||/name",
                "XFJVT3E4*T|XFJVT3E4|/vin",
                "XFJVT3E4*T|XFJVT3O4*T|/vin",
                "140 N·m|140 mm|/vehicle/fastener/torque",
                "\"cone\"|\"cup\"|/vehicle/fastener/seat",
                "\"brakeFluid\"|\"plate\": \"QX 1\", \"brakeFluid\"|/vehicle/plate",
                "\"brakeFluid\"|\"breakFluid\"|/vehicle/breakFluid",
                "\"chemistry\"|\"installedOn\": \"2024-05-01\", \"chemistry\"|/vehicle/battery/installedOn",
                "\"source\"|\"sauce\": \"\", \"source\"|/sauce",
            })
    void aFaultIsToldAtItsPlace(String from, @Nullable String to, String where) throws IOException {
        assertThat(faults(example().replace(from, to == null ? "" : to))).containsExactly(where);
    }

    /** Those of the sheet and those of its figures. */
    @Test
    void allFaultsAreToldAtOnce() throws IOException {
        var faulty = example().replace("Fjordling Volta", "").replace("140 N·m", "140 mm");
        assertThat(faults(faulty)).containsExactly("/name", "/vehicle/fastener/torque");
    }

    /** The form has the fields of a car's data, without what is of a single car, and gives back what it shows. */
    @Test
    void aFormGivesBackTheSheetThatItShows() throws IOException {
        var kind = kind(example());
        assertThat(KindFile.fields())
                .extracting(CarField::pointer)
                .contains("/vehicle/fastener/torque", "/vehicle/rearAxle/brake/discMinimum", "/vehicle/body/kerbMass")
                .doesNotContain(
                        "/vehicle/plate", "/vehicle/use/saltShare", "/vehicle/battery/installedOn", "/customer/name");
        assertThat(KindFile.read(KindFile.values(kind), TODAY)).isEqualTo(new KindFile.Read(kind));
    }

    @Test
    void aKindWithoutAVinHasMakeAndModel() throws IOException {
        var byName = example().replace("\"vin\": \"XFJVT3E4*T\",", "");
        assertThat(kind(byName).vin()).isNull();
        assertThat(faults(byName.replace("Fjordling Volta", "Fjordling"))).containsExactly("/name");
    }

    @Test
    void whatIsNoSheetIsToldInOneSentence() {
        for (var text : List.of("", "{", "[]", "nothing", "{}")) {
            switch (KindFile.read(text, TODAY)) {
                case KindFile.Read read -> throw new AssertionError(read.kind());
                case KindFile.Faulty faulty ->
                    assertThat(faulty.problems())
                            .allSatisfy(problem -> assertThat(Reader.DEFAULT.say(problem.message()))
                                    .isNotBlank()
                                    .doesNotContain("Exception"));
            }
        }
    }
}
