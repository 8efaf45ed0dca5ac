// The day's end drawn: what the tables say, over time and in grams.

import { say } from "../say.js";
import { clock, isoDay, midnight, now } from "../times.js";

const LANE = 17;
const GAP = 12;
const LETTER = 7;

/** A place to draw in, as wide as the page; drawn anew when that changes. */
function plot(id, draw) {
  const box = document.getElementById(id);
  if (!box || !window.d3) return;
  box.hidden = false;
  const place = box.querySelector(".plot");
  let width = 0;
  const again = () => {
    if (place.clientWidth === width || place.clientWidth === 0) return;
    width = place.clientWidth;
    place.replaceChildren();
    draw(d3.select(place).append("svg").attr("role", "img"), width);
    box.dataset.drawn = "yes";
  };
  again();
  new ResizeObserver(again).observe(place);
}

/** Stripes as a pattern that follows the page's colours. */
function stripes(svg, id) {
  const tile = svg.append("defs").append("pattern").attr("id", id).attr("width", 6).attr("height", 6).attr("patternUnits", "userSpaceOnUse");
  tile.append("rect").attr("width", 6).attr("height", 6).attr("class", "ground");
  tile.append("path").attr("class", "stripes").attr("d", "M-1 1 L1 -1 M0 6 L6 0 M5 7 L7 5");
  return `url(#${id})`;
}

function fit(text, room) {
  const letters = Math.floor(room / LETTER);
  if (text.length <= letters) return text;
  return letters < 3 ? "" : `${text.slice(0, letters - 1)}\u2026`;
}

function readRuns() {
  return [...document.querySelectorAll("#day-runs tbody tr")].map(({ dataset: d }) => ({
    press: d.press, order: d.order, running: d.state === "running",
    planned: [Date.parse(d.plannedStart), Date.parse(d.plannedEnd)],
    told: d.start ? { start: Date.parse(d.start), print: Date.parse(d.print), end: Date.parse(d.end) } : null,
  }));
}

function drawRuns(svg, width) {
  const runs = readRuns();
  const presses = [...new Set(runs.map((run) => run.press))];
  const left = Math.min(128, Math.max(56, LETTER * 1.4 * d3.max(presses, (press) => press.length)));
  const row = 2 * LANE + GAP;
  const height = presses.length * row;
  const here = now();
  const open = runs.some((run) => run.running);
  const ends = runs.flatMap((run) => [...run.planned, ...(run.told ? [run.told.start, run.told.end] : [])]);
  // a run that nobody ended is drawn up to now, but not for days
  const until = (run) => run.running && here > run.told.end && here - run.told.end < 12 * 3600000 ? here : run.told.end;
  if (open) ends.push(...runs.filter((run) => run.running).map(until));
  const x = d3.scaleLinear(d3.extent(ends), [left, width - 12]);
  svg.attr("viewBox", `0 0 ${width} ${height + 26}`)
    .attr("aria-label", say("drawingSummary", runs.length, presses.length, runs.filter((run) => run.told).length, runs.filter((run) => !run.told).length));
  const striped = stripes(svg, "day-stripes");
  svg.append("g").attr("transform", `translate(0,${height})`)
    .call(d3.axisBottom(x).tickValues(hours(x, width - left)).tickSizeInner(-height).tickSizeOuter(0).tickPadding(8).tickFormat(clock));
  presses.forEach((press, i) => {
    const g = svg.append("g").attr("transform", `translate(0,${i * row})`);
    g.append("line").attr("class", "between").attr("x1", 0).attr("x2", width).attr("y1", row - 2).attr("y2", row - 2);
    g.append("text").attr("class", "name").attr("x", 2).attr("y", LANE + 6).text(fit(press, left / 1.2));
    for (const run of runs.filter((one) => one.press === press)) {
      bar(g, run, x, striped, until(run.told ? run : { told: { end: 0 } }));
    }
  });
  if (here > x.domain()[0] && here < x.domain()[1]) {
    svg.append("line").attr("class", "now").attr("x1", x(here)).attr("x2", x(here)).attr("y1", 0).attr("y2", height).append("title").text(say("now"));
  }
}

