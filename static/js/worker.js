// The service worker: where the page is secure (TLS, or the board's own machine) it keeps what this device needs to open its
// page again without a network. The board puts VERSION and FILES before this text; another version is another worker.
// It keeps the instructor's and the helper's page as this device last saw them, and the files they use. It never keeps
// an answer of the interface, a stream, an evening that is played back (whose id alone has a dot), or another page, and forgets the pages as soon as the device is paired no more.
// It fetches by itself, not by api.js: what goes through it is the page's own request, and the answer whole.
/* global VERSION, FILES */

const SHELL = `benchpace-shell-${VERSION}`;
const PAGES = 'benchpace-pages';
const KEPT = /^\/(table|helper|classes\/[^/.]+\/(instructor|helper))$/;
const PAIRINGS = new Set(['/api/pair', '/api/unpair']);
const PATIENCE_MS = 8_000;
/** The studio's colour. The board's own word comes first, but where it is kept no page waits longer for that than a blink. */
const COLOURS = '/studio.css';
const SHEETS = '/static/css/';
const BLINK_MS = 300;

/** The page that was asked for last came from here: its files are not waited for one after the other. */
let away = false;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(SHELL).then((shell) => shell.addAll(FILES.map(fresh)))
    .then(sheetsOfKeptPages).then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  const old = (/** @type {string} */ name) => name.startsWith('benchpace-shell-') && name !== SHELL;
  event.waitUntil(caches.keys()
    .then((names) => Promise.all(names.filter(old).map((name) => caches.delete(name))))
    .then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (origin !== self.location.origin) return;
  if (request.method === 'POST' && PAIRINGS.has(pathname)) event.waitUntil(caches.delete(PAGES));
  if (request.method !== 'GET') return;
  if (request.mode === 'navigate' && KEPT.test(pathname)) event.respondWith(page(request, pathname));
  else if (FILES.includes(pathname) || pathname.startsWith(SHEETS)) event.respondWith(file(request, pathname));
  else if (pathname === COLOURS) event.respondWith(colours(event));
});

self.addEventListener('message', (event) => {
  if (event.data?.forget) event.waitUntil(caches.delete(PAGES));
  const path = event.data?.keep;
  if (typeof path === 'string' && KEPT.test(path)) {
    event.waitUntil(fetch(path, { headers: { Accept: 'text/html' } })
      .then((answer) => Promise.all([keepSheets(answer.clone()), keep(path, answer)])).catch(() => {}));
  }
});

/** Of this release, whatever the browser still has of the last. @param {string} path */
function fresh(path) {
  return new Request(path, { cache: 'reload' });
}

/** The board's own word comes first. @param {Request} request @param {string} path */
async function page(request, path) {
  try {
    const answer = await inTime(fetch(request));
    away = false;
    const copies = [answer.clone(), answer.clone()];
    keepSheets(copies[0]).catch(() => {}); // no page waits for it
    await keep(path, copies[1]);
    return answer;
  } catch {
    away = true;
    return await (await caches.open(PAGES)).match(path) ?? Response.error();
  }
}

/** @param {Request} request @param {string} path */
async function file(request, path) {
  const kept = away ? await (await caches.open(SHELL)).match(path) : undefined;
  if (kept) return kept;
  try {
    return await inTime(fetch(request));
  } catch {
    return await (await caches.open(SHELL)).match(path) ?? Response.error();
  }
}

/** What comes after the blink is kept for the next page. @param {FetchEvent} event */
function colours(event) {
  const asked = away ? Promise.reject(new Error('away')) : fetch(event.request).then(keepColours);
  event.waitUntil(asked.catch(() => {}));
  return caches.open(SHELL).then((shell) => shell.match(COLOURS)).then((kept) => inTime(asked, kept ? BLINK_MS : PATIENCE_MS)
    .catch(() => kept ?? new Response('', { headers: { 'Content-Type': 'text/css' } })));
}

/** @param {Response} answer */
async function keepColours(answer) {
  const copy = answer.clone();
  if (answer.status === 200) await (await caches.open(SHELL)).put(COLOURS, copy);
  return answer;
}

/** @param {Promise<Response>} answer @param {number} patience */
function inTime(answer, patience = PATIENCE_MS) {
  return Promise.race([answer, new Promise((_, reject) => { setTimeout(reject, patience); })]);
}

/** A page is kept with the device's own time, so that it knows later how old it is. @param {string} path @param {Response} answer */
async function keep(path, answer) {
  if (answer.status === 401 || answer.status === 403) return caches.delete(PAGES);
  if (answer.status !== 200 || answer.redirected || !answer.headers.get('Content-Type')?.startsWith('text/html')) return false;
  const html = (await answer.text()).replace('<body ', `<body data-kept="${Date.now()}" `);
  const headers = new Headers();
  for (const name of ['Content-Type', 'Content-Security-Policy', 'X-Content-Type-Options', 'Referrer-Policy', 'Cache-Control']) {
    if (answer.headers.has(name)) headers.set(name, answer.headers.get(name));
  }
  await (await caches.open(PAGES)).put(path, new Response(html, { headers }));
  return true;
}

/** A new release keeps what the pages that are kept ask for, before it is needed. */
async function sheetsOfKeptPages() {
  const pages = await caches.open(PAGES);
  for (const request of await pages.keys()) {
    const kept = await pages.match(request);
    if (kept) await keepSheets(kept).catch(() => {});
  }
}

/** The style sheets of a page come as one, under an address of their own. @param {Response} answer a page */
async function keepSheets(answer) {
  const shell = await caches.open(SHELL);
  for (const [, sheet] of (await answer.text()).matchAll(/<link rel="stylesheet" href="(\/static\/css\/[^"]+)"/g)) {
    if (!await shell.match(sheet)) await shell.add(fresh(sheet));
  }
}
