package cornerbook.app.desk;

import cornerbook.app.book.photo.Photo;
import cornerbook.app.request.Told;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Subject;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What photos show. */
public final class PhotoWords {
    private PhotoWords() {}

    /** What a photo of a corner, or of the car, may belong to. */
    public static List<Subject.Part> partsSeen(@Nullable Corner corner) {
        return corner == null
                ? List.of(
                        Subject.Part.VISIBILITY,
                        Subject.Part.PARKING_BRAKE,
                        Subject.Part.BRAKE_FLUID,
                        Subject.Part.BATTERY)
                : List.of(
                        Subject.Part.TYRE_DAMAGE,
                        Subject.Part.RIM,
                        Subject.Part.WHEEL_FASTENERS,
                        Subject.Part.SUSPENSION,
                        Subject.Part.BRAKE_LINE,
                        Subject.Part.STRUCTURE,
                        Subject.Part.PAD,
                        Subject.Part.CALIPER,
                        Subject.Part.DISC,
                        Subject.Part.SHOE,
                        Subject.Part.DRUM,
                        Subject.Part.TYRE_AGE,
                        Subject.Part.WHEEL_FIT,
                        Subject.Part.PRESSURE);
    }

    /** What a photo shows and who took it. */
    public static String of(Photo photo) {
        return Told.say(new DeskSaid.PhotoOf(photo.corner(), photo.part(), photo.person()));
    }
}
