/* The pictures: what each shows of the flights asked for. */

const POINT_KEYS = 'Arrow keys step from flight to flight, Enter chooses, plus and minus zoom, Shift with arrows moves, 0 shows all.';
const VIEW_KEYS = 'Plus and minus zoom, Shift with arrows moves, 0 shows all.';

/** A picture in its frame, with a title, buttons for the view and a caption. */
function frame(id, title, height, keys, ...controls) {
  const host = el('div', {class: 'plot'});
  const caption = el('p', {class: 'hint'});
  const heading = el('h3', {id: id + '-title'}, title);
  const plot = new Plot(host, height, keys);
  const tool = (sign, label, act) => el('button', {type: 'button', class: 'tool', 'aria-label': label + ': ' + title, title: label, click: act}, sign);
  const tools = el('div', {class: 'tools'}, ...controls,
    tool('+', 'Zoom in', () => plot.zoom(0.7)), tool('−', 'Zoom out', () => plot.zoom(1 / 0.7)),
    tool('Reset', 'Show all', () => plot.reset()));
  const box = el('section', {class: 'picture-box', id, 'aria-labelledby': id + '-title'},
    el('div', {class: 'picture-head'}, heading, tools), host, caption);
  return {box, plot, caption, heading};
}

/** What a picture says of one flight. */
function flightWords(flight, ...more) {
  return [`${flight.name}, ${flight.date}, ${flight.tail}`, STATUSES[flight.status]
    + (flight.setting ? `, trim ${flight.setting}` : ''), ...more];
}

class EnvelopePlot {
  constructor() {
    this.phase = TAKEOFF;
    this.phases = el('select', {'aria-label': 'Phase of the envelope', id: 'phase', change: () => {
      this.phase = Number(this.phases.value);
      page.draw();
    }});
    Object.assign(this, frame('envelope', 'Envelope', 460, POINT_KEYS, this.phases));
  }

  show(type, flights) {
    const offered = Object.keys(type.envelopes).map(Number);
    if (!offered.includes(this.phase)) this.phase = TAKEOFF;
    this.phases.replaceChildren(...offered.map(phase => el('option', {value: phase}, page.season.phases[phase])));
    this.phases.value = this.phase;
    const name = page.season.phases[this.phase];
    this.heading.textContent = `${type.name}: ${name} envelope`;
    const outline = pairs(type.envelopes[this.phase]).map(([kg, percent]) => [type.cg(percent), type.mass(kg)]);
    const points = this.points(type, flights);
    const cgs = extent(outline.map(([x]) => x)), masses = extent(outline.map(([, y]) => y));
    const reach = (range, values) => {
      const most = grown(range, 0.5), all = extent(values);
      return grown([Math.max(most[0], Math.min(range[0], all[0])), Math.min(most[1], Math.max(range[1], all[1]))], 0.05);
    };
    const where = this.phase === IN_FLIGHT ? 'landing' : name;
    const home = {x: reach(cgs, points.map(p => p.x)), y: reach(masses, points.map(p => p.y))};
    this.plot.show({
      x: {label: `${where} CG, ${type.cgUnit}`, text: tidy, home: home.x},
      y: {label: `${where} mass, ${type.massUnit}`, text: tidy, home: home.y},
      label: `${type.name}, ${name} envelope with ${counted(points.length, 'flight')}.`,
      points,
      words: point => flightWords(point.flight, `${where} mass ${fixed(point.y, type.massDecimals)} ${type.massUnit}`,
        `CG ${fixed(point.x, type.cgDecimals)} ${type.cgUnit}`),
      under: (u, ctx, px, py, ratio) => polygon(ctx, outline, px, py, ratio),
      over: (u, ctx, px, py, ratio) => this.path(type, u, ctx, px, py, ratio),
    });
    const parts = [];
    if (this.phase === IN_FLIGHT) parts.push('A point stands at landing; choose a flight to see its whole path.');
    const missing = flights.filter(flight => flight.type === type).length - points.length;
    if (missing > 0) parts.push(`${counted(missing, 'flight')} without a known ${where} state.`);
    const beyond = points.filter(p => p.x < home.x[0] || p.x > home.x[1] || p.y < home.y[0] || p.y > home.y[1]).length;
    if (beyond > 0) parts.push(`${counted(beyond, 'flight')} beyond the edge: zoom out to see.`);
    parts.push('The mark is the verdict on the whole flight, so one that is breached for another reason may lie inside.');
    this.caption.textContent = parts.join(' ');
  }

