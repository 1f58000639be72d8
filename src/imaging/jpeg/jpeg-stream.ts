import { type HuffmanCodes, type HuffmanTable, huffmanTableOf } from "./huffman-table.ts";
import { JpegFault } from "./jpeg-fault.ts";

/** One component of the picture: its mark in the scans, its share of the sampling, and its quantisation table. */
export interface JpegComponent {
  readonly mark: number;
  readonly across: number;
  readonly down: number;
  readonly quantisation: number;
}

/** What the frame header declares. */
export interface JpegFrame {
  readonly coding: "sequential" | "lossless";
  /** Bits of a sample. */
  readonly precision: number;
  readonly columns: number;
  readonly rows: number;
  readonly components: readonly JpegComponent[];
}

/** One scan with the tables that hold for it. */
export interface JpegScan {
  readonly parts: readonly ScanPart[];
  /** The predictor of a lossless scan; the first coefficient of another. */
  readonly first: number;
  readonly last: number;
  /** How many bits were left away at the low end; the high half must be 0 outside progressive pictures. */
  readonly approximation: number;
  /** How many units stand between two restart marks; 0 for none. */
  readonly restartInterval: number;
  readonly coded: Uint8Array;
}

/** What one component needs in a scan. */
export interface ScanPart {
  /** Which component of the frame. */
  readonly component: number;
  readonly dc: HuffmanTable | undefined;
  readonly ac: HuffmanTable | undefined;
  readonly quantisation: Uint16Array | undefined;
}

/** A JPEG cut into its scans, nothing decoded yet. */
export interface JpegStream {
  readonly frame: JpegFrame;
  readonly scans: readonly JpegScan[];
}

interface Tables {
  frame?: JpegFrame;
  restartInterval: number;
  readonly huffman: Map<number, HuffmanCodes>;
  readonly quantisation: Map<number, Uint16Array>;
}

const codings: Readonly<Record<number, JpegFrame["coding"]>> = {
  192: "sequential",
  193: "sequential",
  195: "lossless",
};
const [endOfImage, startOfScan] = [0xd9, 0xda];

/**
 * The frame and scans of a sequential or lossless JPEG with Huffman coding.
 * Takes the stream's bytes, beginning with its start mark. Gives the frame and at most as many scans as components.
 * @throws JpegFault for streams that break off or contradict themselves, and for other ways of coding.
 * @source Recommendation ITU-T T.81, 1992, annex B (memory)
 */
export function jpegStreamOf(bytes: Uint8Array): JpegStream {
  const tables: Tables = { restartInterval: 0, huffman: new Map(), quantisation: new Map() };
  const scans: JpegScan[] = [];
  for (let at = 2; at < bytes.length; ) {
    const segment = segmentAt(bytes, at);
    if (segment === undefined || segment.code === endOfImage) break;
    at = segment.end;
    if (segment.code === startOfScan) {
      at = endOfCoded(bytes, segment.end);
      scans.push(scanOf(segment.body, tables, bytes.subarray(segment.end, at)));
      if (scans.length > (tables.frame?.components.length ?? 0))
        throw new JpegFault("damaged", "it has more scans than components");
    } else readTable(segment, tables);
  }
  if (tables.frame === undefined || scans.length === 0)
    throw new JpegFault("truncated", "it ends before its picture begins");
  return { frame: tables.frame, scans };
}

interface Segment {
  readonly code: number;
  readonly body: Uint8Array;
  readonly end: number;
}

/** The segment at a place; filling 0xFF before it is passed over. Nothing where the bytes end. */
export function segmentAt(bytes: Uint8Array, from: number): Segment | undefined {
  let at = bytes.indexOf(0xff, from);
  while (bytes[at + 1] === 0xff) at += 1;
  const code = bytes[at + 1];
  if (at < 0 || code === undefined) return undefined;
  const standsAlone = code === endOfImage || code === 0 || code === 1 || (code >= 0xd0 && code <= 0xd8);
  if (standsAlone) return { code, body: new Uint8Array(0), end: at + 2 };
  const length = number16(bytes, at + 2);
  if (at + 2 + length > bytes.length || length < 2) throw new JpegFault("truncated", "it ends within its header");
  return { code, body: bytes.subarray(at + 4, at + 2 + length), end: at + 2 + length };
}

