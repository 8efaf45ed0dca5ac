// Draws a plan: only what is in view, every time anew.

import { BATCH, LOAD, batchEnd } from "./layout.js";
import { Tiles } from "./tiles.js";
import { clock, dayName, isoDay, midnight } from "../times.js";

const HOUR = 3600000;
const STEPS = [5, 10, 15, 30, 60, 120, 180, 360, 720, 1440].map((minutes) => minutes * 60000);
const FONT = '"Liberation Sans", "Segoe UI", Roboto, Arial, sans-serif';

/** The page's colours, for light and dark. */
export function readInk() {
  const style = getComputedStyle(document.documentElement);
  const of = (name) => style.getPropertyValue(`--${name}`).trim();
  return { paper: of("paper"), sheet: of("sheet"), text: of("text"), soft: of("soft"), line: of("line"), hair: of("hair"), danger: of("danger") };
}

function hatch(ink, gap, width, colour) {
  const tile = document.createElement("canvas");
  tile.width = tile.height = gap;
  const pen = tile.getContext("2d");
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.beginPath();
  for (const shift of [-gap, 0, gap]) {
    pen.moveTo(shift, gap);
    pen.lineTo(shift + gap, 0);
  }
  pen.stroke();
  return tile;
}

export class Drawing {
  constructor(place, axis, words) {
    this.tiles = new Tiles(place);
    this.axis = axis;
    this.axisPen = axis.getContext("2d", { alpha: false });
    this.words = words;
    this.hits = new Map();
    this.widths = new Map();
    this.recolour();
  }

  recolour() {
    this.ink = readInk();
    this.closedTile = hatch(this.ink, 8, 1, this.ink.hair);
    this.setUpTile = hatch(this.ink, 6, 1.6, this.ink.text);
    this.patterns = null;
  }

  /** Fits the canvases to their places. */
  size(width, height) {
    const ratio = window.devicePixelRatio || 1;
    this.axis.width = Math.round(width * ratio);
    this.axis.height = Math.round(40 * ratio);
    this.axis.style.width = `${width}px`;
    this.axis.style.height = "40px";
    this.tiles.size(width, height, ratio);
    this.ratio = ratio;
    this.width = width;
    this.height = height;
    this.left = width < 700 ? 84 : 128;
    this.patterns = null;
  }

  /**
   * @param view x: scale from ms to px; layout; plan; touched; chosen: id of a run; now: ms; drag: what is being moved
   */
  draw(view) {
    if (!this.patterns) {
      const pen = this.axisPen;
      this.patterns = { closed: pen.createPattern(this.closedTile, "repeat"), setUp: pen.createPattern(this.setUpTile, "repeat") };
    }
    this.hits.clear();
    this.view = view;
    const [from, to] = view.x.domain().map(Number);
    this.from = from;
    this.to = to;
    this.step = this.stepFor(view.x);
    this.tiles.redraw((pen, top, bottom) => this.strip(pen, top, bottom));
    this.drawAxis();
  }

  /** What lies between two heights. */
  strip(pen, top, bottom) {
    const rows = this.view.layout.rows.filter((row) => row.y - 8 < bottom && row.y + row.h + 8 > top);
    pen.fillStyle = this.ink.paper;
    pen.fillRect(0, top, this.width, bottom - top);
    pen.save();
    pen.beginPath();
    pen.rect(this.left, top, this.width - this.left, bottom - top);
    pen.clip();
    for (const row of rows) this.ground(pen, row);
    this.grid(pen, top, bottom);
    for (const row of rows) this.row(pen, row);
    this.nowLine(pen, top, bottom);
    if (this.view.drag) this.dragged(pen, this.view.drag);
    pen.restore();
    this.labels(pen, rows, top, bottom);
  }

  stepFor(x) {
    const perMs = (x.range()[1] - x.range()[0]) / (x.domain()[1] - x.domain()[0]);
    return STEPS.find((step) => step * perMs >= 58) ?? STEPS[STEPS.length - 1];
  }

