package cornerbook.app.photo;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Random;
import javax.imageio.ImageIO;

/** Invented photos: patches of colour that a seed chooses. */
public final class Photos {
    private Photos() {}

    public static Jpeg patches(int seed, int width, int height) {
        var random = new Random(seed);
        var picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        var graphics = picture.createGraphics();
        for (int i = 0; i < 40; i++) {
            graphics.setColor(new Color(random.nextInt(0x1000000)));
            graphics.fillOval(random.nextInt(width), random.nextInt(height), width / 4, height / 4);
        }
        graphics.dispose();
        var content = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, "jpeg", content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Jpeg(content.toByteArray());
    }
}
