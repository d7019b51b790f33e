/**
 * What is printed: the sheet that the customer takes home, one assessment as a PDF/A document of a page for the
 * customer and a page for the record, and the tags of the wheels. It states what the assessment and the wheel plan state and judges nothing itself. It
 * reads no clock and no file but its own fonts.
 */
@NullMarked
package cornerbook.app.sheet;

import org.jspecify.annotations.NullMarked;
