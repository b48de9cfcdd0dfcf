/**
 * Setting a class up, changing that until it begins, correcting it afterwards, and deleting one that was set up by
 * mistake. Start at {@link benchpace.web.setup.SetupApi}.
 */
package benchpace.web.setup;
