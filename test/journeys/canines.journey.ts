import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { partsOf } from "../../src/record/parts.ts";
import { readDeck, wordsOf } from "../documents/read-deck.ts";
import { benchInBrowser } from "./bench-in-browser.ts";
import { byPointer } from "./by-pointer.ts";
import { checkNumbers } from "./checks-of-documents.ts";
import { backToCase, beginCase, makeDocuments } from "./first-case-story.ts";
import { filmIsOpen, type Hand, onDrawing, recorded } from "./hand.ts";
import { type FilmSpot, sharedData } from "./incisor-films.ts";
import { failingShot, shot } from "./shots.ts";

const overview = join(sharedData, "canine_slices_ccby4", "ScanOverviews.png");
const missing = existsSync(overview)
  ? undefined
  : `the overview of real canines is not at ${overview}; set CANALOG_SHARED`;

/** One of the radiographs of the overview: where it lies, and the way of its canal in its own pixels. */
interface Canine {
  readonly left: number;
  readonly top: number;
  readonly follow: RegExp;
  readonly canal: readonly FilmSpot[];
}
const across = 76;
const down = 190;
/** Every radiograph of the overview carries its bar at the same place. */
const bar = { from: [53.5, 169.5], to: [63.5, 169.5], lengthMm: 2 } as const;
/** One whose canal is empty and dark, and one whose canal is filled and bright. */
const empty: Canine = {
  left: 421,
  top: 233,
  follow: /^dark/,
  canal: [
    [43, 112],
    [48, 80],
    [50, 48],
  ],
};
const filled: Canine = {
  left: 834,
  top: 444,
  follow: /^bright/,
  canal: [
    [34, 115],
    [33, 85],
    [31, 52],
  ],
};

describe(`two canines from one overview${missing === undefined ? "" : `, skipped: ${missing}`}`, () => {
  it.skipIf(missing)("are cropped, turned, calibrated by a bar that is too short, and the page says so", async () => {
    const bench = await benchInBrowser({ who: "A. Resident" });
    const { page } = bench;
    failingShot(page, "canines");
    const hand = byPointer(page);
    const caseId = await beginCase(hand, "33", "lower left canine");
    await hand.openLightBox();
    const bytes = readFileSync(overview);
    await hand.bringFilm({ name: "overview.png", mediaType: "image/png", bytes, by: "button" });
    const sheet = page.getByRole("dialog", { name: "Take in a film" });
    await sheet.getByRole("checkbox", { name: /Turn the grey levels/ }).check();
    await dragPart(page, sheet, empty);
    await hand.press(sheet.getByRole("button", { name: "Take in this part" }));
    await sheet.getByText("One film is taken in.").waitFor();
    await partInNumbers(hand, sheet, filled);
    await hand.pick(sheet.getByRole("radio", { name: "angled", exact: true }));
    await hand.press(sheet.getByRole("button", { name: "Take in this part" }));
    await sheet.getByText("2 films are taken in.").waitFor();
    await hand.press(sheet.getByRole("button", { name: "Close" }).last());
    await filmIsOpen(page);

    const films = partsOf((await bench.caseNow(caseId)).parts, "film");
    expect(films.map(({ body }) => [body.columns, body.rows, body.technical.inverted])).toEqual([
      [across, down, true],
      [across, down, true],
    ]);
    expect(films.map(({ body }) => body.technical.crop)).toEqual(
      [empty, filled].map(({ left, top }) => ({ column: left, row: top, columns: across, rows: down })),
    );
    await measureCanine(hand, "day 0 · diagnostic", empty);
    await measureCanine(hand, "day 0 · angled", filled);
    await shot(page, "canine");

    const { ledger } = await bench.caseNow(caseId);
    for (const { topic, output } of ledger) {
      if (topic !== "calibrate") continue;
      const sigma: unknown = Reflect.get(Object(output), "relativeSigma");
      // Two clicks of 1 px each on a bar of 10 to 11 px: the square root of 2 over its length, 12.9 to 14.1 %.
      expect(sigma).toSatisfy((value: number) => value > 0.12 && value < 0.155);
    }
    await backToCase(hand);
    const [deck] = await makeDocuments(hand);
    await checkNumbers(bench, deck);
    expect(
      readDeck(deck.bytes)
        .map(wordsOf)
        .filter((words) => words.includes("The known length is too short")),
    ).toHaveLength(2);
    await bench.close();
  });
});

/** Calibrates by the bar and traces the canal; the scale's error shows in every length. */
async function measureCanine(hand: Hand, name: string, { follow, canal }: Canine): Promise<void> {
  const { page } = hand;
  await hand.press(page.getByRole("navigation", { name: "Films of this case" }).getByRole("button", { name }));
  await page.getByRole("region", { name: "Scale" }).getByText("No lengths on this film").waitFor();
  await hand.markKnown(bar);
  await recorded(page);
  const scale = page.getByRole("region", { name: "Scale" });
  await scale.getByText(/^The known length is too short: 2 mm is \d+(\.\d)? px here/).waitFor();
  await page.keyboard.press("t");
  await page.getByRole("radio", { name: follow }).check();
  await hand.trace(canal, "C1");
  await recorded(page);
}

/** Drags over the picture from one corner of a part to the other. */
async function dragPart(page: Page, sheet: Locator, { left, top }: Canine): Promise<void> {
  const picture = sheet.getByRole("application", { name: /picture/ });
  await picture.locator("canvas").waitFor();
  const [start, end] = [await onDrawing(picture, [left, top]), await onDrawing(picture, [left + across, top + down])];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(end.x, end.y, { steps: 5 });
  await page.mouse.up();
  // What the mouse leaves open to a pixel, the numbers settle.
  await writePart(sheet, { left, top });
}

async function partInNumbers(hand: Hand, sheet: Locator, part: Canine): Promise<void> {
  await hand.press(sheet.getByRole("button", { name: "Choose a part in numbers" }));
  await writePart(sheet, part);
}

async function writePart(sheet: Locator, { left, top }: Pick<Canine, "left" | "top">): Promise<void> {
  const numbers = { across, down, "from the left": left, "from the top": top };
  for (const [side, value] of Object.entries(numbers))
    await sheet.getByLabel(side, { exact: true }).fill(String(value));
}
