// The picture: pulled by its rings, leaned, let go. It is drawn on the server, and moved
// along its samples by the same script as a report's.

const figure = document.getElementById("picture");
let view = null; // what the server said of it
let show = null; // moves it: see rocking.js
let pulling = null, leaning = null;

const svg = () => figure.querySelector("svg");

// at returns where a pointer is in the drawing.
function at(event) {
  const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg().getScreenCTM().inverse());
  return [p.x, p.y];
}

// paint puts a fresh drawing in the place of the last.
export function paint(answer) {
  view = answer.live;
  show = null;
  figure.innerHTML = answer.picture;
}

// rock lets the drawing go, if it is of a motion.
export function rock(slow) {
  show = globalThis.rocking(figure);
  if (!show) return;
  const [, slower, again] = figure.querySelectorAll(".rocking button");
  if (slow) slower.click();
  again.click();
}

// mover returns what moves the drawing to one of its tilts.
function mover() {
  if (!show) {
    show = globalThis.rocking(figure);
    figure.querySelector(".rocking")?.remove(); // these are tilts, not times
  }
  return show;
}

// lean leans the piece to a tilt from its rest, degrees, + back, and says how far it went.
export function lean(from) {
  if (!view || view.moving || !view.tilts || !mover()) return 0;
  const first = view.first - view.rest, last = first + (view.tilts - 1) * view.step;
  const tilt = Math.min(Math.max(from, first), last);
  const every = Number(svg().dataset.samples.split(";", 1)[0]);
  show(((tilt - first) / view.step) * every);
  return tilt;
}

// reach returns how far it can be leaned.
export const reach = () => (view?.tilts ? [view.first - view.rest, view.first - view.rest + (view.tilts - 1) * view.step] : [0, 0]);

const angle = (p) => (Math.atan2(p[0] - view.pivot[0], view.pivot[1] - p[1]) * 180) / Math.PI;

// gesture is the pull that is under way; whoever asks may keep something on it.
export const gesture = () => pulling;

// pulled returns by how much the measures of a handle change when it is where the pointer
// is, each [key, number]: from where they stand, and for the low point, from which the
// drawing is measured and which stays in its place, from where they stood.
export function pulled() {
  const from = pulling?.stays ? pulling.handle : view?.handles.find((h) => h.name === pulling?.handle.name);
  if (!from || !pulling.point) return [];
  const start = pulling.stays ? pulling.start : from.at;
  const way = (pulling.point[0] - start[0]) * from.along[0] + (pulling.point[1] - start[1]) * from.along[1];
  return (from.pulls ?? []).map(({ key, by }) => [key, way * by]);
}

// watch tells what a maker does with the picture: pulls a handle, leans it, lets go. still is
// asked for a drawing that can be leaned.
export function watch({ pull, leaned, let: letGo, still }) {
  figure.addEventListener("pointerdown", async (event) => {
    if (event.button !== 0 || !svg()?.contains(event.target) || !view) return;
    const handle = event.target.closest("[class^=handle-]");
    if (handle) {
      event.preventDefault();
      const name = handle.getAttribute("class").slice("handle-".length);
      pulling = { handle: view.handles.find((h) => h.name === name), stays: name === "low", start: at(event), point: null };
    } else if (view.tilts) {
      leaning = { from: 0, start: at(event), last: at(event), moved: false };
      if (view.moving) await still();
    }
    figure.setPointerCapture(event.pointerId);
  });
  figure.addEventListener("pointermove", (event) => {
    if (!svg()) return;
    if (pulling) {
      pulling.point = at(event);
      pull();
    } else if (leaning && view && !view.moving) {
      leaning.last = at(event);
      leaning.from = angle(leaning.start) - angle(leaning.last);
      leaning.moved ||= Math.abs(leaning.from) > 0.5;
      figure.classList.add("gripped");
      leaned(lean(leaning.from));
    }
  });
  const end = (event) => {
    figure.classList.remove("gripped");
    const had = leaning;
    pulling = leaning = null;
    if (had?.moved && event.type === "pointerup") letGo(had.from);
    else if (had?.moved) leaned(lean(0));
  };
  figure.addEventListener("pointerup", end);
  figure.addEventListener("pointercancel", end);
}
