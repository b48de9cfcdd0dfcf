/** Floor 2: the prep sheet itself, put together from its parts. Start at {@link benchpace.prep.sheet.PrepSheet}. */
package benchpace.prep.sheet;
