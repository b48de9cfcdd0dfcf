/**
 * What a tap costs, seen from outside: the board and the floor it stands on, each as a process of its own, tapped and
 * watched over the network. Start at {@link benchpace.bench.tap.Side}; the floor is {@link benchpace.bench.tap.Floor}.
 */
package benchpace.bench.tap;
