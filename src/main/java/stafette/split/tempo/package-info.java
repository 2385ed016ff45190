/**
 * Compares: tempo against number of players.
 *
 * <p>May import {@code words}, {@code time}, {@code score}, {@code limits}, {@code plan}, {@code
 * check}, {@code split} and {@code split.rotate}. Decisions:
 *
 * <ul>
 *   <li>The fewest players are asked for by a price for each that outweighs all else: one search
 *       answers for every number of players, and knows nothing that the plain search doesn't.
 *   <li>Nothing about tempi is taken to be monotone: slow lines take more breath. An edge is where
 *       one mark has a plan and the next is proven to have none.
 * </ul>
 */
@NullMarked
package stafette.split.tempo;

import org.jspecify.annotations.NullMarked;
