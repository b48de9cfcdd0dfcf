/**
 * A class over HTTP: setting it up, commands, its state as JSON, its pages and the addresses that stay. Start at {@link
 * benchpace.web.classes.ClassesApi} and {@link benchpace.web.classes.Pages}.
 */
package benchpace.web.classes;
