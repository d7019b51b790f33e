package cornerbook.app.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.imageio.plugins.tiff.TIFFDirectory;
import org.junit.jupiter.api.Test;

class PhotoIntakeTest {
    /**
     * A block as Exif has it (CIPA DC-008, 4.6.3: tag 0x8825 points to the place where the photo was taken). The reader of
     * TIFF in the JDK, which is not ours, finds the pointer in it.
     */
    @Test
    void placeThatTheCameraAddedIsGone() throws IOException {
        var block = exifWithPlace();
        assertThat(placePointer(block)).isPositive();
        var jpeg = picture("jpeg", 400, 300);
        var withPlace = new ByteArrayOutputStream();
        withPlace.write(jpeg, 0, 2);
        // The block stands in an APP1 segment right after the start of image (4.7.2).
        withPlace.write(new byte[] {(byte) 0xff, (byte) 0xe1, 0, (byte) (block.length + 8)});
        withPlace.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        withPlace.write(block);
        withPlace.write(jpeg, 2, jpeg.length - 2);
        assertThat(text(withPlace.toByteArray())).contains(text(block));
        assertThatThrownBy(() -> PhotoIntake.takeKept(withPlace.toByteArray()))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("The photo carries more than its picture, expected none of a camera's data.");

        var taken = PhotoIntake.take(withPlace.toByteArray()).content();
        assertThat(text(taken)).doesNotContain("Exif", "\u0088%", text(block));
        assertThat(ImageIO.read(new ByteArrayInputStream(taken)).getWidth()).isEqualTo(400);
        assertThat(PhotoIntake.takeKept(taken)).isEqualTo(new Jpeg(taken));
    }

    /** TIFF 6.0: header, a directory with the pointer to a second one, and a latitude reference in that. */
    private static byte[] exifWithPlace() {
        var block = ByteBuffer.allocate(8 + 2 + 5 * 12 + 4 + 2 + 12 + 4 + 1);
        block.put("MM".getBytes(StandardCharsets.US_ASCII)).putChar((char) 42).putInt(8);
        int place = 8 + 2 + 5 * 12 + 4;
        block.putChar((char) 5);
        entry(block, 0x0100, 4, 1, 1);
        entry(block, 0x0101, 4, 1, 1);
        entry(block, 0x0111, 4, 1, place + 2 + 12 + 4);
        entry(block, 0x0117, 4, 1, 1);
        entry(block, 0x8825, 4, 1, place);
        block.putInt(0).putChar((char) 1);
        entry(block, 0x0001, 2, 2, 'N' << 24);
        return block.putInt(0).put((byte) 0).array();
    }

    private static void entry(ByteBuffer block, int tag, int type, int count, int value) {
        block.putChar((char) tag).putChar((char) type).putInt(count).putInt(value);
    }

    private static long placePointer(byte[] block) throws IOException {
        var reader = ImageIO.getImageReadersByFormatName("tiff").next();
        try (var stream = ImageIO.createImageInputStream(new ByteArrayInputStream(block))) {
            reader.setInput(stream);
            return TIFFDirectory.createFromMetadata(reader.getImageMetadata(0))
                    .getTIFFField(0x8825)
                    .getAsLong(0);
        } finally {
            reader.dispose();
        }
    }

    @Test
    void largePhotoIsMadeSmallerAndPngIsTaken() throws IOException {
        var taken = ImageIO.read(new ByteArrayInputStream(
                PhotoIntake.take(picture("png", 4000, 1000)).content()));
        assertThat(taken.getWidth()).isEqualTo(1334).isLessThanOrEqualTo(PhotoIntake.LONG_SIDE_PX);
        assertThat(taken.getHeight()).as("each third row and column").isEqualTo(334);
    }

    @Test
    void whatIsNoPhotoIsRefusedByItsContent() throws IOException {
        assertThatThrownBy(() -> PhotoIntake.take("<svg/>".getBytes(StandardCharsets.UTF_8)))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("This is no photo, expected a JPEG or PNG picture.");
        assertThatThrownBy(() -> PhotoIntake.take(picture("gif", 10, 10)))
                .extracting(InEnglish::told, STRING)
                .contains("no photo");
        assertThatThrownBy(() -> PhotoIntake.take(new byte[0]))
                .extracting(InEnglish::told, STRING)
                .contains("no photo");
        var cut = Arrays.copyOf(picture("png", 300, 300), 60);
        assertThatThrownBy(() -> PhotoIntake.take(cut))
                .extracting(InEnglish::told, STRING)
                .contains("damaged");
        var jpeg = picture("jpeg", 300, 300);
        var half = Arrays.copyOf(jpeg, jpeg.length - 20);
        assertThatThrownBy(() -> PhotoIntake.take(half))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("The photo is cut short, expected a whole JPEG or PNG picture.");
        assertThatThrownBy(() -> PhotoIntake.take(new byte[PhotoIntake.LARGEST_BYTES + 1]))
                .extracting(InEnglish::told, STRING)
                .contains("8 MB");
    }

