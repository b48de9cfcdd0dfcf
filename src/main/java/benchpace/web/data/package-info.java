/**
 * The data that is the organiser's own: where it is, and what may be taken along of it. Start at {@link
 * benchpace.web.data.DataPages}.
 */
package benchpace.web.data;
