import type { Page } from "playwright-core";
import type { Job } from "../src/server/api.ts";
import { type BenchInBrowser, benchInBrowser } from "../test/journeys/bench-in-browser.ts";
import { filmIsOpen, filmOnBox, onScreen } from "../test/journeys/hand.ts";
import { largeFilm, largeFilmPng, lineAt } from "./large-film.ts";
import { type Measured, measured, millisecondsOf } from "./timing.ts";

const box = "/case/demo-b/light-box";

/** What a person waits for in the browser, on the demo and on a film of 2,000 by 1,500 pixels. */
export async function inBrowser(): Promise<Measured[]> {
  const bench = await benchInBrowser({ demo: "by the first start", who: "A. Measurer" });
  const { page } = bench;
  await page.getByRole("row").nth(5).waitFor();
  const logbook = await measured("logbook of 243 cases, opened", "ms", 7, () =>
    millisecondsOf(async () => {
      await page.goto("/");
      await page.getByRole("row").nth(5).waitFor();
    }),
  );
  const film = await takeInLargeFilm(page);
  const opened = await measured(`film of ${largeFilm.columns} by ${largeFilm.rows}, opened`, "ms", 7, async () => {
    await page.goto("/");
    return millisecondsOf(() => openFilm(page, film));
  });
  const follows = await traceUpdates(page);
  const looks = await lookUpdates(page);
  const documents = await documentTimes(bench);
  await bench.close();
  return [logbook, opened, ...follows, ...looks, ...documents];
}

async function takeInLargeFilm(page: Page): Promise<string> {
  const query = new URLSearchParams({ name: "large.png", takenOn: "2026-02-10", purpose: "other" });
  const reply = await page.request.post(`/api/cases/demo-b/films?${query}`, {
    data: Buffer.from(largeFilmPng()),
    headers: { "content-type": "application/octet-stream" },
  });
  return (await reply.json()).partId;
}

async function openFilm(page: Page, film: string): Promise<void> {
  await page.goto(`${box}/${film}`);
  await filmIsOpen(page);
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/** The line that follows the pointer while a canal is traced, and the frames while the film is moved and zoomed. */
async function traceUpdates(page: Page): Promise<Measured[]> {
  await page.keyboard.press("t");
  await page.getByLabel("Looking for lines on the film").waitFor({ state: "detached" });
  const start = await onScreen(page, [lineAt(100), 100]);
  await page.mouse.click(start.x, start.y);
  await watchDrawing(page);
  const places = Array.from({ length: 60 }, (_, index) => 150 + 20 * index);
  const waits = await waitsFor(page, places);
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  return [
    { name: "trace, from pointer move to drawn line", unit: "ms", values: waits },
    await measured("moving the film", "frames/s", 3, () => framesWhile(page, () => push(page))),
    await measured("zooming the film", "frames/s", 3, () => framesWhile(page, () => zoom(page))),
  ];
}

/** Notes, for each move of the pointer, how long it takes until the drawing over the film has changed and was painted. */
async function watchDrawing(page: Page): Promise<void> {
  await filmOnBox(page).evaluate((film) => {
    const waits: number[] = [];
    let movedAt: number | undefined;
    film.addEventListener(
      "pointermove",
      () => {
        movedAt = performance.now();
      },
      { capture: true },
    );
    new MutationObserver(() => {
      const from = movedAt;
      movedAt = undefined;
      if (from !== undefined) requestAnimationFrame(() => setTimeout(() => waits.push(performance.now() - from)));
    }).observe(film, { subtree: true, childList: true, attributes: true });
    Reflect.set(window, "drawingWaits", waits);
  });
}

async function waitsFor(page: Page, rows: readonly number[]): Promise<number[]> {
  for (const row of rows) {
    const { x, y } = await onScreen(page, [lineAt(row), row]);
    await page.mouse.move(x, y);
    await page.evaluate(() => new Promise((done) => setTimeout(done, 60)));
  }
  return page.evaluate(() => Reflect.get(window, "drawingWaits"));
}

/** Frames that the browser draws each second while something goes on. */
async function framesWhile(page: Page, act: () => Promise<void>): Promise<number> {
  await page.evaluate(() => {
    const seen = { frames: 0, from: performance.now(), on: true };
    const count = (): void => {
      seen.frames += 1;
      if (seen.on) requestAnimationFrame(count);
    };
    requestAnimationFrame(count);
    Reflect.set(window, "framesSeen", seen);
  });
  await act();
  return page.evaluate(() => {
    const seen = Reflect.get(window, "framesSeen");
    seen.on = false;
    return (1000 * seen.frames) / (performance.now() - seen.from);
  });
}

/** Pictures that the film shows each second while a hand changes its window or its look. */
async function lookUpdates(page: Page): Promise<Measured[]> {
  await page.evaluate(() => {
    const prototype = ImageBitmapRenderingContext.prototype;
    const show = prototype.transferFromImageBitmap;
    Reflect.set(window, "picturesShown", 0);
    prototype.transferFromImageBitmap = function (bitmap) {
      Reflect.set(window, "picturesShown", Reflect.get(window, "picturesShown") + 1);
      return show.call(this, bitmap);
    };
  });
  await page.keyboard.press("w");
  const dragged = await measured("window dragged", "frames/s", 3, () => picturesWhile(page, () => dragWindow(page)));
  await page.keyboard.press("v");
  await page.keyboard.press("l");
  const sliders: Measured[] = [];
  for (const name of ["Gamma", "Local contrast", "Sharpening", "Sharpening radius"])
    sliders.push(
      await measured(`look, ${name.toLowerCase()} dragged`, "frames/s", 3, () =>
        picturesWhile(page, () => dragSlider(page, name)),
      ),
    );
  await page.keyboard.press("Escape");
  return [dragged, ...sliders];
}

async function picturesWhile(page: Page, act: () => Promise<void>): Promise<number> {
  const before: number = await page.evaluate(() => Reflect.get(window, "picturesShown"));
  const took = await millisecondsOf(act);
  const after: number = await page.evaluate(() => Reflect.get(window, "picturesShown"));
  return (1000 * (after - before)) / took;
}

async function dragWindow(page: Page): Promise<void> {
  const { x, y } = await onScreen(page, [1_000, 750]);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 0; step < 120; step += 1)
    await page.mouse.move(x + 60 * Math.sin(step / 9), y + 40 * Math.cos(step / 7));
  await page.mouse.up();
}

