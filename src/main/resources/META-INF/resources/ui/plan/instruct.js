// The planner's own decisions: tried first, then applied, then taken back if need be.

import { read, send } from "../ask.js";
import { notice } from "../notices.js";
import { say } from "../say.js";
import { atWall, duration, moment, offset } from "../times.js";

const plant = document.documentElement.dataset.plant;
const url = `/api/v1/plants/${plant}/instructions`;
const form = document.getElementById("instruct");
const effect = document.getElementById("effect");
const list = document.getElementById("instructions");

let board = null;
let run = null;
let present = { held: [], runs: [], lots: [] };
let etag = null;

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

async function readPresent() {
  ({ body: present, etag } = await read(url));
  show();
}

function show() {
  const wished = new Set(present.runs.map((wish) => wish.run));
  for (const one of board.plan.runs) one.pinned = wished.has(one.id);
  board.redraw();
  const items = [
    ...present.held.map((order) => [say("heldItem", order), { ...present, held: present.held.filter((o) => o !== order) }]),
    ...present.runs.map((wish) => [runItem(wish), { ...present, runs: present.runs.filter((w) => w.run !== wish.run) }]),
    ...present.lots.map((wish) => [say("lotsItem", wish.order, wish.lots), { ...present, lots: present.lots.filter((w) => w.order !== wish.order) }]),
  ];
  list.querySelector("summary").textContent = say("instructionsHead", items.length);
  list.querySelector("ul").replaceChildren(...items.map(([text, without]) => {
    const item = document.createElement("li");
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = say("remove");
    button.setAttribute("aria-label", `${say("remove")}: ${text}`);
    button.addEventListener("click", () => put(without));
    item.append(`${text} `, button);
    return item;
  }));
}

function runItem(wish) {
  const name = board.plan.byId.get(wish.run)?.name ?? wish.run;
  return [name, wish.press ? say("onPress", wish.press) : "", wish.notBefore ? say("notBefore", moment(Date.parse(wish.notBefore))) : ""].filter(Boolean).join(", ");
}

/** The instructions as they would be with what the form says. */
function wanted() {
  const next = structuredClone(present);
  next.held = next.held.filter((order) => order !== run.order);
  if (form.held.checked) next.held.push(run.order);
  next.lots = next.lots.filter((wish) => wish.order !== run.order);
  if (form.lots.value) next.lots.push({ order: run.order, lots: Number(form.lots.value) });
  next.runs = next.runs.filter((wish) => wish.run !== run.id);
  const notBefore = fromField(form.notBefore.value);
  if (form.press.value || notBefore !== null) {
    const wish = { run: run.id };
    if (form.press.value) wish.press = form.press.value;
    if (notBefore !== null) wish.notBefore = new Date(notBefore).toISOString();
    next.runs.push(wish);
  }
  return next;
}

function fill() {
  form.hidden = !run;
  effect.replaceChildren();
  if (!run) return;
  const wish = present.runs.find((w) => w.run === run.id);
  form.querySelector("h3").textContent = say("instructFor", run.name);
  form.press.value = wish?.press ?? "";
  form.notBefore.value = wish?.notBefore ? asField(Date.parse(wish.notBefore)) : "";
  form.held.checked = present.held.includes(run.order);
  form.lots.value = present.lots.find((w) => w.order === run.order)?.lots ?? "";
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
    effect.replaceChildren(line(error.status ? error.message : say("noAnswer"), true));
  }
}

async function put(next) {
  const before = present;
  try {
    const headers = etag === '"0"' ? {} : { "If-Match": etag };
    const answer = await send("PUT", url, next, headers);
    present = answer.body;
    etag = answer.etag;
    show();
    fill();
    notice(say("instructed"), { ms: 12000, undo: () => put(before) });
  } catch (error) {
    notice(error.status === 412 ? say("instructedBefore") : error.status ? error.message : say("noAnswer"), { danger: true });
    if (error.status === 412) readPresent();
  }
}

/** Connects the form with the drawing. */
export function instructions(of) {
  board = of;
  for (const group of board.plan.groups) for (const press of group.presses) form.press.add(new Option(press.press, press.press));
  document.addEventListener("plan:chosen", (event) => { run = event.detail; fill(); });
  document.addEventListener("plan:open", () => { if (run) form.press.focus(); });
  document.addEventListener("plan:dropped", (event) => {
    form.press.value = event.detail.press;
    form.notBefore.value = asField(Math.round(event.detail.at / 300000) * 300000);
    tryOut();
  });
  form.addEventListener("submit", (submit) => { submit.preventDefault(); put(wanted()); });
  document.getElementById("try").addEventListener("click", tryOut);
  document.getElementById("keep-here").addEventListener("click", () => {
    form.press.value = run.press;
    form.notBefore.value = asField(run.start);
    tryOut();
  });
  document.getElementById("set-free").addEventListener("click", () => {
    form.press.value = "";
    form.notBefore.value = "";
    form.held.checked = false;
    form.lots.value = "";
    tryOut();
  });
  list.hidden = false;
  return readPresent();
}

