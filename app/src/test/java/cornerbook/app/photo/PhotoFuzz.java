package cornerbook.app.photo;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Sentences;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;

/** A photo is refused with a sentence, or what is kept of it can be decoded and carries nothing of a camera's. */
public final class PhotoFuzz implements FuzzTarget {
    /** In a segment of any kind, also one that decoders pass over. */
    private static final Pattern BLOCK = Pattern.compile("(?s)\u00ff[\u0001-\u00cf\u00d8-\u00fe]..Exif\0");

    @Override
    public void take(byte[] input) throws IOException {
        check(input, PhotoIntake::take);
        check(input, PhotoIntake::takeKept);
    }

    private interface Intake {
        Jpeg take(byte[] content);
    }

    private static void check(byte[] input, Intake intake) throws IOException {
        Jpeg kept;
        try {
            kept = intake.take(input);
        } catch (IllegalArgumentException e) {
            Sentences.check(InEnglish.told(e), "");
            return;
        }
        var picture = ImageIO.read(new ByteArrayInputStream(kept.content()));
        assertThat(Math.max(picture.getWidth(), picture.getHeight())).isBetween(1, PhotoIntake.LONG_SIDE_PX);
        assertThat(new String(kept.content(), StandardCharsets.ISO_8859_1)).doesNotContainPattern(BLOCK);
        assertThat(PhotoIntake.takeKept(kept.content())).isEqualTo(kept);
    }
}
