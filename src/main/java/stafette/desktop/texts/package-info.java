/**
 * The desktop's words, one bundle for each language; sentences of the judge come from {@code check}
 * as they are. Figures are read as people type them here.
 */
@NullMarked
package stafette.desktop.texts;

import org.jspecify.annotations.NullMarked;
