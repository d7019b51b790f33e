package cornerbook.app.book.bay;

import java.time.Instant;

/** Who took a reading at a tablet, and when by that tablet's clock. */
public record ReadingAuthor(String readingId, String person, Instant madeAt) {}
