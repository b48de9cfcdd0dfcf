/**
 * Tests mirror the packages they speak of and read as sentences. Two things here hold for the whole house:
 * {@link benchpace.HouseTest} (who may know whom) and {@link benchpace.TidyTest} (form). A class under test is set up
 * with {@link benchpace.live.TestClass}, its plan taken from {@link benchpace.plan.TestPlans}.
 */
package benchpace;
