// The frame: clock, connection, signs, timers. Tells the page when something has changed.

import { get } from "./ask.js";
import { say } from "./say.js";
import { clock, duration, now, setNow } from "./times.js";
import "./marks.js";

const root = document.documentElement.dataset;
const plant = root.plant;
const POLL_MS = 10000;
const PATIENCE_MS = 25000;

const clockPlace = document.getElementById("clock");
const pulse = document.getElementById("pulse");
const lost = document.getElementById("lost");
const stale = document.getElementById("stale");

let heard = Date.now();
let last = null;
let failed = false;

function show(state) {
  if (pulse.dataset.state !== state) {
    pulse.dataset.state = state;
    pulse.textContent = say(state === "lost" ? "lostShort" : state);
  }
  if (state === "lost" && lost.hidden) {
    lost.textContent = say("lost", clock(heard + (now() - Date.now())));
    lost.hidden = false;
  } else if (state === "live") {
    lost.hidden = true;
  }
}

function changed(what) {
  document.body.dispatchEvent(new CustomEvent("potlife:changed", { detail: what }));
}

/** @param always whether something is known to have changed */
async function beat(always = false) {
  try {
    const next = await get(`/plants/${plant}/pulse`);
    const back = failed;
    failed = false;
    heard = Date.now();
    setNow(next.now);
    stale.hidden = !next.stale;
    show("live");
    if (last && (always === true || ["stamp", "inForce", "newest", "newestState"].some((key) => last[key] !== next[key]))) changed(next);
    if (back) document.body.dispatchEvent(new CustomEvent("potlife:back"));
    last = next;
  } catch (trouble) {
    failed = true;
    if (!navigator.onLine || Date.now() - heard > PATIENCE_MS || trouble.status) show("lost");
  }
}

let stream = null;

/** A hidden page lets go of its stream: a browser keeps only a few connections. */
function listen() {
  if (document.hidden) {
    stream?.close();
    stream = null;
    return;
  }
  if (stream) return;
  stream = new EventSource(`/api/v1/plants/${plant}/events/stream`);
  let waiting = null;
  const told = () => {
    heard = Date.now();
    if (!waiting) waiting = setTimeout(() => { waiting = null; beat(true); }, 400);
  };
  stream.addEventListener("message", told);
  stream.addEventListener("gap", told);
  // without a stream the beat alone keeps the page true
  stream.addEventListener("error", () => beat());
}

function tick() {
  const text = clock(now());
  if (clockPlace.textContent !== text) {
    clockPlace.textContent = text;
    clockPlace.dateTime = new Date(now()).toISOString();
  }
  for (const timer of document.querySelectorAll("[data-until]")) {
    const minutes = (Date.parse(timer.dataset.until) - now()) / 60000;
    const words = minutes >= 0 ? say("in", duration(Math.ceil(minutes))) : say("over", duration(Math.ceil(-minutes)));
    if (timer.textContent !== words) timer.textContent = words;
    timer.classList.toggle("danger", timer.dataset.kind === "use-by" ? minutes < 30 : false);
  }
}

if (plant) {
  beat().then(listen);
  document.addEventListener("visibilitychange", () => { listen(); if (!document.hidden) beat(); });
  setInterval(beat, POLL_MS);
  window.addEventListener("offline", () => show("lost"));
  window.addEventListener("online", beat);
}
tick();
setInterval(tick, 1000);

// a list that is drawn anew keeps open what was open, and what somebody is typing
let open = new Set();
let typed = new Map();
let typing = null;
const placeOf = (field) => `${field.closest("details[id]")?.id ?? ""} ${field.form.dataset.mark} ${field.name}`;
const fields = (list) => [...list.querySelectorAll("form[data-mark] :is(input, select, textarea):not([type=hidden])")];
const isTyped = (field) =>
  field.options ? [...field.options].some((option) => option.selected !== option.defaultSelected) : field.value !== field.defaultValue;
// a list is not exchanged under a finger: the touch would be lost
const LONG_PRESS_MS = 5000;
let pressedAt = -LONG_PRESS_MS;
let held = false;
document.addEventListener("pointerdown", () => { pressedAt = performance.now(); });
for (const end of ["pointerup", "pointercancel"]) {
  document.addEventListener(end, () => setTimeout(() => {
    pressedAt = -LONG_PRESS_MS;
    if (held) changed();
    held = false;
  }));
}
document.body.addEventListener("htmx:beforeSwap", (swap) => {
  // a finger that was never seen to leave does not stop the list for ever
  if (performance.now() - pressedAt < LONG_PRESS_MS) {
    held = true;
    swap.detail.shouldSwap = false;
    return;
  }
  const list = swap.detail.target;
  open = new Set([...list.querySelectorAll("details[open][id]")].map((details) => details.id));
  const unsent = fields(list).filter((field) => field.form.dataset.sent === undefined);
  typed = new Map(unsent.filter(isTyped).map((field) => [placeOf(field), field.value]));
  typing = unsent.includes(document.activeElement) ? placeOf(document.activeElement) : null;
});
document.body.addEventListener("htmx:afterSwap", (swap) => {
  for (const id of open) document.getElementById(id)?.setAttribute("open", "");
  for (const field of fields(swap.detail.target)) {
    const place = placeOf(field);
    if (typed.has(place)) field.value = typed.get(place);
    if (place === typing) field.focus({ preventScroll: true });
  }
  tick();
});

// who is at this device
const person = document.getElementById("person");
if (person) {
  person.value = localStorage.getItem("potlife-person") || "";
  person.addEventListener("change", () => localStorage.setItem("potlife-person", person.value.trim()));
}

document.addEventListener("click", (click) => {
  if (click.target.closest("[data-print]")) window.print();
});
