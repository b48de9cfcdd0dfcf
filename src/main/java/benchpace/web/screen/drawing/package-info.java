/** Drawings of our own, one family: one stroke, a few tones, two accents; vessels as a plan has them. */
package benchpace.web.screen.drawing;
