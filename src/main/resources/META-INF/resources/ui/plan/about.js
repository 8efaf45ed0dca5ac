// Says in words what is chosen on the drawing.

import { clock, duration, moment } from "../times.js";
import { say } from "../say.js";

function line(list, title, text, className) {
  if (!text) return;
  const dt = document.createElement("dt");
  dt.textContent = title;
  const dd = document.createElement("dd");
  dd.textContent = text;
  if (className) dd.className = className;
  list.append(dt, dd);
}

function inks(run, plan) {
  const box = document.createElement("p");
  for (const ink of run.inks) {
    const chip = document.createElement("span");
    chip.className = "chip";
    chip.innerHTML = '<svg class="swatch" viewBox="0 0 24 16" aria-hidden="true"><rect x="1" y="1" width="22" height="14" stroke="currentColor" stroke-width="2"/></svg>';
    chip.querySelector("rect").setAttribute("fill", plan.swatches[ink] || "#ffffff");
    chip.append(` ${ink}`);
    box.append(chip);
  }
  return box;
}

export function promise(run) {
  if (run.due === null) return say("noPromise");
  const when = moment(run.due);
  if (run.lateMinutes > 0) return say("promiseLate", when, duration(run.lateMinutes));
  return say("promiseKept", when);
}

export function waits(run) {
  return run.waits.length === 0 ? say("waitsNot") : run.waits.map((wait) => `${duration(wait.minutes)}: ${wait.words}`).join("; ");
}

/** One line about a run, for screen readers. */
export function inALine(run) {
  return [
    `${run.name}, ${run.customer}`, `${run.press}`, say("pieces", run.quantity), `${moment(run.print)} \u2013 ${clock(run.end)}`,
    run.inks.join(", "), promise(run), say("waitsFor", waits(run)),
  ].join(". ");
}

export function aboutRun(place, run, plan) {
  const title = document.createElement("h2");
  title.textContent = run.name;
  const list = document.createElement("dl");
  list.className = "about";
  line(list, say("customer"), run.customer);
  line(list, say("garments"), `${run.garments}, ${say("pieces", run.quantity)}`);
  line(list, say("press"), run.press + (run.frozen ? `, ${say("frozen")}` : ""));
  if (run.print > run.start) line(list, say("setUp"), `${moment(run.start)} \u2013 ${clock(run.print)}`);
  line(list, say("printing"), `${moment(run.print)} \u2013 ${clock(run.end)}, ${say("perHour", run.ratePerHour)}${run.limitedBy === "dryer" ? `, ${say("byDryer")}` : ""}`);
  line(list, say("offBelt"), moment(run.off));
  line(list, say("promise"), promise(run), run.lateMinutes > 0 ? "late" : "");
  if (run.slackMinutes !== undefined) line(list, say("slack"), run.slackMinutes < 0 ? say("none") : duration(run.slackMinutes));
  line(list, say("waits"), waits(run));
  line(list, say("batches"), run.batches.join(", "));
  const others = plan.orders.get(run.order).filter((other) => other !== run);
  line(list, say("others"), others.map((other) => `${other.name.slice(other.order.length + 1)} (${other.press}, ${moment(other.print)})`).join("; "));
  place.replaceChildren(title, inks(run, plan), list);
}

export function aboutOther(place, hit) {
  const title = document.createElement("h2");
  const list = document.createElement("dl");
  list.className = "about";
  if (hit.batch) {
    const batch = hit.batch;
    title.textContent = say("batchTitle", batch.ink, batch.id);
    line(list, say("mass"), `${batch.totalG} g`);
    line(list, say(batch.activated ? "activateFrom" : "mixFrom"), moment(batch.start));
    line(list, say("readyAt"), moment(batch.ready));
    line(list, say("useBy"), batch.gone ? moment(batch.gone) : say("noClock"));
    line(list, say("serves"), batch.runs.join("; ") || say("none"));
  } else if (hit.load) {
    title.textContent = say("loadTitle", hit.load.cabinet, hit.load.screens, say(hit.load.step));
    line(list, say("doorShut"), `${moment(hit.load.start)} \u2013 ${moment(hit.load.end)}`);
    line(list, say("serves"), hit.load.runs.join("; "));
  } else {
    title.textContent = say("beltTitle", hit.dryer);
    line(list, say("time"), `${moment(hit.belt.start)} \u2013 ${clock(hit.belt.end)}`);
    line(list, say("area"), `${hit.belt.areaPercent} %`);
    line(list, say("heat"), `${hit.belt.heatPercent} %`);
    line(list, say("speed"), document.documentElement.dataset.units === "us" ? `${(Math.floor(hit.belt.speedMPerMin / 0.003048) / 100).toFixed(2)} ft/min` : `${(Math.floor(hit.belt.speedMPerMin * 100) / 100).toFixed(2)} m/min`);
  }
  place.replaceChildren(title, list);
}
