/** The prep sheet on the wire. Start at {@link benchpace.files.prep.PrepJson}. */
package benchpace.files.prep;
