package cornerbook.app.book.people;

import java.time.Instant;

/** A tablet that may use the pages from another machine, and who paired it. */
public record PairedDevice(String id, String name, String person, Instant pairedAt) {}
