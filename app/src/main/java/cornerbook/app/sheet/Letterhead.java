package cornerbook.app.sheet;

/**
 * Whose paper it is.
 *
 * @param shopName stands on top, may be blank
 * @param invented whether shop, people and cars are made up; the paper says so
 */
public record Letterhead(String shopName, boolean invented) {
    public static Letterhead of(String shopName) {
        return new Letterhead(shopName, false);
    }

    public static Letterhead ofInvented(String shopName) {
        return new Letterhead(shopName, true);
    }
}
