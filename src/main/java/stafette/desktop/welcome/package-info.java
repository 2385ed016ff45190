/** What is seen before a score is open: ways to open one. */
@NullMarked
package stafette.desktop.welcome;

import org.jspecify.annotations.NullMarked;
