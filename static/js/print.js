// Pages for paper: one button.

document.getElementById('print')?.addEventListener('click', () => window.print());
