// The live page: every change goes to the server as section.key=value, and a fresh drawing
// and a fresh Sheet come back.
import { ask, changeOf, keep, put, restore, step, take, turn, work } from "./work.js";
import { build, fieldOf, fill, typed, wrong } from "./form.js";
import { forget, mark, remember } from "./sheet.js";
import { gesture, lean, paint, pulled, reach, rock, watch } from "./picture.js";

const $ = (id) => document.getElementById(id);
const narrow = matchMedia("(max-width: 40rem)");
let formID = "", values = {};
let busy = null, next = null; // the latest wish alone is asked

const design = () => ({ name: work.now.name, text: work.now.text, changes: work.now.changes });

const say = (text) => { $("said").textContent = text; };

// see asks for a fresh picture and Sheet; of several wishes while one is under way only the
// last is asked.
function see(motion = null) {
  const wish = { ...design(), load: work.load, narrow: narrow.matches, more: $("more").open, form: formID, motion, before: work.before };
  if (busy) {
    if (performance.now() - busy.begun > 400) busy.abort(); // its answer is read by nobody
    next?.done();
    return new Promise((done) => { next = { wish, done }; });
  }
  return send(wish);
}

async function send(wish) {
  const dropped = new AbortController();
  dropped.begun = performance.now();
  busy = dropped;
  $("picture").setAttribute("aria-busy", "true");
  try {
    shown(await ask("see", wish, dropped.signal), wish);
  } catch (e) {
    if (e.name !== "AbortError") failed({ message: "The program that works this out does not answer (" + e.message + "). Was it ended? Your changes are kept here; start it again and reload." });
  }
  busy = null;
  $("picture").removeAttribute("aria-busy");
  if (next) {
    const { wish: later, done } = next;
    next = null;
    await send(later);
    done();
  }
}

// failed shows a mistake at its place; the last good picture stays.
function failed(fault) {
  const placed = wrong(fault);
  const where = fault.line ? `${fault.before ? "In the design kept as before, line" : "Line"} ${fault.line}, column ${fault.column}: ` : "";
  $("fault").hidden = placed && !fault.line;
  $("fault").textContent = where + fault.message;
  $("stale").hidden = !$("picture").firstChild;
  if (fault.line && !fault.before) {
    $("file").open = true;
    pointAt(fault);
  }
  keep();
  buttons();
}

// pointAt selects the line of a mistake in the text.
function pointAt({ line }) {
  const lines = $("text").value.split("\n");
  const from = lines.slice(0, line - 1).join("\n").length + (line > 1 ? 1 : 0);
  $("text").setSelectionRange(from, from + (lines[line - 1] ?? "").length);
  $("text").setAttribute("aria-invalid", "true");
}

// shown shows an answer.
function shown(answer, wish) {
  if (answer.fault) return failed(answer.fault);
  $("fault").hidden = $("stale").hidden = true;
  $("text").removeAttribute("aria-invalid");
  document.title = (answer.title || "Untitled") + " · Rockerwright";
  $("title").textContent = answer.title || "Untitled piece";
  $("units").value = answer.units;
  $("force-unit").textContent = answer.units === "metric" ? "N" : "lb";
  if (answer.form) {
    formID = answer.formID;
    build($("form"), answer.form, changed);
  }
  values = answer.values;
  fill(values, changeOf);
  paint(answer);
  if ($("held").textContent !== answer.held.text) $("held").textContent = answer.held.text;
  $("held").classList.toggle("bad", !answer.held.holds);
  $("sides").textContent = `degrees ${answer.sides[0]}, - ${answer.sides[1]}`;
  $("pushing").hidden = $("push").hidden = !answer.back;
  $("became").textContent = answer.became ?? "";
  loads(answer);
  $("sheet").innerHTML = answer.sheet;
  mark();
  if (wish.more) $("rest").innerHTML = answer.more;
  $("both").hidden = !work.before;
  $("table").innerHTML = answer.both ?? "";
  const [low, high] = reach();
  Object.assign($("lean"), { min: Math.ceil(low), max: Math.floor(high), value: 0 });
  if (answer.live.moving) rock($("slow").checked);
  keep();
  buttons();
}

// loads writes who can be in it.
function loads({ loads: names, load }) {
  const select = $("load");
  if ([...select.options].map((o) => o.value).join("\n") !== names.join("\n")) {
    select.replaceChildren(...names.map((n) => new Option(n === "empty" ? "nobody" : n, n)));
  }
  select.value = load;
}

function buttons() {
  $("undo").disabled = !work.past.length;
  $("redo").disabled = !work.future.length;
  $("where").textContent = work.kept;
}

// changed changes one entry, as typed; null takes the change back.
function changed(key, text) {
  if (text === null ? changeOf(key) === undefined : changeOf(key) === `${key}=${text}`) return;
  if (step(key)) remember();
  say("");
  put([[key, text]]);
  see();
}

// replaced puts another design in the place of this one.
function replaced(other, words) {
  step("");
  forget(); // it is another piece: nothing moved
  take(other);
  work.load = "";
  say(words);
  see();
}

// pull follows a ring: what comes back shows how far it still has to go.
function pull() {
  const hand = gesture();
  if (!hand || busy) return;
  hand.values ??= values;
  const entries = [];
  for (const [key, by] of pulled()) {
    const field = fieldOf(key), is = values[key]?.at, from = (hand.stays ? hand.values : values)[key]?.at;
    if (!field || is === undefined) return;
    const x = Math.min(Math.max(Math.round((from + by) / field.step) * field.step, field.low), field.high);
    if (Math.abs(x - is) > field.step / 2) entries.push([key, typed(x, field)]);
  }
  if (!entries.length) return;
  if (!hand.stepped) {
    step("");
    remember();
    hand.stepped = true;
  }
  put(entries);
  see().then(pull);
}

