package cornerbook.app.desk;

/** A request that came to nothing, and why. */
public record ProblemPage(int status, String sentence) {
    public String heading() {
        return switch (status) {
            case 403 -> "Refused";
            case 404 -> "Not found";
            case 400, 413, 422 -> "Not understood";
            default -> "That did not work";
        };
    }
}
