import { type CanalRoot, canalNames } from "../core/tooth/canal-root.ts";
import { canalSequence, sequenceText } from "../core/tooth/canal-sequence.ts";
import { type CourseStretch, canalCourse, trackOffset } from "./canal-course.ts";
import { isOpenQuestion } from "./canal-state.ts";
import { type EmblemDrawing, stateIn } from "./emblem-input.ts";
import { formNodes, formsReach, isCShaped } from "./level-forms.ts";
import { lumenNodes } from "./lumen.ts";
import { rootColumns } from "./root-columns.ts";
import { isRibbon, pulpNodes, type RootColumn, rootHalfWidth, rootPoint, trunkNodes } from "./root-shape.ts";
import { element, group, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel, textWidth } from "./text-label.ts";

/** Where the roots go: the left edge, the level of the orifices, and how long the longest root is drawn. */
export interface RootsPlace {
  readonly left: number;
  readonly orificeY: number;
  readonly length: number;
  /** Sizes of the words; left out for a drawing without any. */
  readonly words?: { readonly size: number; readonly quietSize: number };
}

/** The distance between the names of neighbouring canals. */
const nameGap = 9;
const columnGap = 16;

/** The roots side by side as they stand in the mouth (upper ones point up), each with its canals, and their total width. */
export function rootsDrawing(drawing: EmblemDrawing, place: RootsPlace) {
  const columns = columnsOf(drawing, place);
  const formsShown = place.words !== undefined && columns.length === 1;
  const labels = place.words === undefined ? [] : columns.flatMap((column) => columnLabels(drawing, column, place));
  const last = columns.at(-1);
  const nodes = group({ "data-part": "roots" }, [
    ...trunkNodes(columns, drawing.theme),
    ...pulpNodes(columns, drawing.theme),
    ...columns.flatMap((column) => canalNodes(drawing, column)),
    ...(formsShown ? columns.flatMap((column) => formNodes(column, drawing.theme)) : []),
    ...labels.map(labelNode),
  ]);
  const width = last === undefined ? 0 : last.axis + last.room - place.left;
  return { nodes, labels, width } as const;
}

/** See {@link rootColumns}: as wide as the names of the canals need it, and without words just as the roots are. */
const columnsOf = (drawing: EmblemDrawing, place: RootsPlace): readonly RootColumn[] =>
  rootColumns(drawing, {
    ...place,
    gap: columnGap,
    halfOf: (root) => halfWidthOf(root, place),
    roomOf: (root, half) => Math.max(half, labelRoom(drawing, root, place) / 2 + 4, formsRoom(drawing, root, place)),
  });

/** Wide enough that the names of its canals stand side by side above their orifices. */
function halfWidthOf(root: CanalRoot, { words }: RootsPlace): number {
  const names = canalNames(root);
  const widest = Math.max(0, ...names.map((name) => textWidth(name, words?.size ?? 14, "semibold")));
  const span = trackOffset(names.length - 1, names.length) * 2;
  if (isRibbon(root)) return 62;
  return span === 0 ? 25 : Math.max(32, (((widest + nameGap) * (names.length - 1)) / span) * 1.02);
}

function labelRoom(drawing: EmblemDrawing, root: CanalRoot, { words }: RootsPlace): number {
  if (words === undefined) return 0;
  const names = canalNames(root);
  const widest = Math.max(...names.map((name) => textWidth(name, words.size, "semibold")));
  const row = names.length === 1 ? widest : widest * names.length + nameGap * (names.length - 1);
  return Math.max(row, textWidth(rootWords(drawing, root), words.quietSize));
}

/** The course of a root, after its name where the name is not that of its only canal. */
function rootWords({ roots }: EmblemDrawing, root: CanalRoot): string {
  const course = sequenceText(canalSequence(root.levels));
  const names = canalNames(root);
  return roots.length === 1 || (names.length === 1 && names[0] === root.name) ? course : `${root.name} ${course}`;
}

/** A lone C-shaped root with words has the form of each level at its side. */
const formsRoom = ({ roots }: EmblemDrawing, root: CanalRoot, { words }: RootsPlace): number =>
  words !== undefined && roots.length === 1 && isCShaped(root) ? 62 + formsReach : 0;

/** The ways of a root's canals in their states, with what blocks them. */
export function canalNodes(drawing: EmblemDrawing, column: RootColumn): readonly SvgNode[] {
  const { stretches, blocks } = canalCourse(column.root, (canal) => stateIn(drawing, canal));
  const crowd = Math.max(1, canalNames(column.root).length - 1);
  const lumens = stretches.map((stretch) => ({ style: stretch.style, samples: samplesOf(column, stretch, crowd) }));
  return [
    group({ "data-part": "canals" }, [
      ...lumenNodes(lumens, drawing.theme),
      ...blocks.map(({ at, offset }) => blockNode(column, at, offset, drawing.theme.accent)),
    ]),
  ];
}

function samplesOf(column: RootColumn, { from, to, offsetAt, ribbonAt }: CourseStretch, crowd: number) {
  const [start, end] = [Math.max(0, from - overlap), Math.min(1, to + overlap)];
  const steps = Math.max(4, Math.round((to - from) * 40));
  return Array.from({ length: steps + 1 }, (_, at) => {
    const share = start + ((end - start) * at) / steps;
    const plain = (crowd > 1 ? 8 : 9.5) * (1 - 0.62 * share);
    const width = Math.max(plain, rootHalfWidth(column, share * foramenShare) * ribbonAt(share));
    return { ...rootPoint(column, share * foramenShare, offsetAt(share)), width };
  });
}

/** Neighbouring stretches run a little into each other, so that no seam shows. */
const overlap = 0.004;
/** Canals leave the root just short of its tip. */
const foramenShare = 0.965;

function blockNode(column: RootColumn, at: number, offset: number, fill: string): SvgNode {
  const { x, y } = rootPoint(column, at * foramenShare, offset);
  return element("rect", { "data-part": "block", x: x - 9, y: y - 2.5, width: 18, height: 5, fill });
}

/** Beyond the crown side of the trunk: the canals' names, then the root and its course. */
function columnLabels(drawing: EmblemDrawing, column: RootColumn, { words }: RootsPlace): readonly TextLabel[] {
  if (words === undefined) return [];
  const { theme } = drawing;
  const names = canalNames(column.root);
  const up = column.reach < 0;
  const first = column.orificeY + (up ? 1 : -1) * 50;
  const nameY = up ? first + words.size * 0.9 : first - 2;
  const wordsY = up ? nameY + words.size * 1.35 : nameY - words.size * 1.3;
  return [
    ...names.map((text, at): TextLabel => {
      const x = rootPoint(column, 0, trackOffset(at, names.length)).x;
      const fill = isOpenQuestion(stateIn(drawing, text)) ? theme.accent : theme.ink;
      return { text, x, y: nameY, size: words.size, fill, anchor: "middle", weight: "semibold" };
    }),
    {
      text: rootWords(drawing, column.root),
      x: column.axis,
      y: wordsY,
      size: words.quietSize,
      fill: theme.quiet,
      anchor: "middle",
    },
  ];
}
