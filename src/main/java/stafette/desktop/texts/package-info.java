/**
 * The desktop's words: its own in one bundle for each language, and what the rest of the program
 * says, translated. Figures are read as people type them.
 *
 * <ul>
 *   <li>{@code desktop}: labels of the window, by key.
 *   <li>{@code sentences}: the templates of {@link stafette.words.Sentence}, each its own key.
 *   <li>{@code names}: instruments, techniques, note values, pitches.
 *   <li>What has no translation, a user's own instrument for one, stays as it is.
 * </ul>
 */
@NullMarked
package stafette.desktop.texts;

import org.jspecify.annotations.NullMarked;
