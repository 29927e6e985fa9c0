// What the page knows, looked up by maps. The shape of the data is told where it is written.
const byId = id => document.getElementById(id);
const root = byId('diagram');
const data = JSON.parse(byId('diagram-data').textContent);
const strandByNumber = new Map(data.strands.map(s => [s.n, s]));

// A position is a port and a place in it; as a key, one number.
const keyOf = (port, place) => port * 65536 + place;
const strandAt = new Map();
const meantAt = new Map();
for (const strand of data.strands) {
  for (let i = 0; i < strand.at.length; i += 2)
    strandAt.set(keyOf(strand.at[i], strand.at[i + 1]), { strand, index: i / 2 });
  if (strand.meant)
    meantAt.set(keyOf(...strand.meant), strand);
}

const portByName = new Map(data.ports.map((port, i) => [port.name, i]));
const portsOf = data.parts.map(() => []);
data.ports.forEach((port, i) => portsOf[port.part].push(i));

// The port whose positions count: of an adapter, the plug in it.
const ownPort = port => data.ports[port].plug ?? port;

const placeName = (port, place) => {
  const face = data.ports[port].face;
  return face === 'duplex' ? (place === 1 ? 'A' : 'B') : face === 'simplex' ? '' : String(place);
};

const addressOf = (port, place) => {
  const name = place > 0 ? placeName(port, place) : '';
  return name ? `${data.ports[port].name}:${name}` : data.ports[port].name;
};

const inRoom = port => {
  const room = data.parts[data.ports[port].part].room;
  return room ? `, in ${room}` : '';
};

// The strands of a port, by place; places without a shown strand are left out.
function placesOf(port) {
  const own = ownPort(port);
  const places = [];
  for (let place = 1; place <= data.ports[own].of; place++) {
    if (strandAt.has(keyOf(own, place)))
      places.push(place);
  }
  return places;
}

// What can be lit is a thing with an id: a strand, a position (at), a port or a part.
const strandThing = n => ({ id: `strand-${n}`, kind: 'strand', n });
const atThing = (port, place) => ({ id: `at-${port}-${place}`, kind: 'at', port, place });
const portThing = port => ({ id: `port-${port}`, kind: 'port', port });
const partThing = part => ({ id: `part-${part}`, kind: 'part', part });

function strandsOf(thing) {
  switch (thing.kind) {
    case 'strand':
      return [strandByNumber.get(thing.n)];
    case 'at': {
      const at = strandAt.get(keyOf(thing.port, thing.place));
      return at ? [at.strand] : [];
    }
    case 'port':
      return [...new Set(placesOf(thing.port).map(place => strandAt.get(keyOf(ownPort(thing.port), place)).strand))];
    default:
      return [...new Set(portsOf[thing.part].flatMap(port => strandsOf(portThing(port))))].sort((a, b) => a.n - b.n);
  }
}

// The part of the address behind #, and back. A position is written as its port with the position's name.
function fragmentOf(thing) {
  switch (thing.kind) {
    case 'strand': return `#strand-${thing.n}`;
    case 'at': return `#port=${encodeURIComponent(addressOf(thing.port, thing.place))}`;
    case 'port': return `#port=${encodeURIComponent(data.ports[thing.port].name)}`;
    default: return `#part=${encodeURIComponent(data.parts[thing.part].name)}`;
  }
}

function decoded(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function thingOf(fragment) {
  const strand = /^#strand-(\d+)$/.exec(fragment);
  if (strand)
    return strandByNumber.has(Number(strand[1])) ? strandThing(Number(strand[1])) : null;
  const part = /^#part=(.+)$/.exec(fragment);
  if (part) {
    const index = data.parts.findIndex(p => p.name === decoded(part[1]));
    return index < 0 ? null : partThing(index);
  }
  const port = /^#port=(.+)$/.exec(fragment);
  if (!port)
    return null;
  const name = decoded(port[1]);
  if (portByName.has(name))
    return portThing(portByName.get(name));
  const colon = name.lastIndexOf(':');
  const at = colon < 0 ? undefined : portByName.get(name.slice(0, colon));
  if (at === undefined)
    return null;
  for (let place = 1; place <= data.ports[at].of; place++) {
    if (placeName(at, place) === name.slice(colon + 1))
      return atThing(at, place);
  }
  return null;
}

// An element with its text and children; text is always set as text.
function element(name, text, ...children) {
  const made = document.createElement(name);
  if (text)
    made.textContent = text;
  made.append(...children);
  return made;
}

function button(text, deed) {
  const made = element('button', text);
  made.type = 'button';
  made.addEventListener('click', deed);
  return made;
}
