package cornerbook.app.sheet;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.util.OptionalInt;

/**
 * A sheet whose lines have their places, and that is not drawn yet: drawing takes most of the time, and a sheet that does not keep
 * to its pages is laid out anew with less.
 */
final class LaidOutSheet implements Closeable {
    private final ByteArrayOutputStream pdf = new ByteArrayOutputStream(128 * 1024);
    private final Closeable pictures;
    private final PdfBoxRenderer renderer;

    /** Lays it out. */
    LaidOutSheet(PdfRendererBuilder builder, Closeable pictures) {
        this.pictures = pictures;
        this.renderer = builder.toStream(pdf).buildPdfRenderer();
        renderer.layout();
    }

    int pages() {
        return renderer.getRootBox().getLayer().getPages().size();
    }

    /** The page on which a box of that id begins, from 1; empty when there is none. */
    OptionalInt pageOf(String id) {
        var box = renderer.getSharedContext().getBoxById(id);
        return box == null
                ? OptionalInt.empty()
                : renderer.getRootBox().getLayer().getPages().stream()
                        .filter(page -> box.getAbsY() >= page.getTop() && box.getAbsY() < page.getBottom())
                        .mapToInt(page -> page.getPageNo() + 1)
                        .findFirst();
    }

    /** Draws it; once. */
    byte[] draw() throws IOException {
        renderer.createPDF();
        return pdf.toByteArray();
    }

    @Override
    public void close() throws IOException {
        renderer.close();
        pictures.close();
    }
}
