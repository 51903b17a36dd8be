/* What is asked for, and what follows from it. */

class Page {
  constructor(season) {
    this.season = season;
    this.chosen = null;
    this.choice = this.everything();
    this.pictured = this.mostFlown();
  }

  everything() {
    return {type: -1, tail: -1, flaps: null, kind: -1, text: '', statuses: [true, true, true]};
  }

  mostFlown() {
    const flown = this.season.types.map(() => 0);
    for (const flight of this.season.flights) flown[flight.typeAt]++;
    return flown.indexOf(Math.max(...flown));
  }

  build(host) {
    this.envelope = new EnvelopePlot();
    this.histogram = new Histogram();
    this.trimByCg = new TrimByCg();
    this.trimByMonth = new TrimByMonth();
    this.kinds = new Kinds();
    this.flight = new FlightPanel();
    this.tables = new TableTabs(this.season);
    this.types = el('div', {class: 'types', role: 'group', 'aria-label': 'Type in the pictures'});
    host.append(el('section', {id: 'explore', 'aria-labelledby': 'explore-title'},
      el('h2', {id: 'explore-title'}, 'Explore the flights'),
      el('p', {class: 'hint', id: 'thinning'}, this.season.thinning),
      this.form(), this.types,
      el('div', {class: 'live-pictures'}, this.envelope.box, this.flight.box, this.histogram.box, this.trimByCg.box,
        this.trimByMonth.box, this.kinds.box),
      el('p', {class: 'hint keys'}, 'Mouse: drag over a part of a picture to see more of it, double-click to see all, Shift and drag to move, '
        + 'click a point to choose its flight; the wheel zooms in a picture that was clicked. Keys: Tab to a picture, then arrows, Enter, + − 0.'),
      this.tables.box));
    document.body.append(el('div', {id: 'said', class: 'unseen', role: 'status', 'aria-live': 'polite'}));
  }

  form() {
    const {season} = this;
    const select = (id, label, options, change) => {
      const list = el('select', {id, change: () => change(list.value)}, ...options.map(([value, text]) => el('option', {value}, text)));
      return el('label', {class: 'field', for: id}, label, list);
    };
    const flaps = [...new Set(season.flights.map(flight => flight.flaps))].sort(WORDS.compare);
    const tails = season.tails.map((tail, i) => [i, tail]).sort((a, b) => WORDS.compare(a[1], b[1]));
    this.found = el('p', {class: 'found', id: 'found', role: 'status'});
    this.search = el('input', {type: 'search', id: 'search', placeholder: 'flight, pilot, finding …', autocomplete: 'off', input: () => this.searchSoon()});
    return el('form', {class: 'asked', 'aria-label': 'Which flights', submit: event => event.preventDefault(), reset: () => setTimeout(() => this.askAll())},
      el('fieldset', {class: 'field statuses'}, el('legend', {}, 'Status'), ...[BREACHED, MARGINAL, CLEAN].map(s => this.statusBox(s))),
      select('type', 'Type', [['-1', 'all types'], ...season.types.map((type, i) => [i, type.name])], value => this.ask({type: Number(value)})),
      select('tail', 'Tail', [['-1', 'all tails'], ...tails], value => this.ask({tail: Number(value)})),
      select('flaps', 'Flaps', [['*', 'all settings'], ...flaps.map(setting => ['=' + setting, setting || 'not given'])],
        value => this.ask({flaps: value === '*' ? null : value.slice(1)})),
      el('label', {class: 'field grow', for: 'search'}, 'Search', this.search),
      el('button', {type: 'reset', class: 'tool'}, 'Show all'), this.found);
  }

  statusBox(status) {
    const box = el('input', {type: 'checkbox', id: 'status-' + STATUSES[status], checked: true, change: () => {
      const statuses = [...this.choice.statuses];
      statuses[status] = box.checked;
      this.ask({statuses});
    }});
    return el('label', {class: 'check', for: box.id}, box, mark(STATUSES[status], STATUSES[status]));
  }

  searchSoon() {
    clearTimeout(this.soon);
    this.soon = setTimeout(() => this.ask({text: this.search.value}), 120);
  }

