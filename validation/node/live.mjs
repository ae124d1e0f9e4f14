// Opens the live page in a browser, does with it what a maker does, and says what is wrong:
// one line a fault, and a line that begins with "measured" for what was measured. What is
// right is asked of the command itself.
//
// Usage: node live.mjs ROCKERWRIGHT FOLDER [SCREENSHOTS]
// FOLDER holds chair.toml, hostile.toml and cradle.toml.
import { execFileSync, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { HtmlValidate } from "html-validate";
import { chromium } from "playwright-core";

const [command, folder] = process.argv.slice(2, 4).map((p) => resolve(p));
const pictures = process.argv[4] && resolve(process.argv[4]);
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const fault = (text) => console.log(text);
const check = (holds, text) => holds || fault(text);
const pause = (ms) => new Promise((done) => setTimeout(done, ms));

// told runs the command; a limit that does not hold is an answer.
function told(...args) {
  try { return execFileSync(command, args, { encoding: "utf8", cwd: folder }); } catch (e) {
    if (e.status !== 1) throw e;
    return e.stdout;
  }
}

// serve starts the page of a file and returns its address and its process.
async function serve(file) {
  const begun = performance.now();
  const child = spawn(command, ["open", file, "--no-browser", "--port", "0"], { cwd: folder, env: { ...process.env, SOURCE_DATE_EPOCH: "1000000000" } });
  let out = "";
  child.stdout.on("data", (d) => { out += d; });
  child.stderr.on("data", (d) => fault("the command says: " + d));
  while (!/http:\S+/.test(out)) await pause(2);
  const url = out.match(/http:\S+/)[0];
  await fetch(url);
  console.log(`measured ready after ${(performance.now() - begun).toFixed(0)} ms`);
  const site = { url, child, told: false };
  site.over = new Promise((done) => child.on("exit", (code, signal) => {
    check(site.told, `the command ended by itself: ${code} ${signal}`);
    done(code);
  }));
  return site;
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM || "/usr/bin/chromium", args: ["--no-sandbox"] });

// visit opens the page, with a fault for each request elsewhere and each message.
async function visit({ url }, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, acceptDownloads: true, ...options });
  const page = await context.newPage();
  page.on("request", (r) => check(r.url().startsWith(url) || r.url().startsWith("blob:" + url) || r.url() === "data:,", `it asks for ${r.url()}`));
  page.on("console", (m) => fault(`the console says: ${m.text()}`));
  page.on("pageerror", (e) => fault(`the script fails: ${e}`));
  page.on("dialog", (d) => { fault(`it opens a dialog: ${d.message()}`); d.dismiss(); });
  await page.goto(url);
  await page.waitForSelector("#picture svg");
  return page;
}

const look = (page, name, fullPage = false) => pictures && page.screenshot({ path: join(pictures, `live-${name}.png`), fullPage });

// settle waits until nothing is asked any more.
async function settle(page) {
  for (let i = 0; i < 2; i++) {
    await pause(80);
    await page.waitForSelector("#picture:not([aria-busy])");
  }
}
const byID = (page, id) => page.locator(`[id="${id}"]`);

// type types a value as a maker does.
async function type(page, id, text) {
  id = "entry " + id;
  await byID(page, id).evaluate((e) => { const d = e.closest("details"); if (d) d.open = true; });
  await byID(page, id).fill(text);
  await byID(page, id).press("Enter");
  await settle(page);
}

// rows returns the Sheet's first table: label to cells, without what is said of the past.
const rows = (page) => page.evaluate(() => Object.fromEntries([...document.querySelectorAll("#sheet table")[0].tBodies[0].rows].map((r, i) => [i + " " + r.cells[0].textContent, [...r.cells].slice(1).map((c) => c.textContent)])));

