"use strict";
// Rocks the side views of a page along their samples, at true speed: see RockingView.

// rocking gives a figure its buttons and returns what moves it: a time in seconds, or null
// for the rest, where it is drawn.
function rocking(figure) {
  const svg = figure.querySelector("svg[data-samples]");
  if (!svg) return null;
  const [every, ...rows] = svg.dataset.samples.split(";");
  const samples = rows.map((row) => row.split(" ").map(Number));
  const dt = Number(every);
  const span = dt * (samples.length - 1);
  const groups = (name) => [...svg.querySelectorAll(`[data-moves="${name}"]`)];
  const piece = groups("piece"), contact = groups("contact"), point = groups("time"), level = groups("tilt");
  const shanks = groups("shank"), feet = groups("foot");
  const still = [...svg.querySelectorAll("[data-still]")];
  const calm = matchMedia("(prefers-reduced-motion: reduce)");
  let now = null, speed = 1, last = 0, frame = 0;

  const move = (list, to) => list.forEach((g) => (to ? g.setAttribute("transform", to) : g.removeAttribute("transform")));

  function show(time) {
    now = time;
    if (time !== null) now = Math.min(Math.max(time, 0), span);
    still.forEach((g) => g.setAttribute("visibility", now === null ? "visible" : "hidden"));
    if (now === null) {
      [piece, contact, point, level, shanks, feet].forEach((list) => move(list, ""));
    } else {
      const i = Math.min(Math.floor(now / dt), samples.length - 2), part = now / dt - i;
      const [x, y, turn, cx, cy, px, py, ...legs] = samples[i].map((a, k) => a + part * (samples[i + 1][k] - a));
      move(piece, `translate(${x} ${y}) rotate(${turn})`);
      move(contact, `translate(${cx} ${cy})`);
      move(point, `translate(${px} ${py})`);
      move(level, `translate(0 ${py})`);
      const bend = (list, k) => list.forEach((g, n) => {
        const [ax, ay] = legs.slice(4 * n);
        move([g], `translate(${ax} ${ay}) rotate(${legs[4 * n + k]} ${g.dataset.about})`);
      });
      bend(shanks, 2);
      bend(feet, 3);
    }
    slider.value = now === null ? 0 : now;
    slider.setAttribute("aria-valuetext", now === null ? "at rest" : now.toFixed(1) + " seconds");
    clock.textContent = now === null ? "at rest" : now.toFixed(1) + " s";
  }

  function tick(at) {
    show(now + (speed * (at - last)) / 1000);
    last = at;
    if (now >= span) pause();
    else frame = requestAnimationFrame(tick);
  }

  function pause() {
    cancelAnimationFrame(frame);
    frame = 0;
    play.textContent = "Play";
  }

  function go(from) {
    if (calm.matches) return; // whoever asked for no motion has the slider
    cancelAnimationFrame(frame);
    show(from);
    last = performance.now();
    frame = requestAnimationFrame(tick);
    play.textContent = "Pause";
  }

  const bar = document.createElement("p");
  bar.className = "rocking";
  const button = (name, act) => {
    const b = document.createElement("button");
    b.type = "button";
    b.textContent = name;
    b.addEventListener("click", act);
    bar.append(b);
    return b;
  };
  const play = button("Play", () => (frame ? pause() : go(now === null || now >= span ? 0 : now)));
  const slow = button("Slow", () => {
    speed = speed === 1 ? 0.25 : 1;
    slow.setAttribute("aria-pressed", speed !== 1);
  });
  slow.setAttribute("aria-pressed", "false");
  const again = button("Again", () => go(0));
  button("At rest", () => { pause(); show(null); });
  const slider = document.createElement("input");
  Object.assign(slider, { type: "range", min: 0, max: span, step: dt });
  slider.setAttribute("aria-label", "Time since it was let go");
  slider.addEventListener("input", () => { pause(); show(Number(slider.value)); });
  const clock = document.createElement("output");
  bar.append(slider, clock);
  figure.append(bar);

  const respect = () => {
    if (calm.matches) pause();
    play.hidden = slow.hidden = again.hidden = calm.matches;
  };
  calm.addEventListener("change", respect);
  addEventListener("beforeprint", () => { pause(); show(null); }); // paper holds still
  respect();
  show(null);
  return show;
}

for (const figure of document.querySelectorAll("figure")) rocking(figure);
