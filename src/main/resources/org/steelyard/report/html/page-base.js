'use strict';
/* Small helps. Data becomes text and numbers, never markup. */

const SVG = 'http://www.w3.org/2000/svg';
const CLEAN = 0, MARGINAL = 1, BREACHED = 2;
const STATUSES = ['clean', 'marginal', 'breached'];
const SEVERITIES = ['note', 'marginal', 'breach'];
const SHAPES = {
  clean: 'M6 2a4 4 0 1 0 0 8a4 4 0 1 0 0-8z',
  marginal: 'M6 1.4L10.6 6L6 10.6L1.4 6z',
  breached: 'M2 2L10 10M10 2L2 10',
  note: 'M2 6H10',
};

/** An element with attributes and children; texts become text nodes, functions become listeners. */
function el(name, attributes, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes || {})) {
    if (typeof value === 'function') {
      element.addEventListener(key, value);
    } else if (value !== false && value !== undefined) {
      element.setAttribute(key, value === true ? '' : value);
    }
  }
  element.append(...children.filter(child => child !== null && child !== undefined));
  return element;
}

/** Text from data, set apart so that its direction of writing does not turn what stands around it. */
function data(text) {
  return el('bdi', {}, text);
}

/** The mark of a verdict, told by its shape as well as by its colour, with a word. */
function mark(look, word) {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('class', 'sign');
  svg.setAttribute('viewBox', '0 0 12 12');
  svg.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS(SVG, 'path');
  path.setAttribute('class', 'shape');
  path.setAttribute('d', SHAPES[look]);
  svg.append(path);
  return el('span', {class: 'mark ' + look}, svg, word);
}

function lookOfSeverity(severity) {
  return ['note', 'marginal', 'breached'][severity];
}

/** By number of decimals: making a format costs much more than using it. */
const FORMATS = [0, 1, 2, 3].map(decimals =>
  new Intl.NumberFormat('en-US', {minimumFractionDigits: decimals, maximumFractionDigits: decimals}));

/** A number with so many decimals, its thousands set apart and with a true minus sign. */
function fixed(number, decimals) {
  const digits = FORMATS[decimals].format(Math.abs(number));
  return number < 0 && /[1-9]/.test(digits) ? '−' + digits : digits;
}

/** What is permitted, never rounded up to so many decimals. */
function down(number, decimals) {
  const grains = 10 ** decimals;
  return Math.floor(number * grains + 1e-5) / grains;
}

function count(number) {
  return fixed(number, 0);
}

function counted(number, noun) {
  return count(number) + ' ' + noun + (number === 1 ? '' : 's');
}

/** A trim as pilots say it; a sign is that of a scale of plain numbers, 0 of one with UP and DN. */
function trimText(units, decimals, unit, sign = 0) {
  if (sign) {
    const number = (sign * units).toFixed(decimals);
    return (/[1-9]/.test(number) ? number : number.replace('-', '')) + unit;
  }
  const digits = Math.abs(units).toFixed(decimals);
  return digits + unit + (/[1-9]/.test(digits) ? (units > 0 ? ' UP' : ' DN') : '');
}

/** The least and greatest of some numbers that are any. */
function extent(numbers) {
  let low = Infinity, high = -Infinity;
  for (const number of numbers) {
    if (number < low) low = number;
    if (number > high) high = number;
  }
  return [low, high];
}

function grown([low, high], part) {
  const more = high > low ? (high - low) * part : Math.max(1, Math.abs(low)) * part;
  return [low - more, high + more];
}

/**
 * A percentile of numbers in order, each standing for some flights. Where each stands for one it is the inclusive
 * method of spreadsheets, else the least number that reaches the share.
 */
function percentile(sorted, weights, share) {
  if (!weights) {
    const rank = share * (sorted.length - 1), low = Math.floor(rank);
    return low + 1 < sorted.length ? sorted[low] + (rank - low) * (sorted[low + 1] - sorted[low]) : sorted[low];
  }
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  let reached = 0;
  for (let i = 0; i < sorted.length; i++) {
    reached += weights[i];
    if (reached >= share * all) return sorted[i];
  }
  return sorted[sorted.length - 1];
}

/** Says something to those who do not see it. */
function announce(text) {
  document.getElementById('said').textContent = text;
}
