// The sentences of the page about strands and positions.
const lightOf = light => `${light[1] || 'wavelength not stated'}${light[2] ? `, lane ${light[2]}` : ''}`;

function endOf(strand, first) {
  const at = strand.at;
  return first ? addressOf(at[0], at[1]) : addressOf(at[at.length - 2], at[at.length - 1]);
}

function nameOf(strand) {
  const networks = strand.net.map(n => data.networks[n]).join(', ');
  return `Strand ${strand.n}, ${strand.colour} (${strand.code})${networks ? `, network ${networks}` : ''}`;
}

const endsOf = strand => `from ${strand.from}${strand.loop ? ' round in a closed loop' : ` to ${strand.to}`}.`;

function wayOfLight(strand) {
  const words = strand.light.map(light => `Light runs from ${endOf(strand, light[0] > 0)} to ${endOf(strand, light[0] < 0)}: ${lightOf(light)}.`);
  return words.length ? words.join(' ') : 'Dark: neither end sends light. Treat it as live all the same.';
}

function troubleOf(strand) {
  const words = strand.find.map(f => `${data.findings[f].severity === 'error' ? 'Error' : 'Warning'} ${data.findings[f].code} ${data.findings[f].title}: ${data.findings[f].message}`);
  if (strand.meant)
    words.unshift(`It is meant to come out at ${addressOf(...strand.meant)}.`);
  return words;
}

// What should be seen at a position: from where light comes, where it goes, which light.
function lightAt(port, place) {
  const at = strandAt.get(keyOf(port, place));
  if (!at)
    return ['No strand is plugged in here: nothing should arrive.'];
  const { strand, index } = at;
  const last = strand.at.length / 2 - 1;
  const partAt = i => data.ports[strand.at[2 * i]].part;
  const words = strand.light.map(light => {
    const first = light[0] > 0;
    const step = first ? index : last - index;
    const from = endOf(strand, first), to = endOf(strand, !first);
    if (step === 0)
      return `Light leaves here: ${lightOf(light)}, on its way to ${to}.`;
    if (step === last)
      return `Light should arrive here: ${lightOf(light)}, from ${from}.`;
    return partAt(first ? index - 1 : index + 1) === partAt(index)
      ? `Light should come out here: ${lightOf(light)}, from ${from}, on its way to ${to}.`
      : `Light should arrive here: ${lightOf(light)}, from ${from}, on its way to ${to}.`;
  });
  if (strand.loop)
    words.push('The strand is a closed loop: no light gets into it.');
  else if (!words.length)
    words.push('Dark: neither end of the strand sends light. Treat it as live all the same.');
  const meant = meantAt.get(keyOf(port, place));
  if (meant && meant !== strand)
    words.push(`Meant to arrive here: strand ${meant.n} from ${endOf(meant, true)}. As the plant is described, strand ${strand.n} arrives.`);
  return words;
}

function placeWords(port, place) {
  const at = strandAt.get(keyOf(port, place));
  const name = placeName(port, place);
  const strand = at ? `${name ? 's' : 'S'}trand ${at.strand.n} ${at.strand.code}. ` : '';
  return `${name ? `Position ${name}: ` : ''}${strand}${lightAt(port, place).join(' ')}${at ? troubleOf(at.strand).map(t => ` ${t}`).join('') : ''}`;
}
