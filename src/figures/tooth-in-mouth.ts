import { type ToothFacts, teeth } from "../core/tooth/teeth.ts";
import { element, type Figure, figureOf, numberText, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** Which tooth of the mouth is meant, for who has never seen a row of teeth drawn. */
export interface ToothInMouth {
  readonly tooth: ToothFacts;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const view = { width: 320, height: 336 };
/** The middle line of the rows, and how far each reaches: half its width, and its depth. */
const row = { middle: 160, half: 106, depth: 116, upperFoot: 146, lowerTop: 190 };
/** How broad a tooth is along its row, and how deep across it, against the others. */
const sizes: Readonly<Record<ToothFacts["type"], readonly [along: number, across: number]>> = {
  incisor: [7, 7],
  canine: [7.5, 8.5],
  premolar: [7.5, 10],
  molar: [11, 12],
};
const unit = 2.1;

/** The two rows of teeth of a mouth that is open, seen from in front: the one tooth is filled and named by its side. */
export function toothInMouth({ tooth, theme: name, widthPx }: ToothInMouth): Figure {
  const theme = themes[name];
  const rows = (["upper", "lower"] as const).flatMap((arch) => rowNodes(arch, tooth, theme));
  return figureOf(view, widthPx, alternativeOf(tooth), [...rows, ...labels(theme).map(labelNode)]);
}

function rowNodes(arch: ToothFacts["arch"], meant: ToothFacts, theme: Theme): SvgNode[] {
  const inRow = teeth.filter((one) => one.arch === arch && one.dentition === meant.dentition);
  const [right, left] = [inRow.filter(({ side }) => side === "right"), inRow.filter(({ side }) => side === "left")];
  const across = [...fromTheBack(right), ...fromTheBack(left).reverse()];
  const breadth = across.reduce((sum, { type }) => sum + sizes[type][0], 0);
  let passed = 0;
  return across.map((one) => {
    const [along, deep] = sizes[one.type];
    const share = (passed + along / 2) / breadth;
    passed += along;
    return toothNode(one, { share, along, deep, isMeant: one.twoDigit === meant.twoDigit, theme });
  });
}

/** The teeth of one side, the hindmost first. */
const fromTheBack = (side: readonly ToothFacts[]): ToothFacts[] =>
  [...side].sort((a, b) => Number(b.twoDigit) - Number(a.twoDigit));

interface Placed {
  /** How far along the row, from the patient's right end to the left one. */
  readonly share: number;
  readonly along: number;
  readonly deep: number;
  readonly isMeant: boolean;
  readonly theme: Theme;
}

function toothNode({ arch, twoDigit }: ToothFacts, { share, along, deep, isMeant, theme }: Placed): SvgNode {
  const turn = Math.PI * (1 - share);
  const [x, up] = [row.middle + row.half * Math.cos(turn), row.depth * Math.sin(turn)];
  const y = arch === "upper" ? row.upperFoot - up : row.lowerTop + up;
  const slope = Math.atan2(row.depth * Math.cos(turn), row.half * Math.sin(turn)) * (arch === "upper" ? 1 : -1);
  return element("ellipse", {
    "data-tooth": twoDigit,
    "data-part": isMeant ? "meant" : undefined,
    ...{ cx: rounded(x), cy: rounded(y), rx: (along * unit) / 2, ry: (deep * unit) / 2 },
    transform: `rotate(${numberText((-slope * 180) / Math.PI)} ${numberText(x)} ${numberText(y)})`,
    fill: isMeant ? theme.accent : theme.dentine,
    stroke: isMeant ? theme.accent : theme.quiet,
    "stroke-width": isMeant ? 2 : 1.2,
  });
}

const rounded = (value: number): number => Number(numberText(value));

function labels(theme: Theme): TextLabel[] {
  const words = { size: 19, fill: theme.ink, anchor: "middle" } as const;
  const middle = (row.upperFoot + row.lowerTop) / 2 + 6;
  return [
    { ...words, text: "top row", x: row.middle, y: row.upperFoot - row.depth + 52 },
    { ...words, text: "bottom row", x: row.middle, y: row.lowerTop + row.depth - 38 },
    { ...words, text: "your right", x: row.middle - row.half + 4, y: middle },
    { ...words, text: "your left", x: row.middle + row.half - 4, y: middle },
  ];
}

/** In the words that the patient reads. */
function alternativeOf({ arch, side, twoDigit }: ToothFacts): string {
  const place = Number(twoDigit.charAt(1));
  return `Where the tooth is: in the ${arch === "upper" ? "top" : "bottom"} row, on your ${side} side, number ${place} from the middle.`;
}