  points(type, flights) {
    const phase = this.phase === IN_FLIGHT ? 5 : this.phase, points = [];
    for (const flight of flights) {
      const at = flight.typeAt === type.index ? flight.at(phase) : -1;
      if (at >= 0) points.push({x: type.cg(flight.states[at + 2]), y: type.mass(flight.states[at + 1]), flight});
    }
    return points;
  }

  /** The chosen flight: its fuel path, straight in moment between the points where a tank begins or ends. */
  path(type, u, ctx, px, py, ratio) {
    const flight = page.chosen;
    if (!flight || flight.type !== type || flight.path.length < 4) return;
    const points = pairs(flight.path);
    ctx.beginPath();
    points.forEach(([kg, percent], i) => {
      const [fromKg, fromPercent] = points[Math.max(0, i - 1)];
      for (let step = i ? 1 : 12; step <= 12; step++) {
        const t = step / 12, mass = fromKg + t * (kg - fromKg);
        const cg = (fromKg * fromPercent + t * (kg * percent - fromKg * fromPercent)) / mass;
        ctx.lineTo(px(type.cg(cg)), py(type.mass(mass)));
      }
    });
    ctx.lineWidth = 5 * ratio;
    ctx.strokeStyle = palette.card;
    ctx.stroke();
    ctx.lineWidth = 2.5 * ratio;
    ctx.strokeStyle = palette.ink;
    ctx.stroke();
    ctx.fillStyle = palette.ink;
    ctx.font = `600 ${12 * ratio}px system-ui, sans-serif`;
    for (const [[kg, percent], word] of [[points[0], 'take-off'], [points[points.length - 1], 'landing']]) {
      const x = px(type.cg(percent)), y = py(type.mass(kg));
      ctx.fillRect(x - 3 * ratio, y - 3 * ratio, 6 * ratio, 6 * ratio);
      const left = x > u.bbox.left + 0.8 * u.bbox.width;
      ctx.textAlign = left ? 'right' : 'left';
      write(ctx, word, x + (left ? -13 : 13) * ratio, y + 4 * ratio, ratio);
    }
  }
}

/** A text that stands out from what it stands on. */
function write(ctx, text, x, y, ratio) {
  ctx.lineWidth = 4 * ratio;
  ctx.lineJoin = 'round';
  ctx.strokeStyle = palette.card;
  ctx.strokeText(text, x, y);
  ctx.fillText(text, x, y);
}

function pairs(flat) {
  const all = [];
  for (let i = 0; i < flat.length; i += 2) all.push([flat[i], flat[i + 1]]);
  return all;
}

/** A value of an axis, without more decimals than it needs. */
function tidy(value) {
  return fixed(value, value % 1 === 0 ? 0 : Math.min(3, (String(Math.round(value * 1000) / 1000).split('.')[1] || '').length));
}

function polygon(ctx, outline, px, py, ratio) {
  ctx.beginPath();
  outline.forEach(([x, y]) => ctx.lineTo(px(x), py(y)));
  ctx.closePath();
  ctx.fillStyle = palette.envelope;
  ctx.fill();
  ctx.lineWidth = 1.6 * ratio;
  ctx.lineJoin = 'round';
  ctx.strokeStyle = palette.ink;
  ctx.stroke();
}

/** Trims in order, with the weight of each where the page is thinned. */
function spread(flights) {
  const asked = new Set(flights);
  return spreadOf(page.season.byTrim.filter(flight => asked.has(flight)));
}

