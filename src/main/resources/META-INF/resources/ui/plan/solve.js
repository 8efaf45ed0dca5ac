// Asking for a plan, watching the search, stopping it, putting a plan into force.

import { drawCurve, summary } from "./curve.js";
import { get, send } from "../ask.js";
import { notice } from "../notices.js";
import { say } from "../say.js";

const plant = document.documentElement.dataset.plant;
const plans = `/api/v1/plants/${plant}/plans`;

function show(id) {
  location.assign(`/plants/${plant}/plan?plan=${encodeURIComponent(id)}`);
}

function trouble(error) {
  notice(error.status ? [error.message, ...error.errors.map((e) => e.detail)].join(" ") : say("noAnswer"), { danger: true });
}

document.getElementById("solve")?.addEventListener("submit", async (submit) => {
  submit.preventDefault();
  const form = submit.target;
  const button = form.querySelector("button");
  button.disabled = true;
  try {
    const asked = { day: form.day.value };
    if (form.seconds.value) asked.solveSeconds = Number(form.seconds.value);
    show((await send("POST", plans, asked)).body.id);
  } catch (error) {
    trouble(error);
    button.disabled = false;
  }
});

const search = document.getElementById("search");

async function watch(id) {
  const curve = document.getElementById("curve");
  const words = document.getElementById("curve-words");
  let told = 0;
  const look = async () => {
    try {
      const answer = await get(`${plans}/${id}/progress`);
      if (answer.state !== "solving") {
        show(id);
        return;
      }
      drawCurve(curve, answer.points);
      if (Date.now() - told > 4000) {
        told = Date.now();
        words.textContent = summary(answer.points);
      }
    } catch (error) {
      words.textContent = say("noAnswer");
    }
    setTimeout(look, 700);
  };
  look();
}

if (search) watch(search.dataset.plan);

document.getElementById("stop")?.addEventListener("click", async (click) => {
  click.target.disabled = true;
  try {
    await send("POST", `${plans}/${search.dataset.plan}/stop`);
  } catch (error) {
    trouble(error);
    click.target.disabled = false;
  }
});

document.getElementById("publish")?.addEventListener("click", async (click) => {
  const button = click.target;
  button.disabled = true;
  const findings = document.getElementById("findings");
  try {
    await send("POST", `${plans}/${button.dataset.plan}/publication`);
    show(button.dataset.plan);
  } catch (error) {
    button.disabled = false;
    if (!error.status) return trouble(error);
    findings.hidden = false;
    findings.querySelector("p").textContent = error.message;
    findings.querySelector("ul").replaceChildren(...(error.problem.findings || []).map((finding) => {
      const item = document.createElement("li");
      item.textContent = [`${finding.rule} ${finding.subject}`, finding.detail].filter(Boolean).join(": ");
      return item;
    }));
    findings.focus();
  }
  return undefined;
});

// a newer plan than the one that is shown
const shown = document.getElementById("plan-id")?.dataset.plan;
document.body.addEventListener("potlife:changed", (event) => {
  const beat = event.detail;
  const sign = document.getElementById("newer");
  if (!beat || !sign || search) return;
  if (beat.newest && beat.newest !== shown && ["draft", "solving"].includes(beat.newestState)) {
    sign.querySelector("a").href = `/plants/${plant}/plan?plan=${encodeURIComponent(beat.newest)}`;
    sign.hidden = false;
  }
});

// without this script they would do nothing, or the wrong thing
for (const button of document.querySelectorAll("#solve button, #stop, #publish")) button.disabled = false;
