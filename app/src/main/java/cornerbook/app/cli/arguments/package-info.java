/**
 * What the verbs have in common as to their arguments: the language they speak, their help in the words of the catalogue, and
 * what is told of arguments that are not understood. It runs no verb and knows none by name.
 */
@NullMarked
package cornerbook.app.cli.arguments;

import org.jspecify.annotations.NullMarked;
