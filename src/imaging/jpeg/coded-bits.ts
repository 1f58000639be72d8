import type { HuffmanTable } from "./huffman-table.ts";
import { JpegFault } from "./jpeg-fault.ts";

/**
 * The coded bits of one scan of a JPEG, read from the highest bit on.
 * Takes the scan's bytes with their filling zeros and restart marks as they stand in the file.
 * @source Recommendation ITU-T T.81, 1992, F.2.2 and H.2 (memory)
 */
export class CodedBits {
  private at = 0;
  /** The next bits, the last of them lowest; only the lowest `count` are meant. */
  private held = 0;
  private count = 0;
  /** How many of the held bits were made up behind the end of the data. */
  private madeUp = 0;
  private restarts = 0;

  constructor(private readonly bytes: Uint8Array) {}

  /** The symbol that the next code stands for. */
  symbol(table: HuffmanTable): number {
    this.fill();
    const entry = table[(this.held >> (this.count - 16)) & 0xffff] ?? 0;
    if (entry === 0) throw this.runOut() ?? new JpegFault("damaged", "its coded data hold a code of no meaning");
    this.take(entry >> 8);
    return entry & 0xff;
  }

  /** The next 0 to 16 bits as an unsigned number. */
  bits(length: number): number {
    if (length === 0) return 0;
    this.fill();
    const value = (this.held >> (this.count - length)) & ((1 << length) - 1);
    this.take(length);
    return value;
  }

  /** The signed number of so many bits that follow: the lower half of them stands for negative ones. */
  signed(length: number): number {
    const value = this.bits(length);
    return length > 0 && value < 1 << (length - 1) ? value - (1 << length) + 1 : value;
  }

  /** Goes on behind the next restart mark, at a whole byte. */
  restart(): void {
    const { bytes } = this;
    let mark = this.at;
    while (mark < bytes.length && !isRestart(bytes, mark)) mark += 1;
    if (mark >= bytes.length) throw new JpegFault("truncated", "its coded data end before a restart mark");
    if (((bytes[mark + 1] ?? 0) & 7) !== this.restarts % 8)
      throw new JpegFault("damaged", "its restart marks are out of order");
    this.restarts += 1;
    this.at = mark + 2;
    this.held = this.count = this.madeUp = 0;
  }

  private fill(): void {
    while (this.count < 16) {
      this.held = ((this.held & 0xffff) << 8) | this.nextByte();
      this.count += 8;
    }
  }

  private take(length: number): void {
    this.count -= length;
    if (this.madeUp > this.count) throw this.runOut();
  }

  private runOut(): JpegFault | undefined {
    return this.madeUp > 0 ? new JpegFault("truncated", "its coded data end before the picture does") : undefined;
  }

  private nextByte(): number {
    const byte = this.bytes[this.at];
    const isMark = byte === 0xff && this.bytes[this.at + 1] !== 0;
    if (byte === undefined || isMark) {
      this.madeUp += 8;
      return 0;
    }
    this.at += byte === 0xff ? 2 : 1;
    return byte;
  }
}

const isRestart = (bytes: Uint8Array, at: number): boolean =>
  bytes[at] === 0xff && ((bytes[at + 1] ?? 0) & 0xf8) === 0xd0;