    @Test
    void pictureThatWouldFillTheMemoryIsRefusedBeforeItIsDecoded() throws IOException {
        var png = picture("png", 10, 10);
        // Width and height stand at 16 and 20 in the header of a PNG (ISO/IEC 15948, 11.2.2).
        png[16] = 0x00;
        png[17] = 0x01;
        png[20] = 0x00;
        png[21] = 0x01;
        assertThatThrownBy(() -> PhotoIntake.take(png))
                .extracting(InEnglish::told, STRING)
                .contains("50 million");
        var jpeg = picture("jpeg", 10, 10);
        int frame = text(jpeg).indexOf("\u00ff\u00c0");
        // Lines and samples of a line stand behind marker, length and precision (ITU-T T.81, B.2.2).
        ByteBuffer.wrap(jpeg).putChar(frame + 5, (char) 65_000).putChar(frame + 7, (char) 65_000);
        assertThatThrownBy(() -> PhotoIntake.take(jpeg))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("The photo has 65 000 × 65 000 pixels, expected at most 50 million.");
    }

    @Test
    void photoOfAnotherBookHasToBeInTheFormThatPhotosAreKeptIn() throws IOException {
        var png = picture("png", 10, 10);
        assertThat(PhotoIntake.takeKept(png)).as("by its content").isEqualTo(PhotoIntake.take(png));
        assertThatThrownBy(() -> PhotoIntake.takeKept(picture("gif", 10, 10)))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("This is no photo, expected a JPEG or PNG picture.");
        assertThatThrownBy(() -> PhotoIntake.takeKept(picture("jpeg", 1700, 10)))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("The photo has 1 700 × 10 pixels, expected at most 1 600 on the long side.");
    }

    /** 0xff18 is reserved (ITU-T T.81, table B.1), and decoders pass over it as over what stands behind the end. */
    @Test
    void placeThatHidesFromDecodersIsFoundInPhotosOfAnotherBook() throws IOException {
        var jpeg = picture("jpeg", 40, 30);
        var block = "Exif\0\0MM and a place".getBytes(StandardCharsets.US_ASCII);
        var hidden = ByteBuffer.allocate(jpeg.length + 4 + block.length);
        hidden.put(jpeg, 0, 2).putChar((char) 0xff18).putChar((char) (2 + block.length));
        hidden.put(block).put(jpeg, 2, jpeg.length - 2);
        var behind = ByteBuffer.allocate(jpeg.length + block.length).put(jpeg).put(block);
        assertThat(PhotoIntake.takeKept(jpeg)).isEqualTo(new Jpeg(jpeg));
        for (var photo : new byte[][] {hidden.array(), behind.array()}) {
            assertThat(PhotoIntake.take(photo)).as("a decoder reads it").isNotNull();
            assertThatThrownBy(() -> PhotoIntake.takeKept(photo))
                    .extracting(InEnglish::told, STRING)
                    .isEqualTo("The photo carries more than its picture, expected none of a camera's data.");
        }
        var half = Arrays.copyOf(jpeg, jpeg.length - 20);
        assertThatThrownBy(() -> PhotoIntake.takeKept(half))
                .extracting(InEnglish::told, STRING)
                .contains("cut short");
    }

    /** A copy there would carry the place along, and a kill would leave it. */
    @Test
    void nothingIsWrittenToTheFolderOfTemporaryFiles() throws IOException {
        var photo = picture("jpeg", 40, 30);
        var cache = ImageIO.getCacheDirectory();
        var folder = Files.createTempDirectory("photo-intake");
        ImageIO.setCacheDirectory(folder.toFile());
        // Whoever wants to write a copy fails now.
        Files.delete(folder);
        try {
            assertThat(PhotoIntake.take(photo)).isNotNull();
        } finally {
            ImageIO.setCacheDirectory(cache);
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
