/** The verb for other shops' knowledge and the keys that sign it. */
@NullMarked
package cornerbook.app.cli.knowledge;

import org.jspecify.annotations.NullMarked;