  /** Calls for each tick in view, aligned to the plant's midnight. */
  ticks(then) {
    for (let day = midnight(isoDay(this.from)); day < this.to;) {
      const next = midnight(isoDay(day), 1);
      for (let at = day; at < next; at += this.step) {
        if (at >= this.from - this.step && at <= this.to) then(at, at === day);
      }
      day = next;
    }
  }

  grid(pen, top, bottom) {
    pen.lineWidth = 1;
    this.ticks((at, day) => {
      const x = Math.round(this.view.x(at)) + 0.5;
      pen.strokeStyle = day ? this.ink.line : this.ink.hair;
      pen.beginPath();
      pen.moveTo(x, top);
      pen.lineTo(x, bottom);
      pen.stroke();
    });
  }

  ground(pen, row) {
    if (row.kind !== "press") {
      pen.strokeStyle = this.ink.hair;
      pen.beginPath();
      pen.moveTo(this.left, row.y + row.h + 0.5);
      pen.lineTo(this.width, row.y + row.h + 0.5);
      pen.stroke();
      return;
    }
    pen.fillStyle = this.ink.sheet;
    pen.fillRect(this.left, row.y, this.width - this.left, row.h - 2);
    pen.fillStyle = this.patterns.closed;
    pen.fillRect(this.left, row.y, this.width - this.left, row.h - 2);
    for (const part of row.press.staffed) {
      if (part.to < this.from || part.from > this.to) continue;
      const x = this.view.x(part.from);
      pen.fillStyle = this.ink.paper;
      pen.fillRect(x, row.y, this.view.x(part.to) - x, row.h - 2);
      if (part.overtime) {
        pen.fillStyle = this.ink.soft;
        for (let dot = x; dot < this.view.x(part.to); dot += 6) pen.fillRect(dot, row.y, 2, 2);
      }
    }
  }

  row(pen, row) {
    this.hits.set(row, (this.rowHits = []));
    if (row.kind === "press") for (const run of row.runs) this.run(pen, row, run);
    else if (row.kind === "belt") this.belt(pen, row);
    else if (row.kind === "ink") for (const batch of row.batches) this.batch(pen, row, batch);
    else for (const load of row.loads) this.load(pen, row, load);
  }

  dim(on) {
    return this.view.touched && !on ? 0.28 : 1;
  }

  run(pen, row, run) {
    if (run.off < this.from || run.start > this.to) return;
    const { x } = this.view;
    const y = row.y + 3;
    const h = row.h - 8;
    const start = x(run.start);
    const print = x(run.print);
    const end = Math.max(x(run.end), print + 2);
    const half = Math.round(h / 2);
    pen.globalAlpha = this.dim(this.view.touched?.runs.has(run.id));
    if (print > start) {
      pen.fillStyle = this.ink.paper;
      pen.fillRect(start, y, print - start, h);
      pen.fillStyle = this.patterns.setUp;
      pen.fillRect(start, y, print - start, h);
    }
    pen.fillStyle = this.ink.paper;
    pen.fillRect(print, y, end - print, half);
    const stripe = (h - half) / run.inks.length;
    run.inks.forEach((ink, i) => {
      pen.fillStyle = this.view.plan.swatches[ink] || this.ink.paper;
      pen.fillRect(print, y + half + i * stripe, end - print, stripe + 0.5);
    });
    pen.fillStyle = this.ink.text;
    pen.fillRect(print, y + half - 0.5, end - print, 1);
    pen.fillStyle = this.ink.sheet;
    for (let i = 1; i < run.parts.length; i++) {
      const pause = x(run.parts[i - 1][1]);
      pen.fillRect(pause, y + half, x(run.parts[i][0]) - pause, h - half);
    }
    const chosen = this.view.chosen === run.id;
    pen.lineWidth = chosen ? 3 : 1.5;
    pen.strokeStyle = run.lateMinutes > 0 ? this.ink.danger : this.ink.text;
    pen.strokeRect(start, y, end - start, h);
    // until the last garment is off the belt
    pen.lineWidth = 1.5;
    pen.beginPath();
    pen.moveTo(end, y + h - 2);
    pen.lineTo(x(run.off), y + h - 2);
    pen.stroke();
    if (chosen) {
      pen.setLineDash([4, 3]);
      pen.strokeStyle = this.ink.text;
      pen.strokeRect(start - 3.5, y - 3, end - start + 7, h + 6);
      pen.setLineDash([]);
    }
    this.runText(pen, run, print, end, y, half);
    pen.globalAlpha = 1;
    this.rowHits.push({ x: start - 2, y, w: Math.max(end - start, 6) + 4, h, run });
  }

