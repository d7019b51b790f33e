package cornerbook.app.desk.link;

/** Addresses of prices, estimates and bills. */
public final class MoneyLinks {
    /** Behind it stands the secret of an estimate that a customer answers without pairing. */
    public static final String AGREE = "/agree/";

    private MoneyLinks() {}

    /** What the work of a visit would cost, and what the customer said to it. */
    public static String estimate(String visitId) {
        return VisitLinks.visit(visitId) + "/estimate";
    }

    /** One of its estimates, for paper. */
    public static String estimatePdf(String visitId, int turn) {
        return estimate(visitId) + ".pdf?turn=" + turn;
    }

    /** Where the customer answers the last estimate on a tablet of the shop. */
    public static String agree(String visitId) {
        return VisitLinks.visit(visitId) + "/agree";
    }

    /** What was charged for a visit, and what was paid. */
    public static String bill(String visitId) {
        return VisitLinks.visit(visitId) + "/bill";
    }

    /** The latest bills of the shop. */
    public static String bills() {
        return "/bills";
    }

    /** A bill or a credit note, for paper. */
    public static String billPdf(int number) {
        return bills() + "/" + number + ".pdf";
    }

    /** The same for other programs. */
    public static String billXml(int number) {
        return bills() + "/" + number + ".xml";
    }

    /** What the shop's work and parts cost. */
    public static String prices() {
        return "/shop/prices";
    }
}