// sameAsCommand holds the numbers of the Sheet and the curve drawn against what the command
// says of the same file with the same changes.
async function sameAsCommand(page, file, changes, what) {
  const text = told("check", file, ...changes);
  let held = 0;
  for (const [label, cells] of Object.entries(await rows(page))) {
    const name = label.replace(/^\d+ /, "");
    if (!text.split("\n").some((l) => l.trim().startsWith(name))) continue; // it says what was changed too, and leaves out a row for that
    held++;
    const line = text.split("\n").find((l) => l.trim().startsWith(name) && cells.every((c) => l.includes(c)));
    check(line, `${what}: the command does not say "${name} ${cells.join("  ")}"`);
  }
  check(held >= 5, `${what}: only ${held} rows stand in both`);
  const load = await page.locator("#load").inputValue();
  const answer = JSON.parse(told("check", file, ...changes, "--json")).loads.find((l) => l.name === load);
  const drawn = await page.evaluate(() => {
    const texts = [...document.querySelectorAll(".arm text")].map((t) => [t.textContent, Number(t.getAttribute("x")), Number(t.getAttribute("y"))]);
    const tilts = texts.filter(([t]) => /^-?\d+°$/.test(t)).map(([t, , y]) => [parseFloat(t), y - 1.1]);
    const arms = texts.filter(([t]) => /^-?[\d.]+$/.test(t)).map(([t, x]) => [parseFloat(t), x]);
    const map = ([[a, p], [b, q]]) => (x) => a + ((x - p) * (b - a)) / (q - p);
    const tilt = map([tilts[0], tilts.at(-1)]), arm = map([arms[0], arms.at(-1)]);
    const line = [...document.querySelectorAll(".arm path")].at(-1).getAttribute("d");
    const rings = [...document.querySelectorAll(".arm circle")].map((c) => tilt(Number(c.getAttribute("cy"))));
    return { points: line.slice(1).split("L").map((p) => p.split(" ").map(Number)).map(([x, y]) => [tilt(y), arm(x)]), rings };
  });
  let worst = 0;
  for (const [tilt, arm] of drawn.points) {
    const near = answer.righting.find((r) => Math.abs(r.tilt_deg - tilt) < 0.3);
    if (!near) { fault(`${what}: the curve has a point at ${tilt} degrees that the command has not`); continue; }
    worst = Math.max(worst, Math.abs(near.arm_m / 0.0254 - arm));
  }
  console.log(`measured ${what}: curve of ${drawn.points.length} points within ${worst.toFixed(3)} in of the command's`);
  check(drawn.points.length > 30 && worst < 0.03, `${what}: the curve is ${worst} in off the command's`); // drawn to 0.01 mm of some 4 mm an inch, both ends of the scale as well
  const tips = [answer.back.tip_tilt_deg];
  if (!answer.forward.of) tips.push(answer.forward.tip_tilt_deg); // else forward is of another posture, with another curve
  for (const tip of tips) check(drawn.rings.some((r) => Math.abs(r - tip) < 0.15), `${what}: it goes over at ${tip} degrees and no ring is there: ${drawn.rings}`); // 0.01 mm is 0.03 degrees
}

const changesOf = (page) => page.evaluate(() => JSON.parse(localStorage.getItem("rockerwright")).now.changes);

async function accessible(page, where) {
  await page.evaluate(axe).catch(() => {});
  const found = await page.evaluate(() => axe.run(document, { resultTypes: ["violations"] }));
  for (const v of found.violations) fault(`${where}: ${v.impact}: ${v.id}: ${v.help}: ${v.nodes[0].html.slice(0, 140)}`);
}

// drags pulls the tail by its ring.
async function drags(site) {
  const page = await visit(site);
  await sameAsCommand(page, "chair.toml", [], "as opened");
  for (const name of ["tail", "nose", "low"]) {
    const ring = await page.locator(`.handle-${name} circle`).nth(1).boundingBox();
    const [x, y] = [ring.x + ring.width / 2, ring.y + ring.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x - 14, y - 3, { steps: 8 });
    await settle(page);
    if (name === "tail") await look(page, "pulled");
    await page.mouse.up();
    await settle(page);
  }
  const changes = await changesOf(page);
  for (const key of ["rocker.tail", "rocker.nose", "seat.behind_low_point"]) check(changes.some((c) => c.startsWith(key + "=")), `pulling a ring does not change ${key}: ${changes}`);
  const low = Number(changes.find((c) => c.startsWith("seat.behind"))?.split("=")[1].split(" ")[0]);
  check(low >= 5 && low < 9, `the low point pulled back by some 3 in is ${low} in from the back, and was 9`);
  await sameAsCommand(page, "chair.toml", changes, "pulled");
  check(await page.locator("#sheet td.moved").count() > 3, "what moved in the Sheet is not marked");
  check(await page.locator(".field.moved").count() === 3, "what was changed is not marked");
  for (let i = 0; i < 3; i++) { await page.locator("#undo").click(); await settle(page); }
  check((await changesOf(page)).length === 0, `three steps back are not where it began: ${await changesOf(page)}`);
  await page.locator("#redo").click();
  await settle(page);
  check((await changesOf(page)).length === 1, "a step on is no step on");
  await page.context().close();
}

