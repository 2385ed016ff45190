/**
 * Estimates: what a handoff does to the ear.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits} and {@code plan}.
 * Decisions:
 *
 * <ul>
 *   <li>It is an estimate from published figures: reported with its sources, never part of a cost
 *       or of a finding.
 * </ul>
 */
@NullMarked
package stafette.check.ear;

import org.jspecify.annotations.NullMarked;
