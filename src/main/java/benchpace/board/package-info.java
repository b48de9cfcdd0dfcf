/**
 * Floor 4: one writer a class. A command comes in, {@code live} decides, {@code store} keeps, the state is folded, a
 * {@link benchpace.board.ClassView} is derived from it and the instant, and every screen is told. Nothing above this
 * package computes anything about a class: pages and JSON are two renderings of the one view. Start at
 * {@link benchpace.board.ClassBoard}, then {@link benchpace.board.ViewMaker}.
 */
package benchpace.board;
