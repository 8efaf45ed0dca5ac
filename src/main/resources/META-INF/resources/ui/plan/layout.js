// Where everything of a plan stands from top to bottom. Across, only times are kept: the view turns them into places.

const t = (text) => (text ? Date.parse(text) : null);

export const PRESS = 46;
export const BELT = 60;
export const BATCH = 24;
export const LOAD = 28;
const HEAD = 26;
const GAP = 12;

/** The answer of the service with its times as milliseconds and its parts found by name. */
export function readPlan(answer) {
  const runs = answer.runs.map((run) => ({
    ...run,
    start: t(run.setUpStart), print: t(run.printStart), end: t(run.printEnd), off: t(run.offBelt), due: t(run.dueAt),
    parts: run.rates.map((rate) => [t(rate.from), t(rate.to)]),
  }));
  const batches = answer.batches.map((batch) => ({
    ...batch, start: t(batch.from), ready: t(batch.readyAt), gone: t(batch.useBy), last: t(batch.lastUse),
  }));
  const loads = answer.loads.map((load) => ({ ...load, start: t(load.from), end: t(load.to) }));
  const groups = answer.groups.map((group) => ({
    ...group,
    presses: group.presses.map((press) => ({
      ...press,
      staffed: press.staffed.map((part) => ({ from: t(part.from), to: t(part.to), overtime: part.overtime })),
    })),
    belt: group.belt.map((part) => ({ ...part, start: t(part.from), end: t(part.to) })),
  }));
  const orders = new Map();
  for (const run of runs) {
    if (!orders.has(run.order)) orders.set(run.order, []);
    orders.get(run.order).push(run);
  }
  return {
    plannedAt: t(answer.plannedAt), from: t(answer.from), to: t(answer.to), days: answer.days, swatches: answer.swatches,
    runs, batches, loads, groups, orders, byId: new Map(runs.map((run) => [run.id, run])),
  };
}

/** Puts bars that overlap in time below each other; returns the number of lanes. */
function lanes(bars, end) {
  const free = [];
  for (const bar of bars) {
    let lane = free.findIndex((until) => until <= bar.start);
    if (lane < 0) lane = free.push(0) - 1;
    free[lane] = end(bar);
    bar.lane = lane;
  }
  return Math.max(1, free.length);
}

export const batchEnd = (batch) => Math.max(batch.gone ?? 0, batch.last ?? 0, batch.ready, batch.start + 60000);

/**
 * Rows from top to bottom.
 * @param shown which parts are drawn: belts, batches, screens
 * @param words texts of the headings
 */
export function layOut(plan, shown, words) {
  const rows = [];
  const heads = [];
  let y = 4;
  const head = (text) => { heads.push({ y, h: HEAD, text }); y += HEAD; };
  const byPress = new Map();
  for (const run of plan.runs) {
    if (!byPress.has(run.press)) byPress.set(run.press, []);
    byPress.get(run.press).push(run);
  }
  for (const group of plan.groups) {
    head(words("groupHead", group.dryer));
    for (const press of group.presses) {
      rows.push({ kind: "press", y, h: PRESS, label: press.press, press, runs: byPress.get(press.press) || [] });
      y += PRESS;
    }
    if (shown.belts) {
      rows.push({ kind: "belt", y, h: BELT, label: group.dryer, belt: group.belt });
      y += BELT;
    }
    y += GAP;
  }
  if (shown.batches && plan.batches.length > 0) {
    head(words("batchesHead"));
    const byInk = new Map();
    for (const batch of plan.batches) {
      if (!byInk.has(batch.ink)) byInk.set(batch.ink, []);
      byInk.get(batch.ink).push(batch);
    }
    for (const [ink, batches] of [...byInk].sort((a, b) => a[0].localeCompare(b[0]))) {
      const h = BATCH * lanes(batches, batchEnd) + 4;
      rows.push({ kind: "ink", y, h, label: ink, ink, batches });
      y += h;
    }
    y += GAP;
  }
  if (shown.screens && plan.loads.length > 0) {
    head(words("loadsHead"));
    const byCabinet = new Map();
    for (const load of plan.loads) {
      if (!byCabinet.has(load.cabinet)) byCabinet.set(load.cabinet, []);
      byCabinet.get(load.cabinet).push(load);
    }
    for (const [cabinet, loads] of [...byCabinet].sort((a, b) => a[0].localeCompare(b[0]))) {
      const h = LOAD * lanes(loads, (load) => load.end) + 4;
      rows.push({ kind: "cabinet", y, h, label: cabinet, loads });
      y += h;
    }
  }
  return { rows, heads, height: y + 8 };
}

/** What a run touches: runs of its order or with its screens, batches, loads. */
export function touches(plan, run) {
  if (!run) return null;
  const screens = new Set(run.screens);
  const runs = new Set(plan.orders.get(run.order).map((other) => other.id));
  for (const other of plan.runs) {
    if (other.screens.some((screen) => screens.has(screen))) runs.add(other.id);
  }
  return {
    runs,
    batches: new Set(run.batches),
    loads: new Set(plan.loads.filter((load) => load.runs.includes(run.id))),
  };
}
