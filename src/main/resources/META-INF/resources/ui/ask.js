// Requests to the service. A refusal becomes a Trouble with the problem document's words.

export class Trouble extends Error {
  constructor(status, problem) {
    super(problem.detail || problem.title || String(status));
    this.status = status;
    this.problem = problem;
    this.errors = problem.errors || [];
  }
}

async function answer(response) {
  const json = (response.headers.get("content-type") || "").includes("json");
  const body = json ? await response.json() : await response.text();
  if (!response.ok) {
    throw new Trouble(response.status, json ? body : { title: response.statusText });
  }
  return { body, etag: response.headers.get("etag"), location: response.headers.get("location") };
}

/** Reads a document with its version. Rejects with a TypeError when the service does not answer. */
export async function read(url) {
  return answer(await fetch(url, { headers: { Accept: "application/json" }, cache: "no-store" }));
}

/** Reads a document alone. */
export async function get(url) {
  return (await read(url)).body;
}

/** Sends a JSON document. */
export async function send(method, url, body, headers = {}) {
  return answer(await fetch(url, {
    method,
    headers: { "Content-Type": "application/json", Accept: "application/json", ...headers },
    body: body === undefined ? undefined : typeof body === "string" ? body : JSON.stringify(body),
  }));
}
