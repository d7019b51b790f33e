package cornerbook.app.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;

/** Fills the templates of papers. What comes out is XHTML: they close what they open, and the engine escapes every word. */
public final class SheetTemplates {
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "cornerbook.app.pages");

    private SheetTemplates() {}

    /**
     * The text of a paper.
     *
     * @param name of the template in the folder of papers
     * @param page what it takes
     */
    public static String fill(String name, Object page) {
        var output = new StringOutput();
        ENGINE.render("sheet/" + name + ".jte", page, output);
        return SheetText.printable(output.toString());
    }

    /** A picture with its description where the renderer looks for it, in the attribute alt. */
    public static String described(String svg) {
        return svg.replaceFirst("aria-label=(\"[^\"]*\")", "aria-label=$1 alt=$1");
    }
}
