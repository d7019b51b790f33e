package cornerbook.app.certificate;

import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.stream.Stream;
import javax.security.auth.x500.X500Principal;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * What tablets are told to trust (RFC 5280). It may speak only for private addresses (RFC 1918, and loopback), so that
 * even a stolen key opens no other site to whoever has it.
 */
record Authority(PrivateKey key, X509Certificate certificate) {
    private static final int YEARS = 10;
    /** Browsers and tablets refuse certificates of servers that are made for longer than some 825 or 398 days. */
    private static final int SERVER_DAYS = 397;

    private static final String[] PRIVATE_NETWORKS = {
        "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16", "127.0.0.0/8"
    };
    /** Never a name of anything (RFC 6761): where names are constrained to it no name is left. */
    private static final String NO_NAME = "cornerbook.invalid";

    private static final SecureRandom RANDOM = new SecureRandom();

    static Authority make(LocalDate today) throws GeneralSecurityException {
        var keys = newKeys();
        var name = new X500Principal("CN=Cornerbook tablets of this shop since " + today);
        var builder = builder(name, name, keys.getPublic(), today, today.plusYears(YEARS));
        try {
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(0))
                    .addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign))
                    .addExtension(Extension.nameConstraints, true, onlyPrivate())
                    .addExtension(
                            Extension.subjectKeyIdentifier,
                            false,
                            new JcaX509ExtensionUtils().createSubjectKeyIdentifier(keys.getPublic()));
        } catch (IOException e) {
            throw new GeneralSecurityException(e);
        }
        return new Authority(keys.getPrivate(), sign(builder, keys.getPrivate()));
    }

    /** A key pair for a server. */
    static KeyPair newKeys() throws GeneralSecurityException {
        var generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"), RANDOM);
        return generator.generateKeyPair();
    }

    /** Says that a key is that of the server at an address. */
    X509Certificate certify(PublicKey server, String address, LocalDate today) throws GeneralSecurityException {
        var builder = builder(
                certificate.getSubjectX500Principal(),
                new X500Principal("CN=" + address),
                server,
                today,
                today.plusDays(SERVER_DAYS - 1));
        try {
            var utilities = new JcaX509ExtensionUtils();
            builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false))
                    .addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature))
                    .addExtension(
                            Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth))
                    .addExtension(
                            Extension.subjectAlternativeName,
                            false,
                            new GeneralNames(new GeneralName(GeneralName.iPAddress, address)))
                    .addExtension(
                            Extension.authorityKeyIdentifier,
                            false,
                            utilities.createAuthorityKeyIdentifier(certificate.getPublicKey()))
                    .addExtension(Extension.subjectKeyIdentifier, false, utilities.createSubjectKeyIdentifier(server));
        } catch (IOException e) {
            throw new GeneralSecurityException(e);
        }
        return sign(builder, key);
    }

    private static NameConstraints onlyPrivate() {
        var networks = Stream.of(PRIVATE_NETWORKS).map(network -> new GeneralName(GeneralName.iPAddress, network));
        var names = Stream.of(
                new GeneralName(GeneralName.dNSName, NO_NAME), new GeneralName(GeneralName.rfc822Name, NO_NAME));
        return new NameConstraints(
                Stream.concat(networks, names).map(GeneralSubtree::new).toArray(GeneralSubtree[]::new), null);
    }

    /** Valid from the day before, as clocks of tablets are off. */
    private static JcaX509v3CertificateBuilder builder(
            X500Principal issuer, X500Principal subject, PublicKey key, LocalDate today, LocalDate until) {
        return new JcaX509v3CertificateBuilder(
                issuer,
                new BigInteger(127, RANDOM).setBit(126),
                midnight(today.minusDays(1)),
                midnight(until),
                subject,
                key);
    }

    private static Date midnight(LocalDate day) {
        return Date.from(day.atStartOfDay(ZoneOffset.UTC).toInstant());
    }

    private static X509Certificate sign(JcaX509v3CertificateBuilder builder, PrivateKey key)
            throws GeneralSecurityException {
        try {
            return new JcaX509CertificateConverter()
                    .getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(key)));
        } catch (OperatorException e) {
            throw new GeneralSecurityException(e);
        }
    }
}
