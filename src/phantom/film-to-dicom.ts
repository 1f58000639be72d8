import { faultAt } from "../core/refusal.ts";
import type { FilmPixels } from "../imaging/film-pixels.ts";

/** What a DICOM file of a film says beside its pixels. Nobody is named: patient and study are called after the demo. */
export interface FilmDescription {
  /** The name of the set, as "A". */
  readonly name: string;
  /** Day of the film, as 20240131. */
  readonly date: string;
  /** Numbers the film within the set; part of its identifiers. */
  readonly number: number;
  readonly laterality: "L" | "R";
  readonly arch: "upper" | "lower";
}

const intraOralForPresentation = "1.2.840.10008.5.1.4.1.1.1.3";
const explicitLittleEndian = "1.2.840.10008.1.2.1";
/** The root for identifiers without a registered one: 2.25 and a number. */
const uidOf = (set: string, parts: readonly number[]): string =>
  `2.25.${[...set].reduce((sum, letter) => sum * 31 + letter.charCodeAt(0), 7)}${parts.map((n) => String(n).padStart(4, "0")).join("")}`;

const longLength = new Set(["OB", "OW", "SQ", "UN", "UT"]);

/** One element in explicit little endian: tag, kind, length, value padded to an even length. */
function element(tag: number, kind: string, value: Uint8Array): Uint8Array {
  const head = longLength.has(kind) ? 12 : 8;
  const bytes = new Uint8Array(head + value.length + (value.length % 2));
  const view = new DataView(bytes.buffer);
  view.setUint16(0, tag >>> 16, true);
  view.setUint16(2, tag & 0xffff, true);
  bytes[4] = kind.charCodeAt(0);
  bytes[5] = kind.charCodeAt(1);
  if (head === 12) view.setUint32(8, bytes.length - head, true);
  else view.setUint16(6, bytes.length - head, true);
  bytes.set(value, head);
  if (value.length % 2 === 1) bytes[bytes.length - 1] = kind === "UI" || kind === "OB" ? 0 : 0x20;
  return bytes;
}

const text = (tag: number, kind: string, value: string): Uint8Array =>
  element(tag, kind, new TextEncoder().encode(value));
const short = (tag: number, value: number, kind = "US"): Uint8Array =>
  element(tag, kind, Uint8Array.of(value & 0xff, (value >> 8) & 0xff));

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** A sequence of one item that holds a code. */
function codeSequence(tag: number, code: { value: string; scheme: string; meaning: string }): Uint8Array {
  const content = joined([
    text(0x00080100, "SH", code.value),
    text(0x00080102, "SH", code.scheme),
    text(0x00080104, "LO", code.meaning),
  ]);
  const item = new Uint8Array(8 + content.length);
  const view = new DataView(item.buffer);
  view.setUint16(0, 0xfffe, true);
  view.setUint16(2, 0xe000, true);
  view.setUint32(4, content.length, true);
  item.set(content, 8);
  return element(tag, "SQ", item);
}

const regionOf = {
  upper: { value: "70925003", scheme: "SCT", meaning: "Maxilla" },
  lower: { value: "91609006", scheme: "SCT", meaning: "Mandible" },
};
/** DS holds at most 16 characters. */
const decimal = (value: number): string => String(Number(value.toPrecision(10))).slice(0, 16);

function identityOf(film: FilmDescription): Uint8Array[] {
  return [
    text(0x00080005, "CS", "ISO_IR 192"),
    text(0x00080008, "CS", "ORIGINAL\\PRIMARY\\"),
    text(0x00080016, "UI", intraOralForPresentation),
    text(0x00080018, "UI", uidOf(film.name, [1, film.number])),
    ...[0x00080020, 0x00080021, 0x00080022, 0x00080023].map((tag) => text(tag, "DA", film.date)),
    ...[0x00080030, 0x00080031, 0x00080032, 0x00080033].map((tag) => text(tag, "TM", "120000")),
    text(0x00080050, "SH", ""),
    text(0x00080060, "CS", "IO"),
    text(0x00080068, "CS", "FOR PRESENTATION"),
    text(0x00080070, "LO", "Phantom"),
    text(0x00080090, "PN", ""),
    text(0x00081090, "LO", "Parametric jaw segment"),
    codeSequence(0x00082218, regionOf[film.arch]),
    text(0x00100010, "PN", `Demo^${film.name}`),
    text(0x00100020, "LO", `DEMO-${film.name}`),
    text(0x00100030, "DA", ""),
    text(0x00100040, "CS", "O"),
    text(0x00120062, "CS", "YES"),
    text(0x00120063, "LO", "Invented: no patient"),
  ];
}

