import { type CanalLevel, type CanalRoot, canalNames, canalsAt, cShapeAt } from "../core/tooth/canal-root.ts";
import { type CanalState, isAwaited } from "./canal-state.ts";

/** How a stretch of canal looks: only supposed, passed by a fine file, opened, dressed, or full. */
export type StretchStyle = "missing" | "supposed" | "passed" | "open" | "dressed" | "full";

/** A stretch of one way from orifice to foramen; shares run from 0 at the orifice to 1 at the foramen. */
export interface CourseStretch {
  readonly from: number;
  readonly to: number;
  readonly style: StretchStyle;
  /** Offset from the root's axis in half widths of the root, at a share of the way. */
  readonly offsetAt: (share: number) => number;
  /** Width of the ribbon of a C-shaped section in half widths of the root; 0 for a canal of usual width. */
  readonly ribbonAt: (share: number) => number;
}

/** Where a canal is blocked, on its own way. */
interface CourseBlock {
  readonly canal: string;
  readonly at: number;
  readonly offset: number;
}

/** A level reduced to what a drawing needs. */
interface Level {
  readonly count: number;
  readonly ribbon: number;
  /** No lumen is seen there. */
  readonly closed?: boolean;
}
/** What lies between two neighbouring levels on one way. */
interface Piece extends Omit<CourseStretch, "style"> {
  readonly owners: readonly string[];
  /** It leads to a level at which no lumen is seen. */
  readonly closed: boolean;
}

type StateOf = (canal: string) => CanalState;
const ranks: readonly StretchStyle[] = ["missing", "supposed", "passed", "open", "dressed", "full"];
/** A block without a place is drawn where the apical third begins. */
const usualBlock = 0.64;
/** How far a canal is drawn open that has only been located. */
const orificeDepth = 0.12;

/**
 * The ways of a root's canals with joins and splits by the counts of its levels, cut into stretches of one look.
 * Takes a root and the state of each of its canals; where canals have joined, the one that has come farthest is drawn.
 */
export function canalCourse(root: CanalRoot, stateOf: StateOf) {
  const pieces = piecesOf(root);
  const stretches = pieces.flatMap((piece) => stretchesOf(piece, stateOf));
  const blocks = canalNames(root).flatMap((canal): CourseBlock[] => {
    const state = stateOf(canal);
    if (state.state !== "blocked") return [];
    const at = blockShare(state);
    const piece = pieces.find(({ owners, from, to }) => owners.includes(canal) && at >= from && at <= to);
    return [{ canal, at, offset: piece?.offsetAt(at) ?? 0 }];
  });
  return { stretches, blocks } as const;
}

/** Offset of a canal at the orifice, in half widths of the root. */
export const trackOffset = (track: number, count: number): number =>
  count === 1 ? 0 : (track / (count - 1) - 0.5) * (count === 2 ? 1 : 1.36);

function piecesOf(root: CanalRoot): Piece[] {
  const levels = drawnLevels(root.levels);
  const steps = Math.max(1, levels.length - 1);
  const pieces: Piece[] = [];
  let owners = canalNames(root).map((name) => [name]);
  for (let step = 0; step < steps; step += 1) {
    const upper = levels[step] ?? { count: 1, ribbon: 0 };
    const lower = levels[step + 1] ?? upper;
    const ways = waysBetween(upper.count, lower.count);
    for (const { from, to } of ways)
      pieces.push({
        owners: owners[from] ?? [],
        from: step / steps,
        to: (step + 1) / steps,
        closed: lower.closed === true,
        offsetAt: eased(trackOffset(from, upper.count), trackOffset(to, lower.count), step / steps, 1 / steps),
        ribbonAt: eased(upper.ribbon, lower.ribbon, step / steps, 1 / steps),
      });
    owners = Array.from({ length: lower.count }, (_, track) => [
      ...new Set(ways.filter(({ to }) => to === track).flatMap(({ from }) => owners[from] ?? [])),
    ]);
  }
  return pieces;
}

/** Levels without a lumen keep their place and the number of canals of the level before them. */
function drawnLevels(levels: readonly CanalLevel[]): readonly Level[] {
  let before = 1;
  return levels.map((level) => {
    const count = canalsAt(level);
    if (count === 0) return { count: before, ribbon: 0, closed: true };
    before = count;
    return { count, ribbon: ribbonOf(level) };
  });
}

function ribbonOf(level: CanalLevel): number {
  const shape = cShapeAt(level);
  if (shape !== "C1" && shape !== "C2") return 0;
  return canalsAt(level) === 1 ? 1.25 : 0.76;
}

/** Which canal of one level goes on as which of the next: neighbours join or part, and no way crosses another. */
function waysBetween(above: number, below: number): readonly { readonly from: number; readonly to: number }[] {
  const most = Math.max(above, below);
  return Array.from({ length: most }, (_, way) => ({
    from: Math.floor((way * above) / most),
    to: Math.floor((way * below) / most),
  }));
}

/** Straight, then a gentle change in the middle, then straight. */
function eased(first: number, last: number, start: number, length: number): (share: number) => number {
  return (share) => {
    const way = Math.min(1, Math.max(0, ((share - start) / length - 0.2) / 0.55));
    return first + (last - first) * way * way * (3 - 2 * way);
  };
}

function stretchesOf(piece: Piece, stateOf: StateOf): CourseStretch[] {
  const states = piece.owners.map(stateOf);
  const cuts = states.flatMap((state) => (state.state === "blocked" ? [blockShare(state)] : [orificeDepth]));
  const inside = cuts.filter((cut) => cut > piece.from && cut < piece.to);
  const ends = [...new Set([piece.from, ...inside, piece.to])].sort((a, b) => a - b);
  return ends.slice(1).map((to, at) => {
    const from = ends[at] ?? piece.from;
    const looks = states.map((state) => ranks.indexOf(styleAt(state, (from + to) / 2)));
    const { offsetAt, ribbonAt } = piece;
    const style = ranks[Math.max(0, ...looks)] ?? "supposed";
    return { from, to, style: piece.closed && style !== "full" ? "supposed" : style, offsetAt, ribbonAt };
  });
}

const blockShare = (state: Extract<CanalState, { state: "blocked" }>): number =>
  Math.min(0.96, Math.max(0.06, state.at ?? usualBlock));

function styleAt(state: CanalState, share: number): StretchStyle {
  switch (state.state) {
    case "notFound":
      return isAwaited(state) ? "supposed" : "missing";
    case "located":
      return share < orificeDepth ? "open" : "supposed";
    case "negotiated":
      return "passed";
    case "shaped":
      return "open";
    case "medicated":
      return "dressed";
    case "filled":
      return "full";
    case "blocked":
      return share < blockShare(state) ? "open" : "supposed";
  }
}
