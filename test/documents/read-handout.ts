import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** Why documents can't be opened here; undefined where the programs that open them are. */
export const readersMissing = ["/usr/bin/soffice", "/usr/bin/pdftotext", "/usr/bin/pdftoppm"].every((one) =>
  existsSync(one),
)
  ? undefined
  : "soffice, pdftotext or pdftoppm is missing";

/** A word on a page, with its box in points from the upper left. */
export interface PlacedWord {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A page of a PDF as it is printed. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly words: readonly PlacedWord[];
}

/** The pages of a PDF with every word in its place. */
export function readPdf(bytes: Uint8Array): PdfPage[] {
  return inFolder((folder) => {
    writeFileSync(join(folder, "in.pdf"), bytes);
    run("pdftotext", ["-bbox", join(folder, "in.pdf"), join(folder, "words.html")]);
    const html = readFileSync(join(folder, "words.html"), "utf8");
    return [...html.matchAll(/<page width="([\d.]+)" height="([\d.]+)">(.*?)<\/page>/gs)].map(
      ([, width, height, content = ""]) => ({ width: Number(width), height: Number(height), words: wordsIn(content) }),
    );
  });
}

/** The words of a PDF in the order of reading, as one text. */
export const textOfPdf = (pages: readonly PdfPage[]): string =>
  pages.map(({ words }) => words.map(({ text }) => text).join(" ")).join("\n");

/** How many pictures a PDF holds. */
export function picturesInPdf(bytes: Uint8Array): number {
  return inFolder((folder) => {
    writeFileSync(join(folder, "in.pdf"), bytes);
    return run("pdfimages", ["-list", join(folder, "in.pdf")])
      .split("\n")
      .filter((line) => / image /.test(line)).length;
  });
}

/** A deck as the PDF that an office program makes of it. */
export function deckAsPdf(bytes: Uint8Array): Uint8Array {
  return inFolder((folder) => {
    writeFileSync(join(folder, "in.pptx"), bytes);
    const profile = `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`;
    run("soffice", [profile, "--headless", "--convert-to", "pdf", "--outdir", folder, join(folder, "in.pptx")]);
    return readFileSync(join(folder, "in.pdf"));
  });
}

/** Writes each page of a PDF as a picture, to be looked at: name-1.png, name-2.png .. */
export function renderPages(bytes: Uint8Array, folder: string, name: string): string[] {
  writeFileSync(join(folder, `${name}.pdf`), bytes);
  run("pdftoppm", ["-r", "70", "-png", join(folder, `${name}.pdf`), join(folder, name)]);
  return readdirSync(folder).filter((file) => file.startsWith(`${name}-`));
}

/** What is wrong with where words stand: outside of the page, below a line that belongs to the footer, or on one another. */
export function misplacedWords(
  pages: readonly PdfPage[],
  footer?: { readonly from: number; readonly lowest: number },
): string[] {
  return pages.flatMap(({ width, height, words }, index) => {
    const outside = words.filter(
      ({ left, top, right, bottom }) => left < 0 || top < 0 || right > width || bottom > height,
    );
    const low =
      footer === undefined ? [] : words.filter(({ top, bottom }) => bottom > footer.lowest && top < footer.from);
    const onOthers = words.filter((word, at) => words.slice(at + 1).some((other) => shared(word, other) > 0.3));
    const say = (what: string) => (word: PlacedWord) => `page ${index + 1}: "${word.text}" ${what}`;
    return [
      ...outside.map(say("stands outside of the page")),
      ...low.map(say("reaches into the footer")),
      ...onOthers.map(say("stands on another word")),
    ];
  });
}

/** How much of the smaller of two boxes lies in the other. */
function shared(a: PlacedWord, b: PlacedWord): number {
  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  const area = ({ left, right, top, bottom }: PlacedWord) => (right - left) * (bottom - top);
  return across <= 0 || down <= 0 ? 0 : (across * down) / Math.min(area(a), area(b));
}

const wordsIn = (html: string): PlacedWord[] =>
  [...html.matchAll(/<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">([^<]*)<\/word>/g)].map(
    ([, left, top, right, bottom, text = ""]) => ({
      ...{ left: Number(left), top: Number(top), right: Number(right), bottom: Number(bottom) },
      text: text.replaceAll("&amp;", "&").replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"'),
    }),
  );

function inFolder<Result>(work: (folder: string) => Result): Result {
  const folder = mkdtempSync(join(tmpdir(), "canalog-read-"));
  try {
    return work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function run(program: string, args: readonly string[]): string {
  const ran = spawnSync(program, args, { encoding: "utf8" });
  if (ran.status !== 0) throw new Error(`${program} ended with ${ran.status}: ${ran.stderr}`);
  return ran.stdout;
}
