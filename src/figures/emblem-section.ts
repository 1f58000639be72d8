import { canalNames } from "../core/tooth/canal-root.ts";
import { cArc, cParts, cShapedMark, placeIn, type SectionFrame } from "./c-shaped-orifice.ts";
import { isOpenQuestion } from "./canal-state.ts";
import { cShapeOf, type EmblemDrawing, stateIn } from "./emblem-input.ts";
import { orificeMark } from "./orifice-mark.ts";
import { orificePlaces } from "./orifice-places.ts";
import { element, group, pathThrough, type Spot, type SvgNode, smoothClosedPath } from "./svg-tree.ts";
import { labelBox, labelNode, type TextLabel, textWidth } from "./text-label.ts";
import { mesialIsRight, sideWords, toothOutline } from "./tooth-outline.ts";

/** Where a section goes, and how large. */
export interface SectionPlace {
  readonly centre: Spot;
  /** Of 1 mm. */
  readonly scale: number;
  readonly orificeRadius: number;
  readonly outlineWidth: number;
}

/** A canal's middle in the drawing, where its label's leader ends. */
interface Target extends Spot {
  readonly canal: string;
}

/** The section at the level of the orifices without any word: outline, mesial mark, orifices in their states. */
export function sectionDrawing(drawing: EmblemDrawing, place: SectionPlace) {
  const { tooth, theme } = drawing;
  const frame = frameOf(drawing, place);
  const outline = toothOutline(tooth, cShapeOf(drawing) !== undefined);
  const path = element("path", {
    "data-part": "outline",
    d: smoothClosedPath(outline.spots.map((spot) => placeIn(frame, spot))),
    fill: theme.dentine,
    stroke: theme.ink,
    "stroke-width": place.outlineWidth,
  });
  const { marks, targets } = orifices(drawing, frame, place);
  return { nodes: [path, ...marks], targets, frame } as const;
}

/** The frame that a tooth's section takes. */
function frameOf(drawing: EmblemDrawing, place: SectionPlace): SectionFrame {
  const { mesiodistalMm, buccolingualMm } = toothOutline(drawing.tooth, cShapeOf(drawing) !== undefined);
  const across = ((mesialIsRight(drawing.tooth) ? 1 : -1) * mesiodistalMm * place.scale) / 2;
  return { centre: place.centre, across, down: (buccolingualMm * place.scale) / 2 };
}

function orifices(drawing: EmblemDrawing, frame: SectionFrame, place: SectionPlace) {
  const { tooth, roots, theme } = drawing;
  const c = cShapeOf(drawing);
  const shaped = c !== undefined && c.form !== "C4";
  const ribbonCanals = shaped ? canalNames(c.root) : [];
  const parts = shaped ? cParts(c.form, ribbonCanals.length) : [];
  const round = orificePlaces(tooth, shaped ? roots.filter((root) => root !== c.root) : roots).map((one) => ({
    canal: one.canal,
    ...placeIn(frame, one),
  }));
  const radius = clearRadius(round, place.orificeRadius);
  const width = place.orificeRadius * 1.5;
  const marks: SvgNode[] = [];
  const targets: Target[] = [];
  ribbonCanals.forEach((canal, at) => {
    const own = parts[at] ?? [];
    marks.push(cShapedMark(stateIn(drawing, canal), own, frame, { theme, width }));
    targets.push({ canal, ...placeIn(frame, cArc((own[0]?.from ?? 0) + 0.12)) });
  });
  for (const one of round) {
    marks.push(orificeMark(stateIn(drawing, one.canal), one, radius, theme));
    targets.push(one);
  }
  return { marks, targets };
}

/** The largest radius up to the wished one at which no orifice touches another. */
function clearRadius(spots: readonly Spot[], wished: number): number {
  const distances = spots.flatMap((one, at) => spots.slice(at + 1).map(({ x, y }) => Math.hypot(x - one.x, y - one.y)));
  return Math.min(wished, ...distances.map((distance) => distance * 0.46));
}

/** Sizes of the words round a section. */
export interface SectionWords {
  readonly size: number;
  readonly quietSize: number;
}

/** The section with its words: canals at both sides with leaders, buccal above, lingual below, mesial marked; and its edges. */
export function namedSection(drawing: EmblemDrawing, place: SectionPlace, words: SectionWords) {
  const { nodes, targets, frame } = sectionDrawing(drawing, place);
  const named = canalLabels(drawing, targets, { frame, place, words });
  const labels = [...compassLabels(drawing, frame, words), ...named.labels];
  const edges = [
    arrowTip(drawing, frame, words).x,
    frame.centre.x - Math.abs(frame.across) - place.outlineWidth,
    frame.centre.x + Math.abs(frame.across) + place.outlineWidth,
    ...labels.map(labelBox).flatMap(({ left, right }) => [left, right]),
  ];
  return {
    left: Math.min(...edges),
    right: Math.max(...edges),
    nodes: [
      mesialArrow(drawing, frame, words),
      ...nodes.slice(0, 1),
      ...named.leaders,
      ...nodes.slice(1),
      ...labels.map(labelNode),
    ],
    labels,
  } as const;
}

const compassGap = 9;
const arrowRoom = 11;

