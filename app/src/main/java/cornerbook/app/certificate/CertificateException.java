package cornerbook.app.certificate;

/** The shop's certificates cannot be made or read; the message is one sentence for people. */
public final class CertificateException extends RuntimeException {
    private static final long serialVersionUID = 1;

    CertificateException(String message) {
        super(message);
    }

    CertificateException(String message, Throwable cause) {
        super(message, cause);
    }
}
