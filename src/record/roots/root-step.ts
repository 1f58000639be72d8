import type { CanalRoot } from "../../core/tooth/canal-root.ts";
import type { ToothFacts } from "../../core/tooth/teeth.ts";

/** A level of a root, by their places in the lists. */
export interface LevelPlace {
  readonly root: number;
  readonly level: number;
}

/** What is edited: the roots of a tooth, and the level that is chosen. */
export interface RootsInHand {
  readonly tooth: Pick<ToothFacts, "arch" | "type">;
  readonly roots: readonly CanalRoot[];
  readonly at: LevelPlace;
}

/** What a step came to: the roots, the level that is chosen then and what was done in words; or why it can't be done. */
export type RootStep =
  | { readonly roots: readonly CanalRoot[]; readonly at: LevelPlace; readonly says: string }
  | { readonly cannot: string };

/**
 * The level that is chosen, or the nearest that there is.
 * Takes roots and a place that may lie beyond them; gives a place inside.
 */
export function placeWithin(roots: readonly CanalRoot[], { root, level }: LevelPlace): LevelPlace {
  const inside = Math.min(Math.max(0, root), roots.length - 1);
  const last = (roots[inside]?.levels.length ?? 1) - 1;
  return { root: inside, level: Math.min(Math.max(0, level), last) };
}

/**
 * Where a level of a root lies, in words.
 * Takes its place counted from 0 and the number of levels; gives `at the orifice`, `in the middle third`.
 */
export function levelInWords(level: number, levels: number): string {
  if (levels === 1) return "from orifice to foramen";
  if (level === 0) return "at the orifice";
  if (level === levels - 1) return "at the foramen";
  const share = level / (levels - 1);
  if (share > 1 / 3 && share < 2 / 3) return "in the middle third";
  return share <= 1 / 3 ? "in the coronal third" : "in the apical third";
}

/** The roots with another one in the place of the one that is in hand. */
export const withChosen = ({ roots, at }: RootsInHand, root: CanalRoot): readonly CanalRoot[] =>
  roots.map((one, index) => (index === at.root ? root : one));
