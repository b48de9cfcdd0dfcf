/**
 * Live screens: server-sent events, and how many may listen. Start at {@link benchpace.web.stream.Streams}.
 */
package benchpace.web.stream;
