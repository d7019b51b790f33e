/**
 * What a list shows of each car: the gravest finding of its latest visit, kept with what it was judged by. A row is written by
 * whoever judges; whether it is old is told by comparing, so that no change of the book has to say which rows it makes old.
 */
@NullMarked
package cornerbook.app.book.verdict;

import org.jspecify.annotations.NullMarked;
