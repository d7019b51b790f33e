package cornerbook.app.certificate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reference: path validation of RFC 5280, section 6, as the JDK does it (PKIX). */
class ShopCertificatesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"192.168.1.10", "10.20.30.40", "172.31.0.5", "127.0.0.2"})
    void certificateOfAPrivateAddressIsValidForAYearAndNoLonger(String address) throws Exception {
        var authority = Authority.make(TODAY);
        var server = authority.certify(Authority.newKeys().getPublic(), address, TODAY);
        assertThatCode(() -> validate(authority, server, TODAY)).doesNotThrowAnyException();
        assertThatCode(() -> validate(authority, server, TODAY.plusDays(390))).doesNotThrowAnyException();
        assertThatThrownBy(() -> validate(authority, server, TODAY.plusDays(400)))
                .isInstanceOf(CertPathValidatorException.class);
        assertThat(server.getSubjectAlternativeNames()).containsExactly(List.of(7, address));
    }

    @ParameterizedTest
    @ValueSource(strings = {"203.0.113.5", "172.32.0.1", "192.169.0.1", "8.8.8.8"})
    void authoritySpeaksForNoPublicAddress(String address) throws Exception {
        var authority = Authority.make(TODAY);
        var server = authority.certify(Authority.newKeys().getPublic(), address, TODAY);
        assertThatThrownBy(() -> validate(authority, server, TODAY))
                .isInstanceOf(CertPathValidatorException.class)
                .hasMessageContaining("name constraints");
    }

    @Test
    void certificateOfAnotherAuthorityIsRefused() throws Exception {
        var server = Authority.make(TODAY).certify(Authority.newKeys().getPublic(), "10.0.0.1", TODAY);
        assertThatThrownBy(() -> validate(Authority.make(TODAY), server, TODAY))
                .isInstanceOf(CertPathValidatorException.class);
    }

    @Test
    void authorityStaysTheSameAndIsItsOwnersOnly() throws Exception {
        var first = ShopCertificates.of(folder, "192.168.1.10", TODAY);
        var later = ShopCertificates.of(folder, "192.168.1.11", TODAY.plusYears(1));
        assertThat(later.fingerprint()).isEqualTo(first.fingerprint()).matches("([0-9A-F]{2}:){31}[0-9A-F]{2}");
        try (var files = Files.list(folder)) {
            assertThat(files)
                    .singleElement()
                    .satisfies(file -> assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                            .isEqualTo("rw-------"));
        }
    }

    @Test
    void addressThatIsNotPrivateIsRefusedAndNothingIsMade() {
        assertThatThrownBy(() -> ShopCertificates.of(folder.resolve("none"), "203.0.113.5", TODAY))
                .isInstanceOf(CertificateException.class)
                .extracting(InEnglish::told, STRING)
                .contains("203.0.113.5 is of no private network");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void whatIsNoAuthorityIsRefusedInOneSentenceAndStays() throws Exception {
        Files.writeString(folder.resolve("authority.p12"), "not a key");
        assertThatThrownBy(() -> ShopCertificates.of(folder, "192.168.1.10", TODAY))
                .isInstanceOf(CertificateException.class)
                .extracting(InEnglish::told, STRING)
                .contains("cannot be read or made");
        assertThat(folder.resolve("authority.p12")).hasContent("not a key");
    }

    private static void validate(Authority authority, X509Certificate server, LocalDate day) throws Exception {
        // The authority stands in the path as well, for of an anchor the JDK reads no constraints (RFC 5280, 6.1.1 d).
        var parameters = new PKIXParameters(Set.of(new TrustAnchor(
                authority.certificate().getSubjectX500Principal(),
                authority.certificate().getPublicKey(),
                null)));
        parameters.setRevocationEnabled(false);
        parameters.setDate(Date.from(day.atStartOfDay(ZoneOffset.UTC).toInstant()));
        CertPathValidator.getInstance("PKIX")
                .validate(
                        CertificateFactory.getInstance("X.509")
                                .generateCertPath(List.of(server, authority.certificate())),
                        parameters);
    }
}
