/**
 * Keeps: the text of a score as it stands in its file, and changes to it.
 *
 * <p>May import {@code words}, {@code time} and {@code score}. It knows elements and places, no
 * music. Decisions:
 *
 * <ul>
 *   <li>Writing is a list of replacements in the text, never a re-print: outside them the file
 *       stays byte for byte, and undoing them must give the input back.
 *   <li>Text is decoded strictly; what XML can't hold, or a charset can't, is refused and never
 *       replaced.
 *   <li>Of an archive only the score is unpacked, up to a ceiling; all else is copied packed.
 *   <li>Nothing outside the file is ever opened: no DTD, no entity, no network.
 * </ul>
 */
@NullMarked
package stafette.musicxml.text;

import org.jspecify.annotations.NullMarked;
