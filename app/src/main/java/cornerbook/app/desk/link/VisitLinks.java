package cornerbook.app.desk.link;

import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;

/** Addresses of a visit and of what is made of it. */
public final class VisitLinks {
    private VisitLinks() {}

    public static String visit(String visitId) {
        return "/visits/" + Address.segment(visitId);
    }

    /** Date and odometer of a visit, to be put right. */
    public static String visitData(String visitId) {
        return visit(visitId) + "/data";
    }

    /** The bay sheet of a visit, for tablets. */
    public static String bay(String visitId) {
        return "/bay" + visit(visitId);
    }

    public static String findings(String visitId) {
        return visit(visitId) + "/findings";
    }

    public static String handover(String visitId) {
        return visit(visitId) + "/handover.pdf";
    }

    /** Where the customer's answers are sent. */
    public static String retorqueConfirmed(String visitId) {
        return visit(visitId) + "/retorque/confirmed";
    }

    public static String declined(String visitId) {
        return visit(visitId) + "/declined";
    }

    /** The picture itself. */
    public static String photo(String photoId) {
        return "/bay/photos/" + Address.segment(photoId);
    }

    /** Where the choice about a photo is sent. */
    public static String photo(String visitId, String photoId) {
        return visit(visitId) + "/photos/" + Address.segment(photoId);
    }

    public static String plan(String visitId) {
        return visit(visitId) + "/plan";
    }

    public static String burnish(String visitId) {
        return visit(visitId) + "/burnish";
    }

    /** One tag a page, for a roll of labels. */
    public static String tags(String visitId) {
        return visit(visitId) + "/tags.pdf";
    }

    public static String tagsOnA4(String visitId) {
        return tags(visitId) + "?paper=a4";
    }

    public static String leaving(String visitId) {
        return visit(visitId) + "/leaving";
    }

    /** Readings of a visit go to the right car. */
    public static String move(String visitId) {
        return visit(visitId) + "/move";
    }

    public static String cancel(String visitId) {
        return visit(visitId) + "/cancel";
    }

    /** A cancelled visit counts again. */
    public static String restore(String visitId) {
        return visit(visitId) + "/restore";
    }

    /** Where somebody says that the car of a visit is. */
    public static String state(String visitId) {
        return visit(visitId) + "/state";
    }

    /** A page of the re-torques that are open. */
    public static String retorques(int from) {
        return from == 0 ? "/#retorques" : "/?again=" + from + "#retorques";
    }

    /** A page of the visits of a day. */
    public static String visits(LocalDate day, int from) {
        return "/?date=" + day + "&visits=" + from + "#visits-title";
    }

    /** Where somebody says what came of asking for a re-torque. */
    public static String retorqueAnswer(String visitId) {
        return retorque(visitId) + "/answer";
    }

    public static String retorque(String visitId) {
        return visit(visitId) + "/retorque";
    }

    /** The visit with the wheels of one set filled in as those that leave on the car. */
    public static String leavingWith(String visitId, String setId) {
        return visit(visitId) + "?set=" + Address.segment(setId) + "#leaving";
    }

    /** The visit after its readings were stored, with what was typed about the wheels and is not recorded yet. */
    public static String saved(String visitId, int readings, Map<String, String> typed) {
        return visit(visitId) + "?saved=" + readings
                + typed.entrySet().stream()
                        .map(field -> "&" + Address.segment(field.getKey()) + "=" + Address.segment(field.getValue()))
                        .collect(Collectors.joining());
    }
}
