/**
 * Floor 5: the network itself. The server and what it needs that belongs to no one subject. Routes, JSON and words lie
 * in one room a subject beside it ({@code classes}, {@code shelf}, {@code guest}, {@code cure}, {@code report}, {@code
 * devices}, {@code pairing}, {@code stream}); {@code request} is what all of these share, {@code entrance} stands
 * before them, {@code screen} draws. Turns text into commands and views into text; decides nothing about a class. Start
 * at {@link benchpace.web.Server}.
 */
package benchpace.web;