function compassLabels({ tooth, theme }: EmblemDrawing, frame: SectionFrame, { quietSize }: SectionWords): TextLabel[] {
  const { outer, inner } = sideWords(tooth);
  const { centre, down } = frame;
  const common = { size: quietSize, fill: theme.quiet };
  const below = centre.y + down + compassGap + quietSize * 0.8;
  const sign = Math.sign(frame.across);
  return [
    { ...common, text: outer, x: centre.x, y: centre.y - down - compassGap, anchor: "middle" },
    { ...common, text: inner, x: centre.x, y: below, anchor: "middle" },
    {
      ...common,
      text: "mesial",
      x: mesialWordX(inner, frame, quietSize),
      y: below,
      anchor: sign > 0 ? "start" : "end",
    },
  ];
}

/** The inner end of the word mesial: under the mesial edge of the outline, clear of the word under its middle. */
function mesialWordX(inner: string, { centre, across }: SectionFrame, size: number): number {
  const clear = textWidth(inner, size) / 2 + 14;
  return centre.x + Math.sign(across) * Math.max(clear, Math.abs(across) - textWidth("mesial", size) - arrowRoom / 2);
}

function arrowTip({ tooth }: EmblemDrawing, frame: SectionFrame, { quietSize }: SectionWords): Spot {
  const word = mesialWordX(sideWords(tooth).inner, frame, quietSize);
  return {
    x: word + Math.sign(frame.across) * (textWidth("mesial", quietSize) + arrowRoom),
    y: frame.centre.y + frame.down + compassGap + quietSize * 0.46,
  };
}

/** A small arrow at the outer end of the word mesial. */
function mesialArrow(drawing: EmblemDrawing, frame: SectionFrame, words: SectionWords): SvgNode {
  const tip = arrowTip(drawing, frame, words);
  const back = [-4, 4].map((up) => ({ x: tip.x - Math.sign(frame.across) * 6.5, y: tip.y + up }));
  return element("path", { "data-part": "mesial", d: pathThrough([tip, ...back], true), fill: drawing.theme.quiet });
}

interface LabelRoom {
  readonly frame: SectionFrame;
  readonly place: SectionPlace;
  readonly words: SectionWords;
}

/** Canals to the left and right of the middle get their name on that side, in the order of their height. */
function canalLabels(drawing: EmblemDrawing, targets: readonly Target[], room: LabelRoom) {
  const { centre } = room.frame;
  const near = (target: Target): boolean => Math.abs(target.x - centre.x) < 1;
  const left = targets.filter((target) => !near(target) && target.x < centre.x);
  const right = targets.filter((target) => !near(target) && target.x >= centre.x);
  for (const target of targets.filter(near)) (left.length < right.length ? left : right).push(target);
  const sides = [columnOf(drawing, left, -1, room), columnOf(drawing, right, 1, room)];
  return { labels: sides.flatMap(({ labels }) => labels), leaders: sides.flatMap(({ leaders }) => leaders) };
}

function columnOf(drawing: EmblemDrawing, targets: readonly Target[], sign: 1 | -1, room: LabelRoom) {
  const { theme } = drawing;
  const { frame, place, words } = room;
  const sorted = [...targets].sort((a, b) => a.y - b.y);
  const heights = spacedHeights(
    sorted.map(({ y }) => y),
    words.size * 1.3,
    { from: frame.centre.y - frame.down + words.size * 0.4, to: frame.centre.y + frame.down - words.size * 0.4 },
  );
  const x = frame.centre.x + sign * (Math.abs(frame.across) + 20);
  const labels = sorted.map(({ canal }, at): TextLabel => {
    const y = (heights[at] ?? 0) + words.size * 0.36;
    const fill = isOpenQuestion(stateIn(drawing, canal)) ? theme.accent : theme.ink;
    return { text: canal, x, y, size: words.size, fill, anchor: sign > 0 ? "start" : "end", weight: "semibold" };
  });
  const leaders = sorted.map((target, at) => leader(target, { x: x - sign * 5, y: heights[at] ?? 0 }, place, drawing));
  return { labels, leaders };
}

function leader(target: Spot, end: Spot, place: SectionPlace, { theme }: EmblemDrawing): SvgNode {
  const length = Math.hypot(end.x - target.x, end.y - target.y);
  const share = Math.min(1, (place.orificeRadius + 2) / length);
  const start = { x: target.x + (end.x - target.x) * share, y: target.y + (end.y - target.y) * share };
  const d = pathThrough([start, end]);
  return element("path", { "data-part": "leader", d, stroke: theme.hairline, "stroke-width": 1, fill: "none" });
}

/** Heights as near to those wished for as a least distance lets them be; pushed down first, then up from the end. */
function spacedHeights(
  wished: readonly number[],
  distance: number,
  room: { readonly from: number; readonly to: number },
): readonly number[] {
  const down: number[] = [];
  for (const y of wished) down.push(Math.max(y, room.from, (down.at(-1) ?? Number.NEGATIVE_INFINITY) + distance));
  const up: number[] = [];
  for (const y of [...down].reverse())
    up.push(Math.min(y, room.to, (up.at(-1) ?? Number.POSITIVE_INFINITY) - distance));
  return up.reverse();
}

/** The group that holds a section. */
export const sectionGroup = (nodes: readonly SvgNode[]): SvgNode => group({ "data-part": "section" }, nodes);