function geometryOf(film: FilmPixels, description: FilmDescription): Uint8Array[] {
  const [row, column] = film.technical.detectorSpacingMm ?? [];
  const { magnification } = film.technical;
  return [
    text(0x00181000, "LO", "0"),
    text(0x00181020, "LO", "1"),
    ...(magnification === undefined ? [] : [text(0x00181114, "DS", decimal(magnification))]),
    ...(row === undefined || column === undefined
      ? []
      : [text(0x00181164, "DS", `${decimal(row)}\\${decimal(column)}`)]),
    text(0x00181508, "CS", "NONE"),
    text(0x00187004, "CS", "SCINTILLATOR"),
    text(0x00187005, "CS", "AREA"),
    text(0x0020000d, "UI", uidOf(description.name, [2])),
    text(0x0020000e, "UI", uidOf(description.name, [3, description.number])),
    text(0x00200010, "SH", description.name),
    text(0x00200011, "IS", String(description.number)),
    text(0x00200013, "IS", "1"),
    // Held as if facing the patient: columns run to distal on the left side, to mesial on the right.
    text(0x00200020, "CS", description.laterality === "L" ? "P\\F" : "A\\F"),
    text(0x00200062, "CS", description.laterality),
  ];
}

function pictureOf(film: FilmPixels): Uint8Array[] {
  const full = 2 ** film.bitsStored;
  const pixels = new Uint8Array(film.samples.length * 2);
  film.samples.forEach((sample, i) => {
    pixels[2 * i] = sample & 0xff;
    pixels[2 * i + 1] = sample >> 8;
  });
  return [
    short(0x00280002, 1),
    text(0x00280004, "CS", film.photometric),
    short(0x00280010, film.rows),
    short(0x00280011, film.columns),
    short(0x00280100, 16),
    short(0x00280101, film.bitsStored),
    short(0x00280102, film.bitsStored - 1),
    short(0x00280103, 0),
    text(0x00280301, "CS", "NO"),
    text(0x00281040, "CS", "LOG"),
    short(0x00281041, -1, "SS"),
    text(0x00281050, "DS", decimal(full / 2)),
    text(0x00281051, "DS", decimal(full)),
    text(0x00281052, "DS", "0"),
    text(0x00281053, "DS", "1"),
    text(0x00281054, "LO", "US"),
    text(0x00281056, "CS", "LINEAR"),
    text(0x00282110, "CS", "00"),
    element(0x00400555, "SQ", new Uint8Array()),
    text(0x20500020, "CS", "IDENTITY"),
    element(0x7fe00010, "OW", pixels),
  ];
}

/**
 * A film as a DICOM file: Digital Intra-Oral X-Ray Image for presentation, explicit little endian, samples as they are.
 * Takes a film of 1 to 16 bits. Gives the file's bytes.
 * @throws Refusal `input.impossible` where the samples do not fill rows and columns.
 * @source DICOM PS3.3 A.28 and PS3.10 7 (seen)
 */
export function filmToDicom(film: FilmPixels, description: FilmDescription): Uint8Array {
  if (film.samples.length !== film.columns * film.rows)
    throw faultAt(
      "film.samples",
      `Cannot write the film: ${film.samples.length} samples for ${film.rows} rows of ${film.columns}`,
    );
  const meta = joined([
    element(0x00020001, "OB", Uint8Array.of(0, 1)),
    text(0x00020002, "UI", intraOralForPresentation),
    text(0x00020003, "UI", uidOf(description.name, [1, description.number])),
    text(0x00020010, "UI", explicitLittleEndian),
    text(0x00020012, "UI", uidOf("canalog", [1])),
  ]);
  const length = new Uint8Array(4);
  new DataView(length.buffer).setUint32(0, meta.length, true);
  const preamble = new Uint8Array(132);
  preamble.set(new TextEncoder().encode("DICM"), 128);
  const dataset = [...identityOf(description), ...geometryOf(film, description), ...pictureOf(film)];
  return joined([preamble, element(0x00020000, "UL", length), meta, ...dataset]);
}