// types types a fraction, breaks a limit, makes a mistake.
async function types(site) {
  const page = await visit(site);
  await type(page, "rocker.tail", "20½");
  await sameAsCommand(page, "chair.toml", ["rocker.tail=20 1/2"], "a fraction typed");
  check(Number(await byID(page, "slide rocker.tail").inputValue()) === 20.5, "the slider does not follow what is typed");
  await type(page, "rocker.tail", "12");
  const held = await page.locator("#held").evaluate((e) => [e.textContent, getComputedStyle(e, "::before").content, getComputedStyle(e).borderStyle]);
  check(held[0].includes("NO") && held[1].includes("✗") && held[2] === "double", `a broken limit is not said in words and shape: ${held}`);
  check(await page.locator("#sheet .bad", { hasText: "FAILS" }).count() > 0, "the Sheet does not say what fails");
  await sameAsCommand(page, "chair.toml", ["rocker.tail=12"], "a limit broken");
  await look(page, "broken");
  const picture = await page.locator("#picture svg").evaluate((e) => e.outerHTML.length);
  await type(page, "rocker.nose", "-3");
  check((await byID(page, "entry rocker.nose").getAttribute("aria-invalid")) === "true" && (await byID(page, "wrong rocker.nose").textContent()).includes("more than 0"), "a mistake is not shown at its place");
  check(picture === await page.locator("#picture svg").evaluate((e) => e.outerHTML.length) && await page.locator("#stale").isVisible(), "after a mistake the last good picture does not stay");
  await look(page, "mistake");
  await type(page, "rocker.nose", "17");
  check((await byID(page, "entry rocker.nose").getAttribute("aria-invalid")) === null && !(await page.locator("#stale").isVisible()), "a mistake that was mended stays");
  await page.locator("#file summary").click();
  await settle(page);
  const text = await page.locator("#text").inputValue();
  await page.locator("#text").fill(text.replace('"16 1/2"        #', "16 1/2 #"));
  await page.locator("#use").click();
  await settle(page);
  check(/^Line 14, column 10: .*quotes/.test(await page.locator("#fault").textContent()), `a mistake in the text is not placed: ${await page.locator("#fault").textContent()}`);
  check((await page.locator("#text").evaluate((e) => e.value.slice(e.selectionStart, e.selectionEnd))).startsWith("front"), "the line of a mistake is not pointed at");
  await page.locator("#undo").click();
  await settle(page);
  check(!(await page.locator("#fault").isVisible()), "the mistake stays when it is undone");
  await page.context().close();
}

