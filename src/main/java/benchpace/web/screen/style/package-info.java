/**
 * The look itself: letters, colours, marks, drawings, controls, and every screen in many situations, drawn by the very
 * templates that the screens use. Start at {@link benchpace.web.screen.style.StylePage}.
 */
package benchpace.web.screen.style;
