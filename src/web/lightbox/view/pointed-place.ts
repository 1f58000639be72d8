import type { ImagePoint } from "../../../core/units.ts";
import type { ScreenPoint } from "../kernels/film-placement.ts";

/** Where the pointer is on a film. */
interface Pointed {
  readonly at: ImagePoint;
  readonly screen: ScreenPoint;
}

/** The place under the pointer, for what follows it without everything else being drawn anew. */
export class PointedPlace {
  #now: Pointed | undefined;
  readonly #watching = new Set<() => void>();

  /** The place now; undefined while the pointer is not over the film. */
  readonly now = (): Pointed | undefined => this.#now;

  /** Moves the place and tells whoever follows it. */
  readonly set = (now: Pointed | undefined): void => {
    this.#now = now;
    for (const tell of this.#watching) tell();
  };

  /** Follows the place; gives what ends it. */
  readonly watch = (tell: () => void): (() => void) => {
    this.#watching.add(tell);
    return () => this.#watching.delete(tell);
  };
}
