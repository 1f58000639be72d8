import { CodedBits } from "./coded-bits.ts";
import { inverseCosines } from "./inverse-cosines.ts";
import { JpegFault } from "./jpeg-fault.ts";
import type { JpegFrame, JpegScan, JpegStream, ScanPart } from "./jpeg-stream.ts";

/**
 * The samples of a grey sequential JPEG of 8 or 12 bits with Huffman coding.
 * Takes the stream, one component in one scan. Gives its samples row by row.
 * @throws JpegFault for damaged or incomplete data, and for colour.
 * @source Recommendation ITU-T T.81, 1992, annex F, processes 1, 2 and 4 (memory)
 */
export function sequentialSamplesOf({ frame, scans: [scan] }: JpegStream): Uint16Array {
  if (frame.components.length !== 1 || scan === undefined)
    throw new JpegFault("unsupported", `it is a colour JPEG of ${frame.precision} bits, which is not read`);
  if (frame.precision !== 8 && frame.precision !== 12)
    throw new JpegFault("damaged", `it declares ${frame.precision} bits, and 8 or 12 can be`);
  if (scan.first !== 0 || scan.last !== 63 || scan.approximation !== 0)
    throw new JpegFault("damaged", "its scan header is not that of a sequential picture");
  const samples = new Uint16Array(frame.columns * frame.rows);
  eachBlock(frame, scan, (block, column, row) => put(block, { frame, samples, column, row }));
  return samples;
}

type TakeBlock = (coefficients: Float64Array, column: number, row: number) => void;

function eachBlock({ columns, rows }: JpegFrame, { parts: [part], ...scan }: JpegScan, take: TakeBlock): void {
  const bits = new CodedBits(scan.coded);
  const block = new Float64Array(64);
  let mean = 0;
  let nth = 0;
  for (let row = 0; row < rows; row += 8)
    for (let column = 0; column < columns; column += 8, nth++) {
      if (scan.restartInterval > 0 && nth > 0 && nth % scan.restartInterval === 0) {
        bits.restart();
        mean = 0;
      }
      mean = readBlock(bits, part, { block, mean });
      take(block, column, row);
    }
}

/** Fills a block with coefficients and gives the one of frequency 0 before quantisation, from which the next counts. */
function readBlock(
  bits: CodedBits,
  part: ScanPart | undefined,
  { block, mean }: { block: Float64Array; mean: number },
): number {
  if (part?.component !== 0 || part.dc === undefined || part.ac === undefined || part.quantisation === undefined)
    throw new JpegFault("damaged", "a scan names a table that is not there");
  const { dc, ac, quantisation } = part;
  block.fill(0);
  const next = mean + bits.signed(lengthOf(bits.symbol(dc)));
  block[0] = next * (quantisation[0] ?? 0);
  for (let place = 1; place < 64; place++) {
    const symbol = bits.symbol(ac);
    const length = symbol & 15;
    if (length === 0 && symbol !== 0xf0) break;
    place += symbol >> 4;
    if (place > 63) throw new JpegFault("damaged", "a block of its picture holds more than 64 coefficients");
    block[zigzag[place] ?? 0] = bits.signed(length) * (quantisation[place] ?? 0);
  }
  return next;
}

function lengthOf(symbol: number): number {
  if (symbol > 16) throw new JpegFault("damaged", "its coded data hold a difference of no meaning");
  return symbol;
}

interface Place {
  readonly frame: JpegFrame;
  readonly samples: Uint16Array;
  readonly column: number;
  readonly row: number;
}

function put(block: Float64Array, { frame, samples, column, row }: Place): void {
  inverseCosines(block);
  const largest = 2 ** frame.precision - 1;
  const middle = 2 ** (frame.precision - 1);
  const across = Math.min(8, frame.columns - column);
  const down = Math.min(8, frame.rows - row);
  for (let y = 0; y < down; y++)
    for (let x = 0; x < across; x++) {
      const value = Math.round(block[8 * y + x] ?? 0) + middle;
      samples[(row + y) * frame.columns + column + x] = Math.max(0, Math.min(largest, value));
    }
}

/** Where the coefficients stand that come in order of rising frequency: along the block's diagonals, to and fro. */
const zigzag = Uint8Array.from(
  Array.from({ length: 64 }, (_, place) => place).sort((one, other) => orderOf(one) - orderOf(other)),
);

function orderOf(place: number): number {
  const [row, column] = [place >> 3, place & 7];
  const diagonal = row + column;
  return diagonal * 8 + (diagonal % 2 === 0 ? column : row);
}
