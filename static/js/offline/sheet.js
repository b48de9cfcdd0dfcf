// The seat sheet without the board: what this page knows of the seat, and the taps that matter most.

import { waiting } from '../taps.js';
import { wordsOf } from '../words.js';
import { markOf, wordsOf as said } from './faces.js';
import { filled, marked } from './fill.js';
import { foreseen } from './foreseen.js';
import { isSettled, tapOf, testedFrom } from './hand.js';

/** @param {number} number of the seat @returns {DocumentFragment | undefined} nothing if the page carries no class */
export function sheetOf(number) {
  const all = foreseen();
  const seat = all?.shown.seats.find((s) => s.seat === number);
  if (!all || !seat) return undefined;
  const here = seat.phase !== 'expected' && seat.phase !== 'left' && seat.phase !== 'sharing';
  const open = !all.shown.closed;
  const { word, line } = said(seat, all);
  const tap = tapOf(all.steps, all.shown, seat);
  const part = marked(filled('sheet-words', {
    seat: number, name: seat.name, word: word || 'on pace', line, step: tap.step, helper: seat.claimed,
    candle: seat.poured && !seat.judged && !seat.firm ? 'Poured, setting. Its range is told when the board is back.' : '',
    stepName: all.steps.find((step) => step.id === tap.step)?.name ?? '',
    finish: open && here && tap.canFinish,
    still: open && here && seat.canFinish,
    claim: open && here && !seat.helper,
    sorted: open && seat.claimed !== '',
    judge: open && seat.poured && !isSettled(all.steps, seat),
    triedFrom: testedFrom(seat),
    again: open && seat.poured,
    arrive: open && !here && seat.phase !== 'sharing',
    pause: open && here && !seat.paused,
    resume: open && here && seat.paused,
    leave: open && seat.phase !== 'left',
  }), markOf(seat));
  putHandFirst(part, seat, tap.triedFrom);
  const list = part.querySelector('ol');
  const own = waiting().filter((tap) => tap.command.seat === number);
  for (const { key, command } of own) list.append(filled('sheet-unsent', { takeBack: key, words: wordsOf(command) }));
  if (own.length === 0) part.querySelector('.sheet__unsent')?.remove();
  return part;
}

/**
 * While a candle sets, the hand test is the button that stands out, and both ways past the cure ask too early.
 * @param {DocumentFragment} part
 * @param {import('./foresee.js').SeatShown} seat
 * @param {string} finishFrom before when the tap that finishes its step asks first
 */
function putHandFirst(part, seat, finishFrom) {
  const test = part.querySelector('#sheet-set');
  const finish = part.querySelector('#sheet-finish');
  if (finish) finish.dataset.triedFrom = finishFrom;
  if (!test || seat.phase !== 'curing') return;
  test.parentElement.prepend(test);
  test.classList.add('button--primary');
  finish?.classList.remove('button--primary');
}
