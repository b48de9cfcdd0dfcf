// Who is let in: signing devices out, naming them, and drawing links and PINs anew.

import { forget } from './offline/shell.js';

const SVG = 'http://www.w3.org/2000/svg';
const answerLine = document.getElementById('devices-answer');

/** @param {string} path @param {string} method @param {object} [body] */
async function ask(path, method, body = {}) {
  const answer = await fetch(path, {
    method,
    headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
    body: JSON.stringify(body),
    credentials: 'same-origin',
  });
  let said = {};
  try {
    said = await answer.json();
  } catch { /* no words came with it */ }
  if (!answer.ok) throw new Error(said.detail ?? said.title ?? 'That was not possible.');
  return said;
}

/** @param {() => Promise<void>} action */
async function tried(action) {
  answerLine.textContent = '';
  try {
    await action();
  } catch (failure) {
    answerLine.textContent = failure instanceof TypeError ? 'The board cannot be reached just now.' : failure.message;
    answerLine.scrollIntoView({ block: 'nearest' });
  }
}

/** Asks first. @param {string} title @param {string} words @param {string} yes @param {() => Promise<void>} action */
function sure(title, words, yes, action) {
  const dialog = document.getElementById('ask-dialog');
  document.getElementById('ask-title').textContent = title;
  document.getElementById('ask-words').textContent = words;
  const button = document.getElementById('ask-yes');
  button.textContent = yes;
  button.onclick = () => {
    dialog.close();
    tried(action);
  };
  dialog.showModal();
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

const actions = {
  'sign-out': (button) => {
    const own = button.dataset.own === 'true';
    sure(`Sign out ${own ? 'this device' : button.dataset.called}?`,
      own ? 'You need a PIN or a link to come back.' : 'Its screens close at once. What it has not sent stays on it.',
      'Sign out', async () => {
        await ask(`/api/devices/${button.closest('[data-mark]').dataset.mark}`, 'DELETE');
        if (own) {
          forget();
          location.assign('/');
        } else {
          location.reload();
        }
      });
  },
  others: () => sure('Sign out all others?', 'Every device but this one has to be paired again. Links and PINs stay as they are.',
    'Sign out all others', async () => {
      await ask('/api/devices/sign-out', 'POST', { who: 'others' });
      location.reload();
    }),
  all: () => sure('Sign out all devices?',
    'This one, too. All links and what was printed of them open nothing any more, and PINs are drawn anew. The class goes on; nobody can tap until they are paired again.',
    'Sign out all devices', async () => {
      const { instructor } = await ask('/api/devices/sign-out', 'POST', { who: 'all' });
      forget();
      document.getElementById('out-words').textContent = instructor
        ? `Your new PIN is ${instructor}. It also stands on the board's console, and is not shown again here.`
        : 'Your PIN is the one that was chosen when the board was started.';
      document.getElementById('out-dialog').showModal();
    }),
  'instructor-link': () => tried(async () => show('instructor-link', await ask('/api/instructor-keys', 'POST'),
    'QR code that pairs one instructor\'s device')),
  'helper-link': () => sure('New helpers\' link?', 'The old link and what was printed of it open nothing any more.', 'New link',
    async () => show('helper-link', await ask('/api/helper-keys', 'POST'), 'QR code that pairs a helper\'s phone')),
  'wall-link': () => sure('New wall link?', 'The old link opens nothing any more. Walls that are paired stay so.', 'New link',
    async () => show('wall-link', await ask('/api/wall-keys', 'POST'), 'QR code that pairs a wall')),
  pins: () => sure('New PINs?', 'The ones that were told before open nothing any more. Devices that are paired stay so.',
    'New PINs', async () => showPins(await ask('/api/pins', 'POST'))),
};

let naming = '';

document.addEventListener('click', (event) => {
  const button = event.target.closest('button');
  if (!button) return;
  if (button.dataset.act) actions[button.dataset.act](button);
  if ('name' in button.dataset) {
    naming = button.closest('[data-mark]').dataset.mark;
    document.getElementById('device-name').value = button.dataset.name;
    document.getElementById('name-dialog').showModal();
  }
  if ('dismiss' in button.dataset) button.closest('dialog')?.close();
});

document.getElementById('name-form').addEventListener('submit', (event) => {
  event.preventDefault();
  document.getElementById('name-dialog').close();
  tried(async () => {
    await ask(`/api/devices/${naming}`, 'PUT', { name: document.getElementById('device-name').value.trim() });
    location.reload();
  });
});

// Nobody is let in here any more: there is only the way out.
document.getElementById('out-dialog').addEventListener('cancel', (event) => event.preventDefault());
