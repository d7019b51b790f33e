/**
 * What the search for changes that no test notices (PIT) needs of its own. Its plugin for JUnit learns which tests a class has by
 * running them all, and does so again in each of its processes, one to each class that it changes: two thirds of its time. Here the
 * first process, which measures what each test covers, keeps the names, and the others read them.
 */
@NullMarked
package cornerbook.core.unnoticed;

import org.jspecify.annotations.NullMarked;
