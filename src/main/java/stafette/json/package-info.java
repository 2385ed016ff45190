/**
 * Translates: plans, checks, tempo tables and thinnings to JSON; plans and measured players from
 * it.
 *
 * <p>May import the rooms from {@code words} to {@code split}, whose results it writes down.
 * Decisions:
 *
 * <ul>
 *   <li>Each document is one tree of records ({@link stafette.json.Edition}). A member is declared
 *       in one place: its name, its type, what it means ({@link stafette.json.Means}), what it must
 *       be, whether it may be null or missing. The JSON Schemas in {@code shared/} are made from
 *       that by a test, and compared.
 *   <li>The library binds records; {@link stafette.json.Fitting} compares what is read with the
 *       same declarations first, so that all mistakes are told at once in our words, each with its
 *       file and its place there, and never the library's.
 *   <li>Members that are only told to others are never read back: files of older and newer releases
 *       open without them.
 *   <li>A plan file holds every figure it rests on. Opened again, its rates are those of the file,
 *       the meaning of techniques that of the tables.
 *   <li>A player's measured figure is a limit without spread, so that it holds at any assurance.
 * </ul>
 */
@NullMarked
package stafette.json;

import org.jspecify.annotations.NullMarked;
