package cornerbook.app.sheet;

import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.photo.PhotoIntake;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/** The photos that were chosen for the sheet: small, three to a row, each with what it shows and when. */
final class PhotosSection {
    /** A page of them; more belong on the shop's screen. */
    private static final int MOST = 9;

    private static final int IN_A_ROW = 3;
    /** 54 mm at some 200 dots per inch: enough to know what is seen, and a few tens of kB. */
    private static final int LONG_SIDE_PX = 420;

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern(
                    "d MMM uuuu, HH:mm 'UTC'", Locale.ENGLISH)
            .withZone(ZoneOffset.UTC);

    private PhotosSection() {}

    static void write(List<KeptPhoto> photos, Xhtml page) {
        if (photos.isEmpty()) {
            return;
        }
        page.element("h2", "Photos").raw("<table class=\"photos\"><tbody>");
        for (int row = 0; row < Math.min(MOST, photos.size()); row += IN_A_ROW) {
            page.raw("<tr>");
            for (int i = row; i < row + IN_A_ROW; i++) {
                page.raw("<td>");
                if (i < Math.min(MOST, photos.size())) {
                    write(photos.get(i), page);
                }
                page.raw("</td>");
            }
            page.raw("</tr>");
        }
        page.raw("</tbody></table>\n");
        if (photos.size() > MOST) {
            page.element("p", Xhtml.more(photos.size() - MOST));
        }
    }

    private static void write(KeptPhoto kept, Xhtml page) {
        var content = PhotoIntake.reduced(kept.jpeg(), LONG_SIDE_PX).content();
        var shown = shown(kept.photo());
        var moment = MOMENT.format(kept.photo().madeAt());
        page.raw("<img alt=\"Photo: " + Xhtml.escape(shown + ", " + moment) + "\" src=\"data:image/jpeg;base64,")
                .raw(Base64.getEncoder().encodeToString(content))
                .raw("\"/>");
        page.raw("<p class=\"small\">").text(shown).raw("<br/>").text(moment).raw("</p>\n");
    }

    private static String shown(Photo photo) {
        var part = photo.part();
        var corner = photo.corner();
        var where = corner == null ? "The car" : SheetWords.corner(corner);
        return part == null ? where : where + ", " + SheetWords.part(part);
    }
}
