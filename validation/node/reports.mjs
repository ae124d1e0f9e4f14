// Opens every report of a folder in a browser, offline, and says what is wrong with it: one
// line a fault, and a line that begins with "measured" for what was measured. With
// expected.json beside the reports, which names for a report times (s) and tilts from the
// rest (degrees, + back), it holds the drawing against them.
//
// Usage: node reports.mjs FOLDER [SCREENSHOTS]
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, resolve } from "node:path";
import { HtmlValidate } from "html-validate";
import { chromium } from "playwright-core";

const folder = resolve(process.argv[2]);
const pictures = process.argv[3] && resolve(process.argv[3]);
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const expected = existsSync(join(folder, "expected.json")) ? JSON.parse(readFileSync(join(folder, "expected.json"), "utf8")) : {};
const validate = new HtmlValidate({ extends: ["html-validate:recommended"], rules: {
  "void-style": "off",
  "long-title": "off", // it counts the source, in which a < is four characters
} });

let fault = (text) => console.log(text);
const check = (holds, text) => holds || fault(text);
const normal = (text) => text.replace(/\s+/g, " ").trim();

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM || "/usr/bin/chromium", args: ["--no-sandbox"] });

// open returns a page of a file, with a fault for each request and each message.
async function open(file, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1100, height: 900 }, offline: true, ...options });
  const page = await context.newPage();
  const url = "file://" + join(folder, file);
  page.on("request", (r) => check(r.url() === encodeURI(url), `it asks for ${r.url()}`));
  page.on("console", (m) => fault(`the console says: ${m.text()}`));
  page.on("pageerror", (e) => fault(`the script fails: ${e}`));
  page.on("dialog", (d) => { fault(`it opens a dialog: ${d.message()}`); d.dismiss(); });
  await page.addInitScript(() => addEventListener("load", () => {
    const loaded = performance.now();
    requestAnimationFrame(() => setTimeout(() => (window.drawnAfter = performance.now() - loaded)));
  }));
  await page.goto(url, { waitUntil: "load" });
  return page;
}

async function valid(file) {
  const report = await validate.validateString(readFileSync(join(folder, file), "utf8"));
  for (const result of report.results) for (const m of result.messages) fault(`${m.line}:${m.column}: ${m.ruleId}: ${m.message}`);
}

async function accessible(page, where) {
  await page.evaluate(axe);
  const found = await page.evaluate(() => axe.run(document, { resultTypes: ["violations"] }));
  for (const v of found.violations) fault(`${where}: ${v.impact}: ${v.id}: ${v.help}: ${v.nodes[0].html.slice(0, 120)}`);
}

// fits holds that the page as a whole is not to be moved sideways, at full width, at 200 %
// of it, and on phones; and that it is accessible wide and narrow.
async function fits(file, page) {
  for (const [width, where, whole] of [[1100, "wide", true], [550, "at 200 %", false], [360, "phone", true], [320, "narrow phone", false]]) {
    await page.setViewportSize({ width, height: 740 });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    check(over <= 0, `${where}: the page is ${over} px wider than the window`);
    if (whole) await accessible(page, where);
    if (whole && pictures) await page.screenshot({ path: join(pictures, `${file}-${width}.png`), fullPage: width > 1000 });
  }
}

// papers prints on both papers: no figure and no row on two pages, the owner's page alone
// and last.
async function papers(file, page) {
  const parts = await page.evaluate(() => ({
    figures: [...document.querySelectorAll("svg")].map((s) => [...s.querySelectorAll("text")].map((t) => t.textContent)),
    rows: [...document.querySelectorAll("tr")].map((r) => [...r.cells].map((c) => c.innerText)),
    second: document.querySelector(".first + section h2")?.textContent,
    owner: document.querySelector(".owner h2")?.textContent,
  }));
  for (const format of ["Letter", "A4"]) {
    const pdf = join(pictures || folder, `${file}-${format}.pdf`);
    await page.pdf({ path: pdf, format });
    const pages = execFileSync("pdftotext", ["-raw", pdf, "-"], { encoding: "utf8" }).split("\f").slice(0, -1).map(normal);
    console.log(`measured ${file}: ${format} ${pages.length} pages`);
    const together = (cells) => pages.some((p) => cells.map(normal).every((c) => p.includes(c)));
    for (const texts of parts.figures) check(together(texts.filter((t) => /^[ -~°]*$/.test(t))), `${format}: a figure stands on two pages: ${texts.slice(0, 3)}`);
    for (const cells of parts.rows) check(!cells.join("").match(/^[ -~–…]*$/) || together(cells), `${format}: a row stands on two pages: ${cells}`);
    if (parts.second) check(pages[1].startsWith(parts.second), `${format}: the first page is longer than a sheet: ${pages[1].slice(0, 80)}`);
    if (parts.owner?.match(/^[ -~]*$/)) {
      check(pages.at(-1).startsWith(normal(parts.owner)), `${format}: the owner's page does not begin the last sheet: ${pages.at(-1).slice(0, 80)}`);
      check(!pages.slice(0, -1).some((p) => p.includes(normal(parts.owner))), `${format}: the owner's page is longer than a sheet`);
      check(pages.at(-1).includes("Next look"), `${format}: the owner's page does not end on its sheet`);
    }
  }
}

