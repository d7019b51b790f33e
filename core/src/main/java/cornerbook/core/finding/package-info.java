/**
 * What a judge is given and what it gives: limits, knowledge and distances on one side, findings with their verdict and
 * evidence on the other. It knows the car and no room that judges. Every room that judges speaks through these values.
 */
@NullMarked
package cornerbook.core.finding;

import org.jspecify.annotations.NullMarked;
