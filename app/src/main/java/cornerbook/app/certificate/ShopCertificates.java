package cornerbook.app.certificate;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.cert.Certificate;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.time.LocalDate;
import java.util.HexFormat;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/**
 * What the server shows by TLS, and what a tablet has to trust for it.
 *
 * @param context with the server's key and certificate, made anew at each start
 * @param authority that tablets install
 */
public record ShopCertificates(SSLContext context, X509Certificate authority) {
    /**
     * Those of a shop.
     *
     * @param folder keeps the authority; both are made when they are not there
     * @param address of this machine in a private network, as 192.168.1.10
     * @throws CertificateException with one sentence when the address is not private or the folder cannot be used
     */
    public static ShopCertificates of(Path folder, String address, LocalDate today) {
        if (!isPrivate(address)) {
            throw new CertificateException(new CertificateSaid.NoPrivateNetwork(address));
        }
        var authority = KeptAuthority.in(folder, today);
        try {
            var keys = Authority.newKeys();
            var certificate = authority.certify(keys.getPublic(), address, today);
            var store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setKeyEntry(
                    "server", keys.getPrivate(), new char[0], new Certificate[] {certificate, authority.certificate()});
            var managers = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
            managers.init(store, new char[0]);
            var context = SSLContext.getInstance("TLS");
            context.init(managers.getKeyManagers(), null, null);
            return new ShopCertificates(context, authority.certificate());
        } catch (IOException | GeneralSecurityException e) {
            throw new CertificateException(new CertificateSaid.NotMade(address), e);
        }
    }

    /** As {@link Authority} is constrained to. */
    private static boolean isPrivate(String address) {
        try {
            var known = InetAddress.ofLiteral(address);
            return known.isSiteLocalAddress() || known.isLinkLocalAddress() || known.isLoopbackAddress();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** The authority in the form that tablets load (DER). */
    public byte[] file() {
        try {
            return authority.getEncoded();
        } catch (CertificateEncodingException e) {
            throw new IllegalStateException("a certificate that was read cannot be written", e);
        }
    }

    /** SHA-256 of the authority's certificate as tablets show it: pairs of digits with colons. */
    public String fingerprint() {
        try {
            return HexFormat.ofDelimiter(":")
                    .withUpperCase()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(file()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("the JDK lacks SHA-256", e);
        }
    }
}
