/* The flights of the page and which of them are asked for. */

const TAKEOFF = 3, IN_FLIGHT = 4;

/** One flight, by the places that its figures have in the array that it comes in. */
class Flight {
  constructor(season, index, cells) {
    this.season = season;
    this.index = index;
    [this.name, this.date, this.tailAt, this.typeAt, this.from, this.to, this.flaps, this.status, this.trim,
      this.setting, this.landingSetting, this.recorded, this.assumed, this.origin, this.states, this.margins,
      this.path, this.findings, this.moreFindings, this.extras] = cells;
    if (this.trim === null) this.trim = NaN;
  }
  get tail() { return this.season.tails[this.tailAt]; }
  get type() { return this.season.types[this.typeAt]; }
  get month() { return this.date.slice(0, 7); }
  get route() { return this.from || this.to ? (this.from || '?') + '–' + (this.to || '?') : ''; }
  /** Place of a phase among the states, or -1. */
  at(phase) {
    for (let i = 0; i < this.states.length; i += 4) if (this.states[i] === phase) return i;
    return -1;
  }
  massKg(phase) { const i = this.at(phase); return i < 0 ? NaN : this.states[i + 1]; }
  cgPercentMac(phase) { const i = this.at(phase); return i < 0 ? NaN : this.states[i + 2]; }
  * findingsInWords() {
    for (let i = 0; i < this.findings.length; i += 2) yield [this.season.kinds[this.findings[i]], this.findings[i + 1]];
  }
  /** Whether a limit is exceeded; a recorded setting that is off does not put the flight out of limits. */
  get isOutOfLimits() {
    return [...this.findingsInWords()].some(([kind]) => SEVERITIES[kind.severity] === 'breach' && kind.code !== 'trim-recorded');
  }
  hasKind(kind) {
    for (let i = 0; i < this.findings.length; i += 2) if (this.findings[i] === kind) return true;
    return false;
  }
  /** What a search looks through. */
  get searched() {
    if (this.words === undefined) {
      this.words = [this.name, this.date, this.tail, this.type.id, this.route, this.origin, STATUSES[this.status],
        this.setting, ...this.findings.filter((_, i) => i % 2), ...this.extras].join('\n').toLowerCase();
    }
    return this.words;
  }
}

/** A type with the units of its users. */
class AircraftType {
  constructor(cells, index) {
    Object.assign(this, cells);
    this.index = index;
    this.cgUnit = this.cgAsArm ? this.armUnit : '% MAC';
    this.cgDecimals = this.cgAsArm ? this.armDecimals : 2;
  }
  mass(kg) { return kg * this.massPerKg; }
  arm(percent) { return this.armAtZero + percent * this.armPerPercent; }
  cg(percent) { return this.cgAsArm ? this.arm(percent) : percent; }
  cgDistance(percent) { return this.cgAsArm ? percent * this.armPerPercent : percent; }
  massText(kg) { return fixed(this.mass(kg), this.massDecimals) + ' ' + this.massUnit; }
  cgText(percent) { return fixed(this.cg(percent), this.cgDecimals) + ' ' + this.cgUnit; }
  trimText(units, decimals = 2) { return trimText(units, decimals, this.trimUnit, this.trimSign); }
}

class Season {
  constructor(page) {
    Object.assign(this, page);
    this.types = page.types.map((type, i) => new AircraftType(type, i));
    this.kinds = page.kinds.map(([code, severity, label], index) => ({code, severity, label, index}));
    this.flights = page.flights.map((cells, i) => new Flight(this, i, cells));
    /** Those that have a trim, by trim. */
    this.byTrim = this.flights.filter(flight => !Number.isNaN(flight.trim)).sort((a, b) => a.trim - b.trim);
    this.seen = page.sample.seen.reduce((sum, n) => sum + n, 0);
    this.thinned = this.flights.length < this.seen;
    /** For how many flights of the season one of the page stands. */
    this.weights = STATUSES.map((_, s) => page.sample.kept[s] ? page.sample.seen[s] / page.sample.kept[s] : 0);
    this.months = [...new Set(this.flights.map(flight => flight.month))].sort();
  }
  weight(flights) {
    return flights.reduce((sum, flight) => sum + this.weights[flight.status], 0);
  }
  /** The flights that a choice asks for. */
  match(choice) {
    const words = choice.text.toLowerCase().split(/\s+/).filter(word => word);
    return this.flights.filter(flight => choice.statuses[flight.status]
      && (choice.type < 0 || flight.typeAt === choice.type)
      && (choice.tail < 0 || flight.tailAt === choice.tail)
      && (choice.flaps === null || flight.flaps === choice.flaps)
      && (choice.kind < 0 || flight.hasKind(choice.kind))
      && words.every(word => flight.searched.includes(word)));
  }
  /** How the flights of the page were chosen, in a sentence. */
  get thinning() {
    if (!this.thinned) return `Every one of the ${counted(this.seen, 'flight')} is on this page.`;
    const parts = [BREACHED, MARGINAL, CLEAN].map(s => {
      const kept = this.sample.kept[s], seen = this.sample.seen[s];
      return kept === seen ? `all ${count(seen)} ${STATUSES[s]}`
        : `${count(kept)} of ${count(seen)} ${STATUSES[s]}, drawn by lot`;
    });
    return `Thinned: this page holds ${count(this.flights.length)} of ${counted(this.seen, 'flight')}: ${parts.join('; ')}. `
      + 'In counts and shares each flight drawn by lot stands for as many as it was drawn from '
      + `(seed ${this.sample.seed}: the same season gives the same flights). All flights are in flights.csv.`;
  }
}
