/* Tables that can be sorted and turned page by page, and the tabs they stand behind. */

const ROWS = 50;

class DataTable {
  /**
   * @param name what the rows are
   * @param columns {label, number, value(row) to sort by, cell(row) to show}; the first names the row
   * @param note a sentence below, or nothing
   */
  constructor(name, columns, note) {
    this.name = name;
    this.columns = columns;
    this.sort = null;
    this.start = 0;
    this.rows = [];
    this.lines = new WeakMap();
    this.head = el('tr', {});
    this.body = el('tbody', {});
    this.place = el('span', {class: 'place'});
    this.back = el('button', {type: 'button', class: 'tool', click: () => this.turn(-ROWS)}, 'Previous');
    this.next = el('button', {type: 'button', class: 'tool', click: () => this.turn(ROWS)}, 'Next');
    this.box = el('div', {},
      el('div', {class: 'frame', role: 'region', tabindex: '0', 'aria-label': name},
        el('table', {}, el('thead', {}, this.head), this.body)),
      el('div', {class: 'pager'}, this.place, this.back, this.next, note ? el('span', {class: 'hint'}, note) : null));
  }

  /** Takes other rows; they are drawn when the table is to be seen. */
  take(rows) {
    this.rows = rows;
    this.start = 0;
    this.stale = true;
  }

  see() {
    if (!this.stale) return;
    this.stale = false;
    this.order();
    this.draw();
  }

  sortBy(column) {
    const down = this.sort && this.sort.column === column && !this.sort.down;
    this.sort = {column, down};
    this.start = 0;
    this.order();
    this.draw();
    this.head.children[this.columns.indexOf(column)].firstChild.focus();
    announce(`${this.name} sorted by ${column.label}, ${down ? 'descending' : 'ascending'}`);
  }

  /** In the order asked for; rows without a value come last, rows that are equal keep their order. */
  order() {
    if (!this.sort) {
      this.sorted = this.rows;
      return;
    }
    const {column, down} = this.sort;
    const missing = value => value === '' || Number.isNaN(value);
    const compare = (a, b) => typeof a === 'number' ? a - b : WORDS.compare(a, b);
    this.sorted = this.rows.map(row => [column.value(row), row]).sort(([a], [b]) => {
      if (missing(a) || missing(b)) return missing(a) - missing(b);
      return down ? compare(b, a) : compare(a, b);
    }).map(([, row]) => row);
  }

  turn(by) {
    this.start = Math.max(0, Math.min(this.sorted.length - 1, this.start + by));
    this.draw();
    announce(this.place.textContent);
  }

  draw() {
    this.head.replaceChildren(...this.columns.map(column => this.heading(column)));
    const shown = this.sorted.slice(this.start, this.start + ROWS);
    this.body.replaceChildren(...shown.map(row => this.line(row)));
    this.mark();
    const end = this.start + shown.length;
    this.place.textContent = this.sorted.length === 0 ? `No ${this.name.toLowerCase()} as asked for`
      : `${count(this.start + 1)} to ${count(end)} of ${count(this.sorted.length)}`;
    this.back.disabled = this.start === 0;
    this.next.disabled = end >= this.sorted.length;
  }

  heading(column) {
    const sorted = this.sort && this.sort.column === column ? (this.sort.down ? 'descending' : 'ascending') : 'none';
    return el('th', {scope: 'col', class: column.number ? 'number' : '', 'aria-sort': sorted},
      el('button', {type: 'button', class: 'sorter', click: () => this.sortBy(column)}, column.label,
        el('span', {'aria-hidden': 'true', class: 'arrow'}, {none: '', ascending: ' ▲', descending: ' ▼'}[sorted])));
  }

  line(row) {
    const tr = el('tr', {}, ...this.columns.map((column, i) => el(i ? 'td' : 'th', {scope: i ? undefined : 'row',
      class: (column.number ? 'number' : '') + (column.wide ? 'wide' : '')}, column.cell(row))));
    this.lines.set(tr, row instanceof Flight ? row : row.flight);
    return tr;
  }

  /** Marks the chosen flight and says where it stands, if it is in sight. */
  mark() {
    let found = null;
    for (const tr of this.body.rows) {
      const chosen = page.chosen !== null && this.lines.get(tr) === page.chosen;
      tr.classList.toggle('chosen', chosen);
      if (chosen && !found) found = tr;
    }
    return found;
  }
}

const WORDS = new Intl.Collator('en', {numeric: true});

function chooser(flight) {
  const button = el('button', {type: 'button', class: 'chooser', click: () => page.choose(flight, button)}, data(flight.name));
  return button;
}

function numberCell(value, text) {
  return Number.isNaN(value) ? '–' : text;
}

