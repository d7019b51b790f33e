package cornerbook.app.bay;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;

/**
 * Makes a photo that came from outside one of ours: decoded within bounds and encoded anew as JPEG, so that what else the
 * file carried, as the place where it was taken, is gone.
 */
final class PhotoIntake {
    /** Tablets send some 300 kB; a camera's own file is allowed. */
    static final int LARGEST_BYTES = 8 * 1024 * 1024;

    /** Long side as it is kept: enough to read a date code on a whole wheel. Common practice, no source. */
    static final int LONG_SIDE_PX = 1600;

    private static final long MOST_PIXELS = 50_000_000;
    private static final Set<String> FORMATS = Set.of("jpeg", "png");

    private PhotoIntake() {}

    /**
     * The photo as it is kept.
     *
     * @throws IllegalArgumentException with one sentence when it is no photo that can be taken
     */
    static byte[] take(byte[] content) {
        if (content.length > LARGEST_BYTES) {
            throw tooLarge();
        }
        try (var stream = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            var readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw notAPhoto();
            }
            var reader = readers.next();
            try {
                reader.setInput(stream, true, true);
                if (!FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
                    throw notAPhoto();
                }
                return encode(decode(reader));
            } finally {
                reader.dispose();
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("The photo is damaged, expected a JPEG or PNG picture.", e);
        }
    }

    /** The size is read before a single pixel is: a small file may claim a picture that fills the memory. */
    private static BufferedImage decode(ImageReader reader) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
            throw new IllegalArgumentException(
                    "The photo has %d × %d pixels, expected at most 50 million.".formatted(width, height));
        }
        int each = Math.ceilDiv(Math.max(width, height), LONG_SIDE_PX);
        var parameters = reader.getDefaultReadParam();
        parameters.setSourceSubsampling(each, each, 0, 0);
        return reader.read(0, parameters);
    }

    private static byte[] encode(BufferedImage decoded) throws IOException {
        var opaque = new BufferedImage(decoded.getWidth(), decoded.getHeight(), BufferedImage.TYPE_INT_RGB);
        var graphics = opaque.createGraphics();
        graphics.drawImage(decoded, 0, 0, Color.WHITE, null);
        graphics.dispose();
        var jpeg = new ByteArrayOutputStream();
        ImageIO.write(opaque, "jpeg", jpeg);
        return jpeg.toByteArray();
    }

    private static IllegalArgumentException notAPhoto() {
        return new IllegalArgumentException("This is no photo, expected a JPEG or PNG picture.");
    }

    static IllegalArgumentException tooLarge() {
        return new IllegalArgumentException("The photo is larger than 8 MB, expected a smaller one.");
    }
}
