/**
 * What every room of the web needs of one request: its body read, what may be asked, and how a refusal is answered (RFC
 * 9457). Start at {@link benchpace.web.request.Problem}.
 */
package benchpace.web.request;