/** @param known flights in order of trim */
function spreadOf(known) {
  const weights = page.season.thinned ? known.map(flight => page.season.weights[flight.status]) : null;
  const sorted = known.map(flight => flight.trim);
  const at = share => percentile(sorted, weights, share);
  return known.length === 0 ? null : {known, n: page.season.weight(known), sorted,
    p5: at(0.05), p25: at(0.25), median: at(0.5), p75: at(0.75), p95: at(0.95)};
}

/** What figures over more than one trim scale say little of. */
function together(flights) {
  const scales = new Set(flights.map(flight => flight.flaps)).size;
  return scales > 1 ? `Of ${scales} trim scales together; choose flaps to see one. ` : '';
}

function spreadWords(type, s) {
  return together(s.known) + `Median ${type.trimText(s.median)}, 90 % between ${type.trimText(s.p5)} and ${type.trimText(s.p95)}, `
    + `${page.season.thinned ? 'about ' : ''}${counted(Math.round(s.n), 'flight')}`
    + (page.season.thinned ? ', estimated from those on the page.' : '.');
}

const NO_TRIM = 'No flight asked for has a trim.';
const EMPTY = {x: {label: '', text: tidy, home: [0, 1]}, y: {label: '', text: tidy, home: [0, 1]}, label: NO_TRIM};

class Histogram {
  constructor() {
    Object.assign(this, frame('histogram', 'Take-off trim', 280, VIEW_KEYS));
  }

  show(type, flights) {
    const s = spread(flights);
    this.caption.textContent = s ? spreadWords(type, s) + ' Shaded: the typical range, with the median.' : NO_TRIM;
    if (!s) return this.plot.show(EMPTY);
    const bins = binned(s, type.trimStep || 0.1);
    const most = Math.max(...bins.counts);
    const words = i => `${type.trimText(bins.from + i * bins.width)} to ${type.trimText(bins.from + (i + 1) * bins.width)}`;
    this.plot.show({
      x: {label: 'take-off trim' + (type.trimUnit ? '' : ', units'), text: v => type.trimText(v, tidy(v).includes('.') ? tidy(v).split('.')[1].length : 0),
        home: grown([bins.from, bins.from + bins.counts.length * bins.width], 0.03)},
      y: {label: 'flights', text: v => v % 1 === 0 ? count(v) : '', home: [0, most * 1.08]},
      label: `Histogram of take-off trim. ${spreadWords(type, s)}`,
      tell: x => {
        const i = Math.floor((x - bins.from) / bins.width);
        return i in bins.counts ? [words(i), counted(Math.round(bins.counts[i]), 'flight')] : [];
      },
      under: (u, ctx, px, py) => {
        ctx.fillStyle = palette.envelope;
        ctx.fillRect(px(s.p5), u.bbox.top, px(s.p95) - px(s.p5), u.bbox.height);
      },
      over: (u, ctx, px, py, ratio) => {
        ctx.fillStyle = palette.clean;
        bins.counts.forEach((n, i) => {
          const left = px(bins.from + i * bins.width), right = px(bins.from + (i + 1) * bins.width);
          ctx.fillRect(left + ratio / 2, py(n), Math.max(1, right - left - ratio), py(0) - py(n));
        });
        line(ctx, px(s.median), u.bbox.top, px(s.median), u.bbox.top + u.bbox.height, 2.5 * ratio);
      },
    });
  }
}

function line(ctx, x1, y1, x2, y2, width) {
  ctx.beginPath();
  ctx.moveTo(x1, y1);
  ctx.lineTo(x2, y2);
  ctx.lineWidth = width;
  ctx.strokeStyle = palette.ink;
  ctx.stroke();
}

/** At most forty bins, each of whole steps of the indicator, their edges between steps. */
function binned(s, step) {
  const low = s.sorted[0], high = s.sorted[s.sorted.length - 1];
  const width = step * Math.max(1, Math.ceil((high - low) / step / 40));
  const from = (Math.floor(low / width + 0.5) - 0.5) * width;
  const counts = new Array(Math.floor((high - from) / width) + 1).fill(0);
  for (const flight of s.known) counts[Math.max(0, Math.floor((flight.trim - from) / width))] += page.season.weights[flight.status];
  return {from, width, counts};
}

