// What a tap changes: the board's own fold for those taps that move a seat or the class.

import { HERE, fresh, furthestFinished, indexOf } from './table.js';

/**
 * @typedef {import('./table.js').Table} Table
 * @typedef {import('./table.js').Seat} Seat
 * @typedef {import('../box.js').Command} Command
 */

/** Somebody told a name that was forgotten since. */
const FORGOTTEN = '…';

/** @type {Record<string, (table: Table, seat: Seat, command: Command, at: number, seq: number) => void>} */
const CHANGES = {
  'open-step': (table, _, { step }, at, seq) => { table.opened[step] = { at, seq }; },
  'finish-step': (table, { candle }, { step }, at, seq) => finish(table, candle, step, at, seq),
  'still-at-it': (_, { candle }, { step }) => { candle.still.push(step); candle.hint = ''; },
  'pause': (_, { candle }, __, at) => { candle.paused = at; },
  'resume': (_, { candle }) => { candle.paused = 0; },
  'expect': (table, seat) => goAway(table, seat, 'expected'),
  'leave': (table, seat) => goAway(table, seat, 'left'),
  'arrive': (table, seat, { name }) => arrive(table, seat, name ?? ''),
  'pair': (table, seat, { with: other }) => pair(table, seat, table.seats.get(other)),
  'unpair': (_, seat) => standAlone(seat),
  'poured-again': (_, seat, __, at) => pourAgain(seat, at),
  'judge-set': (_, { candle }, __, at) => { candle.judged = at; },
  'judge-skin': (_, { candle }, __, at) => { candle.skin = at; },
  'claim': (_, { candle }, { helper }, at) => { candle.claim = { helper, at }; },
  'sorted': (_, { candle }) => { candle.claim = null; },
  'undo': (table, _, { seq }) => takeBack(table, seq),
  'close': (table, _, __, ___, seq) => { table.closed = seq || HERE; },
};

/**
 * @param {Table} table written on
 * @param {Command} command one that the rules let stand
 * @param {number} at when it was tapped, in ms
 * @param {number} seq the number of its event; 0 while the board has not answered
 */
export function apply(table, command, at, seq) {
  CHANGES[command.type]?.(table, table.seats.get(command.seat ?? 0), command, at, seq);
}

/** A tap that only fills a gap says nothing about the present. */
function finish(table, candle, step, at, seq) {
  const ahead = indexOf(table, step) > furthestFinished(table, candle);
  candle.finishes[step] = { at, seq };
  if (candle.hint === step) candle.hint = '';
  if (!ahead) return;
  candle.claim = null;
  if (at >= candle.paused) candle.paused = 0;
}

function goAway(table, seat, presence) {
  handOver(table, seat);
  seat.presence = presence;
  seat.candle.paused = 0;
  seat.candle.claim = null;
}

function arrive(table, seat, name) {
  const present = seat.presence === 'present';
  if (name) seat.name = name === FORGOTTEN ? '' : name;
  if (!present || (!name && Object.keys(seat.candle.finishes).length === 0)) {
    seat.presence = 'present';
    seat.candle.paused = 0;
  }
  const host = table.seats.get(seat.shares);
  if (host && host.presence !== 'present') handOver(table, host);
}

function sharing(table, host) {
  return [...table.seats.values()].filter((seat) => seat.shares === host.seat);
}

/** The candle stays with who is left of a pair. */
function handOver(table, host) {
  const others = sharing(table, host);
  const heir = others.find((seat) => seat.presence === 'present');
  if (!heir) return;
  for (const seat of others) seat.shares = heir.seat;
  host.candle.paused = 0;
  heir.candle = host.candle;
  heir.firm = host.firm;
  host.candle = fresh();
  host.firm = 0;
  heir.shares = 0;
  host.shares = heir.seat;
}

function pair(table, host, guest) {
  if (host.shares) standAlone(host);
  for (const seat of sharing(table, guest)) share(seat, host);
  share(guest, host);
}

function share(seat, host) {
  seat.shares = host.seat;
  seat.candle.claim = null;
  seat.candle.hint = '';
  if (seat.presence === 'present') seat.candle.paused = 0;
}

function standAlone(seat) {
  seat.shares = 0;
  if (seat.presence === 'present') seat.candle.paused = 0;
}

/** A new candle: what was seen of the old one no longer counts. */
function pourAgain(seat, at) {
  const { candle } = seat;
  seat.firm = 0;
  candle.again = at;
  if (candle.judged <= at) candle.judged = 0;
  if (candle.skin <= at) candle.skin = 0;
}

/** What is known of an earlier event is its step; of any other the board alone knows what it changed. */
function takeBack(table, seq) {
  if (table.closed === seq) table.closed = 0;
  for (const [id, mark] of Object.entries(table.opened)) if (mark.seq === seq) delete table.opened[id];
  for (const { candle } of table.seats.values()) {
    for (const [id, mark] of Object.entries(candle.finishes)) if (mark.seq === seq) delete candle.finishes[id];
  }
}