  runText(pen, run, print, end, y, half) {
    const late = run.lateMinutes > 0;
    const marks = (late ? "\u25B2 " : "") + (run.pinned ? "\u25C6 " : "") + (run.frozen ? "\u25A0 " : "");
    const left = Math.max(print, this.left) + 4;
    const room = end - left - 3;
    if (room < 14) {
      if (late) {
        pen.fillStyle = this.ink.danger;
        pen.fillText("\u25B2", print, y + half - 5);
      }
      return;
    }
    pen.font = `bold 12px ${FONT}`;
    pen.textBaseline = "middle";
    pen.fillStyle = late ? this.ink.danger : this.ink.text;
    const text = this.fit(pen, `${marks}${run.order} ${run.name.slice(run.order.length + 1)}`, room);
    pen.fillText(text, left, y + half / 2 + 1);
  }

  /** The width of a text; measuring is what takes longest, and texts come again with every frame. */
  measure(pen, text) {
    const key = `${pen.font}|${text}`;
    let width = this.widths.get(key);
    if (width === undefined) {
      if (this.widths.size > 20000) this.widths.clear();
      this.widths.set(key, (width = pen.measureText(text).width));
    }
    return width;
  }

  fit(pen, text, room) {
    if (this.measure(pen, text) <= room) return text;
    const each = this.measure(pen, "n");
    const fits = Math.floor(room / each);
    return fits < 2 ? "" : `${text.slice(0, fits - 1)}\u2026`;
  }

  belt(pen, row) {
    const top = row.y + 10;
    const bottom = row.y + row.h - 6;
    const height = (percent) => bottom - ((bottom - top) * Math.min(percent, 110)) / 100;
    pen.fillStyle = this.ink.hair;
    pen.strokeStyle = this.ink.text;
    const parts = row.belt.filter((part) => part.end >= this.from && part.start <= this.to);
    for (const part of parts) {
      const x = this.view.x(part.start);
      const w = this.view.x(part.end) - x;
      pen.fillRect(x, height(part.areaPercent), w, bottom - height(part.areaPercent));
      this.rowHits.push({ x, y: row.y, w, h: row.h, belt: part, dryer: row.label });
    }
    pen.lineWidth = 1.5;
    this.steps(pen, parts, (part) => height(part.areaPercent), bottom);
    pen.setLineDash([5, 3]);
    this.steps(pen, parts, (part) => height(part.heatPercent), bottom);
    pen.setLineDash([]);
    pen.strokeStyle = this.ink.line;
    pen.lineWidth = 1;
    pen.beginPath();
    pen.moveTo(this.left, top + 0.5);
    pen.lineTo(this.width, top + 0.5);
    pen.stroke();
  }

  steps(pen, parts, height, bottom) {
    pen.beginPath();
    let until = null;
    for (const [i, part] of parts.entries()) {
      const x = this.view.x(part.start);
      if (until !== part.start) pen.moveTo(x, bottom);
      pen.lineTo(x, height(part));
      pen.lineTo(this.view.x(part.end), height(part));
      until = part.end;
      if (parts[i + 1]?.start !== part.end) pen.lineTo(this.view.x(part.end), bottom);
    }
    pen.stroke();
  }

