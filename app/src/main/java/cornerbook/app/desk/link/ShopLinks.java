package cornerbook.app.desk.link;

import cornerbook.core.order.Article;

/** Addresses of the shop and its devices, of what it knows, orders and keeps for all cars. */
public final class ShopLinks {
    public static final String DEVICES = "/devices";

    public static final String PAIR = "/pair";

    private ShopLinks() {}

    /** Where the order of the work is set, for the shop. */
    public static String stepOrder() {
        return "/shop/order";
    }

    /** The same for cars of one kind. */
    public static String stepOrder(String vehicleId) {
        return stepOrder() + "?car=" + Address.segment(vehicleId);
    }

    /** What other shops' cars taught. */
    public static String othersKnowledge() {
        return "/shop/knowledge";
    }

    /** The server that takes the shop's e-mails. */
    public static String mailServer() {
        return "/shop/mail";
    }

    /** What to order until the coming change-over. */
    public static String order() {
        return "/order";
    }

    /** The year in pictures. */
    public static String year() {
        return "/year";
    }

    /** A list behind one of its pictures. */
    public static String behind(String list) {
        return year() + "/" + list;
    }

    /** One article of it, with the cars behind it. */
    public static String article(Article article) {
        var kind = article.kind();
        return order() + "/article?part=" + article.part().name() + "&kind=" + Address.segment(kind == null ? "" : kind)
                + "&text=" + Address.segment(article.text());
    }

    /** The data sheets of kinds of cars. */
    public static String kinds() {
        return "/shop/kinds";
    }

    /** One of them as a form, empty. */
    public static String kindForm() {
        return kinds() + "/form";
    }

    /** One of them, to be changed. */
    public static String kind(String name) {
        return kindForm() + "?kind=" + Address.segment(name);
    }

    /** One of them as text. */
    public static String kindText(String name) {
        return kinds() + "?kind=" + Address.segment(name);
    }

    /** One of them as a file. */
    public static String kindFile(String name) {
        return kinds() + "/file?kind=" + Address.segment(name);
    }

    /** A sheet with what the book has of a car, to be looked through and kept. */
    public static String kindOf(String vehicleId) {
        return kindForm() + "?car=" + Address.segment(vehicleId);
    }

    /** Where the whole book is taken out. */
    public static String out() {
        return "/shop/out";
    }

    /** What was taken out, as one file. */
    public static String outFile() {
        return out() + "/file";
    }
}
