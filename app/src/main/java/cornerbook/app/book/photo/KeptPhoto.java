package cornerbook.app.book.photo;

import cornerbook.app.photo.Jpeg;

/** A photo with its content. */
public record KeptPhoto(Photo photo, Jpeg jpeg) {}
