// Who is let in: signing devices out, naming them, and drawing links and PINs anew.

import { ask } from './api.js';
import * as dialogue from './dialogue.js';
import { forget } from './offline/shell.js';
import { onSubmit, submit } from './submit.js';

const SVG = 'http://www.w3.org/2000/svg';
const answerLine = document.getElementById('devices-answer');

/** @param {HTMLButtonElement} button @param {string} method @param {string} path @param {object} body @param {(said: any) => void} done */
function change(button, method, path, body, done) {
  return submit(button, answerLine, () => ask(path, { method, body }), done);
}

/** Asks first. @param {string} title @param {string} words @param {string} yes @returns {Promise<boolean>} */
function sure(title, words, yes) {
  document.getElementById('ask-title').textContent = title;
  document.getElementById('ask-words').textContent = words;
  document.getElementById('ask-yes').textContent = yes;
  return dialogue.asked('ask-dialog');
}

/** @param {string} id @param {{url: string, path: string, viewBox: string}} link @param {string} label */
function show(id, { url, path, viewBox }, label) {
  const place = document.getElementById(id);
  const code = document.createElementNS(SVG, 'svg');
  code.setAttribute('class', 'qr');
  code.setAttribute('role', 'img');
  code.setAttribute('aria-label', label);
  code.setAttribute('viewBox', viewBox);
  code.setAttribute('shape-rendering', 'crispEdges');
  const [x, y, width, height] = viewBox.split(' ');
  const paper = document.createElementNS(SVG, 'rect');
  for (const [name, value] of Object.entries({ class: 'qr__paper', x, y, width, height })) paper.setAttribute(name, value);
  const ink = document.createElementNS(SVG, 'path');
  ink.setAttribute('class', 'qr__ink');
  ink.setAttribute('d', path);
  code.append(paper, ink);
  const address = document.createElement('p');
  address.className = 'address';
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.textContent = url;
  address.append(anchor);
  place.replaceChildren(code, address);
  place.hidden = false;
}

/** @param {{helper: string, wall: string, instructor?: string}} pins */
function showPins({ helper, wall, instructor }) {
  document.getElementById('helper-pin').textContent = helper;
  document.getElementById('wall-pin').textContent = wall;
  const place = document.getElementById('new-pin');
  place.textContent = instructor ? `Your new PIN is ${instructor}. It is not shown again.`
    : 'Helpers and walls have new PINs. Yours is the one that was chosen.';
  place.hidden = false;
}

/** @type {Record<string, (button: HTMLButtonElement) => Promise<void>>} */
const actions = {
  'sign-out': async (button) => {
    const own = button.dataset.own === 'true';
    if (!await sure(`Sign out ${own ? 'this device' : button.dataset.called}?`,
      own ? 'You need a PIN or a link to come back.' : 'Its screens close at once. What it has not sent stays on it.',
      'Sign out')) return;
    await change(button, 'DELETE', `/api/devices/${button.closest('[data-mark]').dataset.mark}`, {}, () => {
      if (own) {
        forget();
        location.assign('/');
      } else {
        location.reload();
      }
    });
  },
  'others': async (button) => {
    if (!await sure('Sign out all others?', 'Every device but this one has to be paired again. Links and PINs stay as they are.',
      'Sign out all others')) return;
    await change(button, 'POST', '/api/devices/sign-out', { who: 'others' }, () => location.reload());
  },
  'all': async (button) => {
    if (!await sure('Sign out all devices?',
      'This one, too. All links and what was printed of them open nothing any more, and PINs are drawn anew. The class goes on; nobody can tap until they are paired again.',
      'Sign out all devices')) return;
    await change(button, 'POST', '/api/devices/sign-out', { who: 'all' }, ({ instructor }) => {
      forget();
      document.getElementById('out-words').textContent = instructor
        ? `Your new PIN is ${instructor}. It also stands on the board's console, and is not shown again here.`
        : 'Your PIN is the one that was chosen when the board was started.';
      dialogue.open('out-dialog');
    });
  },
  'instructor-link': (button) => change(button, 'POST', '/api/instructor-keys', {},
    (link) => show('instructor-link', link, 'QR code that pairs one instructor\'s device')),
  'helper-link': async (button) => {
    if (!await sure('New helpers\' link?', 'The old link and what was printed of it open nothing any more.', 'New link')) return;
    await change(button, 'POST', '/api/helper-keys', {},
      (link) => show('helper-link', link, 'QR code that pairs a helper\'s phone'));
  },
  'wall-link': async (button) => {
    if (!await sure('New wall link?', 'The old link opens nothing any more. Walls that are paired stay so.', 'New link')) return;
    await change(button, 'POST', '/api/wall-keys', {}, (link) => show('wall-link', link, 'QR code that pairs a wall'));
  },
  'pins': async (button) => {
    if (!await sure('New PINs?', 'The ones that were told before open nothing any more. Devices that are paired stay so.',
      'New PINs')) return;
    await change(button, 'POST', '/api/pins', {}, showPins);
  },
};

let naming = '';

document.addEventListener('click', (event) => {
  const button = event.target.closest('button');
  if (button?.dataset.act) actions[button.dataset.act](button);
  if (button && 'name' in button.dataset) {
    naming = button.closest('[data-mark]').dataset.mark;
    document.getElementById('device-name').value = button.dataset.name;
    dialogue.open('name-dialog');
  }
});
dialogue.start();

onSubmit('name-form', 'devices-answer', (form) => {
  dialogue.close('name-dialog');
  return ask(`/api/devices/${naming}`, { method: 'PUT', body: { name: form.elements.name.value.trim() } });
}, () => location.reload());

// Nobody is let in here any more: there is only the way out.
document.getElementById('out-dialog').addEventListener('cancel', (event) => event.preventDefault());
