package cornerbook.app.sheet;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whose paper it is.
 *
 * @param shopName stands on top, may be blank
 * @param address where the customer finds the shop, may be blank
 * @param telephone where the customer calls, may be blank
 * @param invented whether shop, people and cars are made up; the paper says so
 */
public record Letterhead(String shopName, String address, String telephone, boolean invented) {
    /** Whether the customer who reads it knows where to call and where to come; nobody calls an invented shop. */
    public boolean isReached() {
        return invented || !(address.isBlank() || telephone.isBlank());
    }

    /** Address and telephone as a line of a paper; blank where neither was given. */
    public String reached() {
        return Stream.of(address, telephone)
                .filter(each -> !each.isBlank())
                .map(SheetText::name)
                .collect(Collectors.joining(" · "));
    }

    /** Of a shop that only gave its name. */
    public static Letterhead of(String shopName) {
        return new Letterhead(shopName, "", "", false);
    }

    public static Letterhead ofInvented(String shopName) {
        return new Letterhead(shopName, "", "", true);
    }
}
