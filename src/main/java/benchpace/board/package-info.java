/**
 * Floor 4: one writer a class. A command comes in, {@code live} decides, {@code store} keeps, the state is folded, a
 * view is derived from it and the instant, and every screen is told. Nothing above this floor computes anything about a
 * class. Its rooms, from the top: the writer itself (here), {@code view}, {@code waiting}, {@code pacing}, {@code
 * cooling}; each may use those after it, and all of them {@code attempt} and {@code time}. The book of plans ({@code
 * plans}) stands apart: it knows no class. Start at {@link benchpace.board.ClassBoard}.
 */
package benchpace.board;
