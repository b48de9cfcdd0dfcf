// The seat sheet without the board: what this page knows of the seat, and the taps that matter most.

import { waiting } from '../taps.js';
import { wordsOf } from '../words.js';
import { lineOf, markOf, triedFrom, wordOf } from './faces.js';
import { filled, marked } from './fill.js';
import { foreseen } from './foreseen.js';

/** @param {number} number of the seat @returns {DocumentFragment | undefined} nothing if the page carries no class */
export function sheetOf(number) {
  const all = foreseen();
  const seat = all?.shown.seats.find((s) => s.seat === number);
  if (!all || !seat) return undefined;
  const here = seat.phase !== 'expected' && seat.phase !== 'left' && seat.phase !== 'sharing';
  const open = !all.shown.closed;
  const word = wordOf(seat) || 'on pace';
  const part = marked(filled('sheet-words', {
    seat: number, name: seat.name, word, line: lineOf(seat, all), step: seat.step, helper: seat.claimed,
    candle: seat.poured && !seat.judged && !seat.firm ? 'Poured, setting. Its range is told when the board is back.' : '',
    stepName: all.steps.find((step) => step.id === seat.step)?.name ?? '',
    finish: open && here && seat.canFinish,
    still: open && here && seat.canFinish,
    claim: open && here && !seat.helper,
    sorted: open && seat.claimed !== '',
    judge: seat.poured && !seat.judged,
    triedFrom: triedFrom(seat),
    again: open && seat.poured,
    arrive: open && !here && seat.phase !== 'sharing',
    pause: open && here && !seat.paused,
    resume: open && here && seat.paused,
    leave: open && seat.phase !== 'left',
  }), markOf(seat));
  const list = part.querySelector('ol');
  const own = waiting().filter((tap) => tap.command.seat === number);
  for (const { key, command } of own) list.append(filled('sheet-unsent', { takeBack: key, words: wordsOf(command) }));
  if (own.length === 0) part.querySelector('.sheet__unsent')?.remove();
  return part;
}
