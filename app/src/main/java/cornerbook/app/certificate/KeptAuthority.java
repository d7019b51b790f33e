package cornerbook.app.certificate;

import cornerbook.app.file.OwnerOnly;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.LocalDate;

/** Keeps the authority in a file (PKCS #12, RFC 7292) that only the owner of the process may read. */
final class KeptAuthority {
    private static final String NAME = "authority.p12";
    private static final String ALIAS = "authority";
    /** Guards nothing: who can read the file could read a password beside it as well. The form asks for one. */
    private static final char[] PASSWORD = "cornerbook".toCharArray();

    private KeptAuthority() {}

    /** The authority of a folder; makes folder and authority when they are not there. */
    static Authority in(Path folder, LocalDate today) {
        var file = folder.resolve(NAME);
        try {
            if (!Files.exists(file)) {
                OwnerOnly.createFolders(folder);
                write(Authority.make(today), file);
            }
            return read(file);
        } catch (IOException | GeneralSecurityException e) {
            throw new CertificateException(new CertificateSaid.FolderUnusable(folder.toString()), e);
        }
    }

    private static Authority read(Path file) throws IOException, GeneralSecurityException {
        var store = KeyStore.getInstance("PKCS12");
        try (var in = Files.newInputStream(file)) {
            store.load(in, PASSWORD);
        }
        if (store.getKey(ALIAS, PASSWORD) instanceof PrivateKey key
                && store.getCertificate(ALIAS) instanceof X509Certificate certificate) {
            return new Authority(key, certificate);
        }
        throw new IOException("no authority in " + file);
    }

    /** Written whole beside its place and then moved there: a process that is killed leaves no half of it. */
    private static void write(Authority authority, Path file) throws IOException, GeneralSecurityException {
        var store = KeyStore.getInstance("PKCS12");
        store.load(null, PASSWORD);
        store.setKeyEntry(ALIAS, authority.key(), PASSWORD, new Certificate[] {authority.certificate()});
        // The system's own way: no one but the owner reads such a file.
        var unfinished = Files.createTempFile(file.getParent(), "authority", ".new");
        try {
            try (OutputStream out = Files.newOutputStream(unfinished)) {
                store.store(out, PASSWORD);
            }
            Files.move(unfinished, file);
        } catch (FileAlreadyExistsException e) {
            // Another process was faster; its authority is the one to use.
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }
}
