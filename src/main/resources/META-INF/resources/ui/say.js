// The texts that the page brings along, so that none stands in a script.

const texts = new Map();

for (const template of document.querySelectorAll("template[id^=say]")) {
  for (const entry of template.content.querySelectorAll("data")) {
    texts.set(entry.value, entry.textContent);
  }
}

/** The text of this name; [0], [1] … stand for what follows. */
export function say(name, ...given) {
  const text = texts.get(name) ?? name;
  return text.replace(/\[(\d)]/g, (all, n) => given[n] ?? "");
}
