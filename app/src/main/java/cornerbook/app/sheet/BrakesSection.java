package cornerbook.app.sheet;

import cornerbook.app.picture.brake.BrakeFigure;
import cornerbook.app.picture.brake.SeizingOverMonths;
import cornerbook.core.assess.Assessment;

/** The pads and discs of the four corners as pictures, in one row, and how likely a pad seizes. */
final class BrakesSection {
    private BrakesSection() {}

    static void write(Assessment assessment, Xhtml page) {
        var figures = BrakeFigure.of(assessment);
        if (figures.isEmpty()) {
            return;
        }
        page.raw("<div class=\"together\">").element("h2", "The brakes");
        page.raw("<table class=\"brakes\"><tr>");
        for (var figure : figures) {
            page.raw("<td><b>").text(figure.corner().name()).raw("</b><br/>");
            page.raw(Xhtml.described(figure.pads())).raw("<br/>");
            page.raw(Xhtml.described(figure.disc())).raw("</td>");
        }
        page.raw("</tr></table>\n");
        page.element(
                "p class=\"small\"",
                "Pads in mm, leading edge at the top: dashed the limit, dotted the visit before, as far as the disc when new. "
                        + "Discs: how far each point stands from their mean; dashed the variation that is allowed.");
        page.raw("</div>");
        var seizing = SeizingOverMonths.svg(assessment.seizing());
        if (!seizing.isEmpty()) {
            page.raw("<div class=\"together seizing\">")
                    .element("h3", "Chance that a pad seizes, if it is not cleaned again");
            page.raw(Xhtml.described(seizing)).raw("</div>");
        }
    }
}
