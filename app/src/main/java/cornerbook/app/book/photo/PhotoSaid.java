package cornerbook.app.book.photo;

import cornerbook.core.say.Said;

/** What people are told of the photos in the book, which are named by their ids. */
public interface PhotoSaid extends Said {
    record NoPhoto(String photo) implements PhotoSaid {}

    record ContentMissing(String photo) implements PhotoSaid {}

    record ContentDamaged(String photo) implements PhotoSaid {}
}
