/**
 * Events and commands as JSON, recorded classes, and the {@code replay} of one. Start at {@link
 * benchpace.files.log.EventJson}.
 */
package benchpace.files.log;
