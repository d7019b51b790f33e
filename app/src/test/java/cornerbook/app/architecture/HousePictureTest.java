package cornerbook.app.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The picture of the house in the documentation is that of its imports. */
class HousePictureTest {
    private static final Path DOCUMENTED = Path.of("../docs/pictures/house.svg");

    @Test
    void theDocumentedPictureIsTheHouse() throws IOException {
        var drawn = new HousePicture(new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("cornerbook.core", "cornerbook.words", "cornerbook.app"))
                .svg();
        var made = Path.of("target/house.svg");
        Files.createDirectories(made.getParent());
        Files.writeString(made, drawn);
        assertThat(Files.readString(DOCUMENTED))
                .as("the house has changed: look at app/target/house.svg and put it in the place of docs/pictures/house.svg")
                .isEqualTo(drawn);
    }
}