function letGo(from) {
  $("from").value = String(Math.round(from * 10) / 10);
  see({ from: $("from").value });
}

async function give(name, kind, text) {
  const link = Object.assign(document.createElement("a"), { href: URL.createObjectURL(new Blob([text], { type: kind })), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  say("Handed over: " + name);
}

// other asks something else about the design, and says what is wrong where something is.
async function other(path, more = {}) {
  try {
    const answer = await ask(path, { ...design(), ...more });
    if (answer.fault) failed(answer.fault);
    return answer.fault ? null : answer;
  } catch (e) {
    failed({ message: "The program does not answer (" + e.message + ")." });
    return null;
  }
}

async function text() {
  const saved = await other("file");
  if (saved) $("text").value = saved.text;
  else if (!$("text").value) $("text").value = work.now.text;
}

const file = async (f) => {
  if (f.size > 65536) return failed({ message: "This file is larger than 64 KiB; a design file has a page or two of text." });
  replaced({ name: f.name, text: await f.text() }, "Opened " + f.name);
};

$("undo").addEventListener("click", () => { remember(); if (turn(work.past, work.future)) { say("Undone"); see(); } });
$("redo").addEventListener("click", () => { remember(); if (turn(work.future, work.past)) { say("Done again"); see(); } });
$("keep").addEventListener("click", () => { step(""); work.before = design(); work.before.changes = [...work.before.changes]; say("Kept as before: now change something"); see(); });
$("forget").addEventListener("click", () => { step(""); work.before = null; $("keep").focus(); see(); });
$("back").addEventListener("click", () => replaced(work.before, "As before"));
$("start").addEventListener("change", async () => {
  const kind = $("start").value, called = $("start").selectedOptions[0].textContent;
  $("start").value = "";
  const started = kind && (await other("start", { kind }));
  if (started) replaced(started, "Started from " + called);
});
$("open").addEventListener("change", () => { const [f] = $("open").files; $("open").value = ""; if (f) file(f); });
$("units").addEventListener("change", async () => {
  const turned = await other("units", { units: $("units").value });
  if (turned) { const { load } = work; replaced(turned, "Written for other units"); work.load = load; }
  else $("units").value = $("units").value === "inch" ? "metric" : "inch";
});
$("load").addEventListener("change", () => { work.load = $("load").value; see(); });
$("lean").addEventListener("input", () => {
  const to = Number($("lean").value);
  $("from").value = String(to);
  const go = () => { lean(to); $("lean").value = to; };
  if (document.querySelector(".rocking")) see().then(go); else go();
});
$("motion").addEventListener("submit", (e) => { e.preventDefault(); see({ from: $("from").value }); });
$("push").addEventListener("click", () => see({ push: $("force").value }));
for (const button of document.querySelectorAll("[data-way]")) {
  button.addEventListener("click", async () => {
    const found = await other("like", { before: work.before, way: button.dataset.way });
    if (!found) return;
    say(found.says);
    if (!found.found || !found.changes.length) return;
    step("");
    remember();
    put(found.changes.map((c) => [c.slice(0, c.indexOf("=")), c.slice(c.indexOf("=") + 1)]));
    see();
  });
}
$("more").addEventListener("toggle", () => { if ($("more").open) see(); });
$("file").addEventListener("toggle", () => { if ($("file").open && !$("text").hasAttribute("aria-invalid")) text(); });
$("use").addEventListener("click", () => replaced({ name: work.now.name, text: $("text").value }, "Read anew"));
$("save").addEventListener("click", async () => { const saved = await other("file"); if (saved) give(work.now.name.split(/[/\\]/).pop() || "design.toml", "text/plain", saved.text); });
$("report").addEventListener("click", async () => { const made = await other("report"); if (made) give(made.name.split(/[/\\]/).pop(), "text/html", made.text); });
$("patterns").addEventListener("click", async () => { const made = await other("patterns"); if (made) give(made.name.split(/[/\\]/).pop(), "application/zip", Uint8Array.from(atob(made.data), c => c.charCodeAt(0))); });
$("print").addEventListener("click", () => print());
document.addEventListener("paste", (e) => {
  if (e.target.closest?.("input, textarea")) return;
  const pasted = e.clipboardData?.getData("text/plain") ?? "";
  if (pasted.includes("=")) replaced({ name: "pasted.toml", text: pasted }, "Pasted");
});
document.addEventListener("dragover", (e) => { e.preventDefault(); document.body.classList.add("dropping"); });
document.addEventListener("dragleave", () => document.body.classList.remove("dropping"));
document.addEventListener("drop", (e) => {
  e.preventDefault();
  document.body.classList.remove("dropping");
  const [f] = e.dataTransfer.files;
  const dropped = e.dataTransfer.getData("text/plain");
  if (f) file(f); else if (dropped.includes("=")) replaced({ name: "dropped.toml", text: dropped }, "Dropped");
});
document.addEventListener("keydown", (e) => {
  if (!(e.ctrlKey || e.metaKey) || e.key.toLowerCase() !== "z" || e.target.closest("input[type=text], textarea")) return;
  e.preventDefault();
  $(e.shiftKey ? "redo" : "undo").click();
});
narrow.addEventListener("change", () => see());

watch({ pull, leaned: (from) => { $("from").value = String(Math.round(from * 10) / 10); $("lean").value = from; }, let: letGo, still: () => see() });
try {
  const begun = await ask("start");
  say(restore(begun) ? "As you left it" : "");
  await see();
} catch (e) {
  failed({ message: "The program does not answer (" + e.message + ")." });
}
