// Short notices at the foot of the screen, read aloud by screen readers.

import { say } from "./say.js";

const place = document.getElementById("notices");

/**
 * Shows a notice.
 * @param text what it says
 * @param options danger: red and staying longer; undo: called when taken back; ms: how long it stays
 * @returns a function that takes it away
 */
export function notice(text, { danger = false, undo = null, ms = danger ? 15000 : 4000 } = {}) {
  const box = document.createElement("div");
  box.className = danger ? "notice danger" : "notice";
  if (danger) box.setAttribute("role", "alert");
  const words = document.createElement("span");
  words.textContent = text;
  box.append(words);
  const away = () => { clearTimeout(timer); box.remove(); };
  if (undo) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = say("undo");
    button.addEventListener("click", () => { away(); undo(); });
    box.append(button);
  }
  place.append(box);
  const timer = setTimeout(away, ms);
  return away;
}
