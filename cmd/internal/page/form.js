// The measures as sliders, typed values and choices. What there is to change, its range and
// its words come from the server.

const rows = new Map(); // by key: the field and its elements

// typed writes a number as a maker does.
export function typed(x, field) {
  const parts = { in: 16, degrees: 2 }[field.unit];
  if (!parts || (field.unit === "degrees" && field.step < 0.5)) return String(Number(x.toFixed(4)));
  const n = Math.round(Math.abs(x) * parts);
  let above = n % parts, below = parts;
  while (above && above % 2 === 0) { above /= 2; below /= 2; }
  const whole = Math.floor(n / parts);
  const text = above ? (whole ? `${whole} ` : "") + `${above}/${below}` : String(whole);
  return x < 0 && n ? "-" + text : text;
}

export const fieldOf = (key) => rows.get(key)?.field;

const element = (name, set = {}, ...inside) => {
  const e = Object.assign(document.createElement(name), set);
  e.append(...inside);
  return e;
};

function ranged(row, changed) {
  const { field } = row;
  row.range = element("input", { type: "range", min: field.low, max: field.high, step: field.step, id: "slide " + field.key });
  row.range.setAttribute("aria-label", field.label + ", slider");
  row.typed = element("input", { type: "text", id: "entry " + field.key, autocomplete: "off", spellcheck: false, placeholder: field.example || "" });
  row.range.addEventListener("input", () => {
    row.typed.value = typed(Number(row.range.value), field);
    changed(field.key, row.typed.value);
  });
  row.typed.addEventListener("change", () => changed(field.key, row.typed.value.trim() || null));
  row.typed.addEventListener("keydown", (e) => {
    if (e.key !== "ArrowUp" && e.key !== "ArrowDown") return;
    e.preventDefault();
    if (e.key === "ArrowUp") row.range.stepUp(); else row.range.stepDown();
    row.range.dispatchEvent(new Event("input"));
  });
  row.root.append(row.range, element("span", { className: "typed" }, row.typed, element("span", { textContent: field.unit === "degrees" ? "°" : field.unit || "" })));
}

function worded(row, changed) {
  const { field } = row;
  if (field.text) {
    row.typed = element("input", { type: "text", id: "entry " + field.key, autocomplete: "off", maxLength: 200 });
  } else {
    row.typed = element("select", { id: "entry " + field.key }, element("option", { value: "", textContent: "not said" }), ...field.words.map((w) => element("option", { value: w, textContent: w })));
  }
  row.typed.addEventListener("change", () => changed(field.key, row.typed.value || null));
  row.root.append(row.typed);
}

function fieldRow(field, changed) {
  const row = { field, root: element("div", { className: "field" }) };
  row.root.append(element("label", { htmlFor: "entry " + field.key, textContent: field.label[0].toUpperCase() + field.label.slice(1) }));
  if (field.step) ranged(row, changed); else worded(row, changed);
  row.was = element("span");
  const back = element("button", { type: "button", textContent: "As in the file" });
  back.setAttribute("aria-label", `${field.label}: as in the file`);
  back.addEventListener("click", () => { changed(field.key, null); row.typed.focus(); });
  row.wrong = element("p", { className: "wrongly", id: "wrong " + field.key });
  row.root.append(element("div", { className: "was" }, row.was, back), row.wrong);
  rows.set(field.key, row);
  return row.root;
}

// build makes the form anew, keeping the focus and what was open.
export function build(root, form, changed) {
  const focus = document.activeElement?.id;
  const open = new Set([...root.querySelectorAll("details[open]")].map((d) => d.dataset.group));
  rows.clear();
  const groups = form.groups.map((group) => {
    const fields = group.fields.map((f) => fieldRow(f, changed));
    const title = group.title;
    if (group.name === "first") return element("fieldset", {}, element("h2", { textContent: title }), ...fields);
    const details = element("details", { open: open.has(group.name) }, element("summary", { textContent: title }), ...fields);
    details.dataset.group = group.name;
    return details;
  });
  root.replaceChildren(...groups);
  if (focus) document.getElementById(focus)?.focus();
}

// fill writes the values; changeOf says what was changed. What is being typed stays.
export function fill(values, changeOf) {
  for (const [key, row] of rows) {
    const value = values[key] ?? { text: "" };
    const change = changeOf(key);
    if (document.activeElement !== row.typed || row.typed.tagName === "SELECT" || !change) row.typed.value = value.text;
    if (row.range && document.activeElement !== row.range) row.range.value = value.text === "" ? Math.min(Math.max(0, row.field.low), row.field.high) : value.at;
    row.range?.setAttribute("aria-valuetext", value.text ? `${value.text} ${row.field.unit || ""}` : "not given");
    row.root.classList.toggle("moved", change !== undefined);
    row.was.textContent = change === undefined ? "" : "changed: " + change;
  }
  wrong(null);
}

// wrong shows a mistake at its entry; it says whether there is such a place.
export function wrong(fault) {
  let found = false;
  const same = (key) => fault && (key === fault.key || key.replace(/^(sitter|part)\./, "$1.1.") === fault.key || key === (fault.key ?? "").replace(/^(sitter|part)\.1\./, "$1."));
  for (const [key, row] of rows) {
    const is = Boolean(same(key));
    found ||= is;
    row.root.classList.toggle("wrong", is);
    row.wrong.textContent = is ? fault.message : "";
    row.typed.toggleAttribute("aria-invalid", is);
    if (is) { row.typed.setAttribute("aria-invalid", "true"); row.typed.setAttribute("aria-describedby", row.wrong.id); row.root.closest("details")?.setAttribute("open", ""); }
    else { row.typed.removeAttribute("aria-describedby"); }
  }
  return found;
}
