/**
 * From one colour that a studio chose, what a screen needs to show it by day and by night, contrast kept. Start at
 * {@link benchpace.plan.colour.Lead}. The arithmetic is published: sRGB and contrast as WCAG 2.2 has them, Oklab as
 * Björn Ottosson wrote it down in 2020 and CSS Color 4 took it over.
 */
package benchpace.plan.colour;
