package cornerbook.app.desk.link;

/** Addresses of customers, and of those who are asked to come back. */
public final class CustomerLinks {
    private CustomerLinks() {}

    /** Who is to be asked to come back. */
    public static String coming() {
        return "/coming";
    }

    /** The e-mails that may be written to them, before they are sent. */
    public static String comingMail() {
        return coming() + "/mail";
    }

    /** The e-mails that were written. */
    public static String sentMail() {
        return comingMail() + "/sent";
    }

    /** What the book keeps of a customer. */
    public static String customer(String customerId) {
        return "/customers/" + Address.segment(customerId);
    }

    /** The same as a file. */
    public static String customerFile(String customerId) {
        return customer(customerId) + "/file";
    }

    /** Where it stands whether a customer is called and written to. */
    public static String contact(String customerId) {
        return customer(customerId) + "#contact";
    }

    /** Where that is said. */
    public static String contactAnswer(String customerId) {
        return customer(customerId) + "/contact";
    }

    public static String eraseCustomer(String customerId) {
        return customer(customerId) + "/erase";
    }

    /** Customers taken from cards. */
    public static String cards() {
        return goneCustomers() + "/cards";
    }

    /** Customers who were not here for long. */
    public static String goneCustomers() {
        return "/shop/customers";
    }
}
