/** What the frame header of a JPEG declares, and how its stream ends. */
export interface JpegHeader {
  readonly columns: number;
  readonly rows: number;
  /** Bits of a sample. */
  readonly precision: number;
  readonly components: number;
  /** The way of coding by its frame marker. */
  readonly coding: "baseline" | "extended" | "progressive" | "lossless" | "arithmetic";
  /** Scans that the picture is spread over. */
  readonly scans: number;
  /** Whether the end marker is there. */
  readonly ended: boolean;
}

type Coding = JpegHeader["coding"];
const codings: Readonly<Record<number, Coding>> = {
  192: "baseline",
  193: "extended",
  194: "progressive",
  195: "lossless",
  201: "arithmetic",
  202: "arithmetic",
  203: "lossless",
};
const startOfScan = 0xda;
const endOfImage = 0xd9;

/**
 * The header of a JPEG, read without decoding anything.
 * Takes the file's bytes, beginning with its start marker. Gives the header, or nothing where there is no frame.
 * @source Recommendation ITU-T T.81, 1992, annex B (memory)
 */
export function jpegHeaderOf(bytes: Uint8Array): JpegHeader | undefined {
  let frame: Omit<JpegHeader, "scans" | "ended"> | undefined;
  let scans = 0;
  for (let at = 2; at < bytes.length; ) {
    const marker = nextMarker(bytes, at);
    if (marker === undefined) break;
    if (marker.code === endOfImage) return frame && { ...frame, scans, ended: true };
    if (marker.code === startOfScan) scans += 1;
    frame ??= frameOf(bytes, marker);
    at = marker.after + lengthOfSegment(bytes, marker);
  }
  return frame && { ...frame, scans, ended: false };
}

interface Marker {
  readonly code: number;
  /** Where the byte after the marker stands. */
  readonly after: number;
}

/** The next marker from a place on: 0xFF and a code; 0xFF00 is a coded 0xFF, and repeats of 0xFF are filling. */
function nextMarker(bytes: Uint8Array, from: number): Marker | undefined {
  for (let at = bytes.indexOf(0xff, from); at >= 0 && at + 1 < bytes.length; at = bytes.indexOf(0xff, at + 1)) {
    const code = bytes[at + 1] ?? 0;
    if (code !== 0 && code !== 0xff) return { code, after: at + 2 };
  }
  return undefined;
}

/** Restart markers and the start marker stand alone; every other segment says its length, itself included. */
function lengthOfSegment(bytes: Uint8Array, { code, after }: Marker): number {
  const standsAlone = (code >= 0xd0 && code <= 0xd8) || code === 0x01;
  return standsAlone ? 0 : number16(bytes, after);
}

function frameOf(bytes: Uint8Array, { code, after }: Marker): Omit<JpegHeader, "scans" | "ended"> | undefined {
  const coding = codings[code];
  if (coding === undefined || after + 8 > bytes.length) return undefined;
  return {
    coding,
    precision: bytes[after + 2] ?? 0,
    rows: number16(bytes, after + 3),
    columns: number16(bytes, after + 5),
    components: bytes[after + 7] ?? 0,
  };
}

const number16 = (bytes: Uint8Array, at: number): number => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
