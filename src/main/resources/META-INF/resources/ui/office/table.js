// A table of orders: look through it first, then all orders or none.

import { send } from "../ask.js";
import { notice } from "../notices.js";
import { say } from "../say.js";

const plant = document.documentElement.dataset.plant;
const form = document.getElementById("table-form");
const preview = document.getElementById("preview");

function table(heads, rows) {
  const box = document.createElement("div");
  box.className = "scroll";
  const made = document.createElement("table");
  const head = made.createTHead().insertRow();
  for (const text of heads) {
    const cell = document.createElement("th");
    cell.scope = "col";
    cell.textContent = text;
    head.append(cell);
  }
  const body = made.createTBody();
  for (const row of rows) {
    const line = body.insertRow();
    for (const text of row) line.insertCell().textContent = text;
  }
  box.append(made);
  return box;
}

function words(text, danger) {
  const line = document.createElement("p");
  line.className = danger ? "box danger" : "box";
  line.textContent = text;
  return line;
}

function show(answer) {
  if (answer.wrong.length > 0) {
    preview.replaceChildren(words(say("badTable", answer.wrong.length), true),
      table([say("row"), say("column"), say("wrong")], answer.wrong.map((w) => [w.row, w.column, w.detail])));
  } else {
    const prints = answer.orders.reduce((sum, order) => sum + order.prints.length, 0);
    const button = document.createElement("button");
    button.type = "button";
    button.className = "main";
    button.textContent = say("send", answer.orders.length);
    button.addEventListener("click", () => take(answer.orders, button));
    preview.replaceChildren(words(say("goodTable", answer.orders.length, prints), false), button,
      table([say("order"), say("customer"), say("pieces"), say("due"), say("prints")],
        answer.orders.map((o) => [o.reference, o.customer ?? "", o.garments.quantity, o.dueAt, o.prints.map((p) => `${p.design}, ${p.position}`).join("; ")])));
  }
  preview.focus();
}

// one key for one table: pressing twice takes it in once
let key = null;

async function take(orders, button) {
  button.disabled = true;
  try {
    await send("POST", `/api/v1/plants/${plant}/orders`, orders, { "Idempotency-Key": key });
    preview.replaceChildren(words(say("sent", orders.length), false));
    form.reset();
  } catch (error) {
    button.disabled = false;
    notice(error.status ? error.message : say("noAnswer"), { danger: true });
  }
}

form.addEventListener("submit", async (submit) => {
  submit.preventDefault();
  const file = form.file.files[0];
  const text = file ? await file.text() : form.text.value;
  if (!text.trim()) {
    notice(say("empty"), { danger: true });
    return;
  }
  key = `table-${Date.now()}-${Math.random().toString(36).slice(2)}`;
  try {
    show((await send("POST", `/api/v1/plants/${plant}/order-table`, text, { "Content-Type": "text/csv" })).body);
  } catch (error) {
    notice(error.status ? error.message : say("noAnswer"), { danger: true });
  }
});
