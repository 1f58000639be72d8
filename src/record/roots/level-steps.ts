import {
  type CanalLevel,
  type CanalRoot,
  type CShape,
  canalsAt,
  canalsOfCShape,
  cShapeAt,
} from "../../core/tooth/canal-root.ts";
import { orificesFor } from "./orifice-names.ts";
import { levelInWords, type RootStep, type RootsInHand, withChosen } from "./root-step.ts";

/** The most canals that one level, and the most levels that one root can be recorded with. */
const mostCanals = 6;
const mostLevels = 12;

/**
 * A canal more at the chosen level.
 * Takes roots in hand; a C-shaped section goes on to the form that holds one more. Cannot where no more can be recorded.
 */
export function splitHere(hand: RootsInHand): RootStep {
  const { level, name } = chosen(hand);
  const count = canalsAt(level) + 1;
  const next = withCount(level, count);
  if (next === undefined || count > mostCanals)
    return { cannot: `${name} has ${canalsInWords(canalsAt(level))} ${where(hand)}; more can't be recorded there` };
  return levelChanged(hand, next, `${name} split into ${count} ${where(hand)}`);
}

/**
 * A canal fewer at the chosen level.
 * Takes roots in hand. Cannot go below one canal: a level without a lumen is a C-shaped section of the form C5.
 */
export function joinHere(hand: RootsInHand): RootStep {
  const { level, name } = chosen(hand);
  const count = canalsAt(level) - 1;
  const next = count < 1 ? undefined : withCount(level, count);
  if (next === undefined) return { cannot: `${name} has one canal ${where(hand)}; there is nothing to join` };
  return levelChanged(hand, next, `${name} joined to ${count} ${where(hand)}`);
}

/** So many canals at the chosen level, at once. Takes a number from 1 to 6. */
export function countHere(hand: RootsInHand, count: number): RootStep {
  const { level, name } = chosen(hand);
  const next = withCount(level, count);
  if (canalsAt(level) === count) return { cannot: `${name} has ${canalsInWords(count)} ${where(hand)} already` };
  if (next === undefined || count < 1 || count > mostCanals)
    return { cannot: `a section of the form ${cShapeAt(level) ?? "of this root"} can't hold ${canalsInWords(count)}` };
  return levelChanged(hand, next, `${canalsInWords(count)} in ${name} ${where(hand)}`);
}

/** One more level behind the chosen one, like it, which is then chosen. Cannot beyond twelve. */
export function addLevel(hand: RootsInHand): RootStep {
  const { root, level, name } = chosen(hand);
  const { at } = hand;
  if (root.levels.length >= mostLevels) return { cannot: `${name} has ${mostLevels} levels; more can't be recorded` };
  const levels = [...root.levels.slice(0, at.level + 1), level, ...root.levels.slice(at.level + 1)];
  const next = { ...at, level: at.level + 1 };
  const says = `a level added to ${name} ${levelInWords(next.level, levels.length)}`;
  return { roots: withChosen(hand, { ...root, levels }), at: next, says };
}

/** The chosen level taken away; names follow where it was that of the orifice. Cannot take the last, or leave C5 first. */
export function takeLevel(hand: RootsInHand): RootStep {
  const { root, name } = chosen(hand);
  const { at } = hand;
  const levels = root.levels.filter((_, index) => index !== at.level);
  const [first] = levels;
  if (first === undefined) return { cannot: `${name} has one level; a root has at least that` };
  if (canalsAt(first) === 0) return { cannot: "a section without a lumen (C5) can't be the level of the orifice" };
  const says = `the level of ${name} ${where(hand)} taken away`;
  const next = named(hand, { ...root, levels }, canalsAt(first));
  return { roots: withChosen(hand, next), at: { ...at, level: Math.min(at.level, levels.length - 1) }, says };
}

/** A form of a C-shaped section at the chosen level, or none; canals follow so that they fit. Cannot have C5 at the orifice. */
export function shapeHere(hand: RootsInHand, form: CShape | undefined): RootStep {
  const { level, name } = chosen(hand);
  if (form === "C5" && hand.at.level === 0)
    return { cannot: "a section without a lumen (C5) can't be the level of the orifice" };
  if (form === undefined)
    return levelChanged(hand, Math.max(1, canalsAt(level)), `${name} not C-shaped ${where(hand)}`);
  const { least, most } = canalsOfCShape(form);
  const canals = Math.min(most, Math.max(least, canalsAt(level)));
  return levelChanged(hand, { canals, cShape: form }, `${name} ${form} ${where(hand)}`);
}

/** The forms that a C-shaped section can have at a level, in their order; at the orifice there is a lumen. */
export const shapesAt = (level: number): readonly CShape[] =>
  level === 0 ? ["C1", "C2", "C3", "C4"] : ["C1", "C2", "C3", "C4", "C5"];

/** The form that comes after that of the chosen level: none, C1 to C5, none again; C5 is passed over at the orifice. */
export function nextShape(hand: RootsInHand): CShape | undefined {
  const forms = shapesAt(hand.at.level);
  const form = cShapeAt(chosen(hand).level);
  return forms[form === undefined ? 0 : forms.indexOf(form) + 1];
}

/** A number of canals in words. */
export const canalsInWords = (count: number): string =>
  count === 0 ? "no lumen" : count === 1 ? "1 canal" : `${count} canals`;

function chosen({ roots, at }: RootsInHand): {
  readonly root: CanalRoot;
  readonly level: CanalLevel;
  readonly name: string;
} {
  const root = roots[at.root] ?? { name: "R", levels: [1] };
  return { root, level: root.levels[at.level] ?? 1, name: root.name };
}

const where = ({ roots, at }: RootsInHand): string => levelInWords(at.level, roots[at.root]?.levels.length ?? 1);

function levelChanged(hand: RootsInHand, level: CanalLevel, says: string): RootStep {
  const { root } = chosen(hand);
  const levels = root.levels.map((one, index) => (index === hand.at.level ? level : one));
  const next = hand.at.level === 0 ? named(hand, { ...root, levels }, canalsAt(level)) : { ...root, levels };
  return { roots: withChosen(hand, next), at: hand.at, says };
}

/** A root whose orifices go with the number of canals at its first level. */
function named(hand: RootsInHand, { orifices: _, ...root }: CanalRoot, count: number): CanalRoot {
  const before = hand.roots[hand.at.root];
  if (before?.levels[0] !== undefined && canalsAt(before.levels[0]) === count)
    return before.orifices === undefined ? root : { ...root, orifices: before.orifices };
  const orifices = orificesFor(hand, hand.at.root, count);
  return orifices === undefined ? root : { ...root, orifices: [...orifices] };
}

/** A level with another number of canals, its form kept where that holds so many; undefined where none does. */
function withCount(level: CanalLevel, count: number): CanalLevel | undefined {
  const form = cShapeAt(level);
  if (form === undefined) return count;
  const likely: readonly CShape[] = [form, form === "C5" ? "C4" : "C1", form === "C4" ? "C3" : "C2", "C3"];
  const fitting = likely.find((one) => {
    const { least, most } = canalsOfCShape(one);
    return count >= least && count <= most;
  });
  return fitting === undefined ? undefined : { canals: count, cShape: fitting };
}
