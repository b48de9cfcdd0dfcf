/**
 * Classes as entries of a calendar (RFC 5545). Start at {@link benchpace.files.calendar.ClassCalendar}.
 */
package benchpace.files.calendar;
