// The planner's own decisions: tried first, then applied, then taken back if need be.

import { Instructions, reason, url } from "./instructions.js";
import { send } from "../ask.js";
import { say } from "../say.js";
import { atWall, duration, moment, offset } from "../times.js";

const form = document.getElementById("instruct");
const effect = document.getElementById("effect");

let board = null;
let book = null;
let run = null;

/** Wall time of the plant as a field takes it. */
function asField(ms) {
  return ms === null ? "" : new Date(ms + offset(ms)).toISOString().slice(0, 16);
}

function fromField(text) {
  if (!text) return null;
  const [day, time] = text.split("T");
  const [year, month, date] = day.split("-").map(Number);
  const [hour, minute] = time.split(":").map(Number);
  return atWall(year, month, date, hour) + minute * 60000;
}

/** The instructions as they would be with what the form says. */
function wanted() {
  const next = structuredClone(book.present);
  next.held = next.held.filter((order) => order !== run.order);
  if (form.held.checked) next.held.push(run.order);
  next.lots = next.lots.filter((wish) => wish.order !== run.order);
  if (form.lots.value) next.lots.push({ order: run.order, lots: Number(form.lots.value) });
  next.runs = next.runs.filter((wish) => wish.run !== run.id);
  const notBefore = fromField(form.notBefore.value);
  if (form.press.value || notBefore !== null) {
    const wish = { run: run.id };
    if (form.press.value) wish.press = form.press.value;
    if (form.before.value) wish.before = form.before.value;
    if (notBefore !== null) wish.notBefore = new Date(notBefore).toISOString();
    next.runs.push(wish);
  }
  return next;
}

function fill() {
  form.hidden = !run;
  effect.replaceChildren();
  if (!run) return;
  const wish = book.ofRun(run);
  offerRuns(wish?.before);
  form.querySelector("h3").textContent = say("instructFor", run.name);
  form.press.value = wish?.press ?? "";
  form.before.value = wish?.before ?? "";
  form.notBefore.value = wish?.notBefore ? asField(Date.parse(wish.notBefore)) : "";
  form.held.checked = book.present.held.includes(run.order);
  form.lots.value = book.present.lots.find((w) => w.order === run.order)?.lots ?? "";
}

/** The other runs, press by press; one that is wished but gone is offered too, so that it can be let go. */
function offerRuns(wished) {
  const others = board.byTime.filter((other) => other !== run);
  const groups = [...new Set(others.map((other) => other.press))].sort().map((press) => {
    const group = document.createElement("optgroup");
    group.label = press;
    group.append(...others.filter((other) => other.press === press).map((other) => new Option(`${moment(other.start)} ${other.name}`, other.id)));
    return group;
  });
  const gone = wished && !board.plan.byId.has(wished) ? [new Option(wished, wished)] : [];
  form.before.replaceChildren(form.before.options[0], ...gone, ...groups);
}

/** Both are printed on one press. */
function putBefore(id) {
  form.before.value = id;
  const other = board.plan.byId.get(id);
  if (other) form.press.value = other.press;
}

function line(text, worse) {
  const item = document.createElement("li");
  item.textContent = text;
  if (worse) item.className = "late";
  return item;
}

async function tryOut() {
  effect.replaceChildren(line(say("trying")));
  try {
    const answer = (await send("POST", `${url}/effect`, wanted())).body;
    const { now: a, then: b } = answer;
    effect.replaceChildren(
      line(say("effectUnplaced", a.unplaced, b.unplaced), b.unplaced > a.unplaced),
      line(say("effectLate", duration(a.lateMinutes), duration(b.lateMinutes)), b.weightedLateMinutes > a.weightedLateMinutes),
      line(say("effectCost", a.cost.toFixed(2), b.cost.toFixed(2))),
      line(say("effectInk", a.inkLost.toFixed(2), b.inkLost.toFixed(2))),
      line(say("effectMoved", answer.runsMoved)),
      ...answer.orders.slice(0, 8).map((o) => line(say("effectOrder", o.order, duration(o.minutesNow), duration(o.minutesThen)), o.minutesThen > o.minutesNow)),
    );
  } catch (error) {
    effect.replaceChildren(line(reason(error), true));
  }
}

/** Connects the form with the drawing. */
export function instruct(of) {
  board = of;
  book = new Instructions(board, true, fill);
  for (const group of board.plan.groups) for (const press of group.presses) form.press.add(new Option(press.press, press.press));
  document.addEventListener("plan:chosen", (event) => { run = event.detail; fill(); });
  document.addEventListener("plan:open", () => { if (run) form.press.focus(); });
  document.addEventListener("plan:dropped", ({ detail }) => {
    form.press.value = detail.press;
    form.notBefore.value = detail.before ? "" : asField(Math.round(detail.at / 300000) * 300000);
    putBefore(detail.before ?? "");
    tryOut();
  });
  form.before.addEventListener("change", () => putBefore(form.before.value));
  form.press.addEventListener("change", () => {
    if (board.plan.byId.get(form.before.value)?.press !== form.press.value) form.before.value = "";
  });
  form.addEventListener("submit", (submit) => { submit.preventDefault(); book.put(wanted()); });
  document.getElementById("try").addEventListener("click", tryOut);
  document.getElementById("keep-here").addEventListener("click", () => {
    form.press.value = run.press;
    form.before.value = "";
    form.notBefore.value = asField(run.start);
    tryOut();
  });
  document.getElementById("set-free").addEventListener("click", () => {
    form.press.value = "";
    form.before.value = "";
    form.notBefore.value = "";
    form.held.checked = false;
    form.lots.value = "";
    tryOut();
  });
  return book.read();
}
