/**
 * Asks: what is wanted, in the words of whoever wants it.
 *
 * <p>A line by part and bars, players by name, locks by beat, tempi by note value; and the brief
 * that comes of them. May import the rooms from {@code words} to {@code json}, and {@code keep}.
 * Decisions:
 *
 * <ul>
 *   <li>A stroke is named by its bar as printed, or by the bar counted from 1 where a number is
 *       printed more than once, so that locks find their stroke again.
 *   <li>A kept plan opens with the question that it answers; where its score is another one by now
 *       it opens without plan and locks rather than not at all.
 * </ul>
 */
@NullMarked
package stafette.ask;

import org.jspecify.annotations.NullMarked;
