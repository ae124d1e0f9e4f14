// The maker's text and the list of changes to it: held here, and nowhere else.

const place = "rockerwright";
const most = 60; // steps back

export const work = {
  now: { name: "", text: "", changes: [] },
  before: null, // a design kept to compare with
  past: [],
  future: [],
  load: "",
  started: "", // the text the page was opened with
  kept: "", // where it is kept, in words
};

const copy = () => ({ now: { ...work.now, changes: [...work.now.changes] }, before: work.before });

let last = { what: "", at: 0 };

// step remembers where things stand before a change; changes to the same thing that follow
// at once are one step. It says whether a new step began.
export function step(what) {
  const at = performance.now();
  const again = what && what === last.what && at - last.at < 900;
  last = { what, at };
  if (again) return false;
  work.past.push(copy());
  if (work.past.length > most) work.past.shift();
  work.future = [];
  return true;
}

// held returns the change of an entry, or undefined.
export const changeOf = (key) => work.now.changes.find((c) => c.startsWith(key + "="));

// put changes entries, each [key, text]; a text of null takes the change back.
export function put(entries) {
  for (const [key, text] of entries) {
    const at = work.now.changes.findIndex((c) => c.startsWith(key + "="));
    if (text === null) { if (at >= 0) work.now.changes.splice(at, 1); }
    else if (at >= 0) work.now.changes[at] = `${key}=${text}`;
    else work.now.changes.push(`${key}=${text}`);
  }
}

// take puts another design in the place of this one.
export function take(design) {
  work.now = { name: design.name, text: design.text, changes: [...(design.changes || [])] };
}

// turn goes one step back or on.
export function turn(from, to) {
  if (!from.length) return false;
  to.push(copy());
  const state = from.pop();
  work.now = state.now;
  work.before = state.before;
  last = { what: "", at: 0 };
  return true;
}

// keep writes all of it where a reload finds it, and says where that is.
export function keep() {
  const { now, before, past, future, load, started } = work;
  for (const all of [{ now, before, past, future, load, started }, { now, before, past: [], future: [], load, started }]) {
    try {
      localStorage.setItem(place, JSON.stringify(all));
      work.kept = "Kept in this browser's own storage (localStorage) for this address, so that a reload loses nothing. To keep it for good, download the design file.";
      return;
    } catch { /* full, or forbidden: with less, or not at all */ }
  }
  work.kept = "This browser keeps nothing: a reload loses your changes. Download the design file.";
}

const isDesign = (d) => d && typeof d.name === "string" && typeof d.text === "string" && Array.isArray(d.changes) && d.changes.every((c) => typeof c === "string");
const isState = (s) => s && isDesign(s.now) && (s.before === null || isDesign(s.before));

// restore takes up what was kept; a page opened with another file begins with that, and
// what was there before is one step back.
export function restore(start) {
  let kept = null;
  try { kept = JSON.parse(localStorage.getItem(place)); } catch { /* nothing that is ours */ }
  const sound = isState(kept) && Array.isArray(kept.past) && kept.past.every(isState) && Array.isArray(kept.future) && kept.future.every(isState);
  if (sound) Object.assign(work, { now: kept.now, before: kept.before, past: kept.past, future: kept.future, load: String(kept.load || "") });
  if (!sound) take(start);
  else if (kept.started !== start.name + "\n" + start.text) { step(""); take(start); work.before = null; work.load = ""; }
  work.started = start.name + "\n" + start.text;
  return sound;
}

// ask asks the server; its answer, or an error that says why there is none.
export async function ask(path, what, signal) {
  const answer = await fetch(path, what ? { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(what), signal } : { signal });
  return answer.json();
}
