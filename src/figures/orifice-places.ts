import { type CanalRoot, canalNames } from "../core/tooth/canal-root.ts";
import type { ToothFacts } from "../core/tooth/teeth.ts";
import type { Spot } from "./svg-tree.ts";

/** Where a canal's orifice lies in the section: x to the mesial, y to the lingual, in half widths of the outline. */
export interface OrificePlace extends Spot {
  readonly canal: string;
}

/** Nearest that two orifices are drawn to each other, in half widths. */
const apart = 0.6;

/** A place for every canal of a tooth: as its name says (MB, DL, P, MB2), spread along its root, and never on top of another. */
export function orificePlaces(tooth: ToothFacts, roots: readonly CanalRoot[]): readonly OrificePlace[] {
  return pushedApart(roots.flatMap((root) => placesOfRoot(tooth, root, roots)));
}

function placesOfRoot(tooth: ToothFacts, root: CanalRoot, roots: readonly CanalRoot[]): OrificePlace[] {
  const names = canalNames(root);
  const upperMolar = tooth.arch === "upper" && tooth.type === "molar";
  if (upperMolar && root.name === "MB") return alongRow(names, { x: 0.56, y: -0.56 }, { x: 0.42, y: -0.02 });
  const own = names.map((canal) => ({ canal, ...placeOfName(canal, tooth) }));
  const told = own.every(({ known }) => known) && new Set(own.map(({ x, y }) => `${x} ${y}`)).size === own.length;
  const anchor = anchorOf(tooth, root, roots);
  if (names.length === 1 && (root.side !== undefined || !told)) return names.map((canal) => ({ canal, ...anchor }));
  if (told) return own.map(({ canal, x, y }) => ({ canal, x, y }));
  const half = Math.abs(anchor.y) > 0.2 ? 0.22 : 0.42;
  return alongRow(names, { x: anchor.x, y: anchor.y - half }, { x: anchor.x, y: anchor.y + half });
}

function alongRow(names: readonly string[], from: Spot, to: Spot): OrificePlace[] {
  return names.map((canal, at) => {
    const share = names.length === 1 ? 0 : at / (names.length - 1);
    return { canal, x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
  });
}

/** Where roots go whose names say nothing: distal, mesial, buccal, lingual. */
const unplaced: readonly Spot[] = [
  { x: -0.62, y: 0 },
  { x: 0.62, y: 0 },
  { x: 0, y: -0.6 },
  { x: 0, y: 0.6 },
];

/** A lone root lies in the middle; another as its name and its recorded side say. */
function anchorOf(tooth: ToothFacts, root: CanalRoot, roots: readonly CanalRoot[]): Spot {
  const { x, y, known } = placeOfName(root.name, tooth);
  if (root.side !== undefined && !(known && y !== 0))
    return { x: known ? x : -0.6, y: root.side === "buccal" ? -0.58 : 0.58 };
  if (known || roots.length === 1) return { x, y };
  const unnamed = roots.filter((one) => one.side === undefined && !placeOfName(one.name, tooth).known);
  return unplaced[unnamed.indexOf(root) % unplaced.length] ?? { x: 0, y: 0 };
}

/** What a name says: M or D first, then B, M, L or P, then a number. */
function placeOfName(name: string, tooth: ToothFacts): Spot & { readonly known: boolean } {
  const read = /^(M|D)?(B|L|P|M)?\d?$/.exec(name);
  if (read === null) return { x: 0, y: 0, known: false };
  const [, end, across] = read;
  const wide = tooth.type === "molar";
  const x = end === "M" ? 0.5 : end === "D" ? -0.52 : 0;
  const y = across === "B" ? -0.5 : across === "L" || across === "P" ? 0.52 : 0;
  return { x: wide ? x : x * 0.8, y, known: end !== undefined || across !== undefined };
}

/** Moves places that are too near to each other apart along their line, and back inside; what still jams turns aside. */
function pushedApart(places: readonly OrificePlace[]): readonly OrificePlace[] {
  let now = places;
  for (let round = 0; round < 80; round += 1)
    now = now.map((place, at) => {
      const pushes = now.map((other, index) =>
        index === at ? { x: 0, y: 0 } : turned(push(place, other, at - index), round < 12 ? 0 : 0.35),
      );
      const x = place.x + pushes.reduce((sum, one) => sum + one.x, 0);
      const y = place.y + pushes.reduce((sum, one) => sum + one.y, 0);
      return { canal: place.canal, x: within(x), y: within(y) };
    });
  return now;
}

function push(place: Spot, other: Spot, order: number): Spot {
  const dx = place.x - other.x;
  const dy = place.y - other.y;
  const distance = Math.hypot(dx, dy);
  if (distance >= apart) return { x: 0, y: 0 };
  const by = (apart - distance) / 2;
  return distance < 0.01 ? { x: 0, y: Math.sign(order) * by } : { x: (dx / distance) * by, y: (dy / distance) * by };
}

const turned = ({ x, y }: Spot, by: number): Spot => ({
  x: x * Math.cos(by) - y * Math.sin(by),
  y: x * Math.sin(by) + y * Math.cos(by),
});

const within = (value: number): number => Math.min(0.72, Math.max(-0.72, value));
