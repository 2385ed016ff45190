/**
 * Shows: one sub-package for each panel of the desktop.
 *
 * <p>May import the core, {@code picture} and {@code work}. Decisions:
 *
 * <ul>
 *   <li>Panels get immutable plans and verdicts, and send what the user does out through small
 *       interfaces; nothing is planned or judged in them.
 *   <li>The relay is drawn by the shapes of {@code picture}, so that screen and paper look alike.
 *   <li>Colours are looked up from one style sheet with a light and a dark half; sizes of type are
 *       relative to the system's own.
 *   <li>All words come from {@link stafette.desktop.texts.Texts}; what the judge says, names and
 *       refusals are said in the user's language there, and never shown by {@code getMessage}.
 * </ul>
 */
@NullMarked
package stafette.desktop;

import org.jspecify.annotations.NullMarked;
