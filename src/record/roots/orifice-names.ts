import { type CanalRoot, canalNames } from "../../core/tooth/canal-root.ts";
import type { RootsInHand } from "./root-step.ts";

type Tooth = RootsInHand["tooth"];
type ToothRoots = Pick<RootsInHand, "tooth" | "roots">;
/** Names of canals; undefined where they follow from the root's own. */
type Orifices = readonly string[] | undefined;

/** Names for 1, 2, 3 .. canals, buccal first, where all lie in one root. */
const inLoneRoot: Readonly<Record<Tooth["arch"], readonly (readonly string[])[]>> = {
  upper: [["Single"], ["B", "P"], ["MB", "DB", "P"]],
  lower: [["Single"], ["B", "L"], ["MB", "ML", "D"], ["MB", "ML", "DB", "DL"]],
};

/** The names that the trade gives to the canals of a root; undefined where they are numbered. */
function usualNames(tooth: Tooth, name: string, lone: boolean, count: number): Orifices {
  if (lone && name === "R") return inLoneRoot[tooth.arch][count - 1];
  if (count === 1) return [name];
  if (tooth.arch === "upper" || (name !== "M" && name !== "D")) return undefined;
  return [
    [`${name}B`, `${name}L`],
    [`${name}B`, `${name}M`, `${name}L`],
  ][count - 2];
}

/**
 * The orifices of a root by the names that the trade uses: MB and ML in a mesial root below, else numbers.
 * Takes the tooth, its roots, the place of the root and a number of canals. No name of another root comes back; undefined
 * where the names follow from the root's own.
 * @source common practice
 */
export function usualOrifices({ tooth, roots }: ToothRoots, at: number, count: number): Orifices {
  const root = roots[at];
  if (root === undefined) return undefined;
  const taken = takenBeside(roots, at);
  const plain = numbered(root, count);
  const wished = [usualNames(tooth, root.name, roots.length === 1, count) ?? plain, plain];
  const free = wished.find((names) => !names.some((name) => taken.has(name)));
  if (free === undefined) return grown([], root.name, count, taken);
  return same(free, plain) ? undefined : free;
}

/** Whether a person gave a root's canals names of their own: neither the usual ones nor numbers. */
export function hasOwnNames(given: ToothRoots, at: number): boolean {
  const root = given.roots[at];
  if (root?.orifices === undefined) return false;
  const { length } = root.orifices;
  return !isNumbered(root) && !same(root.orifices, usualOrifices(given, at, length));
}

/**
 * A root's orifices after the number of its canals has changed.
 * Takes the tooth, its roots, the place of the root and its new number of canals. Usual names stay usual and numbers
 * numbers; names of a person's own stay, with new ones added behind them or the last ones left out.
 */
export function orificesFor(given: ToothRoots, at: number, count: number): Orifices {
  const root = given.roots[at];
  if (root === undefined) return undefined;
  const now = canalNames(root);
  const taken = takenBeside(given.roots, at);
  if (hasOwnNames(given, at)) return grown(now.slice(0, count), root.name, count, taken);
  if (count === 1 || now.length === 1 || !isNumbered(root)) return usualOrifices(given, at, count);
  const plain = numbered(root, count);
  return plain.some((name) => taken.has(name)) ? grown(now.slice(0, count), root.name, count, taken) : undefined;
}

const takenBeside = (roots: readonly CanalRoot[], at: number): ReadonlySet<string> =>
  new Set(roots.flatMap((other, index) => (index === at ? [] : canalNames(other))));

const numbered = ({ name, levels }: CanalRoot, count: number): readonly string[] =>
  canalNames({ name, levels: [count, ...levels] });

function isNumbered(root: CanalRoot): boolean {
  const now = canalNames(root);
  return now.length > 1 && same(now, numbered(root, now.length));
}

/** Names with as many new ones behind them as are wanted. */
function grown(now: readonly string[], name: string, count: number, taken: ReadonlySet<string>): string[] {
  const names = [...now];
  for (let number = 1; names.length < count; number += 1) {
    const next = `${name.slice(0, 8 - String(number).length)}${number}`;
    if (!taken.has(next) && !names.includes(next)) names.push(next);
  }
  return names;
}

const same = (one: readonly string[], other: Orifices): boolean =>
  other !== undefined && one.length === other.length && one.every((name, index) => name === other[index]);
