// Celsius or Fahrenheit, as this browser is set. The board knows Celsius only: F = 9/5 C + 32, exactly.

import * as stored from './stored.js';

let fahrenheit = stored.read(stored.KEYS.degrees) === 'F';

/** @param {number} shown in the unit that the page is set to @returns {number} degrees Celsius */
export function toCelsius(shown) {
  return fahrenheit ? tidy((shown - 32) * 5 / 9) : shown;
}

/** Takes the dust of binary fractions off. @param {number} value */
function tidy(value) {
  return Math.round(value * 1e9) / 1e9;
}

/** @param {number} value */
function tenths(value) {
  return String(Math.round(value * 10) / 10);
}

/** @param {number} celsius */
function words(celsius) {
  return fahrenheit ? `${tenths(celsius * 9 / 5 + 32)} °F` : `${tenths(celsius)} °C`;
}

/** @param {Element} place @param {string} text */
function write(place, text) {
  if (place.textContent !== text) place.textContent = text;
}

/** What a typed Fahrenheit value will be noted as. @param {HTMLOutputElement} output */
function echo(output) {
  const field = document.getElementById(output.dataset.echoOf);
  const typed = field?.value.trim().replace(',', '.') ?? '';
  const number = Number(typed);
  write(output, fahrenheit && typed !== '' && Number.isFinite(number) ? `= ${tenths(toCelsius(number))} °C` : '');
}

/** Puts every temperature of a part of the page into the unit that is set. @param {ParentNode} root */
export function show(root = document) {
  for (const place of root.querySelectorAll('[data-celsius]')) write(place, words(Number(place.dataset.celsius)));
  for (const place of root.querySelectorAll('[data-degree-sign]')) write(place, fahrenheit ? '°F' : '°C');
  for (const button of root.querySelectorAll('[data-degrees-toggle]')) write(button, fahrenheit ? 'Use °C' : 'Use °F');
  for (const output of root.querySelectorAll('[data-echo-of]')) echo(output);
}

function toggle() {
  fahrenheit = !fahrenheit;
  stored.write(stored.KEYS.degrees, fahrenheit ? 'F' : 'C');
  show();
}

export function start() {
  document.addEventListener('click', (event) => { if (event.target.closest('[data-degrees-toggle]')) toggle(); });
  document.addEventListener('input', (event) => {
    const output = document.querySelector(`[data-echo-of="${CSS.escape(event.target.id)}"]`);
    if (output) echo(output);
  });
  document.addEventListener('reset', () => setTimeout(show));
  document.addEventListener('htmx:sseMessage', (event) => show(event.target));
  show();
}
