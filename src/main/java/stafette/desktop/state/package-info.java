/**
 * What is on the desk, and what can be done to it: no window, no toolkit.
 *
 * <ul>
 *   <li>A {@link stafette.desktop.state.Desk} never changes; undoing is going back to an earlier
 *       one.
 *   <li>A {@link stafette.desktop.state.Session} is used from one thread, that of the window; what
 *       takes long runs elsewhere and is taken over only if it is still wanted.
 *   <li>The desk says where it is kept: work by hand that is in no file is asked about before the
 *       desk is cleared; what a choice or a search brings back is not.
 *   <li>A remedy is taken by asking what it changes; where that leads to another question than the
 *       remedy's plan answers, as with notes left out, it can't be taken.
 *   <li>Each step is kept in case of a crash, beside the window, the newest state only.
 * </ul>
 */
@NullMarked
package stafette.desktop.state;

import org.jspecify.annotations.NullMarked;
