package cornerbook.app.photo;

import cornerbook.core.say.Said;

/** What people are told of a photo that cannot be taken. */
public interface PhotoSaid extends Said {
    record CarriesMore() implements PhotoSaid {}

    record TooLong(int width, int height, int longest) implements PhotoSaid {}

    record TooManyPixels(int width, int height) implements PhotoSaid {}

    record CutShort() implements PhotoSaid {}

    record Damaged() implements PhotoSaid {}

    record NoPhoto() implements PhotoSaid {}

    record TooLarge() implements PhotoSaid {}
}
