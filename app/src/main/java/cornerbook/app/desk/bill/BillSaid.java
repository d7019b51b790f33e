package cornerbook.app.desk.bill;

import cornerbook.core.say.Said;

/** What the pages of bills refuse. */
sealed interface BillSaid extends Said {
    record NoBill() implements BillSaid {}

    record NoWay() implements BillSaid {}

    record NoDay() implements BillSaid {}
}
