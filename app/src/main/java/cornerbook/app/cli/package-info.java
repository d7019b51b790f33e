/**
 * The command line: one class per verb. It reads arguments, calls the other features and prints; it decides nothing
 * about cars. Every problem is one sentence on standard error and an exit code, never a stack trace.
 */
@NullMarked
package cornerbook.app.cli;

import org.jspecify.annotations.NullMarked;
