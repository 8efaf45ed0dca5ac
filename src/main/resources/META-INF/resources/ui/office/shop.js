// The plant's set-up in forms, made from a description of its parameters.

import { get, read, send } from "../ask.js";
import { say } from "../say.js";

const plant = document.documentElement.dataset.plant;
const url = `/api/v1/plants/${plant}/shop`;
const form = document.getElementById("shop-form");
const message = document.getElementById("shop-message");
const groups = document.getElementById("shop-groups");
const state = document.getElementById("shop-state");
const errors = document.getElementById("shop-errors");

let shop = null;
let etag = null;
let described = null;
let number = 0;

function element(tag, className, text) {
  const made = document.createElement(tag);
  if (className) made.className = className;
  if (text !== undefined) made.textContent = text;
  return made;
}

function dirty() {
  state.textContent = say("changes");
  form.dataset.dirty = "yes";
}

function value(field, input) {
  if (field.type === "flag") return input.checked;
  const text = input.value.trim();
  if (text === "") return undefined;
  if (field.type === "number") return Number(text);
  if (field.type === "words") return text.split(",").map((word) => word.trim()).filter(Boolean);
  if (field.type === "numbers") return text.split(",").map(Number);
  return text;
}

function shown(field, given) {
  if (given === undefined || given === null) return "";
  return Array.isArray(given) ? given.join(", ") : String(given);
}

function input(field, owner, pointer, id) {
  let made;
  if (field.type === "choice") {
    made = element("select");
    for (const choice of field.choices) made.add(new Option(choice, choice, false, owner[field.name] === choice));
  } else {
    made = element("input");
    made.type = { number: "number", flag: "checkbox", time: "time", colour: "color" }[field.type] || "text";
    if (field.type === "number") {
      made.step = "any";
      made.inputMode = "decimal";
    }
    if (field.type === "flag") made.checked = owner[field.name] ?? field.default === "yes";
    else made.value = field.type === "time" ? shown(field, owner[field.name]).slice(0, 5) : shown(field, owner[field.name]);
  }
  made.id = id;
  made.dataset.pointer = pointer;
  made.addEventListener("change", () => {
    const next = value(field, made);
    if (next === undefined) delete owner[field.name];
    else owner[field.name] = next;
    dirty();
  });
  return made;
}

function parameter(field, owner, pointer) {
  number += 1;
  const id = `p${number}`;
  const box = element("div", "param");
  const label = element("label", "", field.label);
  label.htmlFor = id;
  const line = element("div", "line");
  const made = input(field, owner, pointer, id);
  line.append(made);
  if (field.unit) line.append(element("span", "soft", field.unit));
  const why = [field.why, field.default === undefined ? "" : say("default", field.default), field.source ? say("from", field.source) : ""].filter(Boolean).join(" \u00b7 ");
  box.append(label, line);
  if (why) {
    const help = element("p", "why", why);
    help.id = `${id}-why`;
    made.setAttribute("aria-describedby", help.id);
    box.append(help);
  }
  return box;
}

function list(field, owner, pointer) {
  const box = element("div", "group");
  const items = owner[field.name] ?? (owner[field.name] = []);
  const draw = () => {
    const head = element("div", "listhead");
    head.append(element("h3", "", `${field.label} (${items.length})`));
    const add = element("button", "", say("add"));
    add.type = "button";
    add.setAttribute("aria-label", `${say("add")}: ${field.label}`);
    add.addEventListener("click", () => {
      items.push(structuredClone(field.start ?? {}));
      dirty();
      draw();
      box.lastElementChild.querySelector("input, select")?.focus();
    });
    head.append(add);
    box.replaceChildren(head, ...items.map((item, i) => listItem(field, items, item, i, pointer, draw)));
  };
  draw();
  return box;
}

