/** The shortest and the longest step that a search may take; both above 0. */
export interface StepRange {
  readonly shortest: number;
  readonly longest: number;
}

/** Beyond this many buckets the round costs more than the order saves. */
const mostBuckets = 4096;
/** Marks the end of a list. */
const none = -1;

/**
 * A queue of pixels by their cost so far, in a round of buckets as wide as the shortest step. Whatever is in the
 * first bucket can't be improved from within it, so that the order inside does not matter; where steps differ so much
 * that buckets must be wider, a pixel that improves simply comes again. Each pixel is in the queue at most once.
 */
export class BucketQueue {
  /** How far the costs in one bucket may lie apart. */
  readonly width: number;
  readonly #heads: Int32Array;
  readonly #next: Int32Array;
  readonly #previous: Int32Array;
  /** The bucket of each pixel that is in the queue. */
  readonly #bucketOf: Int32Array;
  #current = 0;
  #length = 0;

  constructor(pixels: number, { shortest, longest }: StepRange) {
    this.width = Math.max(shortest, longest / (mostBuckets - 2));
    this.#heads = new Int32Array(Math.ceil(longest / this.width) + 2).fill(none);
    this.#next = new Int32Array(pixels);
    this.#previous = new Int32Array(pixels);
    this.#bucketOf = new Int32Array(pixels).fill(none);
  }

  /** Puts a pixel in at a cost, or moves it there; the cost is at most one longest step above the smallest inside. */
  put(pixel: number, cost: number): void {
    const bucket = Math.floor(cost / this.width) % this.#heads.length;
    if (this.#bucketOf[pixel] === bucket) return;
    if (this.#bucketOf[pixel] !== none) this.#remove(pixel);
    const head = this.#heads[bucket] ?? none;
    this.#next[pixel] = head;
    this.#previous[pixel] = none;
    if (head !== none) this.#previous[head] = pixel;
    this.#heads[bucket] = pixel;
    this.#bucketOf[pixel] = bucket;
    this.#length += 1;
  }

  /** Takes out a pixel of the cheapest bucket; nothing when the queue is empty. */
  take(): number | undefined {
    if (this.#length === 0) return undefined;
    while (this.#heads[this.#current] === none) this.#current = (this.#current + 1) % this.#heads.length;
    const pixel = this.#heads[this.#current] ?? 0;
    this.#remove(pixel);
    return pixel;
  }

  #remove(pixel: number): void {
    const next = this.#next[pixel] ?? none;
    const previous = this.#previous[pixel] ?? none;
    if (next !== none) this.#previous[next] = previous;
    if (previous === none) this.#heads[this.#bucketOf[pixel] ?? 0] = next;
    else this.#next[previous] = next;
    this.#bucketOf[pixel] = none;
    this.#length -= 1;
  }
}
