package cornerbook.app.door;

/**
 * What a tablet shows that does not trust the shop's certificate yet.
 *
 * @param fingerprint SHA-256 of the certificate
 * @param next address of the page on which the tablet is paired
 */
public record CertificatePage(String fingerprint, String next) {}
