import { CodedBits } from "./coded-bits.ts";
import type { HuffmanTable } from "./huffman-table.ts";
import { JpegFault } from "./jpeg-fault.ts";
import type { JpegFrame, JpegScan, JpegStream } from "./jpeg-stream.ts";

/**
 * The samples of a lossless JPEG: Huffman coding, any of the seven predictors, point transform, restarts.
 * Takes the stream, one or three components of equal size, 2 to 16 bits.
 * Gives the samples of each component, one component after the other.
 * @throws JpegFault for damaged or incomplete data, and for what such a picture can't have.
 * @source Recommendation ITU-T T.81, 1992, annex H (memory)
 */
export function losslessSamplesOf({ frame, scans }: JpegStream): Uint16Array {
  checkFrame(frame, scans);
  const size = frame.columns * frame.rows;
  const samples = new Uint16Array(size * frame.components.length);
  for (const scan of scans) {
    const parts = scan.parts.map(({ component, dc }) => {
      if (component < 0 || dc === undefined) throw new JpegFault("damaged", "a scan names a table that is not there");
      return { plane: samples.subarray(component * size, (component + 1) * size), table: dc };
    });
    readScan(frame, scan, parts);
  }
  const largest = 2 ** frame.precision - 1;
  const shift = (scans[0]?.approximation ?? 0) & 15;
  return shift === 0 && frame.precision === 16 ? samples : samples.map((sample) => (sample << shift) & largest);
}

function checkFrame({ precision, columns, rows, components }: JpegFrame, scans: readonly JpegScan[]): void {
  if (precision < 2 || precision > 16)
    throw new JpegFault("damaged", `it declares ${precision} bits, and 2 to 16 can be`);
  const [one] = components;
  if (components.some(({ across, down }) => across !== one?.across || down !== one.down))
    throw new JpegFault("unsupported", "its colour components differ in size, which is not read");
  const covered = new Set(scans.flatMap(({ parts }) => parts.map(({ component }) => component)));
  if (covered.size !== components.length) throw new JpegFault("truncated", "it ends before all components have come");
  // A sample takes at least one bit; so memory is taken only for what can be there.
  const bits = scans.reduce((sum, { coded }) => sum + 8 * coded.length, 0);
  if (bits < columns * rows * components.length)
    throw new JpegFault("truncated", "its coded data end before the picture does");
}

interface Part {
  readonly plane: Uint16Array;
  readonly table: HuffmanTable;
}

function readScan({ columns, rows, precision }: JpegFrame, scan: JpegScan, parts: readonly Part[]): void {
  const predictor = predictors[scan.first];
  const shift = scan.approximation & 15;
  const rowsBetween = scan.restartInterval === 0 ? rows : scan.restartInterval / columns;
  if (predictor === undefined || shift >= precision || !Number.isInteger(rowsBetween))
    throw new JpegFault("damaged", "its scan header is not that of a lossless picture");
  const bits = new CodedBits(scan.coded);
  const start = 2 ** (precision - shift - 1);
  for (let row = 0, at = 0; row < rows; row++) {
    const begins = row % rowsBetween === 0;
    if (begins && row > 0) bits.restart();
    for (let column = 0; column < columns; column++, at++)
      for (const { plane, table } of parts) {
        const left = plane[at - 1] ?? 0;
        const up = plane[at - columns] ?? 0;
        const alongFirstRow = column === 0 ? start : left;
        const further = column === 0 ? up : predictor(left, up, plane[at - columns - 1] ?? 0);
        // The array keeps sixteen bits, as the standard's arithmetic modulo 65536 asks.
        plane[at] = (begins ? alongFirstRow : further) + difference(bits, table);
      }
  }
}

function difference(bits: CodedBits, table: HuffmanTable): number {
  const length = bits.symbol(table);
  if (length > 16) throw new JpegFault("damaged", "its coded data hold a difference of no meaning");
  return length === 16 ? 32_768 : bits.signed(length);
}

type Predictor = (left: number, up: number, upLeft: number) => number;

/** Table H.1; the first, no prediction, belongs to pictures in levels and is not read. */
const predictors: readonly (Predictor | undefined)[] = [
  undefined,
  (left) => left,
  (_left, up) => up,
  (_left, _up, upLeft) => upLeft,
  (left, up, upLeft) => left + up - upLeft,
  (left, up, upLeft) => left + ((up - upLeft) >> 1),
  (left, up, upLeft) => up + ((left - upLeft) >> 1),
  (left, up) => (left + up) >> 1,
];
