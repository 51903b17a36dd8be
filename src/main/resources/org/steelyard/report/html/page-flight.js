/* The chosen flight: states, trim, margins and findings. */

class FlightPanel {
  constructor() {
    this.box = el('section', {class: 'picture-box flight', id: 'flight', 'aria-labelledby': 'flight-title'});
    this.from = null;
    this.nothing();
  }

  nothing() {
    this.box.replaceChildren(el('h3', {id: 'flight-title', tabindex: '-1'}, 'No flight chosen'),
      el('p', {class: 'hint'}, 'Choose one by its point in a picture or by its name in a table: its states, trim, room to the '
        + 'limits and findings stand here then, and its fuel path is drawn inside the envelope.'));
  }

  /** @param from what had the focus, to go back to */
  show(flight, from) {
    this.from = from;
    const {type} = flight;
    const close = el('button', {type: 'button', class: 'tool', click: () => page.choose(null, null)}, 'Close');
    const back = from ? el('button', {type: 'button', class: 'tool', click: () => this.goBack()}, 'Back to where it was chosen') : null;
    this.box.replaceChildren(
      el('div', {class: 'picture-head'}, el('h3', {id: 'flight-title', tabindex: '-1'}, data(flight.name)), el('div', {class: 'tools'}, back, close)),
      el('p', {}, mark(STATUSES[flight.status], STATUSES[flight.status]), ` · ${flight.date} · `, data(flight.tail), ' · ', data(type.name),
        flight.route ? ' · ' : '', el('span', {class: 'nowrap'}, data(flight.route))),
      this.trim(flight, type), this.states(flight, type), this.margins(flight, type), this.findings(flight), this.facts(flight));
    if (from) {
      this.box.scrollIntoView({block: 'nearest'});
      document.getElementById('flight-title').focus();
    }
    announce(`${flight.name}, ${flight.date}, ${flight.tail}: ${STATUSES[flight.status]}, `
      + (flight.setting ? `trim to set ${flight.setting}, ` : 'no trim, ') + counted(flight.findings.length / 2 + flight.moreFindings, 'finding'));
  }

  goBack() {
    const row = page.tables.mark();
    const there = document.contains(this.from) ? this.from : row ? row.querySelector('button') : page.tables.tabs[0];
    there.focus();
    there.scrollIntoView({block: 'center'});
  }

  trim(flight, type) {
    const list = el('dl', {class: 'trim-facts'});
    const add = (name, value) => list.append(el('dt', {}, name), el('dd', {}, value));
    add('Take-off trim', el('span', {}, el('strong', {class: 'big-trim'}, flight.setting || 'none'),
      Number.isNaN(flight.trim) ? '' : ` exact ${type.trimText(flight.trim)}` + (flight.flaps ? `, flaps ${flight.flaps}` : '')));
    if (flight.isOutOfLimits) add('', el('strong', {}, mark('breached', 'out of limits – do not depart as loaded')));
    if (flight.recorded) add('Recorded', flight.recorded);
    if (flight.landingSetting) add('Landing trim', flight.landingSetting);
    return list;
  }

  table(name, headings, rows) {
    return el('div', {class: 'frame', role: 'region', tabindex: '0', 'aria-label': name},
      el('table', {class: 'small-table'},
        el('thead', {}, el('tr', {}, ...headings.map((heading, i) => el('th', {scope: 'col', class: i ? 'number' : ''}, heading)))),
        el('tbody', {}, ...rows.map(row => el('tr', {}, ...row.map((cell, i) =>
          el(i ? 'td' : 'th', {scope: i ? undefined : 'row', class: i ? 'number' : ''}, cell)))))));
  }

  states(flight, type) {
    const rows = [];
    for (let i = 0; i < flight.states.length; i += 4) {
      const [phase, kg, percent, index] = flight.states.slice(i, i + 4);
      rows.push([page.season.phases[phase], fixed(type.mass(kg), type.massDecimals), fixed(type.arm(percent), type.armDecimals),
        fixed(percent, 2), fixed(index, 2)]);
    }
    return this.table('States', ['State', `Mass, ${type.massUnit}`, `Arm, ${type.armUnit}`, 'CG, % MAC', 'Index'], rows);
  }

  margins(flight, type) {
    const rows = [];
    for (let i = 0; i < flight.margins.length; i += 3) {
      const [phase, forward, aft] = flight.margins.slice(i, i + 3);
      rows.push([page.season.phases[phase] + (phase === IN_FLIGHT ? ', nearest' : ''), this.room(type, forward), this.room(type, aft)]);
    }
    if (rows.length === 0) return el('p', {class: 'hint'}, 'No state could be held against an envelope.');
    return this.table('Room to the limits', [`Room, ${type.cgUnit}`, 'To forward limit', 'To aft limit'], rows);
  }

  room(type, percent) {
    return fixed(down(type.cgDistance(percent), type.cgDecimals), type.cgDecimals) + (percent < 0 ? ' outside' : '');
  }

  findings(flight) {
    const list = el('ul', {class: 'sentences'});
    for (const [kind, sentence] of flight.findingsInWords()) {
      list.append(el('li', {}, mark(lookOfSeverity(kind.severity), SEVERITIES[kind.severity]), ' ', data(sentence[0].toUpperCase() + sentence.slice(1) + '.')));
    }
    if (flight.moreFindings) list.append(el('li', {}, `${count(flight.moreFindings)} more: see findings.csv.`));
    if (!list.hasChildNodes()) list.append(el('li', {}, 'Nothing was found: inside every limit that was checked, and close to none.'));
    return list;
  }

  facts(flight) {
    const extras = pairs(flight.extras).filter(([, value]) => value).map(([name, value]) => `${name}: ${value}`);
    return el('p', {class: 'hint'}, data([flight.assumed ? 'assumed, shared out by a rule: ' + flight.assumed : '', ...extras, 'from ' + flight.origin]
      .filter(text => text).join(' · ')));
  }
}
