/**
 * Shows a plan as one ribbon running through its players, on a canvas that zooms and scrolls.
 *
 * <p>Three things are apart: {@code RelayPainter} and its layers draw; {@code Handles} are what is
 * taken hold of; what changes goes out through {@link stafette.desktop.relay.RelayGestures} and
 * comes back as another {@code ShownPlan}. Time-to-pixel, lanes and snapping are plain classes, and
 * all their lengths follow the system's type through {@code Viewport}.
 *
 * <p>Where time has room the ribbon grows to a staff: strain runs along its edges, notes stand
 * between, clef and key stay at the left. How high that is, is worked out bar by bar and kept from
 * plan to plan, so that lanes keep still in a drag. A lock is drawn where the lock itself is, as
 * clamps: it is seen without colours, and also where a player no longer keeps to it.
 */
@NullMarked
package stafette.desktop.relay;

import org.jspecify.annotations.NullMarked;