class TrimByCg {
  constructor() {
    Object.assign(this, frame('trim-cg', 'Trim against CG', 280, POINT_KEYS));
  }

  show(type, flights) {
    const points = flights.filter(flight => !Number.isNaN(flight.trim))
      .map(flight => ({x: type.cg(flight.cgPercentMac(TAKEOFF)), y: flight.trim, flight}));
    this.caption.textContent = points.length ? 'Nose-up is up; the lines are the flap settings.' : NO_TRIM;
    if (!points.length) return this.plot.show(EMPTY);
    const ends = this.ends(points);
    this.plot.show({
      x: {label: `take-off CG, ${type.cgUnit}`, text: tidy, home: grown(extent(points.map(p => p.x)), 0.08)},
      y: {label: 'take-off trim' + (type.trimUnit ? '' : ', units'), text: v => type.trimText(v, 1), home: grown(extent(points.map(p => p.y)), 0.1)},
      label: `Take-off trim against CG of ${counted(points.length, 'flight')}.`,
      points,
      words: point => flightWords(point.flight, `CG ${fixed(point.x, type.cgDecimals)} ${type.cgUnit}`,
        `flaps ${point.flight.flaps || 'not given'}, exact trim ${type.trimText(point.y)}`),
      over: (u, ctx, px, py, ratio) => this.labels(ends, u, ctx, px, py, ratio),
    });
  }

  /** Where the line of each flap setting begins: at the fifth percentile of CG, so that single flights do not matter. */
  ends(points) {
    const byFlaps = new Map();
    for (const point of points) {
      if (!byFlaps.has(point.flight.flaps)) byFlaps.set(point.flight.flaps, []);
      byFlaps.get(point.flight.flaps).push(point);
    }
    return [...byFlaps].map(([flaps, of]) => {
      of.sort((a, b) => a.x - b.x);
      return {flaps, at: of[Math.floor(0.05 * (of.length - 1))], from: extent(of.slice(Math.floor(0.005 * of.length)).map(p => p.x))[0]};
    });
  }

  /** Names of flap settings to the left of their lines, one below the other without touching. */
  labels(ends, u, ctx, px, py, ratio) {
    ctx.font = `600 ${12 * ratio}px system-ui, sans-serif`;
    ctx.fillStyle = palette.ink;
    ctx.textAlign = 'right';
    const name = end => 'flaps ' + (end.flaps || 'not given');
    const widest = Math.max(56 * ratio, ...ends.map(end => ctx.measureText(name(end)).width));
    const x = Math.max(u.bbox.left + widest + 8 * ratio, px(Math.min(...ends.map(end => end.from))) - 14 * ratio);
    let last = -Infinity;
    for (const end of [...ends].sort((a, b) => b.at.y - a.at.y)) {
      const y = Math.max(last + 16 * ratio, py(end.at.y));
      last = y;
      line(ctx, x + 3 * ratio, y, px(end.at.x), py(end.at.y), ratio);
      write(ctx, name(end), x, y + 4 * ratio, ratio);
    }
  }
}

class TrimByMonth {
  constructor() {
    Object.assign(this, frame('trim-month', 'Trim by month', 280, VIEW_KEYS));
  }

