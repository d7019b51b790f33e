package cornerbook.app.desk.link;

/** Addresses that a telephone or a mail program opens: a person calls, writes and sends. */
public final class CallLinks {
    private CallLinks() {}

    /** Calls a number where the page is open on a telephone (RFC 3966); only what is dialled stands in it. */
    public static String call(String number) {
        return "tel:" + number.replaceAll("[^0-9+*#]", "");
    }

    /** Writes a message to a telephone, for the person to send (RFC 5724). */
    public static String message(String number, String text) {
        return "sms:" + number.replaceAll("[^0-9+]", "") + "?body=" + Address.segment(text);
    }

    /** Writes an e-mail, for the person to send (RFC 6068). */
    public static String mail(String address, String subject, String text) {
        return "mailto:" + Address.segment(address).replace("%40", "@") + "?subject=" + Address.segment(subject)
                + "&body=" + Address.segment(text.replace("\n", "\r\n"));
    }
}
