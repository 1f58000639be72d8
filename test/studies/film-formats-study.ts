import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { brightIsHigh } from "../../src/imaging/bright-is-high.ts";
import { decodeFilm } from "../../src/imaging/decode-film.ts";
import type { FilmPixels } from "../../src/imaging/film-pixels.ts";

const samples = new URL("../../data/samples/", import.meta.url);
const reference = new URL("../reference/films/", import.meta.url);

/** What another program read from a sample (test/reference/films/make-answers.py). */
interface Answer {
  readonly columns: number;
  readonly rows: number;
  readonly by: string;
  /** The transfer syntax of a DICOM file, as dcmdump names it. */
  readonly packing?: string;
  /** Absent for lossy files, whose samples stand in a PNG beside the answers. */
  readonly sha256?: string;
}

/** One sample, read here and by another program. */
export interface ReadSample {
  readonly name: string;
  readonly format: string;
  readonly bits: number;
  readonly greys: string;
  readonly by: string;
  /** The largest difference of a sample; infinite where the sizes differ, or where lossless samples are not the same. */
  readonly apart: number;
  /** What two honest decoders may differ by: nothing, or a step of rounding where cosines were turned round. */
  readonly allowed: number;
}

const answers: Record<string, Answer> = JSON.parse(readFileSync(new URL("answers.json", reference), "utf8"));

/** The samples that another program has read. */
export const readableSamples = Object.keys(answers);

/** Reads a sample and holds it to the answer. */
export async function readSample(name: string): Promise<ReadSample> {
  const answer = answers[name];
  if (answer === undefined) throw new Error(`nobody else has read ${name}`);
  const film = await decodeFilm(bytesAt(new URL(name, samples)), name);
  const { wasColour, lossy } = film.technical;
  return {
    ...{ name, bits: film.bitsStored, by: answer.by },
    format: formatOf(film, name, answer),
    greys: wasColour ? "colour" : film.photometric === "MONOCHROME1" ? "grey, dark is high" : "grey",
    apart: await apartFrom(answer, name, film),
    allowed: lossy && answer.sha256 === undefined ? 1 : 0,
  };
}

async function apartFrom(answer: Answer, name: string, film: FilmPixels): Promise<number> {
  if (film.columns !== answer.columns || film.rows !== answer.rows) return Number.POSITIVE_INFINITY;
  if (answer.sha256 !== undefined) {
    // netpbm counts from dark to bright whatever a TIFF does; a DICOM file's samples are compared as stored.
    const { samples: found } = answer.packing === undefined ? brightIsHigh(film) : film;
    return sha256Of(found) === answer.sha256 ? 0 : Number.POSITIVE_INFINITY;
  }
  const kept = new URL(
    `lossy/${name
      .split("/")
      .at(-1)
      ?.replace(/\.dcm$/, "")}.png`,
    reference,
  );
  const known = await decodeFilm(bytesAt(kept), "kept.png");
  return film.samples.reduce((most, value, at) => Math.max(most, Math.abs(value - (known.samples[at] ?? 0))), 0);
}

const sha256Of = ({ buffer, byteOffset, byteLength }: Uint16Array): string =>
  createHash("sha256")
    .update(new Uint8Array(buffer, byteOffset, byteLength))
    .digest("hex");

const bytesAt = (file: URL): Uint8Array => new Uint8Array(readFileSync(file));

const packings: Readonly<Record<string, string>> = {
  LittleEndianImplicit: "implicit little endian",
  LittleEndianExplicit: "explicit little endian",
  BigEndianExplicit: "explicit big endian",
  DeflatedLittleEndianExplicit: "deflated",
  RLELossless: "run-length",
  JPEGBaseline: "JPEG baseline",
  "JPEGExtended:Process2+4": "JPEG extended",
  "JPEGLossless:Non-hierarchical:Process14": "JPEG lossless, process 14",
  "JPEGLossless:Non-hierarchical-1stOrderPrediction": "JPEG lossless, process 14 SV1",
  JPEGLSLossless: "JPEG-LS lossless",
  JPEGLSLossy: "JPEG-LS near-lossless",
  JPEG2000LosslessOnly: "JPEG 2000 lossless",
  JPEG2000: "JPEG 2000",
};

function formatOf(film: FilmPixels, name: string, { packing }: Answer): string {
  if (packing !== undefined) return `DICOM, ${packings[packing] ?? packing}`;
  const turned = film.technical.orientationApplied === undefined ? "" : ", EXIF orientation";
  return `${film.technical.sourceFormat.toUpperCase()}, ${wordsOf(name)}${turned}`;
}

/** A sample's own name says how it is written: "grey-16-lzw-differences". */
const wordsOf = (name: string): string =>
  name
    .replace(/^.*\/|\.[a-z]+$/g, "")
    .replace(/orientation-\d/, "grey 8")
    .replaceAll("-", " ");

/** The table of all samples, as docs/methods/film-formats.md has it. */
export async function filmFormatsTable(): Promise<string> {
  const rows = await Promise.all(readableSamples.map(readSample));
  const line = (cells: readonly (string | number)[]) => `| ${cells.join(" | ")} |`;
  return [
    line(["format", "sample", "bits", "greys", "read by", "largest difference"]),
    line(Array<string>(6).fill("---")),
    ...rows
      .map((row) => line([row.format, `\`${row.name}\``, row.bits, row.greys, row.by, row.apart]))
      .sort((a, b) => (a < b ? -1 : 1)),
  ].join("\n");
}

/** The page, and the page with another table in it. */
export const formatsPage = new URL("../../docs/methods/film-formats.md", import.meta.url);
const marks = ["<!-- table: npm run study -- film-formats -->", "<!-- end of table -->"] as const;

/** The table that stands in the page now. */
export const tableInPage = (): string => pieces()[1].trim();

/** The page with a table put in the place of the one that stands there. */
export function pageWith(table: string): string {
  const [before, , after] = pieces();
  return `${before}${marks[0]}\n\n${table}\n\n${marks[1]}${after}`;
}

function pieces(): readonly [string, string, string] {
  const text = existsSync(formatsPage) ? readFileSync(formatsPage, "utf8") : "";
  const [from, to] = [text.indexOf(marks[0]), text.indexOf(marks[1])];
  if (from < 0 || to < from) throw new Error("docs/methods/film-formats.md has no place for its table");
  return [text.slice(0, from), text.slice(from + marks[0].length, to), text.slice(to + marks[1].length)];
}
