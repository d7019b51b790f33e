package cornerbook.app.photo;

import cornerbook.core.say.Refused;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes a photo that came from outside one of ours: decoded within bounds and encoded anew as JPEG, so that what else the
 * file carried, as the place where it was taken, is gone.
 */
public final class PhotoIntake {
    /** Tablets send some 300 kB; a camera's own file is allowed. */
    public static final int LARGEST_BYTES = 8 * 1024 * 1024;

    /** Long side as it is kept: enough to read a date code on a whole wheel. Common practice, no source. */
    public static final int LONG_SIDE_PX = 1600;

    private static final long MOST_PIXELS = 50_000_000;
    private static final Set<String> FORMATS = Set.of("jpeg", "png");

    private PhotoIntake() {}

    /**
     * The photo as it is kept.
     *
     * @throws Refused with one sentence when it is no photo that can be taken
     */
    public static Jpeg take(byte[] content) {
        return encode(decode(content));
    }

    /**
     * A photo that another book has kept, as it is; one that is no JPEG by its content is {@linkplain #take taken} anew.
     *
     * @throws Refused with one sentence when it is no photo, or no JPEG in the form that {@link #take} gives
     */
    public static Jpeg takeKept(byte[] content) {
        if (!JpegSegments.isJpeg(content)) {
            return take(content);
        }
        if (JpegSegments.hasMore(content)) {
            throw new Refused(new PhotoSaid.CarriesMore());
        }
        var whole = decode(content, Integer.MAX_VALUE);
        if (Math.max(whole.getWidth(), whole.getHeight()) > LONG_SIDE_PX) {
            throw new Refused(new PhotoSaid.TooLong(whole.getWidth(), whole.getHeight(), LONG_SIDE_PX));
        }
        return new Jpeg(content);
    }

    /**
     * A small copy, for paper.
     *
     * @param longSidePx at most this long
     */
    public static Jpeg reduced(Jpeg photo, int longSidePx) {
        return encode(decode(photo.content(), longSidePx));
    }

    private static BufferedImage decode(byte[] content) {
        return decode(content, LONG_SIDE_PX);
    }

    private static BufferedImage decode(byte[] content, int longSidePx) {
        if (content.length > LARGEST_BYTES) {
            throw tooLarge();
        }
        if (JpegSegments.isJpeg(content) && !JpegSegments.isWhole(content)) {
            throw new Refused(new PhotoSaid.CutShort());
        }
        // In memory: by itself the JDK writes a copy, which a kill would leave in the folder of temporary files.
        try (var stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
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
                return decode(reader, longSidePx);
            } finally {
                reader.dispose();
            }
        } catch (IOException e) {
            throw damaged(e);
        }
    }

    /** The size is read before a single pixel is: a small file may claim a picture that fills the memory. */
    private static BufferedImage decode(ImageReader reader, int longSidePx) throws IOException {
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
            throw new Refused(new PhotoSaid.TooManyPixels(width, height));
        }
        int each = Math.ceilDiv(Math.max(width, height), longSidePx);
        var parameters = reader.getDefaultReadParam();
        parameters.setSourceSubsampling(each, each, 0, 0);
        return reader.read(0, parameters);
    }

    private static Jpeg encode(BufferedImage decoded) {
        var opaque = new BufferedImage(decoded.getWidth(), decoded.getHeight(), BufferedImage.TYPE_INT_RGB);
        var graphics = opaque.createGraphics();
        graphics.drawImage(decoded, 0, 0, Color.WHITE, null);
        graphics.dispose();
        var jpeg = new ByteArrayOutputStream();
        try (var stream = new MemoryCacheImageOutputStream(jpeg)) {
            ImageIO.write(opaque, "jpeg", stream);
        } catch (IOException e) {
            throw new UncheckedIOException("memory takes what is written", e);
        }
        return new Jpeg(jpeg.toByteArray());
    }

    private static IllegalArgumentException damaged(IOException cause) {
        var refused = new Refused(new PhotoSaid.Damaged());
        refused.initCause(cause);
        return refused;
    }

    private static IllegalArgumentException notAPhoto() {
        return new Refused(new PhotoSaid.NoPhoto());
    }

    public static IllegalArgumentException tooLarge() {
        return new Refused(new PhotoSaid.TooLarge());
    }
}
