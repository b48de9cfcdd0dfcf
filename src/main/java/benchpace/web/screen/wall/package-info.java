/**
 * The screen on the wall. Start at {@link benchpace.web.screen.wall.WallPage}.
 */
package benchpace.web.screen.wall;
