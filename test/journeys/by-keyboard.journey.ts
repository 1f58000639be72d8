import { describe, expect, it } from "vitest";
import { benchInBrowser } from "./bench-in-browser.ts";
import { byKeyboard } from "./by-keyboard.ts";
import { checkNumbers } from "./checks-of-documents.ts";
import * as story from "./first-case-story.ts";
import { incisorFilm, incisorMissing } from "./incisor-films.ts";
import { jpegIn } from "./jpeg-in.ts";
import { failingShot } from "./shots.ts";

describe(`a first case by keyboard${incisorMissing === undefined ? "" : `, skipped: ${incisorMissing}`}`, () => {
  it.skipIf(incisorMissing)("goes from an empty bench to documents and back to its start without a mouse", async () => {
    const bench = await benchInBrowser();
    const { page } = bench;
    failingShot(page, "by-keyboard");
    // Whatever a mouse would do is counted; presses that a key makes come from no pointer.
    await page.addInitScript(() => {
      const count = () => Reflect.set(window, "pressedByMouse", true);
      for (const kind of ["pointerdown", "mousedown", "wheel"]) window.addEventListener(kind, count, true);
    });
    await page.reload();
    const hand = byKeyboard(page);
    const films = { straight: incisorFilm(0), angled: incisorFilm(25) };
    await story.nameYourself(hand);
    const caseId = await story.beginCase(hand, "upper right 1");
    const start = (await bench.caseNow(caseId)).stateHash;
    await story.examine(hand);
    await story.takeInFilms(hand, { ...films, recall: await jpegIn(page, films.angled) });
    await story.measure(hand, { ...films, recall: new Uint8Array() });
    await story.backToCase(hand);
    await story.recordVisits(hand);
    await story.recordRecall(hand);
    const [deck, handout] = await story.makeDocuments(hand);
    await checkNumbers(bench, deck);
    await checkNumbers(bench, handout);
    await story.openLightBoxFromDocuments(hand);
    await story.moveOnePoint(hand, bench, caseId);
    await story.backToCase(hand);
    await story.undoAndRedoAll(hand, bench, caseId, start);
    expect(await page.evaluate(() => Reflect.get(window, "pressedByMouse"))).toBe(undefined);
    await bench.close();
  });
});
