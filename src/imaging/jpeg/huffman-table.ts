import { JpegFault } from "./jpeg-fault.ts";

/** A Huffman table as the file states it: how many codes there are of each length 1..16, and their symbols in order. */
export interface HuffmanCodes {
  readonly counts: Uint8Array;
  readonly symbols: Uint8Array;
}

/**
 * A table that gives for any next 16 bits the code that they begin with: its length times 256 plus its symbol; 0 where
 * no code begins so.
 */
export type HuffmanTable = Uint16Array;

/**
 * The table of given codes.
 * Takes the counts of codes by length and the symbols. Gives 65,536 entries.
 * @throws JpegFault where the counts ask for more codes than a length has, or for symbols that are not there.
 * @source Recommendation ITU-T T.81, 1992, annex C, figures C.1 and C.2 (memory)
 */
export function huffmanTableOf({ counts, symbols }: HuffmanCodes): HuffmanTable {
  const table = new Uint16Array(65_536);
  let next = 0;
  let from = 0;
  for (let length = 1; length <= 16; length++) {
    const each = 1 << (16 - length);
    for (let nth = 0; nth < (counts[length - 1] ?? 0); nth++, next++) {
      const symbol = symbols[next];
      if (symbol === undefined || from + each > table.length)
        throw new JpegFault("damaged", "its Huffman tables hold more codes than there can be");
      table.fill((length << 8) | symbol, from, from + each);
      from += each;
    }
  }
  return table;
}