// rocks lets it go and times it, pushes it over, and takes hold of it.
async function rocks(site) {
  const page = await visit(site);
  const load = await page.locator("#load").inputValue();
  const swing = JSON.parse(told("check", "chair.toml", "--release", "6", "--json")).loads.find((l) => l.name === load).swings[0];
  const once = async () => {
    await page.locator("#from").fill("6");
    await page.locator("#go").click();
    await page.waitForSelector(".rocking output");
    return page.evaluate(async (period) => {
      const frame = () => new Promise(requestAnimationFrame);
      const turn = () => Number(document.querySelector('#picture [data-moves="piece"]').getAttribute("transform")?.match(/rotate\(([^)]*)\)/)?.[1] ?? 0);
      let at = await frame(), before = turn(), crossings = [];
      const until = at + 4500 * period;
      while (crossings.length < 4 && at < until) {
        const last = at;
        at = await frame();
        const now = turn();
        if (before < 0 && now >= 0) crossings.push(last + ((at - last) * before) / (before - now));
        before = now;
      }
      return (crossings[3] - crossings[0]) / 3000;
    }, swing.period_s);
  };
  const took = await once();
  console.log(`measured three rocks: ${took.toFixed(4)} s each, computed ${swing.period_s.toFixed(4)} s`);
  check(Math.abs(took / swing.period_s - 1) < 0.02, `three rocks take ${took} s each, computed ${swing.period_s} s`);
  await look(page, "rocking");
  await page.locator("#slow").check();
  const slow = await once();
  check(Math.abs(slow / (4 * swing.period_s) - 1) < 0.02 || Number.isNaN(slow), `slow motion takes ${slow / swing.period_s} times as long, not 4`);
  await page.locator("#slow").uncheck();
  const level = await page.evaluate(() => [".level", ".now"].map((g) => document.querySelector(`#picture ${g}`).getAttribute("transform")));
  check(level.every((t) => t?.startsWith("translate(")), `the present tilt is not marked on the curves: ${level}`);
  await page.locator("#from").fill("58");
  await page.locator("#go").click();
  await page.waitForFunction(() => document.querySelector("#became").textContent.includes("over"));
  await pause(2500);
  check((await page.locator("#became").textContent()).includes("goes over backwards"), "let go beyond the edge it does not go over");
  const turned = await page.evaluate(() => -Number(document.querySelector('#picture [data-moves="piece"]').getAttribute("transform").match(/rotate\(([^)]*)\)/)[1]));
  check(turned > 65, `it stops at ${turned} degrees instead of falling`);
  await look(page, "over");
  await page.locator("#force").fill("5");
  await page.locator("#push").click();
  await settle(page);
  check((await page.locator("#became").textContent()).includes("still rocking"), `a little push: ${await page.locator("#became").textContent()}`);
  const svg = await page.locator("#picture svg").boundingBox();
  await page.mouse.move(svg.x + svg.width * 0.45, svg.y + svg.height * 0.25);
  await page.mouse.down();
  await page.mouse.move(svg.x + svg.width * 0.4, svg.y + svg.height * 0.25, { steps: 4 });
  await settle(page);
  await page.mouse.move(svg.x + svg.width * 0.36, svg.y + svg.height * 0.26, { steps: 4 });
  const leaned = Number(await page.locator("#from").inputValue());
  check(leaned > 3, `the piece is not leaned by hand: ${leaned}`);
  await look(page, "leaned");
  await page.mouse.up();
  await settle(page);
  check(await page.locator(".rocking output").count() === 1 && (await page.locator("#became").textContent()).length > 10, "let go by hand it does not rock");
  await page.context().close();
}

// compares keeps a design, changes the person, and asks for the same time.
async function compares(site) {
  const page = await visit(site);
  await page.locator("#keep").click();
  await settle(page);
  await type(page, "sitter.height", "6 ft 4 in");
  await type(page, "seat.front", "18");
  await type(page, "seat.rear", "17-1/4");
  check(await page.locator(".rocker-before").count() === 1 && await page.locator("#both").isVisible(), "before is not seen");
  const rock = () => page.evaluate(() => [...document.querySelectorAll("#table tr")].find((r) => r.cells[0].textContent === "one rock")?.innerText.match(/[\d.]+/g).map(Number));
  const other = await rock();
  await look(page, "before", true);
  await page.locator("[data-way='same time']").click();
  await settle(page);
  const same = await rock();
  check(Math.abs(other[0] - other[1]) > 0.02 && Math.abs(same[0] - same[1]) <= 0.02, `same time: ${other} became ${same}`);
  check((await changesOf(page)).some((c) => c.startsWith("rocker.radius=")), "same time does not change the radius");
  await page.locator("#undo").click();
  await settle(page);
  check(JSON.stringify(await rock()) === JSON.stringify(other), "same time is not one step");
  await page.context().close();
}

