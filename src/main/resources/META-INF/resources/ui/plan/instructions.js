// What the planner has decided himself: read, listed, changed. Who may not change it only reads the list.

import { read, send } from "../ask.js";
import { notice } from "../notices.js";
import { say } from "../say.js";
import { moment } from "../times.js";

const plant = document.documentElement.dataset.plant;
const list = document.getElementById("instructions");

export const url = `/api/v1/plants/${plant}/instructions`;

/** The planner's instructions; `then` is called whenever others hold. */
export class Instructions {
  constructor(board, mayChange, then = () => {}) {
    this.board = board;
    this.mayChange = mayChange;
    this.then = then;
    this.present = { held: [], runs: [], lots: [] };
    this.etag = null;
  }

  async read() {
    ({ body: this.present, etag: this.etag } = await read(url));
    this.show();
    list.hidden = false;
  }

  ofRun(run) {
    return this.present.runs.find((wish) => wish.run === run.id);
  }

  name(id) {
    return this.board.plan.byId.get(id)?.name ?? id;
  }

  show() {
    const { present } = this;
    const wished = new Set(present.runs.flatMap((wish) => [wish.run, wish.before]));
    for (const one of this.board.plan.runs) one.pinned = wished.has(one.id);
    this.board.redraw();
    const items = [
      ...present.held.map((order) => [say("heldItem", order), { ...present, held: present.held.filter((o) => o !== order) }]),
      ...present.runs.map((wish) => [this.words(wish), { ...present, runs: present.runs.filter((w) => w.run !== wish.run) }]),
      ...present.lots.map((wish) => [say("lotsItem", wish.order, wish.lots), { ...present, lots: present.lots.filter((w) => w.order !== wish.order) }]),
    ];
    list.querySelector("summary").textContent = say("instructionsHead", items.length);
    list.querySelector("ul").replaceChildren(...items.map(([text, without]) => {
      const item = document.createElement("li");
      item.append(`${text} `);
      if (this.mayChange) item.append(this.remover(text, without));
      return item;
    }));
    this.then();
  }

  remover(text, without) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = say("remove");
    button.setAttribute("aria-label", `${say("remove")}: ${text}`);
    button.addEventListener("click", () => this.put(without));
    return button;
  }

  words(wish) {
    return [
      this.name(wish.run),
      wish.press ? say("onPress", wish.press) : "",
      wish.before ? say("beforeItem", this.name(wish.before)) : "",
      wish.notBefore ? say("notBefore", moment(Date.parse(wish.notBefore))) : "",
    ].filter(Boolean).join(", ");
  }

  /** Puts others into force; a notice takes that back. */
  async put(next) {
    const before = this.present;
    try {
      const headers = this.etag === '"0"' ? {} : { "If-Match": this.etag };
      const answer = await send("PUT", url, next, headers);
      this.present = answer.body;
      this.etag = answer.etag;
      this.show();
      notice(say("instructed"), { ms: 12000, undo: () => this.put(before) });
    } catch (error) {
      notice(error.status === 412 ? say("instructedBefore") : reason(error), { danger: true });
      if (error.status === 412) this.read();
    }
  }
}

/** Why the service did not take something. */
export function reason(error) {
  return error.status ? [error.message, ...error.errors.map((one) => one.detail)].join(" ") : say("noAnswer");
}
