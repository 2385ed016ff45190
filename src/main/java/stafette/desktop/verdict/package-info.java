/** Shows what the judge says of a plan: findings, what it costs and why, and other plans beside. */
@NullMarked
package stafette.desktop.verdict;

import org.jspecify.annotations.NullMarked;
