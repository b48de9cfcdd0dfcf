// A wall's link carries its key behind the #, where no server log sees it. A wall that cannot be paired shows all the same.

import { ask } from './api.js';

export async function pair() {
  const [, key] = /^#wall=([\w-]{16,})$/.exec(location.hash) ?? [];
  if (!key) return;
  history.replaceState(null, '', location.pathname);
  if (document.body.dataset.role !== 'guest') return; // whoever is paired can do as much already
  // where it cannot be, the wall is shown as a stranger's
  if ((await ask('/api/pair', { method: 'POST', body: { key } })).ok) location.reload(); // its stream is a paired device's
}
