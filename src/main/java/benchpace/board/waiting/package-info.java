/**
 * The wait of a running class: what {@code breaks} is asked as the evening goes on, what of the last plan still holds,
 * and what of it is shown. Start at {@link benchpace.board.waiting.WaitChain}.
 */
package benchpace.board.waiting;
