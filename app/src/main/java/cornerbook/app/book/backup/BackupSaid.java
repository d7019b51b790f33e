package cornerbook.app.book.backup;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;

/** What people are told of backups, and of what a check finds. Files and folders are named by their paths. */
public interface BackupSaid extends Said {
    record NotesUnreadable(String car) implements BackupSaid {}

    record CarNotChecked(String car, String fault) implements BackupSaid {}

    record CarUnsound(String car, String where, Said problem) implements BackupSaid {}

    record ReadingChanged(String car, String visit, String reading, Amount value, String written)
            implements BackupSaid {}

    record NoFolder(String folder) implements BackupSaid {}

    record NotWritten(String target) implements BackupSaid {}

    record NoBackup(String backup) implements BackupSaid {}

    record NotPutInto(String folder) implements BackupSaid {}

    record NotSound(String backup, Said problem) implements BackupSaid {}

    record NotAsBackedUp(String book) implements BackupSaid {}

    record ThereAlready(String target) implements BackupSaid {}

    record HasBook(String folder) implements BackupSaid {}

    record SealBroken(String backup) implements BackupSaid {}
}
