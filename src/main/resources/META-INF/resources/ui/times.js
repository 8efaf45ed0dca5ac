// Times of the plant: its zone, the device's manner of showing them, the service's clock.

const root = document.documentElement.dataset;
const zone = root.zone;
const hour12 = root.clock === "12";

let ahead = root.now ? Date.parse(root.now) - Date.now() : 0;

/** Sets the clock by the service's. */
export function setNow(instant) {
  ahead = Date.parse(instant) - Date.now();
}

/** The service's present moment, ms. */
export function now() {
  return Date.now() + ahead;
}

const clockFormat = new Intl.DateTimeFormat("en-GB", hour12
  ? { timeZone: zone, hour: "numeric", minute: "2-digit", hour12: true }
  : { timeZone: zone, hour: "2-digit", minute: "2-digit", hourCycle: "h23" });
const dayFormat = new Intl.DateTimeFormat("en-GB", { timeZone: zone, weekday: "short", day: "numeric", month: "short" });
const isoFormat = new Intl.DateTimeFormat("sv-SE", { timeZone: zone, year: "numeric", month: "2-digit", day: "2-digit" });
const partsFormat = new Intl.DateTimeFormat("en-GB", { timeZone: zone, hourCycle: "h23", year: "numeric", month: "numeric", day: "numeric", hour: "numeric", minute: "numeric", second: "numeric" });

/** Time of day. */
export function clock(ms) {
  return clockFormat.format(ms);
}

/** Day of the week and month. */
export function dayName(ms) {
  return dayFormat.format(ms);
}

/** The local day as 2026-12-01. */
export function isoDay(ms) {
  return isoFormat.format(ms);
}

/** Day and time, the day left out on the plant's today. */
export function moment(ms) {
  return isoDay(ms) === isoDay(now()) ? clock(ms) : `${dayName(ms)}, ${clock(ms)}`;
}

/** Offset of the zone at an instant, ms. */
export function offset(ms) {
  const p = Object.fromEntries(partsFormat.formatToParts(ms).map((part) => [part.type, Number(part.value)]));
  return Date.UTC(p.year, p.month - 1, p.day, p.hour, p.minute, p.second) - Math.floor(ms / 1000) * 1000;
}

/** The instant at which the wall clock shows this, ms. */
export function atWall(year, month, day, hour = 0) {
  const guess = Date.UTC(year, month - 1, day, hour);
  const first = guess - offset(guess);
  return guess - offset(first);
}

/** Midnight of a local day 2026-12-01, ms; days may be added. */
export function midnight(iso, days = 0) {
  const [year, month, day] = iso.split("-").map(Number);
  return atWall(year, month, day + days);
}

/** Minutes as hours and minutes. */
export function duration(minutes) {
  const whole = Math.round(Math.abs(minutes));
  if (whole < 60) return `${whole} min`;
  const rest = whole % 60;
  return `${Math.floor(whole / 60)} h${rest ? ` ${rest} min` : ""}`;
}
