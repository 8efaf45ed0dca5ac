// What a room marks: one touch, five seconds to take it back, then a shop event. Marks that cannot be
// sent are kept on the device and sent when the service answers; their ids keep them from counting twice.

import { send } from "./ask.js";
import { notice } from "./notices.js";
import { say } from "./say.js";
import { now } from "./times.js";

const plant = document.documentElement.dataset.plant;
const KEY = `potlife-marks-${plant}`;
const UNDO_MS = 5000;
// events that take the name of who did it
const NAMED = /^(batch|screen|emulsion|ink|run|press)\./;
const queueSign = document.getElementById("queue");

let pending = [];

function kept() {
  try {
    return JSON.parse(localStorage.getItem(KEY)) || [];
  } catch {
    return [];
  }
}

function keep(marks) {
  localStorage.setItem(KEY, JSON.stringify(marks));
  queueSign.hidden = marks.length === 0;
  queueSign.textContent = say("queued", marks.length);
}

function person() {
  return document.getElementById("person")?.value.trim() || undefined;
}

/** Makes shop events of one mark. */
export function events(type, datas, source = "screen") {
  const time = new Date(now()).toISOString();
  const who = person();
  return datas.map((data) => ({
    specversion: "1.0",
    id: crypto.randomUUID ? crypto.randomUUID() : `${time}-${Math.random().toString(36).slice(2)}`,
    source: `/rooms/${source}`,
    type: `org.potlife.${type}`,
    time,
    data: who && data.person === undefined && NAMED.test(type) ? { ...data, person: who } : data,
  }));
}

async function deliver(mark) {
  const answer = await send("POST", `/api/v1/plants/${plant}/events`, mark.events);
  const parked = answer.body.events.find((line) => line.outcome === "parked");
  if (parked) notice(say("refused", mark.name, parked.cause || ""), { danger: true });
  else notice(say("booked", mark.name));
}

// away, busy, or signed out meanwhile: what was marked is not wrong and waits
const later = (trouble) => !trouble.status || trouble.status >= 500 || [401, 408, 429].includes(trouble.status);

async function dispatch(mark) {
  try {
    await deliver(mark);
  } catch (trouble) {
    if (!later(trouble)) {
      notice(say("refused", mark.name, trouble.errors.map((e) => e.detail).join("; ") || trouble.message), { danger: true });
    } else {
      keep([...kept(), mark]);
      notice(say("kept", mark.name), { danger: true });
    }
  }
}

/**
 * Marks something; it is sent after five seconds unless it is taken back.
 * @param name what the notice calls it
 */
export function mark(name, made, button) {
  const own = { name, events: made };
  pending.push(own);
  button?.setAttribute("aria-busy", "true");
  button?.setAttribute("aria-disabled", "true");
  const free = () => {
    pending = pending.filter((other) => other !== own);
    button?.removeAttribute("aria-busy");
    button?.removeAttribute("aria-disabled");
  };
  const timer = setTimeout(async () => {
    await dispatch(own);
    free();
    document.body.dispatchEvent(new CustomEvent("potlife:changed"));
  }, UNDO_MS);
  notice(say("sending", name), {
    ms: UNDO_MS,
    undo: () => {
      clearTimeout(timer);
      free();
      delete button?.form?.dataset.sent;
      notice(say("undone", name));
      // what came in meanwhile was kept from being drawn
      document.body.dispatchEvent(new CustomEvent("potlife:changed"));
    },
  });
}

// several pages of one device share what is kept; one at a time sends it
const flush = () => (navigator.locks ? navigator.locks.request(KEY, sendKept) : sendKept());

async function sendKept() {
  let marks = kept();
  while (marks.length > 0) {
    try {
      await deliver(marks[0]);
    } catch (trouble) {
      if (later(trouble)) break;
      notice(say("refused", marks[0].name, trouble.message), { danger: true });
    }
    const sent = marks[0].events[0].id;
    marks = kept().filter((mark) => mark.events[0].id !== sent);
    keep(marks);
    document.body.dispatchEvent(new CustomEvent("potlife:changed"));
  }
}

// a page that is left before the five seconds are over keeps its marks for the next one
window.addEventListener("pagehide", () => {
  if (pending.length > 0) {
    keep([...kept(), ...pending]);
    pending = [];
  }
});

document.addEventListener("click", (click) => {
  const button = click.target.closest("button[data-mark]");
  if (!button || button.getAttribute("aria-disabled") === "true") return;
  const datas = JSON.parse(button.dataset.data);
  mark(button.dataset.name, events(button.dataset.mark, Array.isArray(datas) ? datas : [datas], button.dataset.source), button);
});

// a list that is drawn anew would lose what is not sent yet
document.addEventListener("htmx:beforeRequest", (request) => {
  if (pending.length > 0) request.preventDefault();
});

// a form whose fields are the event's data
document.addEventListener("submit", (submit) => {
  const form = submit.target.closest("form[data-mark]");
  if (!form) return;
  submit.preventDefault();
  form.dataset.sent = "";
  const data = {};
  for (const field of form.elements) {
    if (!field.name || field.value === "") continue;
    let value = field.type === "number" ? Number(field.value) : field.value;
    if (field.dataset.unit === "fahrenheit") value = Math.round(((value - 32) * 50) / 9) / 10;
    data[field.name] = value;
  }
  mark(form.dataset.name, events(form.dataset.mark, [data], form.dataset.source), form.querySelector("button"));
  if (form.dataset.clear !== undefined) form.reset();
});

document.addEventListener("input", (input) => { delete input.target.form?.dataset.sent; });

if (plant) {
  keep(kept());
  flush();
  window.addEventListener("online", flush);
  document.body.addEventListener("potlife:back", flush);
}