const turnOf = (page) => page.evaluate(() => {
  const moved = document.querySelector('[data-moves="piece"]').getAttribute("transform");
  return moved ? -Number(moved.match(/rotate\(([^)]*)\)/)[1]) : null; // degrees, + back
});
const shown = (page) => page.evaluate(() => document.querySelector(".rocking output").textContent);
const seek = (page, time) => page.evaluate((t) => {
  const slider = document.querySelector(".rocking input");
  slider.value = t;
  slider.dispatchEvent(new Event("input"));
  return Number(slider.value);
}, time);

// speedOf measures for a second how many seconds of the motion pass in one.
const speedOf = (page) => page.evaluate(async () => {
  const slider = document.querySelector(".rocking input");
  const frame = () => new Promise(requestAnimationFrame);
  const first = await frame(), from = Number(slider.value);
  let last = first;
  while (last - first < 1000) last = await frame();
  return (Number(slider.value) - from) / ((last - first) / 1000);
});

// rocks holds the drawing against the computed motion, and its buttons against what they say.
async function rocks(file) {
  const page = await open(file);
  if (!(await page.$("svg[data-samples]"))) return page.context().close();
  if (!(await page.$(".rocking button"))) {
    fault("it has no buttons: its script does not run");
    return page.context().close();
  }
  check((await turnOf(page)) === null && (await shown(page)) === "at rest", "it does not begin at rest");
  let worst = 0;
  for (const [time, tilt] of expected[file] ?? []) {
    const at = await seek(page, time);
    if (Math.abs(at - time) > 1e-6) continue; // after the drawn end, or between two places of the slider
    worst = Math.max(worst, Math.abs((await turnOf(page)) - tilt));
  }
  if (expected[file]) {
    console.log(`measured ${file}: tilt within ${worst.toFixed(4)} degrees of the computed motion`);
    check(worst < 0.002, `the tilt drawn is ${worst} degrees off the computed motion`); // written to 0.001
  }
  await page.locator(".rocking button", { hasText: "At rest" }).first().click();
  check((await turnOf(page)) === null, "at rest is not at rest");
  await page.locator(".rocking button").first().focus(); // and now by the keyboard
  await page.keyboard.press("Space");
  await page.waitForTimeout(300);
  const speed = await speedOf(page);
  console.log(`measured ${file}: plays at ${speed.toFixed(3)} of true speed`);
  check(Math.abs(speed - 1) < 0.05, `it plays at ${speed} of true speed`); // two frames in a second
  await page.keyboard.press("Space");
  const paused = await turnOf(page);
  await page.waitForTimeout(200);
  check((await turnOf(page)) === paused && paused !== null, "pause does not hold it");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Space");
  check(await page.evaluate(() => document.activeElement.textContent === "Slow" && document.activeElement.getAttribute("aria-pressed") === "true"), "slow is not pressed by the keyboard");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  const slowly = await speedOf(page);
  check(Math.abs(slowly - 0.25) < 0.0125, `slow, it plays at ${slowly} of true speed, not a quarter`);
  if (pictures) await page.locator("figure").first().screenshot({ path: join(pictures, `${file}-rocking.png`) });
  await page.pdf({ format: "A4" });
  check((await turnOf(page)) === null && (await shown(page)) === "at rest", "it is not still on paper");
  await page.context().close();

  const calm = await open(file, { reducedMotion: "reduce" });
  const names = await calm.evaluate(() => [...document.querySelector(".rocking").querySelectorAll("button")].filter((b) => b.checkVisibility()).map((b) => b.textContent));
  check(names.join() === "At rest", `with reduced motion there are the buttons ${names}`);
  await calm.evaluate(() => document.querySelector(".rocking button").click());
  await calm.waitForTimeout(200);
  check((await turnOf(calm)) === null, "it moves though reduced motion is asked");
  await calm.context().close();
}

// bare holds that all is there without script.
async function bare(file) {
  const page = await open(file, { javaScriptEnabled: false });
  check((await page.locator("h1").count()) === 1 && (await page.locator("svg").count()) > 0, "without script there is no text or picture");
  check((await page.locator("button").count()) === 0, "without script there are buttons");
  await page.context().close();
}

for (const file of readdirSync(folder).filter((name) => name.endsWith(".html")).sort()) {
  fault = (text) => console.log(`${file}: ${text}`);
  await valid(file);
  let drawn = Infinity;
  for (let i = 0; i < 6 && (i === 0 || drawn > 200); i++) { // the best of six: other work runs beside
    const page = await open(file);
    drawn = Math.min(drawn, await page.waitForFunction(() => window.drawnAfter).then((h) => h.jsonValue()));
    if (i === 0) writeFileSync(join(folder, file.replace(".html", ".design.txt")), await page.evaluate(() => document.getElementById("design").textContent));
    await page.context().close();
  }
  console.log(`measured ${file}: drawn ${drawn.toFixed(0)} ms after load`);
  check(drawn <= 200, `it is drawn ${drawn} ms after load`);
  const page = await open(file);
  await fits(file, page);
  await papers(file, page);
  await page.context().close();
  await rocks(file);
  await bare(file);
}
await browser.close();