/** Full hours or quarters of them, as many as there is room for. */
function hours(x, room) {
  const [from, to] = x.domain();
  const each = [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24].find((step) => (room * step * 3600000) / (to - from) >= 64) ?? 24;
  const first = midnight(isoDay(from));
  return d3.range(first, to, each * 3600000).filter((at) => at >= from);
}

function bar(g, run, x, striped, until) {
  const [from, to] = run.planned.map(x);
  const words = [`${run.order}: ${say("plannedFromTo", clock(run.planned[0]), clock(run.planned[1]))}`];
  if (run.told) words.push(say("toldFromTo", clock(run.told.start), clock(run.told.end)));
  const own = g.append("g");
  own.append("title").text(words.join(", "));
  own.append("rect").attr("class", "planned").attr("x", from).attr("y", 4).attr("width", Math.max(2, to - from)).attr("height", LANE - 2);
  own.append("text").attr("x", from + 4).attr("y", 4 + LANE - 6).text(fit(run.order, to - from - 8));
  if (!run.told) return;
  const { start, print, end } = run.told;
  const y = 4 + LANE;
  if (print > start) own.append("rect").attr("class", "striped").attr("fill", striped).attr("x", x(start)).attr("y", y).attr("width", x(print) - x(start)).attr("height", LANE - 2);
  own.append("rect").attr("class", "solid").attr("x", x(print)).attr("y", y).attr("width", Math.max(2, x(end) - x(print))).attr("height", LANE - 2);
  own.append("text").attr("class", "inside").attr("x", x(print) + 4).attr("y", y + LANE - 6).text(fit(run.order, x(end) - x(print) - 8));
  if (run.running && until > end) own.append("line").attr("class", "onwards").attr("x1", x(end)).attr("x2", x(until)).attr("y1", y + LANE / 2).attr("y2", y + LANE / 2);
}

function drawLoss(svg, width) {
  const inks = [...document.querySelectorAll("#day-loss tbody tr")].map((line) => ({
    ink: line.dataset.ink, parts: line.dataset.parts.split(" ").map(Number), fill: line.querySelector(".swatch rect").getAttribute("fill"),
  }));
  const all = (ink) => d3.sum(ink.parts);
  const left = Math.min(200, 34 + LETTER * 1.3 * d3.max(inks, (ink) => ink.ink.length));
  const row = 30;
  const height = inks.length * row;
  const x = d3.scaleLinear([0, d3.max(inks, all)], [left, width - 70]).nice(5);
  svg.attr("viewBox", `0 0 ${width} ${height + 26}`)
    .attr("aria-label", say("lossSummary", inks.map((ink) => `${ink.ink} ${all(ink)}`).join(", ")));
  const striped = stripes(svg, "loss-stripes");
  svg.append("g").attr("transform", `translate(0,${height})`)
    .call(d3.axisBottom(x).ticks(Math.max(2, Math.min(8, width / 120))).tickSizeInner(-height).tickSizeOuter(0).tickPadding(8).tickFormat((g) => `${g} g`));
  inks.forEach((ink, i) => {
    const g = svg.append("g").attr("transform", `translate(0,${i * row})`);
    g.append("rect").attr("class", "dye").attr("fill", ink.fill).attr("x", 2).attr("y", 8).attr("width", 20).attr("height", 13);
    g.append("text").attr("x", 30).attr("y", 19).text(fit(ink.ink, left - 34));
    let at = 0;
    ink.parts.forEach((grams, cause) => {
      if (grams === 0) return;
      const box = g.append("rect").attr("class", ["solid", "striped", "planned"][cause]).attr("x", x(at)).attr("y", 6).attr("width", x(at + grams) - x(at)).attr("height", 18);
      if (cause === 1) box.attr("fill", striped);
      at += grams;
    });
    g.append("text").attr("x", x(at) + 6).attr("y", 20).text(`${at} g`);
  });
}

function start() {
  plot("day-drawing", drawRuns);
  plot("loss-drawing", drawLoss);
}

start();
