// Pointing, panning and zooming on the sheets, by mouse, touch and keyboard. Each sheet scrolls in its own box.
const leastZoom = .2, mostZoom = 6;

function zoomTo(sheet, zoom, x = sheet.view.clientWidth / 2, y = sheet.view.clientHeight / 2) {
  const { view } = sheet;
  const before = sheet.zoom;
  sheet.zoom = Math.min(mostZoom, Math.max(leastZoom, zoom));
  const left = (view.scrollLeft + x) / before * sheet.zoom - x;
  const top = (view.scrollTop + y) / before * sheet.zoom - y;
  view.style.setProperty('--zoom', sheet.zoom);
  view.scrollLeft = left;
  view.scrollTop = top;
  const percent = `${Math.round(sheet.zoom * 100)} %`;
  sheet.size.textContent = percent;
  sheet.size.setAttribute('aria-label', `${percent}${sheet.zoom === 1 ? '' : '; back to 100 %'}, size as printed, sheet ${sheet.number + 1}`);
  sheet.told.textContent = percent;
}

const fit = sheet => zoomTo(sheet, sheet.view.clientWidth / (sheet.svg.getBoundingClientRect().width / sheet.zoom));

function addTools(sheet) {
  const which = `sheet ${sheet.number + 1}`;
  const named = (text, name, deed) => {
    const made = button(text, deed);
    made.setAttribute('aria-label', `${name}, ${which}`);
    return made;
  };
  sheet.zoom = 1;
  sheet.told = element('output');
  sheet.told.className = 'unseen';
  sheet.size = named('100 %', '100 %, size as printed', () => zoomTo(sheet, 1));
  const tools = element('div', '',
    named('−', 'Zoom out', () => zoomTo(sheet, sheet.zoom / 1.25)), sheet.size,
    named('+', 'Zoom in', () => zoomTo(sheet, sheet.zoom * 1.25)),
    named('Whole width', 'Whole width', () => fit(sheet)), sheet.told);
  tools.className = 'tools';
  sheet.view.before(tools);
  sheet.view.style.setProperty('--width', sheet.svg.getAttribute('width'));
  sheet.view.style.setProperty('--height', sheet.svg.getAttribute('height'));
}

// The spot under a point of the window, a position before a port; found by rows of 5 mm.
function spotAt(sheet, clientX, clientY) {
  const box = sheet.svg.getBoundingClientRect();
  const scale = box.width / sheet.width;
  const x = (clientX - box.left) / scale, y = (clientY - box.top) / scale;
  if (!sheet.rows) {
    sheet.rows = new Map();
    const put = (spots, i) => {
      for (let row = Math.floor((spots[i + 1] - .6) / 5); row <= Math.floor((spots[i + 1] + spots[i + 3] + .6) / 5); row++) {
        if (!sheet.rows.has(row))
          sheet.rows.set(row, []);
        sheet.rows.get(row).push(i);
      }
    };
    for (let i = 0; i < sheet.spots.length; i += 6)
      put(sheet.spots, i);
  }
  let port = -1;
  for (const i of sheet.rows.get(Math.floor(y / 5)) ?? []) {
    const [left, top, width, height, , place] = sheet.spots.slice(i, i + 6);
    if (x < left - .6 || x > left + width + .6 || y < top - .6 || y > top + height + .6)
      continue;
    if (place > 0)
      return i;
    port = i;
  }
  return port;
}

const thingOfSpot = (sheet, i) => sheet.spots[i + 5] > 0 ? atThing(sheet.spots[i + 4], sheet.spots[i + 5]) : portThing(sheet.spots[i + 4]);

function strandUnder(node) {
  const group = node?.closest?.('.layer-strands > g');
  return group && !group.classList.contains('left-out') ? strandThing(numberOf(group)) : null;
}

function thingUnder(sheet, event) {
  const spot = spotAt(sheet, event.clientX, event.clientY);
  return spot >= 0 ? thingOfSpot(sheet, spot) : strandUnder(event.target);
}

// A finger is wider than a strand: what lies close by counts too.
function thingNear(sheet, event) {
  const here = thingUnder(sheet, event);
  for (let i = 0; !here && i < 8; i++) {
    const thing = strandUnder(document.elementFromPoint(event.clientX + 9 * Math.cos(i * Math.PI / 4), event.clientY + 9 * Math.sin(i * Math.PI / 4)));
    if (thing)
      return thing;
  }
  return here;
}

// The sheet that a mark of a cut or a line of the index leads to.
function linkAt(sheet, event) {
  const box = sheet.svg.getBoundingClientRect();
  const scale = box.width / sheet.width;
  const x = (event.clientX - box.left) / scale, y = (event.clientY - box.top) / scale;
  for (let i = 0; i < sheet.links.length; i += 5) {
    const [left, top, width, height, to] = sheet.links.slice(i, i + 5);
    if (x >= left && x <= left + width && y >= top && y <= top + height)
      return sheets[to - 1];
  }
  return null;
}

