/**
 * Shows a plan as one ribbon running through its players, on a canvas that zooms and scrolls.
 *
 * <p>Three things are apart: {@code RelayPainter} and its layers draw; {@code Handles} and {@code
 * Dragging} are what is taken hold of; what changes goes out through {@link
 * stafette.desktop.relay.RelayGestures} and comes back as another {@link
 * stafette.desktop.relay.ShownPlan}. Time-to-pixel, lanes and snapping are plain classes.
 */
@NullMarked
package stafette.desktop.relay;

import org.jspecify.annotations.NullMarked;
