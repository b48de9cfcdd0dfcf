/**
 * Floor 5: the network. Routes, access, server-sent events, pages and problem details. Turns text into commands and
 * views into text; decides nothing about a class. Start at {@link benchpace.web.Server}.
 */
package benchpace.web;
