package cornerbook.app.sheet;

import cornerbook.app.picture.Palette;
import cornerbook.words.Labels;

/** How the sheet looks: A4, one column, the colours of the house. */
public final class SheetStyle {
    private static final String CSS = """
            @page { size: A4; margin: 9mm 15mm 11mm 15mm;
              @bottom-right { content: "PAGE " counter(page) " OF " counter(pages); font: 7.5pt B612; color: SLATE; } }
            body { font: 8.2pt/1.23 B612, 'DejaVu Sans'; color: INK; margin: 0; word-wrap: break-word; }
            .wide { font-family: 'DejaVu Sans', B612; }
            h1 { font-size: 15pt; margin: 0 0 2mm 0; color: SLATE; }
            h2 { font-size: 10pt; margin: 1.9mm 0 0.4mm 0; color: SLATE; page-break-after: avoid; }
            h3 { font-size: 8.5pt; margin: 1.6mm 0 0.4mm 0; page-break-after: avoid; }
            p { margin: 0.6mm 0; }
            ul { margin: 0; padding-left: 4.5mm; }
            li { margin: 0.3mm 0; }
            table { border-collapse: collapse; width: 100%; }
            tr { page-break-inside: avoid; }
            th, td { text-align: left; vertical-align: top; padding: 0.6mm 2mm 0.6mm 0; }
            thead th { border-bottom: 0.4mm solid SLATE; }
            tbody th, tbody td { border-bottom: 0.15mm solid HAIRLINE; }
            .shop { font-weight: 700; color: SLATE; font-size: 10pt; }
            .reached { color: SLATE; }
            h1 { margin-top: 1mm; }
            .invented { color: PLUM; font-weight: 700; }
            .facts td { width: 25%; border-top: 0.15mm solid HAIRLINE; }
            .overview { border-left: 1.6mm solid SLATE; padding: 2mm 3mm; margin: 2mm 80mm 0 0; font-size: 12pt; line-height: 1.2; }
            svg { display: inline-block; vertical-align: middle; }
            .RUNS_OUT th { color: OCHRE; }
            .SPENT th, .UNSAFE th { color: PLUM; }
            .overview.RUNS_OUT { border-color: OCHRE; }
            .overview.SPENT, .overview.UNSAFE { border-color: PLUM; }
            .car { float: right; width: 74mm; margin: 2mm 0 0 4mm; }
            .car svg { width: 74mm; height: 57.2mm; }
            .clear { clear: both; }
            .unjudged { margin: 1.5mm 80mm 0 0; }
            .unjudged h2 { font-size: 8.5pt; margin-top: 0; color: INK; }
            .back { width: auto; margin: 2.5mm 80mm 0 0; }
            .back th { white-space: nowrap; color: SLATE; padding-right: 4mm; }
            .back th, .back td { border-top: 0.15mm solid SLATE; border-bottom: 0.15mm solid SLATE; }
            .declined { border-left: 0.6mm dashed OCHRE; padding-left: 3mm; margin-top: 1.5mm; page-break-inside: avoid; }
            .who { color: SLATE; font-weight: 700; }
            .values { font-size: 7.2pt; }
            .values th, .values td { padding-right: 2mm; }
            .values tbody th, .values th:first-child { white-space: nowrap; }
            .steps { font-size: 7.6pt; }
            .steps td { width: 25%; padding: 0.3mm 2mm 0.3mm 0; border: 0; }
            .fine { font-size: 6.4pt; line-height: 1.18; margin: 0.3mm 0; }
            .record h1 { font-size: 12pt; page-break-after: avoid; }
            .record { page-break-before: always; }
            .together { page-break-inside: avoid; }
            .seizing svg { width: 84mm; height: auto; }
            .brakes td { width: 25%; padding: 0 2mm 0 0; border: 0; }
            .brakes svg { width: 34mm; height: auto; }
            .photos td { width: 25%; border: 0; padding: 1mm 2mm 0 0; }
            .photos img { max-width: 41mm; max-height: 41mm; }
            .findings th { white-space: nowrap; }
            .verdict { width: 26mm; }
            .todo { width: 52mm; }
            .findings td p { margin: 0 0 0.4mm 0; }
            .findings td:nth-child(2) { font-weight: 700; }
            .box { border: 0.5mm solid OCHRE; padding: 0 3mm 1.5mm 3mm; margin: 2.5mm 80mm 0 0; page-break-inside: avoid; }
            .box h2 { margin-top: 1.5mm; }
            .close { page-break-inside: avoid; margin-top: 2mm; }
            .signatures td { width: 50%; padding: 1mm 4mm 0 0; border-top: 0.2mm solid INK; }
            .signatures { margin-top: 7mm; border-spacing: 6mm 0; border-collapse: separate; }
            .small { font-size: 7pt; color: SLATE; }
            .priced { margin: 3mm 0; font-size: 9.2pt; }
            .priced td, .priced th { padding: 1.2mm 2mm 1.2mm 0; }
            .priced .money { text-align: right; white-space: nowrap; width: 30mm; }
            .priced .total th, .priced .total td { border-bottom: 0; font-weight: 400; text-align: right; }
            .priced .total:last-child th, .priced .total:last-child td { font-weight: 700; font-size: 11pt; border-top: 0.4mm solid SLATE; }
            .drawn svg { width: 60mm; height: 18mm; }
            """.replace("SLATE", Palette.SLATE)
            .replace("INK", Palette.INK)
            .replace("OCHRE", Palette.OCHRE)
            .replace("PLUM", Palette.PLUM)
            .replace("HAIRLINE", Palette.HAIRLINE);

    private SheetStyle() {}

    public static String css(Labels labels) {
        return CSS.replace("PAGE", labels.of("page")).replace("OF", labels.of("page-of"));
    }
}
