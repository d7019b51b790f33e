package cornerbook.app.desk.bill;

import cornerbook.core.say.Said;

/** What the pages of bills refuse. */
public sealed interface BillSaid extends Said {
    record NoBill() implements BillSaid {}

    record NoWay() implements BillSaid {}

    record NoDay() implements BillSaid {}

    record ShopNameMissing() implements BillSaid {}

    /** Of the shop, where its place is none of a country. */
    record CountryMissing(String place) implements BillSaid {}

    record RegistrationMissing() implements BillSaid {}

    record CustomerMissing() implements BillSaid {}

    /** Of the customer: that of the rules by which the car is judged. */
    record CustomerCountryMissing(String car) implements BillSaid {}

    record TooManyDecimals(String currency) implements BillSaid {}

    /** Nobody said why a bill is given back. */
    record NoReason() implements BillSaid {}
}
