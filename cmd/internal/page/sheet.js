// The Sheet: what moved in it since the change that a maker is making.

const sheet = document.getElementById("sheet");
let read = new Map(); // what stood there before

// forget lets nothing have moved.
export function forget() { read = new Map(); }

// cells calls what for each number and each sentence of the Sheet, with a name for its place.
function cells(what) {
  sheet.querySelectorAll("table").forEach((table, t) => {
    for (const row of table.tBodies[0]?.rows ?? []) [...row.cells].slice(1).forEach((cell, i) => what(`${t} ${row.cells[0].textContent} ${row.sectionRowIndex} ${i}`, cell));
  });
  sheet.querySelectorAll("p").forEach((p) => what("p " + (p.querySelector("b")?.textContent ?? p.textContent.slice(0, 12)), p));
}

// remember keeps what stands in the Sheet, to mark what moves from here on.
export function remember() {
  read = new Map();
  cells((name, cell) => read.set(name, cell.textContent));
}

// mark marks what moved in the Sheet.
export function mark() {
  cells((name, cell) => {
    const was = read.get(name);
    if (was === undefined || was === cell.textContent) return;
    cell.classList.add("moved");
    if (cell.tagName === "TD") cell.dataset.was = was;
  });
}
