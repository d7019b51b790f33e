package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.Arrival;
import cornerbook.app.book.Book;
import cornerbook.app.book.Photo;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotoIntakeTest {
    private static final Photo PHOTO = new Photo("p1", null, "Ada", Instant.EPOCH);

    @Test
    void whatTheCameraAddedIsGone() throws IOException {
        var jpeg = picture("jpeg", 400, 300);
        var place = "Exif\0\0 a place on a map".getBytes(StandardCharsets.US_ASCII);
        var withPlace = new ByteArrayOutputStream();
        withPlace.write(jpeg, 0, 2);
        // An APP1 segment right after the start of image (Exif 2.3, section 4.5.4).
        withPlace.write(new byte[] {(byte) 0xff, (byte) 0xe1, 0, (byte) (place.length + 2)});
        withPlace.write(place);
        withPlace.write(jpeg, 2, jpeg.length - 2);
        assertThat(text(withPlace.toByteArray())).contains("a place on a map");
        var taken = PhotoIntake.take(withPlace.toByteArray());
        assertThat(text(taken)).doesNotContain("Exif", "a place on a map");
        assertThat(ImageIO.read(new ByteArrayInputStream(taken)).getWidth()).isEqualTo(400);
    }

    @Test
    void largePhotoIsMadeSmallerAndPngIsTaken() throws IOException {
        var taken = ImageIO.read(new ByteArrayInputStream(PhotoIntake.take(picture("png", 4000, 1000))));
        assertThat(taken.getWidth()).isEqualTo(1334).isLessThanOrEqualTo(PhotoIntake.LONG_SIDE_PX);
        assertThat(taken.getHeight()).as("each third row and column").isEqualTo(334);
    }

    @Test
    void whatIsNoPhotoIsRefusedByItsContent() throws IOException {
        assertThatThrownBy(() -> PhotoIntake.take("<svg/>".getBytes(StandardCharsets.UTF_8)))
                .hasMessage("This is no photo, expected a JPEG or PNG picture.");
        assertThatThrownBy(() -> PhotoIntake.take(picture("gif", 10, 10))).hasMessageContaining("no photo");
        assertThatThrownBy(() -> PhotoIntake.take(new byte[0])).hasMessageContaining("no photo");
        var cut = Arrays.copyOf(picture("png", 300, 300), 60);
        assertThatThrownBy(() -> PhotoIntake.take(cut)).hasMessageContaining("damaged");
        assertThatThrownBy(() -> PhotoIntake.take(new byte[PhotoIntake.LARGEST_BYTES + 1]))
                .hasMessageContaining("8 MB");
    }

    @Test
    void pictureThatWouldFillTheMemoryIsRefusedBeforeItIsDecoded() throws IOException {
        var png = picture("png", 10, 10);
        // Width and height stand at 16 and 20 in the header of a PNG (ISO/IEC 15948, 11.2.2).
        png[16] = 0x00;
        png[17] = 0x01;
        png[20] = 0x00;
        png[21] = 0x01;
        assertThatThrownBy(() -> PhotoIntake.take(png)).hasMessageContaining("50 million");
    }

    @Test
    void photoIsKeptOnceWithItsDigestAndABackupHasIt(@TempDir Path folder) throws Exception {
        var car = BayShop.untouched("demo-08");
        var visitId = car.visits().getLast().id();
        var jpeg = PhotoIntake.take(picture("jpeg", 40, 30));
        try (var book = Book.open(folder.resolve("book"))) {
            book.addAll(List.of(car));
            assertThat(book.photos().add(visitId, PHOTO, jpeg)).isEqualTo(Arrival.STORED);
            assertThat(book.photos().add(visitId, PHOTO, jpeg)).isEqualTo(Arrival.ALREADY);
            assertThat(book.check()).isEmpty();
            book.backup(folder.resolve("backup"));
        }
        Book.restore(folder.resolve("backup"), folder.resolve("restored"));
        try (var restored = Book.open(folder.resolve("restored"))) {
            assertThat(restored.photos().list(visitId)).containsExactly(PHOTO);
            assertThat(restored.photos().findJpeg("p1"))
                    .hasValueSatisfying(kept -> assertThat(kept).isEqualTo(jpeg));
            try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("restored/book.sqlite"));
                    var statement = connection.createStatement()) {
                statement.execute("update photo set jpeg = x'00'");
            }
            assertThat(restored.check()).containsExactly("The photo p1 is damaged, its digest is another");
        }
    }

    private static byte[] picture(String format, int width, int height) throws IOException {
        var out = new ByteArrayOutputStream();
        assertThat(ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, out))
                .isTrue();
        return out.toByteArray();
    }

    private static String text(byte[] content) {
        return new String(content, StandardCharsets.ISO_8859_1);
    }
}
