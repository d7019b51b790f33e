package cornerbook.app.mail;

import cornerbook.core.say.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** The password for the server: from the environment of the program, or a file that the environment names; never from the book. */
public final class MailPassword {
    public static final String VARIABLE = "CORNERBOOK_MAIL_PASSWORD";
    public static final String FILE_VARIABLE = "CORNERBOOK_MAIL_PASSWORD_FILE";

    private MailPassword() {}

    /**
     * As it stands now.
     *
     * @throws Refused when there is a file and it cannot be read
     */
    public static Optional<String> find(Map<String, String> environment) {
        var password = environment.get(VARIABLE);
        if (password != null && !password.isEmpty()) {
            return Optional.of(password);
        }
        var file = environment.get(FILE_VARIABLE);
        if (file == null || file.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Files.readString(Path.of(file)).lines().findFirst().filter(line -> !line.isEmpty());
        } catch (IOException | InvalidPathException e) {
            throw new Refused(new MailSaid.PasswordFileUnread(FILE_VARIABLE));
        }
    }
}
