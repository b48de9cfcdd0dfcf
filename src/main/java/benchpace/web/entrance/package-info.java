/**
 * Floor 5: the entrance, which every connection and every request passes before any route sees it. Nothing here knows
 * a class or a page; it sees to it that whoever sends or reads slowly, or comes in crowds, holds up nobody else: a
 * request is handed on when it is there whole, an answer is taken from its thread whole, and devices that are paired
 * have threads of their own. Start at {@link benchpace.web.entrance.Entrance}.
 */
package benchpace.web.entrance;
