import { describe, expect, it } from "vitest";
import { readDeck, wordsOf } from "../documents/read-deck.ts";
import { deckAsPdf, misplacedWords, readPdf, renderPages, textOfPdf } from "../documents/read-handout.ts";
import { benchInBrowser } from "./bench-in-browser.ts";
import { byPointer } from "./by-pointer.ts";
import { checkNumbers, footer } from "./checks-of-documents.ts";
import { backToCase, makeDocuments, nameYourself } from "./first-case-story.ts";
import { filmIsOpen } from "./hand.ts";
import { failingShot, shot, shotsFolder } from "./shots.ts";

const invented = "Demo: invented";

describe("the demo", () => {
  it("is there at the first start, says everywhere that it is invented, and goes with one press", async () => {
    const bench = await benchInBrowser({ demo: true });
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
