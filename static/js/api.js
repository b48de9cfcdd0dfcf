// The one place that asks the board, but for the taps, whose queue has its own way to wait and to try again. Whatever comes
// back, or does not, is one outcome: what was asked for, or a sentence that can be shown.

import { token } from './token.js';

/** A network that swallows a question is not waited for longer, in ms. */
const PATIENCE_MS = 20_000;
const AWAY = 'The board cannot be reached just now.';
const NOT_POSSIBLE = 'That was not possible.';
const PROBLEM = /^urn:benchpace:([\w-]+)$/;

/** @typedef {{place: string, sentence: string}} Finding what is wrong with a plan, and where */
/**
 * @typedef {{ok: false, words: string, problem: string, status: number, problems: Finding[], tag: string}} Refused
 *   words: one sentence; problem: the board's name for it, empty if it gave none; status: of HTTP, 0 if the board did not
 *   answer; problems: all that is wrong with a plan that was sent; tag: of the version that stands now, if that was asked
 */
/** @template T @typedef {{ok: true, value: T, tag: string} | Refused} Outcome tag: the version's ETag; empty if it has none */
/**
 * @typedef {{method?: string, body?: object, text?: string, match?: string, known?: string,
 *   patience?: number}} How
 *   body: sent as JSON; text: JSON that is sent as it is; match: the ETag of the version that a change is meant for;
 *   known: the ETag of the answer that is there already, which is refused with status 304; patience: in ms
 */

/** @param {string} words @param {string} [problem] @param {number} [status] @returns {Refused} */
export function refused(words, problem = '', status = 0) {
  return { ok: false, words, problem, status, problems: [], tag: '' };
}

/**
 * @param {string} path
 * @param {How} [how]
 * @returns {Promise<Outcome<any>>} the JSON of the answer; an empty object if it has none
 */
export function ask(path, how = {}) {
  return fetched(path, 'application/json', how, (text) => {
    const value = text === '' ? {} : JSON.parse(text);
    if (typeof value !== 'object' || value === null) throw new TypeError('no answer of the board');
    return value;
  });
}

/** @param {string} path @param {How} [how] @returns {Promise<Outcome<Document>>} the board's own escaped template */
export function page(path, how = {}) {
  return fetched(path, 'text/html', how, (text) => new DOMParser().parseFromString(text, 'text/html'));
}

/** Commands whose answer has not come, by what they wish for. @type {Map<string, string>} */
const unanswered = new Map();

/**
 * Asks for a change with an id. Asked again for want of an answer, it is the same command, which the board counts once.
 * @param {string} path
 * @param {object} wish
 * @returns {Promise<Outcome<any>>}
 */
export async function command(path, wish) {
  const key = `${path} ${JSON.stringify(wish)}`;
  const commandId = unanswered.get(key) ?? token();
  unanswered.set(key, commandId);
  const outcome = await ask(path, { method: 'POST', body: { commandId, ...wish } });
  if (outcome.ok || (outcome.status > 0 && outcome.status < 500)) unanswered.delete(key);
  return outcome;
}

/**
 * @template T
 * @param {string} path
 * @param {string} type
 * @param {How} how
 * @param {(text: string) => T} read throws if it is not what was asked for, as the sign-in page of a network is not
 * @returns {Promise<Outcome<T>>}
 */
async function fetched(path, type, { method = 'GET', body, text: given, match, known, patience = PATIENCE_MS }, read) {
  const sent = given ?? (body && JSON.stringify(body));
  try {
    const answer = await fetch(path, {
      method,
      headers: {
        Accept: type,
        ...(sent !== undefined && { 'Content-Type': 'application/json' }),
        ...(match && { 'If-Match': match }),
        ...(known && { 'If-None-Match': known }),
      },
      body: sent,
      cache: 'no-store',
      credentials: 'same-origin',
      signal: AbortSignal.timeout?.(patience),
    });
    const text = await answer.text();
    const tag = answer.headers.get('ETag') ?? '';
    if (answer.ok) return { ok: true, value: read(text), tag };
    const { problem, words, problems } = problemIn(text);
    return { ...refused(words, problem, answer.status), problems, tag };
  } catch {
    return refused(AWAY);
  }
}

/** @param {string} text @returns {any} an empty object for what is no JSON object */
export function jsonOf(text) {
  try {
    return Object(JSON.parse(text));
  } catch {
    return {};
  }
}

/**
 * Reads what RFC 9457 calls problem details.
 * @param {string} text
 * @returns {{problem: string, words: string, problems: Finding[]}} no problem if the board did not say this
 */
export function problemIn(text) {
  const { type, detail, title, problems } = jsonOf(text);
  return {
    problem: PROBLEM.exec(String(type ?? ''))?.[1] ?? '',
    words: String(detail ?? title ?? NOT_POSSIBLE),
    problems: Array.isArray(problems) ? problems : [],
  };
}
