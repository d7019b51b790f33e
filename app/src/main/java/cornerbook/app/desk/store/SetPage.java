package cornerbook.app.desk.store;

import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.rack.Intake;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.SetMove;
import cornerbook.app.book.rack.StorageTerm;
import cornerbook.app.desk.Form;
import cornerbook.core.store.Lying.Caution;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One set: where it lies, how it was taken in, and what was done with it.
 *
 * @param intake how it was taken in last; null when nobody said so
 * @param term until when its storage was agreed last; null when nobody did
 * @param moves the latest first
 * @param photos that its receipt bears
 * @param again the form that was refused, else empty
 * @param error why it was; empty when it was not
 */
public record SetPage(
        Shelves shelves,
        KeptSet set,
        @Nullable Intake intake,
        @Nullable StorageTerm term,
        List<SetMove> moves,
        List<Photo> photos,
        Form again,
        String error) {
    public SetPage {
        photos = List.copyOf(photos);
        moves = List.copyOf(moves);
    }

    public @Nullable Caution caution() {
        return Optional.ofNullable(intake)
                .flatMap(said -> said.lies().caution(said.onRims()))
                .orElse(null);
    }

    /** What stands chosen in the field of how it lies. */
    public String lies() {
        return again.has("lies")
                ? again.get("lies")
                : intake == null ? "" : intake.lies().name();
    }

    public boolean onRims() {
        return again.has("rims") ? again.get("rims").equals("yes") : intake == null || intake.onRims();
    }

    public LocalDate day(Instant moment) {
        return LocalDate.ofInstant(moment, shelves.shop());
    }

    public String id() {
        return UUID.randomUUID().toString();
    }
}
