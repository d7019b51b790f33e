/** The shop's own certificates, so that tablets reach the pages by https without anything from outside. */
@NullMarked
package cornerbook.app.certificate;

import org.jspecify.annotations.NullMarked;
