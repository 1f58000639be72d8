import { type CanalLevel, type CanalRoot, canalNames, canalsAt, cShapeAt } from "../core/tooth/canal-root.ts";
import { canalSequence, sequenceText } from "../core/tooth/canal-sequence.ts";
import type { ToothFacts } from "../core/tooth/teeth.ts";
import { trackOffset } from "./canal-course.ts";
import { canalsOf, cShapeOf, type EmblemDrawing } from "./emblem-input.ts";
import { canalNodes } from "./emblem-roots.ts";
import { namedSection, sectionGroup } from "./emblem-section.ts";
import { formMark, shareOfLevel } from "./level-forms.ts";
import { rootColumns } from "./root-columns.ts";
import { isRibbon, pulpNodes, type RootColumn, rootHalfWidth, rootPoint, trunkNodes } from "./root-shape.ts";
import { element, type Figure, figureOf, group, pathThrough, type Spot, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";
import { sideWords } from "./tooth-outline.ts";

/** A level on the board by its root and its place in it, with the middle of where it is pressed, as shares of the drawing. */
export interface BoardLevel extends Spot {
  readonly root: number;
  readonly level: number;
  /** From its middle to where its line ends, and to the end of the root's room, as shares of the width. */
  readonly edge: number;
  readonly reach: number;
}

/** A drawing to edit roots and canals on, and where its levels lie. */
export interface CanalBoard {
  readonly figure: Figure;
  readonly levels: readonly BoardLevel[];
  /** Where a level can be added behind another one. */
  readonly between: readonly BoardLevel[];
  /** The middle of each root, in the order of the drawing. */
  readonly columns: readonly { readonly root: number; readonly x: number }[];
}

interface BoardInput {
  readonly tooth: ToothFacts;
  readonly roots: readonly CanalRoot[];
  readonly theme: ThemeName;
}

const margin = 8;
const length = 312;
const size = 15;
/** Beyond the orifices, towards the crown: the trunk and the names. */
const crownRoom = 82;
/** Beyond the tips. */
const tipRoom = 18;

/**
 * The section at the orifices and every root at working size, each of its levels a rung with its number of canals.
 * Takes the tooth and its roots as the canals topic takes them, and the ground; canals are drawn as their form is, in no
 * state. Gives the drawing and the places on it that can be pressed.
 */
export function canalBoard({ tooth, roots, theme: ground }: BoardInput): CanalBoard {
  const theme = themes[ground];
  const open = { tooth, roots, theme, states: {} };
  const states = Object.fromEntries(canalsOf(open).map((canal) => [canal, { state: "shaped" as const }]));
  const drawing: EmblemDrawing = { ...open, states };
  const height = length + crownRoom + tipRoom;
  const section = sectionOf({ ...open, states: mapped(states, "located") }, height);
  const orificeY = tooth.arch === "upper" ? length + tipRoom : crownRoom;
  const columns = rootColumns(drawing, { left: section.width + 30, orificeY, length, gap: 2, halfOf, roomOf });
  const end = columns.at(-1);
  const width = Math.ceil((end?.axis ?? 0) + (end?.room ?? 0) + margin);
  const places = columns.map((column) => ({ column, root: roots.indexOf(column.root) }));
  const nodes = [
    sectionGroup(section.nodes),
    group({ "data-part": "roots" }, [
      ...trunkNodes(columns, theme),
      ...pulpNodes(columns, theme),
      ...columns.flatMap((column) => canalNodes(drawing, column)),
      ...columns.flatMap((column) => rungNodes(column, drawing)),
      ...columns.flatMap((column) => nameLabels(column, drawing)).map(labelNode),
    ]),
  ];
  const share = ({ x, y }: Spot) => ({ x: x / width, y: y / height });
  const at = ({ column, root }: (typeof places)[number], along: (level: number) => number, level: number) => {
    const spot = rootPoint(column, along(level), 0);
    const [edge, reach] = [edgeOf(column, along(level)) / width, (column.axis + column.room - spot.x) / width];
    return { root, level, ...share(spot), edge, reach };
  };
  return {
    figure: figureOf({ width, height }, width, alternativeOf(drawing), nodes),
    levels: places.flatMap((place) => {
      const { levels } = place.column.root;
      return levels.map((_, level) => at(place, (one) => shareOfLevel(one, levels.length), level));
    }),
    between: places.flatMap((place) => betweenOf(place.column.root).map((one) => at(place, one.along, one.level))),
    columns: places.map(({ column, root }) => ({ root, x: column.axis / width })),
  };
}

const mapped = (states: Readonly<Record<string, unknown>>, state: "located"): EmblemDrawing["states"] =>
  Object.fromEntries(Object.keys(states).map((canal) => [canal, { state }]));

/** Halfway to the next level; behind a lone one, halfway to the foramen. */
function betweenOf({ levels }: CanalRoot): readonly { level: number; along: (level: number) => number }[] {
  const steps = Math.max(1, levels.length - 1);
  return Array.from({ length: steps }, (_, level) => ({ level, along: (one: number) => (one + 0.5) / steps }));
}

function sectionOf(drawing: EmblemDrawing, height: number) {
  const words = { size, quietSize: 13.5 };
  const looks = { scale: cShapeOf(drawing) === undefined ? 19 : 18, orificeRadius: 10, outlineWidth: 1.8 };
  const measured = namedSection(drawing, { ...looks, centre: { x: 0, y: height / 2 } }, words);
  const section = namedSection(drawing, { ...looks, centre: { x: margin - measured.left, y: height / 2 } }, words);
  return { nodes: section.nodes, width: section.right };
}

/** A root is wide enough that the names of its canals stand side by side above their orifices. */
function halfOf(root: CanalRoot): number {
  const names = canalNames(root);
  if (isRibbon(root)) return 70;
  if (names.length === 1) return 32;
  const widest = Math.max(...names.map((name) => textWidth(name, size, "semibold")));
  const span = trackOffset(names.length - 1, names.length) * 2;
  return Math.max(40, ((widest + 9) * (names.length - 1)) / span);
}

/** Beside each root its numbers and forms have room with what changes them, and below it its course and type. */
const roomOf = (root: CanalRoot, half: number): number =>
  Math.max(90, half + (root.levels.some((level) => cShapeAt(level) !== undefined) ? 84 : 58));

/** From the middle of a level to the ends of its line: a little beyond the root. */
const edgeOf = (column: RootColumn, share: number): number => Math.max(rootHalfWidth(column, share), 10) + 7;

/** A hairline across the root at each level, and at its right the number of canals or the form of the section. */
function rungNodes(column: RootColumn, { theme, roots }: EmblemDrawing): readonly SvgNode[] {
  const { levels } = column.root;
  return levels.flatMap((level, at) => {
    const share = shareOfLevel(at, levels.length);
    const { x, y } = rootPoint(column, share, 0);
    const edge = edgeOf(column, share);
    const line = pathThrough([
      { x: x - edge, y },
      { x: x + edge, y },
    ]);
    const rung = { stroke: theme.quiet, "stroke-width": 1, "stroke-dasharray": "1.5 3", fill: "none" };
    // Between roots there is no room beside the first level: what it holds stands under the pulp chamber.
    const isUnder = at === 0 && roots.length > 1;
    const spot = isUnder ? { x: x - 4, y: y - Math.sign(column.reach) * 29 } : { x: x + edge + 6, y };
    return [element("path", { "data-part": "rung", d: line, ...rung }), ...heldNodes(level, spot, theme)];
  });
}

/** What a level holds: its number of canals, or its form with the section drawn small. */
function heldNodes(level: CanalLevel, { x, y }: Spot, theme: Theme): readonly SvgNode[] {
  const form = cShapeAt(level);
  const label = { y: y + 5, size: 14, fill: theme.ink, weight: "semibold" } as const;
  if (form === undefined) return [labelNode({ ...label, text: String(canalsAt(level)), x })];
  return [formMark(level, { x: x + 5, y }, 9, theme), labelNode({ ...label, text: form, x: x + 18 })];
}

/** The canals' names beyond their orifices. */
function nameLabels(column: RootColumn, { theme }: EmblemDrawing): readonly TextLabel[] {
  const names = canalNames(column.root);
  const up = column.reach < 0;
  const y = column.orificeY + (up ? 62 : -52);
  return names.map((text, at) => {
    const { x } = rootPoint(column, 0, trackOffset(at, names.length));
    return { text, x, y, size, fill: theme.ink, anchor: "middle", weight: "semibold" };
  });
}

/** The board in words: the tooth, and every root from orifice to foramen. */
function alternativeOf({ tooth, roots }: EmblemDrawing): string {
  const { outer } = sideWords(tooth);
  const courses = roots.map((root) => {
    const forms = root.levels.flatMap((level) => cShapeAt(level) ?? []);
    const shaped = forms.length === 0 ? "" : `, C-shaped ${forms.join(" ")}`;
    return `${root.name} ${sequenceText(canalSequence(root.levels))} (${canalNames(root).join(", ")}${shaped})`;
  });
  return `Tooth ${tooth.twoDigit}, ${tooth.name}: section at the orifices, ${outer} side up, and its roots. From orifice to foramen: ${courses.join("; ")}.`;
}