function listItem(field, items, item, i, pointer, draw) {
  const name = field.named ? shown({}, item[field.named]) : "";
  const fold = field.named !== undefined;
  const box = element(fold ? "details" : "div", "listitem");
  if (fold) box.append(element("summary", "", name || `${field.label} ${i + 1}`));
  box.append(...fields(field.fields, item, `${pointer}/${i}`));
  const remove = element("button", "risk", say("remove"));
  remove.type = "button";
  remove.setAttribute("aria-label", `${say("remove")}: ${name || `${field.label} ${i + 1}`}`);
  remove.addEventListener("click", () => {
    items.splice(i, 1);
    dirty();
    draw();
  });
  box.append(remove);
  return box;
}

function fields(all, owner, pointer) {
  const parts = [];
  let grid = null;
  for (const field of all) {
    const own = `${pointer}/${field.name}`;
    if (field.type === "list" || field.type === "part") {
      grid = null;
      if (field.type === "list") parts.push(list(field, owner, own));
      else {
        const box = element("div", "group");
        box.append(element("h3", "", field.label), ...fields(field.fields, owner[field.name] ?? (owner[field.name] = {}), own));
        parts.push(box);
      }
    } else {
      if (!grid) {
        grid = element("div", "params");
        parts.push(grid);
      }
      grid.append(parameter(field, owner, own));
    }
  }
  return parts;
}

function draw() {
  number = 0;
  const open = new Set([...groups.querySelectorAll(":scope > details[open]")].map((d) => d.id));
  groups.replaceChildren(...described.groups.map((group, i) => {
    const box = element("details");
    box.id = `group-${i}`;
    box.open = open.has(box.id) || (open.size === 0 && i === 0);
    const head = element("summary");
    head.append(element("h2", "", group.label));
    box.append(head);
    if (group.why) box.append(element("p", "soft", group.why));
    box.append(...fields(group.fields, group.name ? (shop[group.name] ?? (shop[group.name] = {})) : shop, group.name ? `/${group.name}` : ""));
    return box;
  }));
}

function wrong(list) {
  for (const old of groups.querySelectorAll(".wrong")) old.remove();
  for (const old of groups.querySelectorAll("[aria-invalid]")) old.removeAttribute("aria-invalid");
  errors.hidden = list.length === 0;
  errors.replaceChildren();
  if (list.length === 0) return;
  errors.append(element("p", "", say("wrongValues", list.length)));
  const items = element("ul");
  for (const error of list) {
    const item = element("li");
    const place = [...groups.querySelectorAll("[data-pointer]")].find((one) => one.dataset.pointer === error.pointer);
    if (place) {
      place.setAttribute("aria-invalid", "true");
      place.closest(".param").append(element("p", "wrong", error.detail));
      for (let up = place.closest("details"); up; up = up.parentElement.closest("details")) up.open = true;
      const link = element("a", "", `${place.closest(".param").querySelector("label").textContent}: ${error.detail}`);
      link.href = `#${place.id}`;
      item.append(link);
    } else {
      item.textContent = `${error.pointer} ${error.detail}`;
    }
    items.append(item);
  }
  errors.append(items);
  errors.focus();
}

async function load() {
  try {
    const [stored, table] = await Promise.all([read(url), get("/ui/office/parameters.json")]);
    shop = stored.body;
    etag = stored.etag;
    described = table;
    wrong([]);
    draw();
    message.hidden = true;
    form.hidden = false;
    delete form.dataset.dirty;
    state.textContent = "";
  } catch (error) {
    message.hidden = false;
    message.textContent = error.status ? error.message : say("noAnswer");
  }
}

form.addEventListener("submit", async (submit) => {
  submit.preventDefault();
  try {
    const answer = await send("PUT", url, shop, { "If-Match": etag });
    shop = answer.body;
    etag = answer.etag;
    wrong([]);
    draw();
    delete form.dataset.dirty;
    state.textContent = say("saved");
  } catch (error) {
    if (error.status === 412) state.textContent = say("changedBefore");
    else if (error.status) wrong(error.errors.length > 0 ? error.errors : [{ pointer: "", detail: error.message }]);
    else state.textContent = say("noAnswer");
  }
});

document.getElementById("shop-again").addEventListener("click", load);
window.addEventListener("beforeunload", (leave) => { if (form.dataset.dirty) leave.preventDefault(); });
load();
