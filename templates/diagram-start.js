// Brings the page to life: the numbers in the table become buttons, the controls appear, and a link opens lit.
for (const strand of data.strands) {
  const cell = byId(`strand-${strand.n}`)?.cells[0];
  if (!cell)
    continue;
  const made = document.createElement('button');
  made.type = 'button';
  made.setAttribute('aria-pressed', 'false');
  made.value = strand.n;
  const unseen = element('span', 'Strand ');
  unseen.className = 'unseen';
  made.append(unseen, String(strand.n));
  cell.replaceChildren(made);
  rowButtons.set(strand.n, made);
}

const rows = root.querySelector('.rows tbody');
const numberAt = event => {
  const pressed = event.target.closest('button');
  return pressed && rows.contains(pressed) ? Number(pressed.value) : null;
};
rows.addEventListener('click', event => {
  const n = numberAt(event);
  if (n === null)
    return;
  if (kept?.id === `strand-${n}`)
    clear();
  else
    keep(strandThing(n), false);
});
rows.addEventListener('focusin', event => pointAt(strandThing(numberAt(event))));
rows.addEventListener('focusout', () => pointAt(null));
rows.addEventListener('pointerover', event => {
  if (event.pointerType === 'mouse')
    pointAt(numberAt(event) === null ? null : strandThing(numberAt(event)));
});
rows.addEventListener('pointerleave', leave);

fillParts();
byId('diagram-controls').hidden = false;
panel.hidden = false;
root.classList.add('scripted');
followFragment();

// Once the page is read the browser goes to the row of the table that a link names; the sheet is what one wants to see.
window.addEventListener('load', () => setTimeout(showKept));