// hands takes files in and out, and reloads.
async function hands(site) {
  const page = await visit(site);
  await type(page, "rocker.tail", "20-1/2");
  await type(page, "sitter.weight", "95 kg");
  const download = async (id) => {
    const [d] = await Promise.all([page.waitForEvent("download"), page.locator(id).click()]);
    const path = join(folder, "downloaded-" + d.suggestedFilename());
    await d.saveAs(path);
    return path;
  };
  const saved = await download("#save");
  const alike = (a, b) => told("check", ...a, "--json") === told("check", ...b, "--json");
  check(alike([saved], ["chair.toml", "rocker.tail=20-1/2", "sitter.weight=95 kg"]), "the file that was downloaded is another design");
  check(readFileSync(saved, "utf8").split("#").length === readFileSync(join(folder, "chair.toml"), "utf8").split("#").length, "comments were lost");
  const report = readFileSync(await download("#report"), "utf8");
  check(report.includes("20-1/2") && report.endsWith("</html>\n"), "the report is not whole");
  const patterns = readFileSync(await download("#patterns"));
  check(patterns.subarray(0, 2).toString() === "PK" && patterns.length > 20_000, `the patterns are no archive: ${patterns.length} bytes`);
  await page.reload();
  await page.waitForSelector("#picture svg");
  await settle(page);
  check((await byID(page, "entry rocker.tail").inputValue()) === "20-1/2" && (await changesOf(page)).length === 2, "a reload loses changes");
  check((await page.locator("#where").textContent()).includes("localStorage"), "it does not say where it is kept");
  await page.locator("#undo").click();
  await settle(page);
  check((await changesOf(page)).length === 1, "a reload loses the steps back");
  await page.locator("#units").selectOption("metric");
  await settle(page);
  check(Math.abs(Number(await byID(page, "entry rocker.radius").inputValue()) - 1066.8) < 0.01 && (await page.locator("#sheet h2").textContent()).includes("millimetres"), "in millimetres the radius is " + await byID(page, "entry rocker.radius").inputValue());
  for (const kind of ["cradle", "horse", "settee", "child", "chair"]) {
    await page.locator("#start").selectOption(kind);
    await settle(page);
    check(await page.locator("#picture svg").count() === 1 && !(await page.locator("#fault").isVisible()), `${kind} does not start`);
    await look(page, kind);
  }
  const drop = (how) => page.evaluate(([how, text]) => {
    const data = new DataTransfer();
    if (how === "drop") data.items.add(new File([text], "dropped.toml"));
    else data.setData("text/plain", text);
    document.body.dispatchEvent(how === "drop" ? new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }) : new ClipboardEvent("paste", { clipboardData: data, bubbles: true }));
  }, [how, readFileSync(join(folder, "cradle.toml"), "utf8")]);
  for (const how of ["drop", "paste"]) {
    await page.locator("#start").selectOption("chair");
    await settle(page);
    await drop(how);
    await page.waitForFunction(() => document.querySelector("#title").textContent === "Cradle", null, { timeout: 5000 }).catch(() => {});
    check((await page.locator("#title").textContent()) === "Cradle", `a file cannot be taken in by ${how}`);
  }
  await page.emulateMedia({ media: "print" });
  check(!(await page.locator("#undo").isVisible()) && await page.locator("#picture svg").isVisible(), "on paper stands what is not for paper");
  await page.context().close();
}

// keys does with the keyboard alone what the mouse does.
async function keys(site) {
  const page = await visit(site);
  const reached = new Set();
  for (let i = 0; i < 400; i++) {
    await page.keyboard.press("Tab");
    const id = await page.evaluate(() => document.activeElement.id || document.activeElement.textContent.slice(0, 20));
    if (reached.has(id) && id === "skip") break;
    reached.add(id);
    if (id === "slide rocker.tail") {
      for (let n = 0; n < 4; n++) await page.keyboard.press("ArrowRight");
      await settle(page);
      check((await changesOf(page)).at(-1) === "rocker.tail=24 1/2", `four presses of an arrow: ${await changesOf(page)}`);
    }
    if (id === "entry rocker.nose") {
      await page.keyboard.press("Control+A");
      await page.keyboard.type("16-3/4");
      await page.keyboard.press("Enter");
      await settle(page);
      check((await changesOf(page)).includes("rocker.nose=16-3/4"), "a measure cannot be typed by the keyboard");
    }
    if (id === "from") {
      await page.keyboard.press("Control+A");
      await page.keyboard.type("8");
      await page.keyboard.press("Enter");
      await settle(page);
      check(await page.locator(".rocking").count() === 1, "it cannot be let go by the keyboard");
    }
    if (await page.evaluate(() => document.activeElement === document.body)) break;
  }
  for (const id of ["keep", "start", "open", "units", "load", "lean", "from", "go", "force", "push", "slow", "slide rocker.radius", "entry rocker.radius", "slide seat.behind_low_point", "save", "report", "patterns", "print"]) check(reached.has(id), `the keyboard does not reach ${id}`);
  await page.locator("#lean").focus();
  await page.keyboard.press("ArrowRight");
  await settle(page);
  check((await page.locator('#picture [data-moves="piece"]').first().getAttribute("transform"))?.startsWith("translate"), "it cannot be leaned by the keyboard");
  await page.keyboard.press("Control+z");
  await settle(page);
  check((await changesOf(page)).length === 1, "Ctrl-Z does not undo");
  await page.context().close();
}

