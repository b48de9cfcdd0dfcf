// A class looked back on: one button.

document.getElementById('print')?.addEventListener('click', () => window.print());
