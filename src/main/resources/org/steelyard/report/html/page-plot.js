/* One picture on uPlot: axes, zoom and pan, hover, and stepping from flight to flight by keys. */

const palette = {};
const sprites = new Map();
let paletteRead = 0;

/** Takes the colours from the style sheet, which knows dark from light. */
function readPalette() {
  const style = getComputedStyle(document.documentElement);
  for (const name of ['paper', 'card', 'ink', 'quiet', 'rule', 'clean', 'marginal', 'breached', 'link', 'envelope']) {
    palette[name] = style.getPropertyValue('--' + name).trim();
  }
  sprites.clear();
  paletteRead++;
}

/** The mark of a status, drawn once and then stamped: thousands of stamps cost less than thousands of paths. */
function sprite(status) {
  const ratio = uPlot.pxRatio, key = status + '@' + ratio;
  if (!sprites.has(key)) {
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = Math.ceil(12 * ratio);
    const ctx = canvas.getContext('2d');
    const size = canvas.width / 12, path = new Path2D(SHAPES[STATUSES[status]]);
    ctx.scale(size, size);
    if (status === CLEAN) {
      ctx.translate(6, 6);
      ctx.scale(0.62, 0.62);
      ctx.translate(-6, -6);
      ctx.globalAlpha = 0.6;
      ctx.fillStyle = palette.clean;
      ctx.fill(path);
    } else {
      ctx.lineWidth = 2;
      ctx.strokeStyle = palette[STATUSES[status]];
      ctx.stroke(path);
    }
    sprites.set(key, canvas);
  }
  return sprites.get(key);
}

class Plot {
  /**
   * @param host element to stand in
   * @param height in CSS pixels
   * @param keys what the picture lets keys do, said to those who cannot see it
   */
  constructor(host, height, keys) {
    this.host = host;
    this.height = height;
    this.keys = keys;
    this.tip = el('div', {class: 'tip', 'aria-hidden': 'true', hidden: true});
    this.spec = null;
    new ResizeObserver(() => this.resize()).observe(host);
  }

  /**
   * Shows something new.
   * @param spec x and y: {label, text(value), home: [low, high], ticks}; under(u, ctx) and over(u, ctx) draw;
   *   points: [{x, y, flight}]; tell(x, y): text for a place without points; label: the picture in words
   */
  show(spec) {
    const home = JSON.stringify([spec.x.home, spec.y.home, spec.x.label, spec.y.label]);
    const moved = home !== this.home;
    this.home = home;
    this.spec = spec;
    this.hot = null;
    this.hideTip();
    if (!this.u) this.make();
    this.u.over.setAttribute('aria-label', spec.label + (this.keys ? ' ' + this.keys : ''));
    this.host.dataset.points = spec.points ? spec.points.length : '';
    if (moved) this.reset(); else this.u.redraw(false, true);
  }

  make() {
    const axis = side => ({
      scale: side,
      stroke: () => palette.ink,
      font: '12px system-ui, sans-serif',
      labelFont: '12px system-ui, sans-serif',
      label: ' ',
      labelSize: 18,
      size: side === 'x' ? 32 : 58,
      gap: 4,
      space: side === 'x' ? 64 : 36,
      grid: {stroke: () => palette.rule, width: 1},
      ticks: {stroke: () => palette.rule, width: 1, size: 4},
      values: (u, splits) => splits.map(value => this.spec[side].text(value)),
    });
    const options = {
      width: this.width(),
      height: this.height,
      legend: {show: false},
      cursor: {drag: {x: true, y: true, setScale: false, dist: 4}, points: {show: false}, x: false, y: false},
      scales: {x: {time: false, auto: false}, y: {auto: false}},
      series: [{}, {scale: 'y', paths: () => null, points: {show: false}}],
      axes: [axis('x'), axis('y')],
      hooks: {
        drawClear: [u => this.paint(u, this.spec.under)],
        draw: [u => { this.stamp(u); this.paint(u, this.spec.over); this.rings(u); }],
        setSelect: [u => this.zoomToSelection(u)],
        setCursor: [u => this.hover(u)],
      },
    };
    this.u = new uPlot(options, [[0, 1], [null, null]], this.host);
    this.u.over.append(this.tip);
    this.listen(this.u.over);
  }

  width() {
    return Math.max(240, Math.floor(this.host.clientWidth));
  }

  resize() {
    if (this.u && this.host.clientWidth > 0 && this.width() !== this.u.width) {
      this.hideTip();
      this.u.setSize({width: this.width(), height: this.height});
    }
  }

  view(x, y) {
    const {u} = this;
    u.axes[0].label = this.spec.x.label;
    u.axes[1].label = this.spec.y.label;
    u.batch(() => {
      u.setScale('x', {min: x[0], max: x[1]});
      u.setScale('y', {min: y[0], max: y[1]});
    });
  }

