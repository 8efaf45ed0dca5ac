// The planner's page: drawing, choosing, solving, publishing.

import { Drawing } from "./drawing.js";
import { layOut, readPlan, touches } from "./layout.js";
import { aboutOther, aboutRun, inALine } from "./about.js";
import { instruct } from "./instruct.js";
import { Instructions } from "./instructions.js";
import "./solve.js";
import { get } from "../ask.js";
import { notice } from "../notices.js";
import { say } from "../say.js";
import { clock, isoDay, midnight, now } from "../times.js";

const HOUR = 3600000;
const place = document.getElementById("drawing");

if (place) start();

async function start() {
  const message = document.getElementById("drawing-message");
  try {
    const plan = readPlan(await get(place.dataset.url));
    message.hidden = true;
    const board = new Board(plan);
    board.open();
    const form = document.getElementById("instruct");
    const decided = form ? instruct(board) : new Instructions(board, false).read();
    decided.catch(() => {
      // without what is decided already a change would take it all back
      form?.remove();
      notice(say("noAnswer"), { danger: true });
    });
  } catch (trouble) {
    message.textContent = trouble.status ? trouble.message : say("noAnswer");
    message.classList.add("danger");
    if (!trouble.status) document.body.addEventListener("potlife:back", () => location.reload(), { once: true });
  }
}

class Board {
  constructor(plan) {
    this.plan = plan;
    this.canvas = document.getElementById("canvas");
    this.about = document.getElementById("about");
    this.list = document.getElementById("runs");
    this.drawing = new Drawing(this.canvas, document.getElementById("axis"), say);
    this.shown = { belts: true, batches: true, screens: true };
    this.chosen = null;
    this.pointed = null;
    this.empty = this.about.innerHTML;
  }