// fits looks at it wide and narrow, light and dark: nothing is wider than the window,
// every target is large, and it is accessible.
async function fits(site) {
  for (const colorScheme of ["light", "dark"]) {
    for (const [width, where] of [[1600, "very wide"], [1280, "wide"], [768, "tablet"], [320, "narrow phone"]]) {
      const page = await visit(site, { colorScheme, viewport: { width, height: 900 } });
      await type(page, "rocker.tail", "12");
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      check(over <= 0, `${where}: the page is ${over} px wider than the window`);
      const small = await page.evaluate(() => [...document.querySelectorAll("button, select, .button, summary, input[type=range], input[type=text]")].filter((e) => e.offsetParent && e.getBoundingClientRect().height < 43.5).map((e) => e.id || e.textContent));
      check(!small.length, `${where}: too small to touch: ${small.slice(0, 5)}`);
      await accessible(page, `${where}, ${colorScheme}`);
      await look(page, `${colorScheme}-${width}`, width < 700);
      await page.context().close();
    }
  }
  const page = await visit(site);
  const texts = await page.locator("#picture svg text").evaluateAll((list) => Math.min(...list.map((t) => t.getBoundingClientRect().height)));
  check(texts >= 8, `letters of the picture are ${texts} px high`);
  await page.context().close();
}

// hostile holds that texts of a design are texts, and that chance wishes break nothing.
async function hostile() {
  const site = await serve("hostile.toml");
  process.on("exit", () => site.child.kill());
  const page = await visit(site);
  await page.locator("#keep").click();
  await page.locator("#more summary").click();
  await settle(page);
  await page.locator("#go").click();
  await page.locator("#file summary").click();
  await settle(page);
  check(await page.locator("main script, main img, #title img, svg script").count() === 0, "a text of the design became part of the page");
  check((await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)) <= 0, "a long name makes the page wide");
  await look(page, "hostile");
  await page.context().close();
  await ended(site);
}

// ended ends a page as Ctrl-C does.
async function ended(site) {
  const begun = performance.now();
  site.told = true;
  site.child.kill("SIGINT");
  const code = await site.over;
  const took = performance.now() - begun;
  console.log(`measured Ctrl-C: ended after ${took.toFixed(0)} ms`);
  check(took < 1000 && code === 0, `Ctrl-C ends it after ${took} ms with ${code}`);
}

// idle holds that nothing is worked on while nobody does anything: no tick of the clock.
async function idle(site) {
  const page = await visit(site);
  await settle(page);
  const ticks = () => readFileSync(`/proc/${site.child.pid}/stat`, "utf8").split(") ")[1].split(" ").slice(11, 13).reduce((a, b) => a + Number(b), 0);
  const before = ticks();
  await pause(3000);
  const used = ticks() - before;
  console.log(`measured idle: ${used} hundredths of a second of processor in 3 s`);
  check(used <= 1, `idle it uses ${used} hundredths of a second in 3 s`); // 1: the end of what was before
  const times = await page.evaluate(async () => {
    const what = JSON.parse(localStorage.getItem("rockerwright")).now, list = [];
    for (let i = 0; i < 120; i++) {
      const begun = performance.now();
      const answer = await fetch("see", { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ ...what, changes: ["rocker.tail=" + (16 + (i % 60) / 8)], form: "x" }) });
      await answer.json();
      list.push(performance.now() - begun);
    }
    return list.sort((a, b) => a - b);
  });
  console.log(`measured in the browser, there and back: half within ${times[60].toFixed(1)} ms, 99 % within ${times[118].toFixed(1)} ms`);
  await page.context().close();
}

const validated = await new HtmlValidate({ extends: ["html-validate:recommended"], rules: { "void-style": "off" } });
const site = await serve("chair.toml");
process.on("exit", () => site.child.kill());
for (const result of (await validated.validateString(await (await fetch(site.url)).text())).results) for (const m of result.messages) fault(`${m.line}:${m.column}: ${m.ruleId}: ${m.message}`);
const parts = [drags, types, rocks, compares, hands, keys, fits, idle];
for (const part of parts.filter((p) => !process.env.ONLY || p.name === process.env.ONLY)) {
  try { await part(site); } catch (e) { fault(`${part.name}: ${e.message}`); }
}
await ended(site);
try { await hostile(); } catch (e) { fault(`hostile: ${e.message}`); }
await browser.close();
