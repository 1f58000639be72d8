import { type CanalRoot, canalNames } from "../../core/tooth/canal-root.ts";
import { sideOfRoot } from "../../core/tooth/extra-root.ts";
import { hasOwnNames, usualOrifices } from "./orifice-names.ts";
import { placeWithin, type RootStep, type RootsInHand, withChosen } from "./root-step.ts";

const mostRoots = 6;

/**
 * One more root, which is then chosen: the one that is met next in this tooth. A lone root parts into its usual two, a
 * buccal one into a mesiobuccal and a distobuccal one; a lower molar gets its third root on the lingual side.
 * Takes roots in hand. Cannot beyond six.
 * @source common practice
 */
export function addRoot(hand: RootsInHand): RootStep {
  const { roots } = hand;
  if (roots.length >= mostRoots) return { cannot: `the tooth has ${mostRoots} roots; more can't be recorded` };
  const { before, added } = parted(hand) ?? { before: roots, added: nextRoot(hand) };
  const after = before.findIndex(({ name }) => name === "MB");
  const at = added.name === "DB" && after >= 0 ? after + 1 : before.length;
  const placed = [...before.slice(0, at), added, ...before.slice(at)];
  const changed = roots.flatMap(({ name }, index) => {
    const now = before[index]?.name ?? name;
    return now === name ? [] : [`root ${name} is ${now}, `];
  });
  return { roots: placed, at: { root: at, level: 0 }, says: `${changed.join("")}root ${added.name} added` };
}

/** The chosen root taken away. Takes roots in hand. Cannot take the last. */
export function takeRoot(hand: RootsInHand): RootStep {
  const { roots, at } = hand;
  const left = roots.filter((_, index) => index !== at.root);
  if (left.length === 0) return { cannot: "a tooth has at least one root" };
  return { roots: left, at: placeWithin(left, { root: at.root, level: 0 }), says: `root ${nameOf(hand)} taken away` };
}

/** The chosen root put on a side, or in line with the row. Takes roots in hand, the side, and what the side is called. */
export function putOnSide(hand: RootsInHand, side: CanalRoot["side"], called: string): RootStep {
  const root = hand.roots[hand.at.root];
  if (root === undefined) return { cannot: "no root is chosen" };
  const { side: _, ...plain } = root;
  const next = side === undefined ? plain : { ...plain, side };
  return { roots: withChosen(hand, next), at: hand.at, says: `root ${root.name} lies ${called}` };
}

/** The side that comes after that of the chosen root: buccal, lingual, in line, buccal again. */
export function nextSide({ roots, at }: RootsInHand): CanalRoot["side"] {
  const side = roots[at.root]?.side;
  return side === undefined ? "buccal" : side === "buccal" ? "lingual" : undefined;
}

const nameOf = ({ roots, at }: RootsInHand): string => roots[at.root]?.name ?? "";

const isLowerMolar = ({ tooth }: RootsInHand): boolean => tooth.arch === "lower" && tooth.type === "molar";
const innerOf = ({ tooth }: RootsInHand): "P" | "L" => (tooth.arch === "upper" ? "P" : "L");

/** Roots of which one becomes two: the renamed ones and the new one; undefined where a new root stands by itself. */
function parted(hand: RootsInHand): { readonly before: readonly CanalRoot[]; readonly added: CanalRoot } | undefined {
  const { roots } = hand;
  const [first] = roots;
  if (roots.length === 1 && first?.name === "R")
    return isLowerMolar(hand) ? part(hand, "R", "M", "D") : part(hand, "R", "B", innerOf(hand));
  return isLowerMolar(hand) ? undefined : part(hand, "B", "MB", "DB");
}

/** A root renamed to make room for a new one beside it; undefined where it is not there or a name is taken. */
function part(hand: RootsInHand, from: string, to: string, added: string): ReturnType<typeof parted> {
  const at = hand.roots.findIndex(({ name }) => name === from);
  if (at < 0 || namesIn(hand.roots.filter((_, index) => index !== at)).includes(to)) return undefined;
  const before = renamed(hand, at, to);
  return namesIn(before).includes(added) ? undefined : { before, added: rootNamed(added) };
}

/** The roots with one under another name; canals that were named after the old one follow. */
function renamed(hand: RootsInHand, at: number, name: string): readonly CanalRoot[] {
  const own = hasOwnNames(hand, at);
  const put = (change: (root: CanalRoot) => CanalRoot, roots: readonly CanalRoot[]): readonly CanalRoot[] =>
    roots.map((root, index) => (index === at ? change(root) : root));
  const plain = put(({ orifices, side: _, ...root }) => {
    const side = sideOfRoot({ ...root, name });
    return { ...root, name, ...(side && { side }), ...(own && orifices && { orifices }) };
  }, hand.roots);
  const root = plain[at];
  const orifices =
    root === undefined || own
      ? undefined
      : usualOrifices({ ...hand, roots: [...plain, rootNamed("X")] }, at, canalNames(root).length);
  return orifices === undefined ? plain : put((one) => ({ ...one, orifices: [...orifices] }), plain);
}

function nextRoot(hand: RootsInHand): CanalRoot {
  const inner = innerOf(hand);
  const likely = isLowerMolar(hand)
    ? ["M", "D", "DL", "DB", "ML", "MB"]
    : ["MB", "DB", inner, `M${inner}`, `D${inner}`, "B"];
  const taken = new Set(namesIn(hand.roots));
  const free = [...likely, "X", "X1", "X2", "X3", "X4", "X5", "X6"].find((name) => !taken.has(name));
  return rootNamed(free ?? "X7");
}

/** A root with one canal, on the side that its name says. */
function rootNamed(name: string): CanalRoot {
  const side = sideOfRoot({ name, levels: [1] });
  return { name, ...(side === undefined ? {} : { side }), levels: [1] };
}

const namesIn = (roots: readonly CanalRoot[]): readonly string[] =>
  roots.flatMap((root) => [root.name, ...canalNames(root)]);
