package cornerbook.app.book.photo;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.car.DetailRows;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.EntryRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.photo.Jpeg;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Subject;
import cornerbook.core.say.Said;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Keeps the photos of visits with a SHA-256 of each. */
public final class PhotoLedger {
    private final Transactions store;

    public PhotoLedger(Transactions store) {
        this.store = store;
    }

    /** A photo that is there already, by its id, counts once. */
    public Arrival add(String visitId, KeptPhoto kept) {
        return store.write(handle -> {
            new CarLedger(within(handle)).requireVisit(visitId);
            var photo = kept.photo();
            boolean added = EntryRow.of("photo", photo.id(), visitId, photo.person(), photo.madeAt())
                    .set("corner", photo.corner())
                    .set("part", photo.part())
                    .set("on_sheet", photo.onSheet())
                    .set("sha256", kept.jpeg().sha256())
                    .set("jpeg", kept.jpeg().content())
                    .insertOnce(handle);
            return added ? Arrival.STORED : Arrival.ALREADY;
        });
    }

    /**
     * What a photo belongs to and whether the hand-over sheet shows it; the last word counts.
     *
     * @throws BookException when the visit has no such photo
     */
    public Arrival choose(String visitId, String photoId, Subject.@Nullable Part part, boolean onSheet) {
        return store.write(handle -> {
            int changed = handle.execute(
                    "update photo set part = ?, on_sheet = ? where id = ? and visit_id = ? and moved_to is null",
                    part == null ? null : part.name(),
                    onSheet ? 1 : 0,
                    photoId,
                    visitId);
            if (changed == 0) {
                throw new BookException(new PhotoSaid.NoPhoto(photoId));
            }
            return Arrival.STORED;
        });
    }

    /**
     * A photo goes to the corner or the car that it shows; where it was it is kept, struck.
     *
     * @param corner null when it shows no single corner
     * @throws BookException when the visit has no such photo
     */
    public void move(String visitId, String photoId, String toVisitId, @Nullable Corner corner) {
        store.write(handle -> {
            new CarLedger(within(handle)).requireVisit(toVisitId);
            var moved = UUID.randomUUID().toString();
            handle.execute(
                    "insert into photo (id, visit_id, corner, part, person, made_at, on_sheet, sha256, jpeg) select ?, ?, ?, part, person, made_at, on_sheet, sha256, jpeg from photo where id = ? and visit_id = ? and moved_to is null",
                    moved,
                    toVisitId,
                    corner == null ? null : corner.name(),
                    photoId,
                    visitId);
            if (handle.execute(
                            "update photo set moved_to = ? where id = ? and visit_id = ? and moved_to is null",
                            moved,
                            photoId,
                            visitId)
                    == 0) {
                throw new BookException(new PhotoSaid.NoPhoto(photoId));
            }
            return moved;
        });
    }

    /** The photos of a visit, earliest first; none that was moved elsewhere. */
    public List<Photo> list(String visitId) {
        return store.read(handle -> handle.select(
                        "select id, corner, part, person, made_at, on_sheet from photo where visit_id = ? and moved_to is null order by made_at, id",
                        visitId)
                .map((row, context) -> photo(row))
                .list());
    }

    /** The same with their content. */
    public List<KeptPhoto> listKept(String visitId) {
        return store.read(handle -> handle.select(
                        "select * from photo where visit_id = ? and moved_to is null order by made_at, id", visitId)
                .map((row, context) -> new KeptPhoto(photo(row), new Jpeg(row.getBytes("jpeg"))))
                .list());
    }

    private static Photo photo(ResultSet row) throws SQLException {
        return new Photo(
                row.getString("id"),
                DetailRows.constant(row, "corner", Corner.class),
                DetailRows.constant(row, "part", Subject.Part.class),
                row.getString("person"),
                EntryRow.madeAt(row),
                row.getInt("on_sheet") == 1);
    }

    /** The content of a photo as JPEG. */
    public Optional<byte[]> findJpeg(String photoId) {
        return store.read(handle -> handle.select("select jpeg from photo where id = ?", photoId)
                .mapTo(byte[].class)
                .findFirst());
    }

    /** Photos whose content is not there or not what was stored, one sentence each. */
    public List<Said> problems() {
        return store.read(handle -> handle
                .select("select id, sha256, jpeg from photo order by id")
                .map((row, context) ->
                        problem(row.getString("id"), row.getString("sha256"), new Jpeg(row.getBytes("jpeg"))))
                .stream()
                .flatMap(Optional::stream)
                .toList());
    }

    private static Optional<Said> problem(String id, String digest, Jpeg jpeg) {
        if (jpeg.sha256().equals(digest)) {
            return Optional.empty();
        }
        return Optional.of(
                jpeg.content().length == 0 ? new PhotoSaid.ContentMissing(id) : new PhotoSaid.ContentDamaged(id));
    }
}
