// What is lit now, in words. Pointing at something shows it for as long as one points; choosing it keeps it.
const panel = byId('diagram-panel'), words = byId('diagram-words'), choices = byId('diagram-choices'), deeds = byId('diagram-deeds');
const hint = words.firstElementChild;
const rowButtons = new Map();
let kept = null, pointedAt = null, shown = null, litRows = [];

function show() {
  const thing = pointedAt ?? kept;
  if (thing?.id !== shown?.id) {
    shown = thing;
    const strands = thing ? strandsOf(thing) : [];
    light(strands, thing && thing.kind !== 'strand' ? { port: thing.port === undefined ? -1 : ownPort(thing.port), place: thing.place } : null);
    words.replaceChildren(...(thing ? wordsOf(thing, strands) : [hint]));
    words.parentElement.scrollTop = 0;
    choices.replaceChildren(...(thing ? choicesOf(thing).map(c => element('li', '', c)) : []));
  }
  markRows();
  deeds.hidden = !kept;
  byId('diagram-copying').hidden = true;
  byId('diagram-copied').textContent = '';
}

function markRows() {
  for (const row of litRows) {
    row.setAttribute('aria-pressed', 'false');
    row.closest('tr').classList.remove('lit');
  }
  litRows = kept ? strandsOf(kept).map(s => rowButtons.get(s.n)).filter(Boolean) : [];
  for (const row of litRows) {
    row.setAttribute('aria-pressed', 'true');
    row.closest('tr').classList.add('lit');
  }
}

function wordsOf(thing, strands) {
  if (thing.kind === 'strand')
    return strandLines(strands[0]);
  if (thing.kind === 'at') {
    const at = element('p', '', element('strong', `At ${addressOf(thing.port, thing.place)}${inRoom(thing.port)}.`), ` ${lightAt(thing.port, thing.place).join(' ')}`);
    return strands.length ? [at, ...strandLines(strands[0])] : [at];
  }
  if (thing.kind === 'part') {
    const part = data.parts[thing.part];
    const count = strands.length === 1 ? '1 strand passes it' : `${strands.length} strands pass it`;
    return [element('p', '', element('strong', part.name), `${part.is ? `, ${part.is}` : ''}${part.room ? `, in ${part.room}` : ''}. ${count}${strands.length ? `: ${numbers(strands)}` : ''}.`)];
  }
  return portLines(thing.port, strands);
}

function portLines(port, strands) {
  const own = ownPort(port);
  const plug = own === port ? '' : ` The plug in it is ${data.ports[own].name}.`;
  const lines = [element('p', '', element('strong', `At ${data.ports[port].name}${inRoom(port)}: what should arrive.`), plug)];
  if (!strands.length)
    return [...lines, element('p', 'No strand of an interface passes here: nothing should arrive. Treat it as live all the same.')];
  const places = placesOf(port);
  lines.push(element('ul', '', ...places.map(place => element('li', placeWords(own, place)))));
  if (strands.length === 1)
    lines.push(...strandLines(strands[0]));
  else
    lines.push(...strands.map(strand => element('p', `Strand ${strand.n}: ${strand.hops.join(' → ')}`)));
  return lines;
}

function strandLines(strand) {
  const lines = [element('p', '', element('strong', nameOf(strand)), `: ${endsOf(strand)} ${wayOfLight(strand)}`)];
  for (const trouble of troubleOf(strand))
    lines.push(element('p', trouble));
  lines.push(element('ol', '', ...strand.hops.map(hop => element('li', hop))));
  return lines;
}

// Numbers in runs, such as 1 to 12, 14.
function numbers(strands) {
  const runs = [];
  for (const { n } of strands) {
    const run = runs[runs.length - 1];
    if (run && run[1] + 1 === n)
      run[1] = n;
    else
      runs.push([n, n]);
  }
  return runs.map(([a, b]) => (a === b ? String(a) : b === a + 1 ? `${a}, ${b}` : `${a} to ${b}`)).join(', ');
}

// Where one may go on from here.
function choicesOf(thing) {
  const mostShown = 60;
  const portChoice = port => button(`Port ${data.ports[port].name}`, () => keep(portThing(port)));
  switch (thing.kind) {
    case 'strand': {
      const at = strandByNumber.get(thing.n).at;
      return [...new Set([at[0], at[at.length - 2]])].map(portChoice);
    }
    case 'at':
      return [portChoice(thing.port)];
    case 'part':
      return portsOf[thing.part].slice(0, mostShown).map(portChoice);
    default:
      return placesOf(thing.port).slice(0, mostShown).map(place => {
        const own = ownPort(thing.port);
        const name = placeName(own, place);
        return button(`${name ? `${name}: ` : ''}strand ${strandAt.get(keyOf(own, place)).strand.n}`, () => keep(atThing(own, place)));
      });
  }
}

function pointAt(thing) {
  if (thing?.id === pointedAt?.id)
    return;
  pointedAt = thing;
  show();
}

// The panel may grow under the mouse, and one may go there to read: what is lit stays lit until the mouse leaves it too.
function leave(event) {
  if (event.pointerType === 'mouse' && !panel.contains(event.relatedTarget))
    pointAt(null);
}

panel.addEventListener('pointerleave', leave);

// Keeps something lit until something else is, or it is cleared.
function keep(thing, bring = true) {
  const hadFocus = choices.contains(document.activeElement);
  kept = thing;
  pointedAt = null;
  show();
  setFragment(fragmentOf(thing));
  setPort(thing);
  if (bring)
    showKept();

  // The button that was pressed is gone; its place in the page is not.
  if (hadFocus)
    words.parentElement.focus();
}

function clear() {
  const hadFocus = panel.contains(document.activeElement);
  kept = pointedAt = null;
  show();
  setFragment('');
  if (hadFocus)
    words.parentElement.focus();
}

function showKept() {
  const strand = kept && strandsOf(kept).find(s => drawnOf(s).length);
  if (strand)
    bringIntoView(strand);
}

function setFragment(fragment) {
  try {
    history.replaceState(null, '', fragment || location.pathname + location.search);
  } catch {
    // A page from disk may not be allowed to; the link can be copied all the same.
  }
}

async function copyLink() {
  const link = location.href.split('#')[0] + fragmentOf(kept);
  try {
    await navigator.clipboard.writeText(link);
    byId('diagram-copied').textContent = 'The link is copied.';
  } catch {
    const address = byId('diagram-address');
    byId('diagram-copying').hidden = false;
    address.value = link;
    address.focus();
    address.select();
    byId('diagram-copied').textContent = 'This page may not use the clipboard: copy the marked link yourself.';
  }
}

byId('diagram-copy').addEventListener('click', copyLink);
byId('diagram-show').addEventListener('click', showKept);
byId('diagram-clear').addEventListener('click', clear);
document.addEventListener('keydown', event => {
  if (event.key === 'Escape' && (kept || pointedAt))
    clear();
});

function followFragment() {
  const thing = thingOf(location.hash);
  if (thing)
    keep(thing);
}

window.addEventListener('hashchange', followFragment);
