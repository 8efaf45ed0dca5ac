// The falling curve of a search.

import { say } from "../say.js";
import { duration } from "../times.js";

const W = 640;
const H = 180;
const PAD = { left: 64, right: 12, top: 14, bottom: 26 };

/** Draws improvements: late minutes, weighted, and below them the cost, over the seconds of the search. */
export function drawCurve(place, points) {
  const svg = d3.select(place).selectAll("svg").data([0]).join("svg")
    .attr("viewBox", `0 0 ${W} ${H}`).attr("role", "img").attr("aria-label", summary(points));
  if (points.length === 0) return;
  const last = points[points.length - 1];
  const value = (point) => point.weightedLateMinutes;
  const cost = (point) => point.cost;
  const series = points.every((p) => value(p) === value(last)) ? cost : value;
  const x = d3.scaleLinear([0, Math.max(last.elapsedMs, 1000)], [PAD.left, W - PAD.right]);
  const y = d3.scaleLinear(d3.extent(points, series), [H - PAD.bottom, PAD.top]).nice(4);
  const line = d3.line((p) => x(p.elapsedMs), (p) => y(series(p))).curve(d3.curveStepAfter);
  svg.selectAll("path.curve").data([points]).join("path").attr("class", "curve").attr("d", line);
  svg.selectAll("g.xs").data([0]).join("g").attr("class", "xs").attr("transform", `translate(0,${H - PAD.bottom})`)
    .call(d3.axisBottom(x).ticks(6).tickFormat((ms) => `${ms / 1000} s`));
  svg.selectAll("g.ys").data([0]).join("g").attr("class", "ys").attr("transform", `translate(${PAD.left},0)`).call(d3.axisLeft(y).ticks(4));
  svg.selectAll("circle").data([last]).join("circle").attr("r", 4).attr("cx", (p) => x(p.elapsedMs)).attr("cy", (p) => y(series(p)));
}

/** The curve in words. */
export function summary(points) {
  if (points.length === 0) return say("curveEmpty");
  const last = points[points.length - 1];
  return say("curveNow", last.unplaced ?? 0, duration(last.weightedLateMinutes ?? 0), (last.cost ?? 0).toFixed(0));
}
