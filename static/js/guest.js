// Keeps a guest's page true: asks again while it is looked at, and after the phone comes out of the pocket.

const EVERY_MS = 15_000;

const main = document.getElementById('guest');

async function refresh() {
  if (document.hidden || !main) return;
  try {
    const answer = await fetch(location.pathname, { headers: { Accept: 'text/html' }, cache: 'no-store' });
    if (!answer.ok) return;
    // The server's own escaped template.
    const fresh = new DOMParser().parseFromString(await answer.text(), 'text/html').getElementById('guest');
    if (fresh && fresh.innerHTML !== main.innerHTML) main.replaceChildren(...fresh.childNodes);
  } catch {
    return; // out of reach: what is shown stays until it is back
  }
}

if (main) {
  setInterval(refresh, EVERY_MS);
  document.addEventListener('visibilitychange', refresh);
}