  batch(pen, row, batch) {
    const last = batchEnd(batch);
    if (last < this.from || batch.start > this.to) return;
    const { x } = this.view;
    const y = row.y + batch.lane * BATCH + 3;
    const h = BATCH - 4;
    const [start, ready, end] = [x(batch.start), x(batch.ready), x(last)];
    pen.globalAlpha = this.dim(this.view.touched?.batches.has(batch.id));
    pen.fillStyle = this.ink.paper;
    pen.fillRect(start, y, end - start, h);
    pen.fillStyle = this.patterns.setUp;
    pen.fillRect(start, y, Math.max(ready - start, 0), h);
    if (batch.last) {
      pen.fillStyle = this.view.plan.swatches[batch.ink] || this.ink.paper;
      pen.fillRect(ready, y + h - 7, Math.max(x(batch.last) - ready, 1), 7);
      pen.strokeStyle = this.ink.text;
      pen.lineWidth = 1;
      pen.strokeRect(ready, y + h - 7, Math.max(x(batch.last) - ready, 1), 7);
    }
    pen.strokeStyle = this.ink.text;
    pen.lineWidth = 1.2;
    if (!batch.gone) pen.setLineDash([3, 3]);
    pen.strokeRect(start, y, end - start, h);
    pen.setLineDash([]);
    if (batch.gone) {
      pen.lineWidth = 4;
      pen.beginPath();
      pen.moveTo(end, y - 1);
      pen.lineTo(end, y + h + 1);
      pen.stroke();
    }
    const left = Math.max(ready, this.left) + 4;
    if (end - left > 30) {
      pen.font = `11px ${FONT}`;
      pen.textBaseline = "middle";
      pen.fillStyle = this.ink.text;
      pen.fillText(this.fit(pen, `${batch.totalG} g`, end - left - 4), left, y + 7);
    }
    pen.globalAlpha = 1;
    this.rowHits.push({ x: start, y, w: end - start, h, batch });
  }

  load(pen, row, load) {
    if (load.end < this.from || load.start > this.to) return;
    const y = row.y + load.lane * LOAD + 3;
    const h = LOAD - 5;
    const x = this.view.x(load.start);
    const w = Math.max(this.view.x(load.end) - x, 3);
    pen.globalAlpha = this.dim(this.view.touched?.loads.has(load));
    pen.fillStyle = load.step === "dry-coated" ? this.ink.hair : this.ink.paper;
    pen.fillRect(x, y, w, h);
    pen.strokeStyle = this.ink.text;
    pen.lineWidth = 1.2;
    pen.strokeRect(x, y, w, h);
    const left = Math.max(x, this.left) + 4;
    if (x + w - left > 12) {
      pen.font = `11px ${FONT}`;
      pen.textBaseline = "middle";
      pen.fillStyle = this.ink.text;
      const room = x + w - left - 3;
      const text = `${load.screens} ${this.words(load.step)}`;
      // rather the number alone than a word cut short
      pen.fillText(this.measure(pen, text) <= room ? text : this.fit(pen, String(load.screens), room), left, y + h / 2);
    }
    pen.globalAlpha = 1;
    this.rowHits.push({ x, y, w, h, load });
  }

  nowLine(pen, top, bottom) {
    const x = Math.round(this.view.x(this.view.now));
    if (x < this.left || x > this.width) return;
    pen.strokeStyle = this.ink.text;
    pen.lineWidth = 2;
    pen.beginPath();
    pen.moveTo(x, top);
    pen.lineTo(x, bottom);
    pen.stroke();
  }

  dragged(pen, drag) {
    if (!drag.row) return;
    pen.fillStyle = this.ink.text;
    const mark = drag.before ? this.view.x(drag.before.start) : drag.x;
    pen.fillRect(mark - 2, drag.row.y - 2, 5, drag.row.h + 2);
    pen.font = `bold 13px ${FONT}`;
    const text = `${drag.run.order} \u2192 ${drag.words}`;
    const w = pen.measureText(text).width + 16;
    const x = Math.min(drag.x + 8, this.width - w - 4);
    pen.fillRect(x, drag.row.y + 8, w, 26);
    pen.fillStyle = this.ink.paper;
    pen.textBaseline = "middle";
    pen.fillText(text, x + 8, drag.row.y + 22);
  }