function flightTable() {
  return new DataTable('Flights', [
    {label: 'Flight', value: f => f.name, cell: chooser},
    {label: 'Date', value: f => f.date, cell: f => f.date},
    {label: 'Tail', value: f => f.tail, cell: f => data(f.tail)},
    {label: 'Route', value: f => f.route, cell: f => data(f.route)},
    {label: 'Flaps', value: f => f.flaps, cell: f => data(f.flaps)},
    {label: 'Status', value: f => f.status, cell: f => mark(STATUSES[f.status], STATUSES[f.status])},
    {label: 'Take-off mass', number: true, value: f => f.massKg(TAKEOFF), cell: f => f.type.massText(f.massKg(TAKEOFF))},
    {label: 'Take-off CG', number: true, value: f => f.cgPercentMac(TAKEOFF), cell: f => f.type.cgText(f.cgPercentMac(TAKEOFF))},
    {label: 'Trim', number: true, value: f => f.trim, cell: f => numberCell(f.trim, f.type.trimText(f.trim))},
    {label: 'Findings', number: true, value: f => f.findings.length / 2 + f.moreFindings,
      cell: f => count(f.findings.length / 2 + f.moreFindings)},
  ]);
}

function findingTable() {
  return new DataTable('Findings', [
    {label: 'Flight', value: r => r.flight.name, cell: r => chooser(r.flight)},
    {label: 'Date', value: r => r.flight.date, cell: r => r.flight.date},
    {label: 'Tail', value: r => r.flight.tail, cell: r => data(r.flight.tail)},
    {label: 'Severity', value: r => r.kind.severity, cell: r => mark(lookOfSeverity(r.kind.severity), SEVERITIES[r.kind.severity])},
    {label: 'Kind', value: r => r.kind.label, cell: r => r.kind.label},
    {label: 'What', wide: true, value: r => r.sentence, cell: r => data(r.sentence)},
  ]);
}

function tailTable() {
  return new DataTable('Tails', [
    {label: 'Tail', value: t => t[0], cell: t => data(t[0])},
    {label: 'Breached', number: true, value: t => t[1], cell: t => count(t[1])},
    {label: 'Marginal', number: true, value: t => t[2], cell: t => count(t[2])},
    {label: 'Flights', number: true, value: t => t[3], cell: t => count(t[3])},
    {label: 'Share breached', number: true, value: t => t[1] / t[3], cell: t => fixed(100 * t[1] / t[3], 1) + ' %'},
  ], 'Over the whole season; of what is asked for above, the words alone count here.');
}

function rejectedTable(season) {
  const rest = season.rejectedSeen - season.rejected.length;
  return new DataTable('Rejected rows', [
    {label: 'Row', value: r => r[0], cell: r => data(r[0])},
    {label: 'Reasons', wide: true, value: r => r[1], cell: r => data(r[1])},
  ], rest > 0 ? `The first ${count(season.rejected.length)} of ${count(season.rejectedSeen)}; all are in rejected.csv.`
    : 'Of what is asked for above, the words alone count here.');
}

/** Tables behind tabs, one shown at a time; arrow keys go from tab to tab. */
class TableTabs {
  constructor(season) {
    this.season = season;
    this.flights = flightTable();
    this.flights.sort = {column: this.flights.columns.find(column => column.label === 'Status'), down: true};
    this.findings = findingTable();
    this.tails = tailTable();
    this.rejected = rejectedTable(season);
    this.all = [this.flights, this.findings, this.tails, this.rejected];
    this.tabs = this.all.map((table, i) => el('button', {type: 'button', role: 'tab', id: 'tab-' + i, 'aria-controls': 'panel-' + i,
      click: () => this.open(i), keydown: event => this.key(event, i)}, table.name));
    this.panels = this.all.map((table, i) => el('div', {role: 'tabpanel', id: 'panel-' + i, 'aria-labelledby': 'tab-' + i}, table.box));
    this.box = el('div', {class: 'tables', id: 'tables'}, el('div', {role: 'tablist', 'aria-label': 'Tables'}, ...this.tabs), ...this.panels);
    this.open(0);
  }

  open(i) {
    this.opened = this.all[i];
    this.opened.see();
    this.tabs.forEach((tab, j) => {
      tab.setAttribute('aria-selected', String(i === j));
      tab.tabIndex = i === j ? 0 : -1;
      this.panels[j].hidden = i !== j;
    });
  }

  key(event, i) {
    const to = {ArrowRight: i + 1, ArrowLeft: i - 1, Home: 0, End: this.all.length - 1}[event.key];
    if (to === undefined) return;
    const tab = (to + this.all.length) % this.all.length;
    this.open(tab);
    this.tabs[tab].focus();
    event.preventDefault();
  }

  show(flights, choice) {
    const words = choice.text.toLowerCase().split(/\s+/).filter(word => word);
    const holds = row => words.every(word => row.join(' ').toLowerCase().includes(word));
    const findings = [];
    for (const flight of flights) {
      for (const [kind, sentence] of flight.findingsInWords()) {
        if (choice.kind < 0 || kind.index === choice.kind) findings.push({flight, kind, sentence});
      }
    }
    findings.sort((a, b) => b.kind.severity - a.kind.severity);
    this.flights.take(flights);
    this.findings.take(findings);
    this.tails.take(this.season.tailCounts.filter(row => holds([row[0]])));
    this.rejected.take(this.season.rejected.filter(holds));
    this.opened.see();
    this.tabs.forEach((tab, i) => tab.replaceChildren(`${this.all[i].name} (${count(this.all[i].rows.length)})`));
  }

  /** Marks the chosen flight; its row in the open table, if it is in sight. */
  mark() {
    this.all.forEach(table => table.mark());
    return this.opened.mark();
  }
}
