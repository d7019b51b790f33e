package cornerbook.app.desk;

import io.helidon.webserver.http.HttpRouting;

/** A part of the pages that the server opens beside its own. */
public interface Room extends AutoCloseable {
    /** Adds its addresses. */
    void open(HttpRouting.Builder routing, Desk desk, Pages pages);

    /** Ends at once what is still being sent to a tablet; it is not paired any more. */
    void unpaired(String deviceId);

    /** Ends what is still being answered; the server stops. */
    @Override
    void close();
}
