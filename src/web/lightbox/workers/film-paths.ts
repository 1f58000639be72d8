import { courseOfPath } from "../../../core/geometry/course-of-path.ts";
import { type LeastCostTree, pathTo } from "../../../core/geometry/least-cost-tree.ts";
import type { ImagePoint } from "../../../core/units.ts";
import type { PathFinder } from "../kernels/course-segments.ts";
import { filmPoint } from "../kernels/film-point.ts";
import type { Polarity } from "../tools/tool-step.ts";

interface KnownTree {
  readonly polarity: Polarity;
  readonly tree: LeastCostTree;
}

/** The least-cost trees of one film that are known; the last few, because a tree of a large film takes 36 MB. */
export class FilmPaths {
  #trees: readonly KnownTree[] = [];

  constructor(
    readonly columns: number,
    readonly rows: number,
    private readonly most = 4,
  ) {}

  /** Keeps a tree; one from the same start that reached less far is replaced. */
  keep(polarity: Polarity, tree: LeastCostTree): void {
    const others = this.#trees.filter((known) => known.polarity !== polarity || known.tree.start !== tree.start);
    this.#trees = [{ polarity, tree }, ...others].slice(0, this.most);
  }

  /** The tree from a place, if it is known. */
  treeFrom(polarity: Polarity, from: ImagePoint): LeastCostTree | undefined {
    const start = this.indexOf(from);
    return this.#trees.find((known) => known.polarity === polarity && known.tree.start === start)?.tree;
  }

  /** Finds courses along dark or bright lines: walks back the tree of either end. */
  finder(polarity: Polarity): PathFinder {
    return (from, to) => this.#course(polarity, from, to) ?? this.#course(polarity, to, from)?.toReversed();
  }

  /** The pixel that a place lies in, as an index row by row. */
  indexOf({ column, row }: ImagePoint): number {
    const within = (at: number, size: number) => Math.min(Math.max(Math.round(at), 0), size - 1);
    return within(row, this.rows) * this.columns + within(column, this.columns);
  }

  #course(polarity: Polarity, from: ImagePoint, to: ImagePoint): ImagePoint[] | undefined {
    const tree = this.treeFrom(polarity, from);
    const end = this.indexOf(to);
    // A near tree does not reach the whole film; the tree of the whole is on its way then.
    if (tree === undefined || !Number.isFinite(tree.costTo[end] ?? Number.POSITIVE_INFINITY)) return undefined;
    const pixels = pathTo(tree, end).map((index) => filmPoint(index % this.columns, Math.floor(index / this.columns)));
    return courseOfPath(pixels, from, to);
  }
}