/** Coded data end at the next mark that is neither a filled-up 0xFF nor a restart. */
function endOfCoded(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    const code = bytes[at + 1] ?? 0;
    if (code !== 0 && code !== 0xff && (code & 0xf8) !== 0xd0) return at;
  }
  return bytes.length;
}

function readTable({ code, body }: Segment, tables: Tables): void {
  if (code === 0xc4) readHuffman(body, tables);
  else if (code === 0xdb) readQuantisation(body, tables);
  else if (code === 0xdd) tables.restartInterval = number16(body, 0);
  else if (code >= 0xc0 && code <= 0xcf && code !== 0xc8 && code !== 0xcc) {
    if (tables.frame !== undefined) throw new JpegFault("damaged", "it has two frames");
    tables.frame = frameOf(code, body);
  }
}

function frameOf(code: number, body: Uint8Array): JpegFrame {
  const coding = codings[code];
  if (coding === undefined) throw new JpegFault("unsupported", "it is a JPEG of a coding that is not read");
  const count = body[5] ?? 0;
  if (body.length < 6 + 3 * count || count === 0) throw new JpegFault("damaged", "its frame header is too short");
  const components = Array.from({ length: count }, (_, nth) => {
    const [mark = 0, sampling = 0, quantisation = 0] = body.subarray(6 + 3 * nth);
    return { mark, across: sampling >> 4, down: sampling & 15, quantisation };
  });
  return { coding, precision: body[0] ?? 0, rows: number16(body, 1), columns: number16(body, 3), components };
}

function readHuffman(body: Uint8Array, tables: Tables): void {
  for (let at = 0; at + 17 <= body.length; ) {
    const counts = body.subarray(at + 1, at + 17);
    const total = counts.reduce((sum, count) => sum + count, 0);
    tables.huffman.set(body[at] ?? 0, { counts, symbols: body.subarray(at + 17, at + 17 + total) });
    at += 17 + total;
  }
}

/** Sixty-four steps a table, in zigzag order as the coefficients are, of 8 or 16 bits. */
function readQuantisation(body: Uint8Array, tables: Tables): void {
  for (let at = 0; at < body.length; ) {
    const head = body[at] ?? 0;
    const bytesEach = head >> 4 === 0 ? 1 : 2;
    const from = at + 1;
    const step = (nth: number) => (bytesEach === 1 ? (body[from + nth] ?? 0) : number16(body, from + 2 * nth));
    at = from + 64 * bytesEach;
    if (at > body.length) throw new JpegFault("damaged", "a quantisation table is too short");
    tables.quantisation.set(
      head & 15,
      Uint16Array.from({ length: 64 }, (_, nth) => step(nth)),
    );
  }
}

function scanOf(body: Uint8Array, tables: Tables, coded: Uint8Array): JpegScan {
  const { frame, huffman, quantisation, restartInterval } = tables;
  const count = body[0] ?? 0;
  if (frame === undefined || count < 1 || count > 4 || body.length < 4 + 2 * count)
    throw new JpegFault("damaged", "its scan header is not one");
  const tableOf = (key: number) => {
    const codes = huffman.get(key);
    return codes && huffmanTableOf(codes);
  };
  const parts = Array.from({ length: count }, (_, nth) => {
    const [mark, selected = 0] = body.subarray(1 + 2 * nth);
    const component = frame.components.findIndex((each) => each.mark === mark);
    const steps = quantisation.get(frame.components[component]?.quantisation ?? 0);
    return { component, dc: tableOf(selected >> 4), ac: tableOf(16 + (selected & 15)), quantisation: steps };
  });
  const [first = 0, last = 0, approximation = 0] = body.subarray(1 + 2 * count);
  return { parts, first, last, approximation, restartInterval, coded };
}

const number16 = (bytes: Uint8Array, at: number): number => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
