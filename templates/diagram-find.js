// Search by label, the chooser of ports, and the filters.
const find = byId('diagram-find'), matches = byId('diagram-matches'), found = byId('diagram-found');
const partChooser = byId('diagram-part'), portChooser = byId('diagram-port');
const filters = ['network', 'link', 'finding'].map(name => byId(`diagram-${name}`)).filter(Boolean);
const mostMatches = 40;

// All labels with what they lead to, made when something is first looked for.
let labels = null;
function labelsOf() {
  if (labels)
    return labels;
  labels = [];
  const rooms = new Map();
  data.parts.forEach((part, i) => {
    if (part.room)
      rooms.set(part.room, [...(rooms.get(part.room) ?? []), i]);
  });
  for (const [room, parts] of rooms)
    labels.push({ label: room, words: `room ${room}: ${parts.length === 1 ? '1 part' : `${parts.length} parts`}`, go: () => listRoom(room, parts) });
  data.parts.forEach((part, i) => {
    if (part.own)
      labels.push({ label: part.name, words: `part ${part.name}${part.is ? `, ${part.is}` : ''}${part.room ? `, in ${part.room}` : ''}`, go: () => keep(partThing(i)) });
  });
  data.ports.forEach((port, i) => labels.push({ label: port.name, words: `port ${port.name}${inRoom(i)}`, go: () => keep(portThing(i)) }));
  for (const strand of data.strands)
    labels.push({ label: String(strand.n), words: `strand ${strand.n}: ${endOf(strand, true)} to ${endOf(strand, false)}`, alone: true, go: () => keep(strandThing(strand.n)) });
  for (const label of labels)
    label.text = label.label.toLowerCase();
  return labels;
}

// Exact names first, then beginnings, then what is inside; a strand only by its whole number.
function lookUp(wanted) {
  const text = wanted.trim().toLowerCase().replace(/^strand\s+/, '');
  if (!text)
    return [];
  const ranks = [[], [], []];
  for (const label of labelsOf()) {
    const at = label.text.indexOf(text);
    if (at < 0 || (label.alone && label.text !== text))
      continue;
    ranks[label.text === text ? 0 : at === 0 ? 1 : 2].push(label);
  }
  return ranks.flat();
}

function list(results, words) {
  matches.replaceChildren(...results.slice(0, mostMatches).map(r => element('li', '', button(r.words, r.go))));
  found.textContent = results.length > mostMatches ? `${words}; the first ${mostMatches} are shown, type more to narrow them` : words;
}

function search() {
  const results = lookUp(find.value);
  const count = results.length === 1 ? '1 match' : `${results.length} matches`;
  list(results, find.value.trim() ? (results.length ? count : `Nothing is labelled “${find.value.trim()}”.`) : '');
}

function listRoom(room, parts) {
  list(parts.map(i => ({ words: `part ${data.parts[i].name}${data.parts[i].is ? `, ${data.parts[i].is}` : ''}`, go: () => keep(partThing(i)) })), `${parts.length === 1 ? '1 part' : `${parts.length} parts`} in ${room}`);
  matches.querySelector('button')?.focus();
}

find.addEventListener('input', search);
find.addEventListener('keydown', event => {
  if (event.key === 'Enter')
    lookUp(find.value)[0]?.go();
});

// Parts by room, so that one finds what stands where one stands.
function fillParts() {
  const byRoom = new Map();
  data.parts.forEach((part, i) => {
    if (part.own && portsOf[i].length)
      byRoom.set(part.room ?? '', [...(byRoom.get(part.room ?? '') ?? []), i]);
  });
  for (const [room, parts] of byRoom) {
    const into = room ? partChooser.appendChild(Object.assign(document.createElement('optgroup'), { label: room })) : partChooser;
    for (const i of parts)
      into.append(new Option(data.parts[i].name, i));
  }
}

function fillPorts(part) {
  portChooser.replaceChildren(new Option(part === '' ? 'choose a part first' : 'choose a port', ''));
  portChooser.disabled = part === '';
  if (part !== '') {
    for (const port of portsOf[part])
      portChooser.append(new Option(data.ports[port].name.slice(data.parts[part].name.length + 1), port));
  }
}

// Lets the chooser show the port that is lit.
function setPort(thing) {
  const part = thing.port === undefined ? thing.part : data.ports[thing.port].part;
  if (part === undefined || !data.parts[part].own)
    return;
  partChooser.value = part;
  fillPorts(part);
  portChooser.value = thing.port ?? '';
}

partChooser.addEventListener('change', () => fillPorts(partChooser.value));
portChooser.addEventListener('change', () => {
  if (portChooser.value !== '')
    keep(portThing(Number(portChooser.value)));
});

function isWanted(strand, wanted) {
  const { network = '', link = '', finding = '' } = wanted;
  return (network === '' || strand.net.includes(Number(network)))
    && (link === '' || strand.link.includes(Number(link)))
    && (finding === '' || (finding === 'with' ? strand.find.length > 0
      : finding === 'without' ? strand.find.length === 0
        : strand.find.some(f => data.findings[f].code === finding)));
}

// Leaves out rows, and sheets on which nothing is left; strands beside wanted ones fade.
function filter() {
  const wanted = Object.fromEntries(filters.map(f => [f.id.slice('diagram-'.length), f.value]));
  const isAll = filters.every(f => f.value === '');
  let count = 0;
  const kinds = new Map();
  for (const strand of data.strands) {
    const isIn = isWanted(strand, wanted);
    count += isIn ? 1 : 0;
    const row = byId(`strand-${strand.n}`);
    if (row)
      row.hidden = !isIn;
    for (const { sheet, group } of drawnOf(strand)) {
      group.classList.toggle('left-out', !isIn);
      kinds.set(sheet, kinds.get(sheet) || isIn);
    }
  }
  for (const sheet of sheets)
    sheet.figure.hidden = !isAll && !kinds.get(sheet);
  byId('diagram-count').textContent = isAll ? '' : `${count} of ${data.strands.length} strands are shown.`;
}

for (const chooser of filters)
  chooser.addEventListener('change', filter);
byId('diagram-all').addEventListener('click', () => {
  for (const chooser of filters)
    chooser.value = '';
  filter();
  byId('diagram-count').textContent = `All ${data.strands.length} strands are shown.`;
});