  reset() {
    this.view(this.spec.x.home, this.spec.y.home);
  }

  /** Zooms about a place, or the middle; a factor below 1 shows less. */
  zoom(factor, at) {
    const about = (scale, middle) => [middle + (scale.min - middle) * factor, middle + (scale.max - middle) * factor];
    const {x, y} = this.u.scales;
    this.view(about(x, at ? at.x : (x.min + x.max) / 2), about(y, at ? at.y : (y.min + y.max) / 2));
  }

  pan(partX, partY) {
    const {x, y} = this.u.scales;
    const dx = (x.max - x.min) * partX, dy = (y.max - y.min) * partY;
    this.view([x.min + dx, x.max + dx], [y.min + dy, y.max + dy]);
  }

  zoomToSelection(u) {
    const {left, top, width, height} = u.select;
    if (width > 6 && height > 6) {
      const x = [u.posToVal(left, 'x'), u.posToVal(left + width, 'x')];
      const y = [u.posToVal(top + height, 'y'), u.posToVal(top, 'y')];
      u.setSelect({left: 0, top: 0, width: 0, height: 0}, false);
      this.view(x, y);
    }
  }

  /** Draws within the frame, in canvas pixels. */
  paint(u, draw) {
    if (!draw || u.scales.x.min === null || u.scales.y.min === null) return;
    const {ctx, bbox} = u;
    ctx.save();
    ctx.beginPath();
    ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
    ctx.clip();
    draw(u, ctx, x => u.valToPos(x, 'x', true), y => u.valToPos(y, 'y', true), uPlot.pxRatio);
    ctx.restore();
  }

  /** The points, from a layer that is only drawn anew when they or the view have changed. */
  stamp(u) {
    if (!this.spec.points || u.scales.y.min === null) return;
    const {x, y} = u.scales, {left, top, width, height} = u.bbox;
    const key = [x.min, x.max, y.min, y.max, left, top, width, height, uPlot.pxRatio, paletteRead].join();
    if (key !== this.layerKey || this.layerOf !== this.spec.points) {
      this.layer = this.layer || document.createElement('canvas');
      this.layer.width = Math.ceil(width);
      this.layer.height = Math.ceil(height);
      this.stampOn(this.layer.getContext('2d'), px => u.valToPos(px, 'x', true) - left, py => u.valToPos(py, 'y', true) - top);
      this.layerKey = key;
      this.layerOf = this.spec.points;
    }
    u.ctx.drawImage(this.layer, Math.round(left), Math.round(top));
  }

  /** Clean ones first, so that the others lie on top; none that would lie outside. */
  stampOn(ctx, px, py) {
    const x0 = px(0), kx = px(1) - x0, y0 = py(0), ky = py(1) - y0, {width, height} = ctx.canvas;
    for (const status of [CLEAN, MARGINAL, BREACHED]) {
      const stamp = sprite(status), half = stamp.width / 2;
      for (const point of this.spec.points) {
        if (point.flight.status !== status) continue;
        const x = x0 + kx * point.x - half, y = y0 + ky * point.y - half;
        if (x > -2 * half && y > -2 * half && x < width && y < height) ctx.drawImage(stamp, x, y);
      }
    }
  }

  /** Rings around the chosen flight and the one stepped to. */
  rings(u) {
    if (!this.spec.points || u.scales.y.min === null) return;
    this.paint(u, (_, ctx, px, py) => {
      for (const point of this.spec.points) {
        if (point.flight === page.chosen) this.ring(ctx, px(point.x), py(point.y), 9, 2.5);
      }
      if (this.hot) this.ring(ctx, px(this.hot.x), py(this.hot.y), 7, 1.5);
    });
  }

  ring(ctx, x, y, radius, width) {
    ctx.beginPath();
    ctx.arc(x, y, radius * uPlot.pxRatio, 0, 2 * Math.PI);
    ctx.lineWidth = width * uPlot.pxRatio;
    ctx.strokeStyle = palette.ink;
    ctx.stroke();
  }

  /** The point nearest to a place in CSS pixels, none beyond 16 of them. */
  nearest(left, top) {
    const {u, spec} = this;
    const x0 = u.valToPos(0, 'x'), kx = u.valToPos(1, 'x') - x0, y0 = u.valToPos(0, 'y'), ky = u.valToPos(1, 'y') - y0;
    let best = null, least = 16 * 16;
    for (const point of spec.points || []) {
      const dx = x0 + kx * point.x - left, dy = y0 + ky * point.y - top, distance = dx * dx + dy * dy;
      if (distance < least || distance === least && best && point.flight.status > best.flight.status) {
        least = distance;
        best = point;
      }
    }
    return best;
  }

