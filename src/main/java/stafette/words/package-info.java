/**
 * Phrases: sentences as a template and what fills it, so that they can be said in any language.
 *
 * <p>May import no other room. Decisions:
 *
 * <ul>
 *   <li>A template is English and is its own key, as in gettext: the code reads as the user does.
 *   <li>The core makes sentences, never strings out of pieces; what turns them into another
 *       language stands in {@code desktop.texts}.
 *   <li>A fact that reads otherwise in another language (a place, a tempo, a name of an instrument)
 *       is {@link stafette.words.Sayable}; a text is a proper name and stays as it is.
 *   <li>What can be set is a {@link stafette.words.Settable} in a sentence: options belong to the
 *       command line, labels to the window, and what is said must read well with either or neither.
 * </ul>
 */
@NullMarked
package stafette.words;

import org.jspecify.annotations.NullMarked;
