/**
 * Translates: the tables in {@code limits/} to limits and weights; plans and verdicts to and from
 * JSON.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan} and {@code
 * check} (whose verdicts it writes down). Decisions:
 *
 * <ul>
 *   <li>Figures stand in CSV tables that a spreadsheet opens; each row names its source and grade.
 *       A user's rows replace built-in ones as a whole, by key.
 *   <li>Reading goes on after a mistake, so that all of them are told at once, each with file and
 *       row; nothing read is used once there is one.
 *   <li>JSON is built as a tree, member by member: the order and the numbers are the same in every
 *       run and locale, and no class of ours decides by its shape what a file looks like.
 *   <li>A plan file holds every figure it rests on. Opened again, its rates are those of the file,
 *       the meaning of techniques that of the tables.
 *   <li>A player's measured figure is a limit without spread, so that it holds at any assurance.
 * </ul>
 */
@NullMarked
package stafette.tables;

import org.jspecify.annotations.NullMarked;
