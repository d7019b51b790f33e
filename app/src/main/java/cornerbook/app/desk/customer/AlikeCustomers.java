package cornerbook.app.desk.customer;

import cornerbook.app.desk.customer.CardRow.Alike;
import cornerbook.app.desk.customer.CardRow.Sign;
import cornerbook.app.exchange.card.PersonCard;
import cornerbook.core.car.Customer;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Finds customers who may be the person of a card: by the last digits of the telephone, by the e-mail address whatever its letters' size,
 * by the name whatever its accents and the order of its parts.
 */
final class AlikeCustomers {
    /** With or without the country before them. Common practice, no source. */
    private static final int DIGITS = 9;

    private static final int FEWEST_DIGITS = 7;
    private static final int MOST_ALIKE = 3;

    private final Map<Sign, Map<String, List<Customer>>> known = new HashMap<>();

    AlikeCustomers(List<Customer> customers) {
        for (var customer : customers) {
            add(Sign.TELEPHONE, phone(customer.phone()), customer);
            add(Sign.E_MAIL, email(customer.email()), customer);
            add(Sign.NAME, name(customer.name()), customer);
        }
    }

    private void add(Sign sign, String key, Customer customer) {
        if (!key.isEmpty()) {
            known.computeIfAbsent(sign, each -> new HashMap<>())
                    .computeIfAbsent(key, each -> new ArrayList<>())
                    .add(customer);
        }
    }

    /** The likeliest first. */
    List<Alike> of(PersonCard card) {
        var found = new LinkedHashMap<String, Alike>();
        find(Sign.TELEPHONE, phone(card.phone()), card, found);
        find(Sign.E_MAIL, email(card.email()), card, found);
        find(Sign.NAME, name(card.name()), card, found);
        return found.values().stream()
                .sorted(Comparator.comparing(Alike::sign))
                .limit(MOST_ALIKE)
                .toList();
    }

    private void find(Sign sign, String key, PersonCard card, Map<String, Alike> found) {
        known.getOrDefault(sign, Map.of())
                .getOrDefault(key, List.of())
                .forEach(customer -> found.putIfAbsent(customer.id(), new Alike(customer, sign, lacks(customer, card))));
    }

    private static boolean lacks(Customer customer, PersonCard card) {
        return isMissing(customer.phone(), card.phone())
                || isMissing(customer.email(), card.email())
                || isMissing(customer.language(), card.language());
    }

    private static boolean isMissing(@Nullable String known, @Nullable String onCard) {
        return (known == null || known.isEmpty()) && onCard != null;
    }

    private static String phone(@Nullable String number) {
        var digits = number == null ? "" : number.replaceAll("\\D", "");
        return digits.length() < FEWEST_DIGITS ? "" : digits.substring(Math.max(0, digits.length() - DIGITS));
    }

    private static String email(@Nullable String address) {
        return address == null ? "" : address.strip().toLowerCase(Locale.ROOT);
    }

    private static String name(String name) {
        var plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
        var parts = plain.split(" ", -1);
        Arrays.sort(parts);
        return String.join(" ", parts);
    }
}
