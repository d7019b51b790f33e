/** What is seen at tyre, wheel, corner and car, and what it comes to. A sign is told only when it was seen. */
@NullMarked
package cornerbook.core.sight.judge;

import org.jspecify.annotations.NullMarked;