  open() {
    document.getElementById("board").hidden = false;
    this.byTime = [...this.plan.runs].sort((a, b) => a.start - b.start);
    this.base = d3.scaleLinear([this.plan.from, this.plan.to], [0, 1]);
    this.zoom = d3.zoom()
      .scaleExtent([1, Math.max(1, ((this.plan.to - this.plan.from) / HOUR) * 2)])
      .filter((event) => this.mayZoom(event))
      .on("zoom", (event) => this.zoomed(event.transform));
    this.resize();
    d3.select(this.canvas).call(this.zoom).on("dblclick.zoom", null);
    d3.select(this.drawing.axis).call(this.zoom).on("dblclick.zoom", null);
    this.days();
    this.controls();
    this.pointer();
    this.keys();
    new ResizeObserver(() => this.resize()).observe(document.getElementById("board"));
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => { this.drawing.recolour(); this.redraw(); });
    setInterval(() => this.redraw(), 30000);
    const day = place.dataset.day;
    if (day) this.showDay(day);
    performance.mark("plan-drawn");
    place.dataset.drawn = "yes";
    window.potlifeBoard = this;
  }

  mayZoom(event) {
    if (event.type === "wheel") return event.ctrlKey || event.metaKey || event.currentTarget === this.drawing.axis;
    // a run is dragged by itself, the ground around it pans
    if (event.type === "mousedown" && event.currentTarget === this.canvas && this.hit(event)?.run) return false;
    return !event.button;
  }

  resize() {
    const width = document.getElementById("sheet").clientWidth;
    if (width === this.width && this.layout) return;
    this.width = width;
    this.layout = layOut(this.plan, this.shown, say);
    this.drawing.size(width, this.layout.height);
    this.base.range([this.drawing.left, width]);
    this.zoom.extent([[this.drawing.left, 0], [width, 100]]).translateExtent([[this.drawing.left, 0], [width, 100]]);
    this.x = (this.transform || d3.zoomIdentity).rescaleX(this.base);
    this.redraw();
  }

  zoomed(transform) {
    this.transform = transform;
    this.x = transform.rescaleX(this.base);
    // the two canvases share one view
    this.canvas.__zoom = transform;
    this.drawing.axis.__zoom = transform;
    this.redraw();
  }

  redraw() {
    if (this.frame) return;
    this.frame = requestAnimationFrame(() => {
      this.frame = null;
      this.paint();
    });
  }

  paint() {
    const run = this.plan.byId.get(this.pointed ?? this.chosen) ?? null;
    this.drawing.draw({
      x: this.x, layout: this.layout, plan: this.plan, now: now(), chosen: this.chosen, drag: this.drag?.moved ? this.drag : null,
      touched: this.touchedFor === run ? this.touched : (this.touched = touches(this.plan, (this.touchedFor = run))),
    });
    this.markDay();
  }

  move(transform) {
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) d3.select(this.canvas).call(this.zoom.transform, transform);
    else d3.select(this.canvas).transition().duration(180).call(this.zoom.transform, transform);
  }

  /** Shows a stretch of time from edge to edge. */
  showSpan(from, to) {
    const [left, right] = this.base.range();
    const k = (right - left) / (this.base(to) - this.base(from));
    const limited = Math.min(Math.max(k, this.zoom.scaleExtent()[0]), this.zoom.scaleExtent()[1]);
    d3.select(this.canvas).call(this.zoom.transform, d3.zoomIdentity.translate(left - this.base(from) * limited, 0).scale(limited));
  }

  /** The working part of a day. */
  showDay(iso) {
    const from = midnight(iso);
    const to = midnight(iso, 1);
    let first = null;
    let last = null;
    for (const group of this.plan.groups) {
      for (const press of group.presses) {
        for (const part of press.staffed) {
          if (part.to <= from || part.from >= to) continue;
          first = Math.min(first ?? part.from, Math.max(part.from, from));
          last = Math.max(last ?? part.to, Math.min(part.to, to));
        }
      }
    }
    for (const run of this.plan.runs) {
      if (run.off <= from || run.start >= to) continue;
      first = Math.min(first ?? run.start, Math.max(run.start, from));
      last = Math.max(last ?? run.off, Math.min(run.off, to));
    }
    if (first === null) this.showSpan(from, to);
    else this.showSpan(Math.max(first - HOUR, this.plan.from), Math.min(last + HOUR / 2, this.plan.to));
  }

  days() {
    const bar = document.getElementById("days");
    const many = this.plan.days.length > 10;
    if (many) {
      const select = document.createElement("select");
      select.setAttribute("aria-label", say("day"));
      for (const day of this.plan.days) select.add(new Option(this.dayText(day), day));
      select.addEventListener("change", () => this.showDay(select.value));
      bar.append(select);
      this.daySelect = select;
      return;
    }
    for (const day of this.plan.days) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = this.dayText(day);
      button.dataset.day = day;
      button.addEventListener("click", () => this.showDay(day));
      bar.append(button);
    }
  }

  dayText(day) {
    return new Intl.DateTimeFormat("en-GB", { weekday: "short", day: "numeric", month: "short", timeZone: "UTC" }).format(Date.parse(day));
  }

  markDay() {
    const [from, to] = this.x.domain();
    const middle = isoDay((Number(from) + Number(to)) / 2);
    if (middle === this.dayShown) return;
    this.dayShown = middle;
    if (this.daySelect) this.daySelect.value = middle;
    for (const button of document.querySelectorAll("#days button")) button.setAttribute("aria-pressed", String(button.dataset.day === middle));
  }

  controls() {
    const on = (id, act) => document.getElementById(id).addEventListener("click", act);
    on("zoom-in", () => this.zoomBy(1.5));
    on("zoom-out", () => this.zoomBy(1 / 1.5));
    on("zoom-fit", () => this.showSpan(this.plan.from, this.plan.to));
    on("zoom-now", () => this.showSpan(now() - 2 * HOUR, now() + 6 * HOUR));
    on("pan-left", () => this.panBy(0.3));
    on("pan-right", () => this.panBy(-0.3));
    for (const part of ["belts", "batches", "screens"]) {
      document.getElementById(`show-${part}`).addEventListener("change", (event) => {
        this.shown[part] = event.target.checked;
        this.layout = null;
        this.resize();
      });
    }
    const search = document.getElementById("find");
    search.addEventListener("change", () => this.find(search.value.trim().toLowerCase()));
  }

  find(text) {
    if (!text) return this.choose(null);
    const found = this.byTime.find((run) => `${run.name} ${run.customer}`.toLowerCase().includes(text));
    document.getElementById("found").textContent = found ? "" : say("notFound", text);
    if (found) {
      this.choose(found.id);
      this.reveal(found);
    }
    return undefined;
  }

  zoomBy(k) {
    d3.select(this.canvas).call(this.zoom.scaleBy, k, [(this.drawing.left + this.width) / 2, 0]);
  }

  panBy(share) {
    d3.select(this.canvas).call(this.zoom.translateBy, ((this.width - this.drawing.left) * share) / (this.transform?.k ?? 1), 0);
  }

  reveal(run) {
    const [from, to] = this.x.domain().map(Number);
    if (run.start < from || run.end > to) {
      const half = (to - from) / 2;
      this.showSpan(Math.max(this.plan.from, run.start - half * 0.6), Math.min(this.plan.to, run.start + half * 1.4));
    }
  }

  hit(event) {
    const box = this.canvas.getBoundingClientRect();
    return this.drawing.at(event.clientX - box.left, event.clientY - box.top);
  }

  pointer() {
    this.canvas.addEventListener("pointermove", (event) => {
      if (event.buttons && !this.drag) return;
      if (this.drag) return;
      const hit = this.hit(event);
      const id = hit?.run?.id ?? null;
      this.canvas.style.cursor = hit ? "pointer" : "grab";
      if (id !== this.pointed) {
        this.pointed = id;
        if (!this.chosen) this.tell(hit);
        this.redraw();
      }
    });
    this.canvas.addEventListener("pointerleave", () => {
      this.pointed = null;
      this.redraw();
    });
    this.dragging();
    this.canvas.addEventListener("click", (event) => {
      if (this.dropped) {
        this.dropped = false;
        return;
      }
      const hit = this.hit(event);
      this.list.focus({ preventScroll: true });
      if (hit?.run) this.choose(hit.run.id);
      else {
        this.choose(null);
        this.tell(hit);
      }
    });
  }

  /** Dragging a run onto a press and a time: an instruction to be tried. */
  dragging() {
    if (!document.getElementById("instruct")) return;
    this.canvas.addEventListener("pointerdown", (event) => {
      const run = event.pointerType === "mouse" && event.button === 0 ? this.hit(event)?.run : null;
      if (!run) return;
      this.drag = { run, fromX: event.clientX, fromY: event.clientY, moved: false };
      this.canvas.setPointerCapture(event.pointerId);
    });
    this.canvas.addEventListener("pointermove", (event) => {
      if (!this.drag) return;
      const { drag } = this;
      drag.moved ||= Math.hypot(event.clientX - drag.fromX, event.clientY - drag.fromY) > 6;
      const box = this.canvas.getBoundingClientRect();
      const row = this.drawing.rowAt(event.clientY - box.top);
      drag.row = row?.kind === "press" ? row : null;
      const over = this.hit(event)?.run;
      drag.before = over && over !== drag.run ? over : null;
      drag.at = this.x.invert(this.x(drag.run.start) + event.clientX - drag.fromX);
      drag.x = this.x(drag.at);
      drag.words = drag.before ? say("beforeItem", drag.before.name) : drag.row ? say("dropAt", drag.row.label, clock(drag.at)) : "";
      this.redraw();
    });
    const end = (event) => {
      const { drag } = this;
      this.drag = null;
      if (drag?.moved && event.type === "pointerup") {
        this.dropped = true;
        if (drag.row) {
          this.choose(drag.run.id);
          document.dispatchEvent(new CustomEvent("plan:dropped", { detail: { press: drag.row.label, at: drag.at, before: drag.before?.id } }));
        }
      }
      this.redraw();
    };
    this.canvas.addEventListener("pointerup", end);
    this.canvas.addEventListener("pointercancel", end);
    window.addEventListener("keydown", (event) => { if (event.key === "Escape" && this.drag) end(event); });
  }

  choose(id) {
    this.chosen = id;
    const run = this.plan.byId.get(id);
    this.tell(run ? { run } : null);
    this.list.replaceChildren();
    if (run) {
      const option = document.createElement("div");
      option.id = "chosen-run";
      option.setAttribute("role", "option");
      option.setAttribute("aria-selected", "true");
      option.setAttribute("aria-label", inALine(run));
      this.list.append(option);
      this.list.setAttribute("aria-activedescendant", "chosen-run");
    } else {
      this.list.removeAttribute("aria-activedescendant");
    }
    document.dispatchEvent(new CustomEvent("plan:chosen", { detail: run ?? null }));
    this.redraw();
  }

  tell(hit) {
    if (hit?.run) aboutRun(this.about, hit.run, this.plan);
    else if (hit) aboutOther(this.about, hit);
    else this.about.innerHTML = this.empty;
  }

  keys() {
    this.list.addEventListener("keydown", (event) => {
      const act = {
        ArrowRight: () => (event.shiftKey ? this.panBy(-0.2) : this.step(1)),
        ArrowLeft: () => (event.shiftKey ? this.panBy(0.2) : this.step(-1)),
        ArrowDown: () => this.press(1),
        ArrowUp: () => this.press(-1),
        Home: () => this.go(this.byTime[0]),
        End: () => this.go(this.byTime[this.byTime.length - 1]),
        "+": () => this.zoomBy(1.5),
        "=": () => this.zoomBy(1.5),
        "-": () => this.zoomBy(1 / 1.5),
        0: () => this.showSpan(this.plan.from, this.plan.to),
        Escape: () => this.choose(null),
        Enter: () => document.dispatchEvent(new CustomEvent("plan:open", { detail: this.plan.byId.get(this.chosen) })),
      }[event.key];
      if (!act || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      act();
    });
  }

  go(run) {
    if (!run) return;
    this.choose(run.id);
    this.reveal(run);
    const row = this.layout.rows.find((other) => other.kind === "press" && other.label === run.press);
    const box = this.canvas.getBoundingClientRect();
    const y = box.top + row.y;
    if (y < 160 || y > window.innerHeight - 80) window.scrollBy({ top: y - window.innerHeight / 2 });
  }

  step(by) {
    const run = this.plan.byId.get(this.chosen);
    if (!run) return this.go(this.byTime[0]);
    const own = this.byTime.filter((other) => other.press === run.press);
    return this.go(own[own.indexOf(run) + by]);
  }

  press(by) {
    const run = this.plan.byId.get(this.chosen);
    if (!run) return this.go(this.byTime[0]);
    const rows = this.layout.rows.filter((row) => row.kind === "press" && row.runs.length > 0);
    const next = rows[rows.findIndex((row) => row.label === run.press) + by];
    if (!next) return undefined;
    const near = next.runs.reduce((best, other) => (Math.abs(other.start - run.start) < Math.abs(best.start - run.start) ? other : best));
    return this.go(near);
  }
}
