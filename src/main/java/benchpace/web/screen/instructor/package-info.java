/**
 * The table on the instructor's tablet: tiles, what is on now and next, the sheet of a seat. Start at {@link
 * benchpace.web.screen.instructor.InstructorPage}.
 */
package benchpace.web.screen.instructor;
