/**
 * Floor 1: the class itself. What may be wished for, what the rules say to it, what has happened, and the state it adds
 * up to. Knows no clock, storage, web, cure or pace; every instant is a parameter. Start at {@link Rules}, then
 * {@link LiveClass}.
 */
package benchpace.live;
