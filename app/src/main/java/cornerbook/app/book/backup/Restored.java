package cornerbook.app.book.backup;

/**
 * A book that was made of a backup.
 *
 * @param counts what is in it, as in the backup
 * @param sealed whether the backup bore a seal; without one, as older programs wrote it, a changed byte may have gone unnoticed
 */
public record Restored(BookCounts counts, boolean sealed) {}
