// A wall's link carries its key behind the #, where no server log sees it. A wall that cannot be paired shows all the same.

export async function pair() {
  const [, key] = /^#wall=([\w-]{16,})$/.exec(location.hash) ?? [];
  if (!key) return;
  history.replaceState(null, '', location.pathname);
  if (document.body.dataset.role !== 'guest') return; // whoever is paired can do as much already
  try {
    const answer = await fetch('/api/pair', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
      body: JSON.stringify({ key }),
      credentials: 'same-origin',
    });
    if (answer.ok) location.reload(); // its stream is then a paired device's
  } catch { /* the board is away: the wall is shown when it is back, as a stranger's */ }
}
