/**
 * Files on the disk of this machine: that only their owner reads what the shop knows of its customers. Where a file system
 * has no such rights, files are as the system makes them.
 */
@NullMarked
package cornerbook.app.file;

import org.jspecify.annotations.NullMarked;
