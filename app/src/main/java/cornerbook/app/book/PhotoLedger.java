package cornerbook.app.book;

import cornerbook.core.corner.Corner;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps the photos of visits with a SHA-256 of each. */
public final class PhotoLedger {
    private final BookStore store;

    PhotoLedger(BookStore store) {
        this.store = store;
    }

    /** A photo that is there already, by its id, counts once. */
    public Arrival add(String visitId, Photo photo, byte[] jpeg) {
        return store.write(handle -> {
            new VisitLedger(handle).getHistory(visitId);
            boolean added = BayRows.entry("photo", photo.id(), visitId, photo.person(), photo.madeAt())
                    .set("corner", photo.corner())
                    .set("sha256", sha256(jpeg))
                    .set("jpeg", jpeg)
                    .insertOnce(handle);
            return added ? Arrival.STORED : Arrival.ALREADY;
        });
    }

    /** The photos of a visit, earliest first. */
    public List<Photo> list(String visitId) {
        return store.read(handle -> list(handle, visitId));
    }

    static List<Photo> list(Handle handle, String visitId) {
        return handle.select(
                        "select id, corner, person, made_at from photo where visit_id = ? order by made_at, id",
                        visitId)
                .map((row, context) -> {
                    var corner = row.getString("corner");
                    return new Photo(
                            row.getString("id"),
                            corner == null ? null : Corner.valueOf(corner),
                            row.getString("person"),
                            Instant.parse(row.getString("made_at")));
                })
                .list();
    }

    /** The content of a photo as JPEG. */
    public Optional<byte[]> findJpeg(String photoId) {
        return store.read(handle -> handle.select("select jpeg from photo where id = ?", photoId)
                .mapTo(byte[].class)
                .findFirst());
    }

    /** Photos whose content is not what was stored, one sentence each. */
    static List<String> problems(Handle handle) {
        return handle
                .select("select id, sha256, jpeg from photo")
                .map((row, context) -> sha256(row.getBytes("jpeg")).equals(row.getString("sha256"))
                        ? ""
                        : "The photo %s is damaged, its digest is another".formatted(row.getString("id")))
                .stream()
                .filter(problem -> !problem.isEmpty())
                .toList();
    }

    private static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
