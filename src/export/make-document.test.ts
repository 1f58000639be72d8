import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { afterAll, describe, expect, it } from "vitest";
import { part, sampleFilmBytes, sampleParts, sampleSource } from "../../test/sample-case.ts";
import { withPiece } from "../../test/sample-removal.ts";
import { withWays } from "../../test/sample-ways.ts";
import { consentSheet } from "../pages/consent-sheet.ts";
import { deck } from "../pages/deck.ts";
import { handout } from "../pages/handout.ts";
import { numbersIn } from "../pages/page-model.ts";
import { plainWays } from "../pages/piece/piece-words.ts";
import { pieceSheet } from "../pages/piece-sheet.ts";
import { caseFileSchema } from "../record/case-file.ts";
import { apply, patchesOf } from "../record/change.ts";
import type { Part } from "../record/parts.ts";
import { makeDocument } from "./make-document.ts";
import { paperLooks } from "./paper/paper-look.ts";

const folder = mkdtempSync(join(tmpdir(), "canalog-documents-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const place = { readFilm: async () => sampleFilmBytes(), fontsFolder: "data/fonts" };
const long = "a long account of what was seen and done, with every reservation that a careful resident makes "
  .repeat(12)
  .trim();
const textOf = (slide: Uint8Array): string =>
  [...new TextDecoder().decode(slide).matchAll(/<a:t>([^<]*)<\/a:t>/g)].map(([, text]) => text).join(" ");

describe("a deck", () => {
  it("holds the case as native text, tables, pictures with alternative text and notes", async () => {
    const model = deck(sampleSource());
    const said: string[] = [];
    const bytes = await makeDocument(model, place, (_fraction, says) => said.push(says));
    const files = unzipSync(bytes);
    const slides = Object.keys(files).filter((name) => /^ppt\/slides\/slide\d+\.xml$/.test(name));
    expect(slides.length).toBeGreaterThan(model.pages.length);
    const all = slides.map((name) => textOf(files[name] ?? new Uint8Array())).join(" ");
    for (const { text } of numbersIn(model)) expect(all).toContain(text);
    for (const { title } of model.pages) expect(all).toContain(title);
    const film = slides.map((name) => new TextDecoder().decode(files[name])).find((xml) => xml.includes("Length film"));
    expect(film).toMatch(/<p:pic>[\s\S]*descr="[^"]{10,}"/);
    expect(film).toContain("<a:tbl>");
    expect(Object.keys(files).filter((name) => /^ppt\/media\/.*\.png$/.test(name)).length).toBeGreaterThanOrEqual(3);
    expect(Object.keys(files).some((name) => name.startsWith("ppt/notesSlides/"))).toBe(true);
    expect(said.at(-1)).toBe("Writing the deck");
  });

  it("lets long words go on to further slides, none outside its page", async () => {
    const bytes = await makeDocument(deck(sampleSource(sampleParts(long.slice(0, 290)))), place, () => undefined);
    writeFileSync(join(folder, "long.pptx"), bytes);
    if (!existsSync("/usr/bin/soffice")) return;
    execFileSync(
      "soffice",
      [
        `-env:UserInstallation=file://${folder}/profile`,
        "--headless",
        "--convert-to",
        "pdf",
        "--outdir",
        folder,
        join(folder, "long.pptx"),
      ],
      { stdio: "ignore" },
    );
    const boxes = execFileSync("pdftotext", ["-bbox", join(folder, "long.pdf"), "-"], { encoding: "utf8" });
    const height = Number(/<page width="[\d.]+" height="([\d.]+)"/.exec(boxes)?.[1]);
    const footTop = (7.0 / 7.5) * height;
    const crossing = [...boxes.matchAll(/yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)"/g)].filter(
      ([, top, bottom]) => Number(top) < footTop - 6 && Number(bottom) > footTop + 4,
    );
    expect(Number.isFinite(height)).toBe(true);
    expect(crossing).toEqual([]);
  });
});

describe("a consent page", () => {
  const planned = part("plan", "plan-1", {
    ...{ madeOn: "2024-03-04", options: [], chosen: "retreat", because: "", risksNamed: [] },
    saidPlainly: "Only this way gets to the root.",
  });
  const model = consentSheet(withWays(sampleSource([...sampleParts(), planned])));

  it("is set in letters of 12 points or more, with only what stands back smaller", () => {
    const { body, section, heading, title, quietEm } = paperLooks.consent;
    for (const size of [body, section, heading, title]) expect(size).toBeGreaterThanOrEqual(12);
    expect(body * quietEm).toBeGreaterThanOrEqual(9);
  });

  it("is a tagged PDF with every number that its model carries, and is signed on one page", async () => {
    const said: string[] = [];
    const bytes = await makeDocument(model, place, (_fraction, says) => said.push(says));
    expect(said.at(-1)).toBe("Setting the consent page");
    writeFileSync(join(folder, "consent.pdf"), bytes);
    expect(readFileSync(join(folder, "consent.pdf")).includes("/StructTreeRoot")).toBe(true);
    if (!existsSync("/usr/bin/pdftotext")) return;
    const pages = execFileSync("pdftotext", ["-layout", join(folder, "consent.pdf"), "-"], { encoding: "utf8" })
      .split("\f")
      .map((page) => page.replace(/\s+/g, " "));
    for (const { text } of numbersIn(model)) expect(pages.join(" ")).toContain(text);
    const signed = pages.filter((page) => page.includes("Your answer"));
    expect(signed).toHaveLength(1);
    for (const label of ["I say no for now.", "You sign here", "That person signs here"])
      expect(signed[0]).toContain(label);
  });
});

describe("a page about a piece", () => {
  it("is a tagged PDF in large print with every number that its model carries", async () => {
    const model = pieceSheet(withPiece(sampleSource()));
    const said: string[] = [];
    const bytes = await makeDocument(model, place, (_fraction, says) => said.push(says));
    expect(said.at(-1)).toBe("Setting the page about the piece");
    expect(paperLooks.piece).toEqual(paperLooks.consent);
    writeFileSync(join(folder, "piece.pdf"), bytes);
    expect(readFileSync(join(folder, "piece.pdf")).includes("/StructTreeRoot")).toBe(true);
    if (!existsSync("/usr/bin/pdftotext")) return;
    const text = execFileSync("pdftotext", ["-layout", join(folder, "piece.pdf"), "-"], { encoding: "utf8" }).replace(
      /\s+/g,
      " ",
    );
    for (const { text: number } of numbersIn(model)) expect(text).toContain(number);
    for (const { name } of Object.values(plainWays)) expect(text).toContain(name);
  });
});

describe("a hand-out", () => {
  it("is a tagged PDF with every number that its model carries", async () => {
    const model = handout(sampleSource());
    const bytes = await makeDocument(model, place, () => undefined);
    writeFileSync(join(folder, "handout.pdf"), bytes);
    expect(new TextDecoder("latin1").decode(bytes.slice(0, 5))).toBe("%PDF-");
    expect(readFileSync(join(folder, "handout.pdf")).includes("/StructTreeRoot")).toBe(true);
    if (!existsSync("/usr/bin/pdftotext")) return;
    const text = execFileSync("pdftotext", ["-layout", join(folder, "handout.pdf"), "-"], { encoding: "utf8" }).replace(
      /\s+/g,
      " ",
    );
    for (const { text: number } of numbersIn(model)) expect(text).toContain(number);
  });

  it("keeps a semicolon and a bracket that follow what stands back", async () => {
    if (!existsSync("/usr/bin/pdftotext")) return;
    const model = handout(sampleSource());
    const lines = [[{ text: "0.80 (0.71 to 0.87)", quiet: true }, { text: "; then (so) it goes" }]];
    const more = [[{ text: "Known 2001", quiet: true }, { text: "(12 of 40)" }]];
    const blocks = [{ kind: "text" as const, lines: [...lines, ...more] }];
    const bytes = await makeDocument(
      { ...model, pages: [{ title: "Marks", on: "", blocks, notes: [] }] },
      place,
      () => undefined,
    );
    writeFileSync(join(folder, "marks.pdf"), bytes);
    const text = execFileSync("pdftotext", ["-raw", join(folder, "marks.pdf"), "-"], { encoding: "utf8" });
    expect(text).toContain("0.80 (0.71 to 0.87); then (so) it goes");
    expect(text).toContain("Known 2001(12 of 40)");
  });

  it("of a case with four canals, five films and a canal in space fits two pages", { timeout: 120_000 }, async () => {
    const file = caseFileSchema.parse(JSON.parse(readFileSync("data/demo/cases/b.json", "utf8")));
    const parts = file.gestures.reduce<readonly Part[]>(
      (before, gesture) => apply(before, patchesOf(gesture, before)),
      [],
    );
    const bytes = await makeDocument(handout(sampleSource(parts)), place, () => undefined);
    const pages = new TextDecoder("latin1").decode(bytes).match(/\/Type\s*\/Page\b/g);
    expect(pages?.length).toBeGreaterThan(0);
    expect(pages?.length).toBeLessThanOrEqual(2);
  });

  it("prints marks of its markup as they stand", async () => {
    const parts = sampleParts('#set text(red) *bold* $x$ _a_ `c` <l> @r [b] \\ // ~ "q"'.slice(0, 200));
    const bytes = await makeDocument(handout(sampleSource(parts)), place, () => undefined);
    expect(bytes.length).toBeGreaterThan(1_000);
  });
});