function addPointer(sheet) {
  const { view } = sheet;
  let held = null, moved = false, waiting = null;
  view.addEventListener('pointermove', event => {
    if (event.pointerType !== 'mouse')
      return;
    if (held) {
      const x = held.x - event.clientX, y = held.y - event.clientY;
      moved ||= Math.abs(x) + Math.abs(y) > 4;
      if (moved) {
        view.classList.add('held');
        view.scrollTo(held.left + x, held.top + y);
        return;
      }
    }
    if (!waiting)
      requestAnimationFrame(() => {
        const thing = waiting && thingUnder(sheet, waiting);
        if (waiting) {
          view.classList.toggle('onto', Boolean(thing || linkAt(sheet, waiting)));
          pointAt(thing);
        }
        waiting = null;
      });
    waiting = event;
  });
  view.addEventListener('pointerleave', event => {
    waiting = null;
    leave(event);
  });
  view.addEventListener('pointerdown', event => {
    moved = false;
    if (event.pointerType === 'mouse' && event.button === 0 && event.offsetX < view.clientWidth && event.target !== sheet.spot) {
      held = { x: event.clientX, y: event.clientY, left: view.scrollLeft, top: view.scrollTop };
    }
  });
  window.addEventListener('pointerup', () => {
    held = null;
    view.classList.remove('held');
  });
  view.addEventListener('click', event => {
    if (moved)
      return;
    const thing = thingNear(sheet, event);
    const to = thing ? null : linkAt(sheet, event);
    if (thing)
      keep(thing, false);
    else if (to)
      to.figure.scrollIntoView();
  });
}

function addZoom(sheet) {
  const { view } = sheet;
  const inView = (clientX, clientY) => {
    const box = view.getBoundingClientRect();
    return [clientX - box.left, clientY - box.top];
  };
  view.addEventListener('wheel', event => {
    if (!event.ctrlKey)
      return;
    event.preventDefault();
    zoomTo(sheet, sheet.zoom * Math.exp(-event.deltaY / 400), ...inView(event.clientX, event.clientY));
  }, { passive: false });

  let pinch = null;
  const apart = touches => Math.hypot(touches[0].clientX - touches[1].clientX, touches[0].clientY - touches[1].clientY);
  view.addEventListener('touchstart', event => {
    pinch = event.touches.length === 2 ? { apart: apart(event.touches), zoom: sheet.zoom } : null;
  }, { passive: true });
  view.addEventListener('touchmove', event => {
    if (!pinch || event.touches.length !== 2)
      return;
    event.preventDefault();
    const [a, b] = event.touches;
    zoomTo(sheet, pinch.zoom * apart(event.touches) / pinch.apart, ...inView((a.clientX + b.clientX) / 2, (a.clientY + b.clientY) / 2));
  }, { passive: false });
  view.addEventListener('keydown', event => {
    if (event.ctrlKey || event.metaKey || event.altKey)
      return;
    const zoom = { '+': sheet.zoom * 1.25, '=': sheet.zoom * 1.25, '-': sheet.zoom / 1.25, '0': 1 }[event.key];
    if (zoom) {
      event.preventDefault();
      zoomTo(sheet, zoom);
    }
  });
}

// One tab stop on a sheet that arrow keys move from position to position.
function addSpot(sheet) {
  const places = [];
  for (let i = 0; i < sheet.spots.length; i += 6) {
    if (sheet.spots[i + 5] > 0)
      places.push(i);
  }
  if (!places.length)
    return;
  const frame = shape('rect', { fill: 'none', stroke: '#222222', 'stroke-width': 1.2, rx: 1.2 });
  const rim = shape('rect', { fill: 'none', stroke: '#FFFFFF', 'stroke-width': 2.4, rx: 1.2 });
  const spot = shape('g', { class: 'spot', role: 'button', tabindex: '0' });
  spot.append(rim, frame);
  sheet.svg.append(spot);
  sheet.spot = spot;
  let at = places[0];

  const middle = i => [sheet.spots[i] + sheet.spots[i + 2] / 2, sheet.spots[i + 1] + sheet.spots[i + 3] / 2];
  function move(to) {
    at = to;
    const [x, y] = middle(at);
    const width = Math.max(6.4, sheet.spots[at + 2] + 2.4), height = Math.max(6.4, sheet.spots[at + 3] + 2.4);
    for (const rect of [rim, frame]) {
      for (const [name, value] of [['x', x - width / 2], ['y', y - height / 2], ['width', width], ['height', height]])
        rect.setAttribute(name, value);
    }
    const thing = thingOfSpot(sheet, at);
    const strand = strandsOf(thing)[0];
    spot.setAttribute('aria-label', `Position ${addressOf(thing.port, thing.place)}${strand ? `, strand ${strand.n}` : ''}; arrow keys go to the next`);
  }

  // The nearest position that way; what lies aside counts four times as far.
  function next(dx, dy) {
    const [x, y] = middle(at);
    let best = at, least = Infinity;
    for (const i of places) {
      const [toX, toY] = middle(i);
      const along = (toX - x) * dx + (toY - y) * dy, aside = Math.abs((toX - x) * dy) + Math.abs((toY - y) * dx);
      if (along > .5 && along + 4 * aside < least)
        [best, least] = [i, along + 4 * aside];
    }
    return best;
  }

  function here() {
    pointAt(thingOfSpot(sheet, at));
    spot.scrollIntoView({ block: 'nearest', inline: 'nearest' });

    // The panel lies over the foot of the window.
    const hidden = frame.getBoundingClientRect().bottom + 40 - panel.getBoundingClientRect().top;
    if (hidden > 0)
      window.scrollBy(0, hidden);
  }

  spot.addEventListener('focus', here);
  spot.addEventListener('blur', () => pointAt(null));
  spot.addEventListener('click', event => {
    event.stopPropagation();
    keep(thingOfSpot(sheet, at), false);
  });
  spot.addEventListener('keydown', event => {
    const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    const end = { Home: places[0], End: places[places.length - 1] }[event.key];
    if (way || end !== undefined) {
      event.preventDefault();
      move(way ? next(...way) : end);
      here();
    } else if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      keep(thingOfSpot(sheet, at), false);
    }
  });
  move(at);
}

for (const sheet of sheets) {
  addTools(sheet);
  addPointer(sheet);
  addZoom(sheet);
  addSpot(sheet);
}