/** Moves a slider once a frame for 120 frames, as a pointer would. */
async function dragSlider(page: Page, name: string): Promise<void> {
  await page.getByRole("slider", { name, exact: true }).evaluate(async (slider) => {
    if (!(slider instanceof HTMLInputElement)) return;
    const [least, most] = [Number(slider.min), Number(slider.max)];
    const put = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
    for (let frame = 0; frame < 120; frame += 1) {
      await new Promise((next) => requestAnimationFrame(next));
      put?.call(slider, String(least + (most - least) * (0.5 - 0.5 * Math.cos(frame / 10))));
      slider.dispatchEvent(new Event("input", { bubbles: true }));
    }
  });
}

async function push(page: Page): Promise<void> {
  const { x, y } = await onScreen(page, [1_000, 750]);
  await page.mouse.move(x, y);
  await page.mouse.down({ button: "middle" });
  for (let step = 0; step < 120; step += 1)
    await page.mouse.move(x + 80 * Math.sin(step / 8), y + 60 * Math.cos(step / 8));
  await page.mouse.up({ button: "middle" });
}

async function zoom(page: Page): Promise<void> {
  const { x, y } = await onScreen(page, [1_000, 750]);
  await page.mouse.move(x, y);
  for (let step = 0; step < 120; step += 1) await page.mouse.wheel(0, step % 60 < 30 ? -60 : 60);
}

async function documentTimes({ page }: BenchInBrowser): Promise<Measured[]> {
  const make = (as: "deck" | "handout") => async (): Promise<number> =>
    (await millisecondsOf(async () => {
      const started: Job = await (await page.request.post("/api/cases/demo-a/documents", { data: { as } })).json();
      for (let job = started; job.state === "running"; ) {
        await new Promise((done) => setTimeout(done, 50));
        job = await (await page.request.get(`/api/jobs/${started.id}`)).json();
        if (job.state === "failed") throw new Error(job.refusal?.message ?? "the document failed");
      }
    })) / 1000;
  return [
    await measured("deck of demo case A", "s", 3, make("deck")),
    await measured("hand-out of demo case A", "s", 3, make("handout")),
  ];
}
