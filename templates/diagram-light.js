// Lights up strands on the sheets: a wide copy with arrowheads above the faded rest, and rings round its positions. Only the
// copies are made and taken away; what fades does so by one class on the container.
const container = byId('diagram-sheets');
const svgName = 'http://www.w3.org/2000/svg';

const sheets = data.sheets.map((sheet, number) => {
  const figure = byId(sheet.id);
  const svg = figure.querySelector('svg');
  const layer = byId(`${sheet.svg}strands`);
  layer?.classList.add('layer-strands');
  byId(`${sheet.svg}expected`)?.classList.add('layer-expected');
  return { number, title: sheet.title, figure, svg, view: figure.querySelector('.view'), layer, spots: sheet.spots, links: sheet.links, width: svg.viewBox.baseVal.width };
});

// The drawn groups of each strand; a strand that comes to a sheet twice has two. Gone through once, when first asked for.
let drawn = null;
function drawnOf(strand) {
  if (!drawn) {
    drawn = new Map();
    for (const sheet of sheets) {
      for (const group of sheet.layer?.children ?? []) {
        const n = numberOf(group);
        if (!drawn.has(n))
          drawn.set(n, []);
        drawn.get(n).push({ sheet, group });
      }
    }
  }
  return drawn.get(strand.n) ?? [];
}

const numberOf = group => Number(/strand-(\d+)/.exec(group.id)?.[1]);

// For each position of a sheet the places where it is drawn, as indices into its spots.
function spotsOf(sheet) {
  if (!sheet.spotsByKey) {
    sheet.spotsByKey = new Map();
    for (let i = 0; i < sheet.spots.length; i += 6) {
      const key = keyOf(sheet.spots[i + 4], sheet.spots[i + 5]);
      if (!sheet.spotsByKey.has(key))
        sheet.spotsByKey.set(key, []);
      sheet.spotsByKey.get(key).push(i);
    }
  }
  return sheet.spotsByKey;
}

function shape(name, attributes) {
  const made = document.createElementNS(svgName, name);
  for (const attribute in attributes)
    made.setAttribute(attribute, attributes[attribute]);
  return made;
}

// Every strand is drawn in threes: paper, dark casing, fill.
const extraWidths = [1.7, 1.3, .8];

function widened(sheet, group, strand, into) {
  const paths = group.querySelectorAll('path');
  paths.forEach((path, i) => {
    const copy = path.cloneNode(false);
    copy.setAttribute('stroke-width', Number(path.getAttribute('stroke-width')) + extraWidths[i % 3]);
    into.append(copy);
  });
  for (let i = 2; i < paths.length; i += 3)
    addMarks(sheet, paths[i], strand, into);
}

// Away from cells and from the labels between them, which would hide a mark.
function isFree(sheet, strand, point) {
  for (let i = 0; i < strand.at.length; i += 2) {
    for (const spot of spotsOf(sheet).get(keyOf(strand.at[i], strand.at[i + 1])) ?? []) {
      const [x, y, width, height] = sheet.spots.slice(spot, spot + 4);
      if (point.x > x - 6 && point.x < x + width + 6 && point.y > y - 1 && point.y < y + height + 1)
        return false;
    }
  }
  return true;
}

// Arrowheads in the direction of the light, discs where there is none.
function addMarks(sheet, path, strand, into) {
  const length = path.getTotalLength();
  let turn = 0;
  for (let at = Math.min(15, length / 2); at < length - 3; at += 3) {
    const a = path.getPointAtLength(at), b = path.getPointAtLength(at + .2);
    if (!isFree(sheet, strand, a))
      continue;
    at += 25;
    if (!strand.light.length) {
      into.append(shape('circle', { cx: a.x, cy: a.y, r: 1.3, fill: '#222222', stroke: '#FFFFFF', 'stroke-width': .5 }));
      continue;
    }
    const forward = strand.light[turn++ % strand.light.length][0] > 0;
    const angle = Math.atan2(b.y - a.y, b.x - a.x) * 180 / Math.PI + (forward ? 0 : 180);
    into.append(shape('path', { d: 'M2.6,0L-1.6,-2.1L-1.6,2.1Z', transform: `translate(${a.x} ${a.y}) rotate(${angle})`, fill: '#222222', stroke: '#FFFFFF', 'stroke-width': .5 }));
  }
}

function ring(sheet, spot, wide) {
  const [x, y, width, height] = sheet.spots.slice(spot, spot + 4);
  const out = wide ? .9 : .3;
  return shape('rect', { x: x - out, y: y - out, width: width + 2 * out, height: height + 2 * out, rx: .8, fill: 'none', stroke: '#222222', 'stroke-width': wide ? 1.3 : .8 });
}

let layers = [];

// Shows these strands lit, and none else. The chosen port or position has a wider ring.
function light(strands, chosen) {
  for (const layer of layers)
    layer.remove();
  layers = [];
  container.classList.toggle('fading', strands.length > 0);
  const bySheet = new Map();
  for (const strand of strands) {
    for (const { sheet, group } of drawnOf(strand)) {
      if (!bySheet.has(sheet)) {
        const lit = shape('g', { class: 'lit-strands', fill: 'none', 'aria-hidden': 'true' });
        const rings = shape('g', { class: 'rings', 'aria-hidden': 'true' });
        bySheet.set(sheet, { lit, rings, told: new Set() });
      }
      const here = bySheet.get(sheet);
      widened(sheet, group, strand, here.lit);
      if (!here.told.has(strand)) {
        here.told.add(strand);
        for (let i = 0; i < strand.at.length; i += 2) {
          for (const spot of spotsOf(sheet).get(keyOf(strand.at[i], strand.at[i + 1])) ?? [])
            here.rings.append(ring(sheet, spot, chosen && chosen.port === strand.at[i] && (!chosen.place || chosen.place === strand.at[i + 1])));
        }
      }
    }
  }
  for (const [sheet, { lit, rings }] of bySheet) {
    sheet.layer.after(lit);
    sheet.svg.append(rings);
    layers.push(lit, rings);
  }
}

// Brings a sheet with the strand into the window, and the strand's beginning into the sheet's own box.
function bringIntoView(strand, smoothly) {
  const first = drawnOf(strand)[0];
  if (!first)
    return;
  const { sheet, group } = first;
  sheet.figure.hidden = false;
  sheet.figure.scrollIntoView({ block: 'start', behavior: smoothly ? 'smooth' : 'auto' });
  const scale = sheet.svg.getBoundingClientRect().width / sheet.width;
  const start = group.querySelector('path').getPointAtLength(0);
  sheet.view.scrollTo(start.x * scale - 60, start.y * scale - sheet.view.clientHeight / 3);
}