  askAll() {
    this.ask(this.everything());
  }

  askKind(kind) {
    this.ask({kind});
    const again = kind < 0 ? null : document.querySelector(`[data-kind="${this.season.kinds[kind].code}"][aria-pressed="true"]`);
    if (again) again.focus();
  }

  ask(change) {
    Object.assign(this.choice, change);
    if (this.choice.type >= 0) this.pictured = this.choice.type;
    else if (change.tail >= 0) this.pictured = this.matched()[0] ? this.matched()[0].typeAt : this.pictured;
    this.draw();
  }

  matched() {
    return this.season.match(this.choice);
  }

  picture(type) {
    this.pictured = type;
    if (this.choice.type >= 0) {
      this.choice.type = type;
      document.getElementById('type').value = type;
    }
    this.draw();
    this.types.children[type].focus();
  }

  /** Everything anew for what is asked for. */
  draw() {
    const flights = this.matched(), {season} = this;
    const type = season.types[this.pictured];
    const shown = flights.filter(flight => flight.type === type);
    this.types.replaceChildren(...season.types.map((each, i) => el('button', {type: 'button', class: 'tool', 'aria-pressed': String(i === this.pictured),
      click: () => this.picture(i)}, data(each.name), ` (${count(flights.filter(flight => flight.typeAt === i).length)})`)));
    this.envelope.show(type, shown);
    this.histogram.show(type, shown);
    this.trimByCg.show(type, shown);
    this.trimByMonth.show(type, shown);
    this.kinds.show(flights);
    this.tables.show(flights, this.choice);
    this.found.textContent = this.foundWords(flights);
  }

  foundWords(flights) {
    const {season, choice} = this;
    const kind = choice.kind < 0 ? '' : ` with “${season.kinds[choice.kind].label}”`;
    const stand = season.thinned ? `, which stand for about ${count(Math.round(season.weight(flights)))} of ${count(season.seen)}` : '';
    return `${count(flights.length)} of ${counted(season.flights.length, 'flight')}${kind}${stand}`;
  }

  /** @param from what had the focus, if the flight's panel is to take it */
  choose(flight, from) {
    this.chosen = flight;
    if (flight && flight.typeAt !== this.pictured) {
      this.pictured = flight.typeAt;
      if (this.choice.type >= 0) this.choice.type = -1;
      document.getElementById('type').value = this.choice.type;
      this.draw();
    }
    this.envelope.plot.u.redraw(false, false);
    this.trimByCg.plot.u.redraw(false, false);
    this.tables.mark();
    if (flight) this.flight.show(flight, from);
    else this.flight.nothing();
  }

  redraw() {
    readPalette();
    for (const picture of [this.envelope, this.histogram, this.trimByCg, this.trimByMonth]) picture.plot.u.redraw(false, true);
  }
}

/** Flights named in the overview can be chosen there. */
function chooseFromOverview(season) {
  const byOrigin = new Map(season.flights.map(flight => [flight.origin, flight]));
  for (const named of document.querySelectorAll('[data-origin]')) {
    const flight = byOrigin.get(named.dataset.origin);
    if (flight) named.replaceChildren(chooser(flight));
  }
}

/** Light, dark, or as the system has it. */
function themeSwitch() {
  const root = document.documentElement;
  const list = el('select', {id: 'theme', change: () => {
    if (list.value) root.dataset.theme = list.value;
    else delete root.dataset.theme;
    page.redraw();
  }}, el('option', {value: ''}, 'as the system'), el('option', {value: 'light'}, 'light'), el('option', {value: 'dark'}, 'dark'));
  return el('label', {class: 'theme', for: 'theme'}, 'Colours', list);
}

const page = new Page(new Season(JSON.parse(document.getElementById('season-data').textContent)));

if (page.season.flights.length > 0) {
  readPalette();
  page.build(document.getElementById('live'));
  document.querySelector('header').append(themeSwitch());
  page.draw();
  chooseFromOverview(page.season);
  document.documentElement.classList.add('is-live');
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => page.redraw());
  requestAnimationFrame(() => performance.mark('pictures-drawn'));
}