  hover(u) {
    const {left, top} = u.cursor;
    if (left === undefined || left < 0 || !this.spec) {
      if (this.hot && document.activeElement !== u.over) this.step(null);
      else if (!this.hot) this.hideTip();
      return;
    }
    if (this.spec.points) {
      const point = this.nearest(left, top);
      if (point !== this.hot) this.step(point);
    } else if (this.spec.tell) {
      this.showTip(this.spec.tell(u.posToVal(left, 'x'), u.posToVal(top, 'y')), left, top);
    }
  }

  step(point) {
    this.hot = point;
    if (point) {
      this.showTip(this.spec.words(point), this.u.valToPos(point.x, 'x'), this.u.valToPos(point.y, 'y'));
    } else {
      this.hideTip();
    }
    this.u.redraw(false, false);
  }

  showTip(lines, left, top) {
    this.tip.hidden = !lines || lines.length === 0;
    if (this.tip.hidden) return;
    this.tip.replaceChildren(...lines.map(line => el('div', {}, line)));
    const {clientWidth, clientHeight} = this.u.over;
    const right = left > clientWidth / 2, low = top > clientHeight / 2;
    this.tip.style.left = right ? '' : Math.max(0, left + 14) + 'px';
    this.tip.style.right = right ? Math.max(0, clientWidth - left + 14) + 'px' : '';
    this.tip.style.top = low ? '' : Math.max(0, top + 10) + 'px';
    this.tip.style.bottom = low ? Math.max(0, clientHeight - top + 10) + 'px' : '';
  }

  hideTip() {
    this.tip.hidden = true;
  }

  listen(over) {
    over.tabIndex = 0;
    over.setAttribute('role', this.keys ? 'application' : 'img');
    over.addEventListener('keydown', event => this.key(event));
    over.addEventListener('blur', () => this.step(null));
    over.addEventListener('dblclick', () => this.reset());
    over.addEventListener('wheel', event => this.wheel(event), {passive: false});
    let pressed = null;
    over.addEventListener('pointerdown', event => { pressed = [event.clientX, event.clientY]; });
    over.addEventListener('click', event => {
      const still = pressed && Math.hypot(event.clientX - pressed[0], event.clientY - pressed[1]) < 4;
      const frame = over.getBoundingClientRect();
      const point = still && this.nearest(event.clientX - frame.left, event.clientY - frame.top);
      if (point) page.choose(point.flight, null);
    });
    this.u.root.addEventListener('mousedown', event => this.drag(event), true);
  }

  /** With Shift the picture follows the mouse. */
  drag(event) {
    if (!event.shiftKey || event.button !== 0) return;
    event.stopPropagation();
    event.preventDefault();
    let {clientX, clientY} = event;
    const move = moved => {
      const {clientWidth, clientHeight} = this.u.over;
      this.pan((clientX - moved.clientX) / clientWidth, (moved.clientY - clientY) / clientHeight);
      ({clientX, clientY} = moved);
    };
    const up = () => {
      document.removeEventListener('mousemove', move);
      document.removeEventListener('mouseup', up);
    };
    document.addEventListener('mousemove', move);
    document.addEventListener('mouseup', up);
  }

  /** The wheel zooms once the picture has the focus, so that a page can be scrolled past it. */
  wheel(event) {
    if (document.activeElement !== this.u.over && !event.ctrlKey) return;
    event.preventDefault();
    const frame = this.u.over.getBoundingClientRect();
    const at = {x: this.u.posToVal(event.clientX - frame.left, 'x'), y: this.u.posToVal(event.clientY - frame.top, 'y')};
    this.zoom(event.deltaY < 0 ? 0.8 : 1.25, at);
  }

  key(event) {
    const moves = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]};
    const move = moves[event.key];
    if (move && event.shiftKey) this.pan(move[0] / 10, move[1] / 10);
    else if (move && this.spec.points) this.stepBy(move);
    else if (event.key === '+' || event.key === '=') this.zoom(0.7);
    else if (event.key === '-') this.zoom(1 / 0.7);
    else if (event.key === '0') this.reset();
    else if ((event.key === 'Enter' || event.key === ' ') && this.hot) page.choose(this.hot.flight, this.u.over);
    else return;
    event.preventDefault();
  }

  /** To the next point in view, by CG or by mass. */
  stepBy([dx, dy]) {
    const {x, y} = this.u.scales, side = dx ? 'x' : 'y', by = dx || dy;
    const seen = this.spec.points
      .filter(p => p.x >= x.min && p.x <= x.max && p.y >= y.min && p.y <= y.max)
      .sort((a, b) => a[side] - b[side] || a.flight.index - b.flight.index);
    if (seen.length === 0) return;
    const from = this.hot || this.spec.points.find(point => point.flight === page.chosen);
    const at = from ? seen.indexOf(from) : -1;
    const next = at < 0 ? (by > 0 ? 0 : seen.length - 1) : Math.min(seen.length - 1, Math.max(0, at + by));
    this.step(seen[next]);
    announce(this.spec.words(seen[next]).join(', '));
  }
}