  labels(pen, rows, top, bottom) {
    pen.fillStyle = this.ink.paper;
    pen.fillRect(0, top, this.left, bottom - top);
    pen.strokeStyle = this.ink.line;
    pen.lineWidth = 1;
    pen.beginPath();
    pen.moveTo(this.left - 0.5, top);
    pen.lineTo(this.left - 0.5, bottom);
    pen.stroke();
    pen.textBaseline = "middle";
    for (const row of rows) {
      let x = 6;
      if (row.kind === "ink") {
        pen.fillStyle = this.view.plan.swatches[row.ink] || this.ink.paper;
        pen.fillRect(6, row.y + row.h / 2 - 6, 16, 12);
        pen.strokeStyle = this.ink.text;
        pen.strokeRect(6, row.y + row.h / 2 - 6, 16, 12);
        x = 28;
      }
      pen.fillStyle = this.ink.text;
      pen.font = `${row.kind === "press" ? "bold 15px" : "13px"} ${FONT}`;
      if (row.kind === "belt") {
        pen.font = `12px ${FONT}`;
        pen.fillText(this.fit(pen, this.words("beltArea", row.label), this.left - 12), 6, row.y + row.h / 2 - 7);
        pen.fillText(this.fit(pen, this.words("beltHeat"), this.left - 12), 6, row.y + row.h / 2 + 9);
        continue;
      }
      pen.fillText(this.fit(pen, row.label, this.left - x - 6), x, row.y + row.h / 2);
      if (row.kind === "press" && !row.press.inService) {
        pen.font = `11px ${FONT}`;
        pen.fillText(this.words("outOfService"), x, row.y + row.h / 2 + 14);
      }
    }
    pen.font = `bold 12px ${FONT}`;
    for (const head of this.view.layout.heads) {
      pen.fillStyle = this.ink.paper;
      const w = this.measure(pen, head.text) + 16;
      pen.fillRect(0, head.y, w, head.h - 3);
      pen.fillStyle = this.ink.soft;
      pen.fillText(head.text, 6, head.y + head.h / 2);
    }
  }

  drawAxis() {
    const pen = this.axisPen;
    pen.setTransform(this.ratio, 0, 0, this.ratio, 0, 0);
    pen.fillStyle = this.ink.paper;
    pen.fillRect(0, 0, this.width, 40);
    pen.fillStyle = this.ink.text;
    pen.strokeStyle = this.ink.line;
    pen.textBaseline = "middle";
    pen.save();
    pen.beginPath();
    pen.rect(this.left, 0, this.width, 40);
    pen.clip();
    let day = midnight(isoDay(this.from));
    pen.font = `bold 13px ${FONT}`;
    while (day < this.to) {
      const next = midnight(isoDay(day), 1);
      const x = Math.max(this.view.x(day), this.left) + 5;
      if (this.view.x(next) - x > 30) pen.fillText(this.fit(pen, dayName(day + 12 * HOUR), this.view.x(next) - x - 4), x, 11);
      pen.beginPath();
      pen.moveTo(Math.round(this.view.x(day)) + 0.5, 0);
      pen.lineTo(Math.round(this.view.x(day)) + 0.5, 40);
      pen.stroke();
      day = next;
    }
    pen.font = `12px ${FONT}`;
    if (this.step < 24 * HOUR) {
      this.ticks((at) => pen.fillText(clock(at), this.view.x(at) + 3, 30));
    }
    const now = Math.round(this.view.x(this.view.now));
    if (now >= this.left) {
      pen.fillStyle = this.ink.text;
      const text = clock(this.view.now);
      const w = pen.measureText(text).width + 10;
      pen.fillRect(now - w / 2, 21, w, 18);
      pen.fillStyle = this.ink.paper;
      pen.fillText(text, now - w / 2 + 5, 30);
    }
    pen.restore();
    pen.strokeStyle = this.ink.text;
    pen.lineWidth = 2;
    pen.beginPath();
    pen.moveTo(0, 39);
    pen.lineTo(this.width, 39);
    pen.stroke();
  }

  /** What is drawn at a place, the topmost first. */
  at(x, y) {
    if (x < this.left) return null;
    const hits = [...this.hits.values()].flat();
    for (let i = hits.length - 1; i >= 0; i--) {
      const hit = hits[i];
      if (x >= hit.x && x <= hit.x + hit.w && y >= hit.y && y <= hit.y + hit.h) return hit;
    }
    return null;
  }

  /** The row at a height. */
  rowAt(y) {
    return this.view.layout.rows.find((row) => y >= row.y && y < row.y + row.h) ?? null;
  }
}
