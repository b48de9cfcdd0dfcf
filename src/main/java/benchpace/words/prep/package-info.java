/**
 * The prep sheet in words: problems, cautions, circuits, melters, the cards of safety and labels, each sentence in one
 * place. Start at {@link benchpace.words.prep.PrepWords}; {@link benchpace.words.prep.PrepText} is the whole sheet as
 * plain text.
 */
package benchpace.words.prep;