  show(type, flights) {
    const byMonth = new Map(page.season.months.map(month => [month, []]));
    const asked = new Set(flights);
    for (const flight of page.season.byTrim) if (asked.has(flight)) byMonth.get(flight.month).push(flight);
    const boxes = [...byMonth].map(([month, of]) => ({month, s: spreadOf(of)}));
    const known = boxes.filter(box => box.s);
    this.caption.textContent = known.length ? together(known.flatMap(box => box.s.known)) + 'Box: the middle half, with the median; line: 5th to 95th percentile.' : NO_TRIM;
    if (!known.length) return this.plot.show(EMPTY);
    const range = extent(known.flatMap(({s}) => [s.p5, s.p95]));
    this.plot.show({
      x: {label: 'month', text: i => boxes[i] ? boxes[i].month : '', home: [-0.6, boxes.length - 0.4]},
      y: {label: 'take-off trim' + (type.trimUnit ? '' : ', units'), text: v => type.trimText(v, 1), home: grown(range, 0.15)},
      label: 'Take-off trim by month. ' + known.map(({month, s}) => `${month}: median ${type.trimText(s.median)}`).join('; ') + '.',
      tell: x => {
        const box = boxes[Math.round(x)];
        return box && box.s ? [box.month, `median ${type.trimText(box.s.median)}`,
          `90 % between ${type.trimText(box.s.p5)} and ${type.trimText(box.s.p95)}`, counted(Math.round(box.s.n), 'flight')] : [];
      },
      over: (u, ctx, px, py, ratio) => boxes.forEach(({s}, i) => {
        if (!s) return;
        const middle = px(i), half = Math.min(22 * ratio, (px(1) - px(0)) * 0.3);
        line(ctx, middle, py(s.p5), middle, py(s.p95), 1.5 * ratio);
        ctx.fillStyle = palette.envelope;
        ctx.fillRect(middle - half, py(s.p75), 2 * half, py(s.p25) - py(s.p75));
        ctx.lineWidth = 1.5 * ratio;
        ctx.strokeStyle = palette.clean;
        ctx.strokeRect(middle - half, py(s.p75), 2 * half, py(s.p25) - py(s.p75));
        line(ctx, middle - half, py(s.median), middle + half, py(s.median), 2.5 * ratio);
      }),
    });
  }
}

/** Findings by kind, as bars that ask for the flights which have them. */
class Kinds {
  constructor() {
    this.list = el('ul', {class: 'kinds'});
    this.box = el('section', {class: 'picture-box', id: 'kinds', 'aria-labelledby': 'kinds-title'},
      el('div', {class: 'picture-head'}, el('h3', {id: 'kinds-title'}, 'Findings by kind')), this.list,
      el('p', {class: 'hint'}, 'Flights of all types asked for. A kind that is pressed asks for the flights which have it. The bars of notes have a scale of their own.'));
  }

  show(flights) {
    const counts = new Map();
    for (const flight of flights) {
      for (const kind of new Set(flight.findings.filter((_, i) => i % 2 === 0))) {
        counts.set(kind, (counts.get(kind) || 0) + page.season.weights[flight.status]);
      }
    }
    const kinds = page.season.kinds.filter(kind => counts.has(kind.index))
      .sort((a, b) => b.severity - a.severity || counts.get(b.index) - counts.get(a.index) || (a.code < b.code ? -1 : 1));
    const most = notes => Math.max(1, ...kinds.filter(kind => kind.severity === 0 === notes).map(kind => counts.get(kind.index)));
    const scales = {true: most(true), false: most(false)};
    this.list.replaceChildren(...kinds.map(kind => this.row(kind, counts.get(kind.index), scales[kind.severity === 0])));
    if (kinds.length === 0) this.list.append(el('li', {}, 'Nothing was found on these flights.'));
  }

  row(kind, n, most) {
    const bar = el('span', {class: 'kind-bar ' + lookOfSeverity(kind.severity), 'aria-hidden': 'true'});
    bar.style.width = Math.max(1, 100 * n / most) + '%';
    const pressed = page.choice.kind === kind.index;
    return el('li', {}, el('button', {type: 'button', class: 'kind-button', 'aria-pressed': String(pressed), 'data-kind': kind.code,
      'aria-label': `${kind.label}, ${SEVERITIES[kind.severity]}, ${counted(Math.round(n), 'flight')}`,
      click: () => page.askKind(pressed ? -1 : kind.index)},
    mark(lookOfSeverity(kind.severity), ''), el('span', {class: 'kind-label'}, kind.label),
    el('span', {class: 'kind-track'}, bar), el('span', {class: 'kind-count'}, count(Math.round(n)))));
  }
}
