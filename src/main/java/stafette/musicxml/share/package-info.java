/**
 * Shares out: what each player has to be written, its notes as they are spelled on paper and the
 * signs beside them.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code notation}, {@code limits},
 * {@code chairs}, {@code plan}, {@code plan.written} and {@code musicxml.text}. Decisions:
 *
 * <ul>
 *   <li>A player's strokes are written from a list of the player's own, whether or not they follow
 *       one another: a half of a hocket and a thinned line are lines with gaps. Slurs and beams
 *       join only strokes between which nothing is silent.
 *   <li>Players who share a staff have one stream of notes there, since where they meet they have
 *       the same ones; labels say who plays where that changes. Where they have different notes
 *       each gets a voice. What the next given notes are for is said again if a label would be
 *       taken for theirs.
 * </ul>
 */
@NullMarked
package stafette.musicxml.share;

import org.jspecify.annotations.NullMarked;
