package cornerbook.app.desk.link;

import java.time.LocalDate;

/** Addresses of the store and of the sets in it. */
public final class StoreLinks {
    private StoreLinks() {}

    /** The places of the store, and what lies there. */
    public static String store() {
        return "/store";
    }

    /** Where it is said how a set was taken in. */
    public static String storedSet() {
        return store() + "/set";
    }

    /** One set, on its car or in the store. */
    public static String storedSet(String vehicleId, String setId) {
        return storedSet() + "?car=" + Address.segment(vehicleId) + "&set=" + Address.segment(setId);
    }

    /** Where photos of it are sent. */
    public static String photosOfSet() {
        return storedSet() + "/photos";
    }

    public static String photosOfSet(String vehicleId, String setId) {
        return photosOfSet() + "?car=" + Address.segment(vehicleId) + "&set=" + Address.segment(setId);
    }

    /** The receipt for it. */
    public static String receipt(String vehicleId, String setId) {
        return store() + "/receipt.pdf?car=" + Address.segment(vehicleId) + "&set=" + Address.segment(setId);
    }

    /** Stored sets that nobody fetched. */
    public static String left() {
        return store() + "/left";
    }

    /** Counts of what lies in the store. */
    public static String count() {
        return store() + "/count";
    }

    /**
     * One of them.
     *
     * @param place that was scanned last; may be empty
     */
    public static String count(String countId, String place) {
        return count() + "?count=" + Address.segment(countId)
                + (place.isEmpty() ? "" : "&place=" + Address.segment(place));
    }

    /** Which sets are fetched for the next day, in walking order. */
    public static String fetch() {
        return store() + "/fetch";
    }

    /** The same for this day. */
    public static String fetch(LocalDate day) {
        return fetch() + "?day=" + day;
    }

    /** Sets that have to be brought from a store elsewhere. */
    public static String bring() {
        return store() + "/bring";
    }

    /** That a room of the store is elsewhere. */
    public static String storeRoom() {
        return store() + "/room";
    }

    /** One rack of the store. */
    public static String rack(String rackId) {
        return store() + "/rack?rack=" + Address.segment(rackId);
    }

    /** Where sets go in and out by scan. */
    public static String scan() {
        return store() + "/scan";
    }

    /** The same with a set in hand that waits for its place. */
    public static String scanOf(String tag) {
        return scan() + "?tag=" + Address.segment(tag);
    }

    /** The same after a place was scanned. */
    public static String scanAt(String place) {
        return scan() + "?place=" + Address.segment(place);
    }

    /** The same to fetch sets for the car of a visit. */
    public static String scanFor(String visitId) {
        return scan() + "?visit=" + Address.segment(visitId);
    }

    /**
     * The same after a set was moved.
     *
     * @param visitId for whose car more sets are fetched; may be empty
     */
    public static String scanned(String tag, String visitId) {
        return scan() + "?was=" + Address.segment(tag)
                + (visitId.isEmpty() ? "" : "&visit=" + Address.segment(visitId));
    }
}
