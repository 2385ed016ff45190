/**
 * Translates: the tables in {@code limits/} to limits, statements and weights.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits} and {@code plan}.
 * Decisions:
 *
 * <ul>
 *   <li>Figures stand in CSV tables that a spreadsheet opens; each row names its source and grade.
 *       A user's rows replace built-in ones as a whole, by key.
 *   <li>Tables that contradict a statement can be used: it is told, with the rows of both and what
 *       to do, to whoever validates them.
 *   <li>Reading goes on after a mistake, so that all of them are told at once, each with file and
 *       row; nothing read is used once there is one.
 * </ul>
 */
@NullMarked
package stafette.tables;

import org.jspecify.annotations.NullMarked;
