package cornerbook.app.desk;

import cornerbook.app.request.Told;

/** A request that came to nothing, and why. */
public record ProblemPage(int status, String sentence) {
    public String heading() {
        return Told.labels("app/desk")
                .of(
                        switch (status) {
                            case 403 -> "heading-refused";
                            case 404 -> "heading-not-found";
                            case 400, 413, 422 -> "heading-not-understood";
                            default -> "heading-failed";
                        });
    }
}
