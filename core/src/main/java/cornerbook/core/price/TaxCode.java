package cornerbook.core.price;

import cornerbook.core.say.Said;

/** A tax that places have on file, by the name that it has in law. */
public enum TaxCode implements Said {
    /** Goods and services tax, of Canada. */
    GST,
    /** Québec sales tax. */
    QST,
    /** Harmonized sales tax, of Canada and a province together. */
    HST
}
