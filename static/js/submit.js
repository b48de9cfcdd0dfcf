// What is pressed to ask something of the board. It rests while that is under way, so that nothing is sent twice, says in
// its place why it could not be, and leaves the focus where it was.

/** @typedef {import('./api.js').Refused} Refused */
/** @template T @typedef {import('./api.js').Outcome<T>} Outcome */

/** @type {WeakSet<Element>} */
const underWay = new WeakSet();

/** @param {Element} pressed @returns {HTMLButtonElement[]} those that rest with it */
function buttonsOf(pressed) {
  const all = pressed instanceof HTMLButtonElement ? [pressed]
    : [...pressed.querySelectorAll(pressed instanceof HTMLFormElement ? '[type=submit]' : 'button')];
  return all.filter((button) => !button.disabled);
}

/** @param {HTMLElement | null} place nothing where it is told elsewhere @param {string} words */
export function say(place, words) {
  if (!place) return;
  place.textContent = words;
  if (words) place.scrollIntoView({ block: 'nearest' });
}

/**
 * @template T
 * @param {Element} pressed a button; a form, whose submitting buttons are meant; or what holds buttons that exclude each other
 * @param {HTMLElement | null} place where it is said why not
 * @param {() => Outcome<T> | Promise<Outcome<T>>} action
 * @param {(value: T) => unknown} done
 * @param {(refusal: Refused) => unknown} [no] in place of saying why
 */
export async function submit(pressed, place, action, done, no = (refusal) => say(place, refusal.words)) {
  if (underWay.has(pressed)) return;
  underWay.add(pressed);
  say(place, '');
  const focused = document.activeElement;
  const buttons = buttonsOf(pressed);
  for (const button of buttons) button.disabled = true;
  try {
    const outcome = await action();
    await (outcome.ok ? done(outcome.value) : no(outcome));
  } finally {
    for (const button of buttons) button.disabled = false;
    underWay.delete(pressed);
    // a button that rests loses the focus, to a question that is closed by now too; one that was swapped meanwhile has
    // another in its place
    const kept = focused?.isConnected ? focused : document.getElementById(focused?.id ?? '');
    if (document.activeElement?.matches('body, dialog:not([open]) *')) kept?.focus({ preventScroll: true });
  }
}

/**
 * @template T
 * @param {string} id of a form; it may not be there
 * @param {string} placeId
 * @param {(form: HTMLFormElement) => Outcome<T> | Promise<Outcome<T>>} action
 * @param {(value: T) => unknown} done
 */
export function onSubmit(id, placeId, action, done) {
  const form = document.getElementById(id);
  form?.addEventListener('submit', (event) => {
    event.preventDefault();
    submit(form, document.getElementById(placeId), () => action(form), done);
  });
}
