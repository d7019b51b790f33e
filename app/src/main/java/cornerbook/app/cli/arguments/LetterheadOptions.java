package cornerbook.app.cli.arguments;

import cornerbook.app.sheet.Letterhead;
import picocli.CommandLine;

/** Whose paper the hand-over sheets are. */
public final class LetterheadOptions {
    @CommandLine.Option(names = "--shop", paramLabel = "${bundle:label-name}", descriptionKey = "option-shop")
    private String name = "";

    @CommandLine.Option(
            names = "--shop-address",
            paramLabel = "${bundle:label-address}",
            descriptionKey = "option-shop-address")
    private String address = "";

    @CommandLine.Option(
            names = "--shop-telephone",
            paramLabel = "${bundle:label-telephone}",
            descriptionKey = "option-shop-telephone")
    private String telephone = "";

    public Letterhead letterhead() {
        return new Letterhead(name, address, telephone, false);
    }
}
