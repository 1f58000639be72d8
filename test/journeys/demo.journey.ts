import { describe, expect, it } from "vitest";
import { type Part, partsOf } from "../../src/record/parts.ts";
import { readDeck, wordsOf } from "../documents/read-deck.ts";
import { deckAsPdf, misplacedWords, readPdf, renderPages, textOfPdf } from "../documents/read-handout.ts";
import { type BenchInBrowser, benchInBrowser } from "./bench-in-browser.ts";
import { byPointer } from "./by-pointer.ts";
import { checkNumbers, footer } from "./checks-of-documents.ts";
import { backToCase, makeDocuments, nameYourself } from "./first-case-story.ts";
import { filmIsOpen, type Hand, recorded } from "./hand.ts";
import type { FilmSpot } from "./incisor-films.ts";
import { failingShot, shot, shotsFolder } from "./shots.ts";

const invented = "Demo: invented";

describe("the demo", () => {
  it("is there at the first start, says everywhere that it is invented, and goes with one press", async () => {
    const bench = await benchInBrowser({ demo: "by the first start" });
    const { page } = bench;
    failingShot(page, "demo");
    const hand = byPointer(page);
    await nameYourself(hand);
    await page.getByText("243 cases").first().waitFor();
    await shot(page, "logbook");
    await page.getByLabel("Find by pseudonym or tooth").fill("P-0417");
    await page.getByText("1 case").first().waitFor();
    await hand.press(page.getByRole("link", { name: /upper left first molar, P-0417/ }));
    await page.getByRole("navigation", { name: "Moments of the case" }).waitFor();
    await page.getByText(invented).first().waitFor();

    await hand.openLightBox();
    await filmIsOpen(page);
    await page.getByText(invented).first().waitFor();
    await page.getByRole("region", { name: "Scale" }).getByText("mm a pixel").waitFor();
    await shot(page, "demo-light-box");
    await traceOnceMore(hand, bench);
    await backToCase(hand);

    const [deck, handout] = await makeDocuments(hand);
    await page.getByText(invented).first().waitFor();
    const printed = deckAsPdf(deck.bytes);
    const pages = { deck: readPdf(printed), handout: readPdf(handout.bytes) };
    for (const one of [...pages.deck, ...pages.handout]) expect(textOfPdf([one])).toContain(invented);
    expect(misplacedWords(pages.deck, footer)).toEqual([]);
    expect(misplacedWords(pages.handout)).toEqual([]);
    renderPages(printed, shotsFolder, "demo-deck");
    renderPages(handout.bytes, shotsFolder, "demo-handout");
    const slides = readDeck(deck.bytes);
    expect(slides.filter(({ pictures }) => pictures.length > 0).length).toBeGreaterThan(6);
    const said = slides.map(wordsOf).join("\n");
    for (const words of ["MB2", "Separated instrument", "12 months", "24 months"]) expect(said).toContain(words);
    await checkNumbers(bench, deck);
    await checkNumbers(bench, handout);

    await page.goto("/");
    await hand.press(page.getByRole("button", { name: "Remove the demo" }));
    const sure = page.getByRole("dialog", { name: "Remove the demo?" });
    if (await sure.isVisible()) await hand.press(sure.getByRole("button", { name: "Remove the demo" }));
    await page.getByRole("heading", { name: "No case yet" }).waitFor();
    expect(await (await page.request.get("/api/cases")).json()).toEqual([]);
    await bench.close();
  });
});

/** Traces the palatal canal of the first film once more through the same places; the two lengths agree. */
async function traceOnceMore(hand: Hand, bench: BenchInBrowser): Promise<void> {
  const { page } = bench;
  const before = await bench.caseNow("demo-a");
  const first = before.parts.find(({ id }) => page.url().endsWith(id)) ?? filmsByDay(before.parts)[0];
  const known = partsOf(before.parts, "mark").find(
    ({ body }) => body.film === first?.id && body.shape === "trace" && body.canal === "P",
  );
  if (known?.body.shape !== "trace") throw new Error("the demo has no palatal course on its first film");
  const anchors = known.body.anchors.map(([u, v]): FilmSpot => [u, v]);
  if (known.body.polarity === "bright") {
    await page.keyboard.press("t");
    await page.getByRole("radio", { name: /^bright/ }).check();
  }
  await hand.trace(anchors, "P");
  await recorded(page);
  const after = await bench.caseNow("demo-a");
  expect(after.sequence).toBe(before.sequence + 1);
  const lengths = after.ledger
    .filter(({ topic, subject }) => topic === "curvature" && isCourseOfP(after.parts, subject, first?.id))
    .map(({ output }) => Number(Reflect.get(Object(output), "lengthMm")));
  expect(lengths).toHaveLength(2);
  // Both hands mark to a pixel or two of 0.04 mm at each end.
  expect(Math.abs((lengths[0] ?? 0) - (lengths[1] ?? 0))).toBeLessThan(0.4);
}

const filmsByDay = (parts: readonly Part[]) =>
  partsOf(parts, "film").sort((a, b) => a.body.takenOn.localeCompare(b.body.takenOn));

const isCourseOfP = (parts: readonly Part[], subject: string, film: string | undefined): boolean =>
  partsOf(parts, "mark").some(
    ({ id, body }) =>
      subject === `curvature of ${id}` && body.film === film && body.shape === "trace" && body.canal === "P",
  );
