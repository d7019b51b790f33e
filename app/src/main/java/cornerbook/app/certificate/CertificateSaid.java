package cornerbook.app.certificate;

import cornerbook.core.say.Said;

/** What people are told when the shop's certificates cannot be made or read. */
public interface CertificateSaid extends Said {
    record NoPrivateNetwork(String address) implements CertificateSaid {}

    record FolderUnusable(String folder) implements CertificateSaid {}

    record NotMade(String address) implements CertificateSaid {}
}
