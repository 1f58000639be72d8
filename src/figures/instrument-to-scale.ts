import { rowName } from "./chance-plot.ts";
import { colourOfStandard } from "./colour-of-standard.ts";
import { linesWithin } from "./lines-within.ts";
import { mmRuler } from "./mm-ruler.ts";
import { element, type Figure, figureOf, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** One instrument by its diameters. */
export interface ScaledInstrument {
  /** As `25/.06`. */
  readonly name: string;
  /** What stands quietly under its name, as its alloy and movement. */
  readonly says?: string | undefined;
  /** From the tip on, mm; at least two stations. */
  readonly profile: readonly {
    readonly atMm: number;
    readonly diameterMm: number;
    readonly low: number;
    readonly high: number;
  }[];
  /** From tip to handle, mm; where it is not known no handle is drawn. */
  readonly lengthMm?: number | undefined;
  /** The colour of the standard's size code by its name; absent for a size that has none. */
  readonly colour?: string | undefined;
  /** How far its tip stayed short of the canal's end, mm; 0 where absent. */
  readonly shortMm?: number | undefined;
  /** Marked as the one that is spoken of. */
  readonly isMarked?: boolean | undefined;
}

/** Instruments at one scale, over a ruler, beside the canal that they went into. */
export interface InstrumentToScale {
  readonly instruments: readonly ScaledInstrument[];
  readonly canal?:
    | {
        readonly name: string;
        readonly lengthMm: number;
        /** Places of the canal that are marked, mm from its end, as where its bend begins. */
        readonly ends?: readonly { readonly atMm: number; readonly words: string }[] | undefined;
      }
    | undefined;
  /** Widths are drawn this many times as large, and that is said; true to scale where absent. */
  readonly widthTimes?: number | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

const viewWidth = 640;
const names = 128;
const plotLeft = names + 14;
const handle = { mm: 3.2, high: 13 } as const;
const [leastRow, between] = [36, 8];

interface Scale {
  readonly x: (mm: number) => number;
  readonly perMm: number;
  readonly times: number;
  readonly theme: Theme;
}

/**
 * Instruments side by side at one true scale, tips to the left over a ruler in mm, the standard's colour at each handle
 * with its name, and the canal's length below them.
 */
export function instrumentToScale(given: InstrumentToScale): Figure {
  const theme = themes[given.theme];
  const { instruments, canal, widthTimes: times = 1 } = given;
  const mostMm = Math.max(10, canal?.lengthMm ?? 0, ...instruments.map(reachOf));
  const perMm = (viewWidth - plotLeft - 62) / (mostMm + handle.mm);
  const scale: Scale = { x: (mm) => plotLeft + mm * perMm, perMm, times, theme };
  let at = 6;
  const rows = instruments.flatMap((instrument) => {
    const name = rowName({ label: instrument.name, says: instrument.says }, { names }, theme);
    const thick = Math.max(...instrument.profile.map(({ high }) => high)) * perMm * times;
    const height = Math.max(leastRow, name.height, thick + 6);
    const nodes = [...name.at(at + (height - name.height) / 2), ...besideHandle(instrument, at + height / 2, scale)];
    const drawn = [...instrumentNodes(instrument, at + height / 2, scale), ...nodes.map(labelNode)];
    at += height + between;
    return drawn;
  });
  const canalRow = canal === undefined ? [] : canalNodes(canal, at, scale);
  const rulerY = at + (canal === undefined ? 0 : canalHeight(canal));
  const said = scaleWords(given);
  const words = labelNode({ text: said, x: plotLeft, y: rulerY + 38, size: 11.5, fill: theme.quiet });
  const nodes = [...rows, ...canalRow, ...mmRuler({ x: scale.x, mostMm, y: rulerY, perMm }, theme), words];
  return figureOf({ width: viewWidth, height: rulerY + 46 }, given.widthPx, alternativeOf(given), nodes);
}

const endOf = ({ profile }: ScaledInstrument): number => profile.at(-1)?.atMm ?? 0;
const reachOf = (one: ScaledInstrument): number => (one.shortMm ?? 0) + (one.lengthMm ?? endOf(one));

const scaleWords = ({ widthTimes = 1, canal }: InstrumentToScale): string =>
  `mm from ${canal === undefined ? "the tip" : "the end of the canal"}; ${widthTimes === 1 ? "true to scale" : `widths drawn ${numberText(widthTimes)} times as large`}`;

function instrumentNodes(one: ScaledInstrument, y: number, scale: Scale): SvgNode[] {
  const { x, perMm, times, theme } = scale;
  const short = one.shortMm ?? 0;
  const side = (of: "diameterMm" | "low" | "high", sign: 1 | -1) =>
    one.profile.map((station) => ({ x: x(short + station.atMm), y: y + (sign * station[of] * perMm * times) / 2 }));
  const outline = [...side("diameterMm", -1), ...side("diameterMm", 1).reverse()];
  const rim = (of: "low" | "high"): string => pathThrough(side(of, -1)) + pathThrough(side(of, 1));
  const ink = one.isMarked === true ? theme.accent : theme.ink;
  return [
    ...shaftNodes(one, y, scale),
    element("path", {
      "data-part": "instrument",
      d: pathThrough(outline, true),
      ...{ fill: ink, "fill-opacity": 0.55, stroke: ink, "stroke-width": 0.8, "stroke-linejoin": "round" },
    }),
    element("path", {
      "data-part": "tolerance",
      d: rim("high") + rim("low"),
      ...{ fill: "none", stroke: theme.quiet, "stroke-width": 0.5 },
    }),
  ];
}

/** The shaft beyond the working part, and the handle where the length is known. */
function shaftNodes(one: ScaledInstrument, y: number, { x, perMm, times, theme }: Scale): SvgNode[] {
  const short = one.shortMm ?? 0;
  const [from, width] = [endOf(one), (one.profile.at(-1)?.diameterMm ?? 0) * perMm * times];
  const to = one.lengthMm ?? from;
  const shaft = element("rect", {
    "data-part": "shaft",
    ...{ x: x(short + from), y: y - width / 2, width: (to - from) * perMm, height: width },
    ...{ fill: theme.ink, "fill-opacity": 0.2, stroke: theme.quiet, "stroke-width": 0.6 },
  });
  const end = element("rect", {
    "data-part": "handle",
    ...{ x: x(short + to), y: y - handle.high / 2, width: handle.mm * perMm, height: handle.high, rx: 3 },
    ...{ fill: colourOfStandard(one.colour) ?? theme.surface, stroke: theme.ink, "stroke-width": 1.2 },
    "stroke-dasharray": one.colour === undefined ? "3 2" : undefined,
  });
  return [...(to > from + 1e-9 ? [shaft] : []), ...(one.lengthMm === undefined ? [] : [end])];
}

const colourWords = ({ colour }: ScaledInstrument): string => colour ?? "no colour";

/** The colour's name beside the handle; a length that is not known is said in its place. */
function besideHandle(one: ScaledInstrument, y: number, { x, perMm, theme }: Scale) {
  const end = (one.shortMm ?? 0) + (one.lengthMm ?? endOf(one)) + (one.lengthMm === undefined ? 0 : handle.mm);
  const lines = [colourWords(one), ...(one.lengthMm === undefined ? ["length not known"] : [])];
  const room = viewWidth - 2 - x(end) - perMm * 0.2 - 4;
  const widest = Math.max(...lines.map((text) => textWidth(text, 11.5)));
  // A handle at the drawing's edge has no room beside it: its words stand over it.
  const isBeside = widest <= room;
  return lines.map((text, at) => ({
    ...{ text, size: 11.5, fill: theme.quiet },
    ...(isBeside
      ? { x: x(end) + 5, y: y + 4 + (at - (lines.length - 1) / 2) * 14 }
      : { x: viewWidth - 2, y: y - handle.high / 2 - 3 - (lines.length - 1 - at) * 13, anchor: "end" as const }),
  }));
}

type Canal = NonNullable<InstrumentToScale["canal"]>;
const endLine = 14;
const canalHeight = ({ ends = [] }: Canal): number => 40 + ends.length * endLine;

/** The canal's length as a bar from its end, with what is marked on it. */
function canalNodes({ name, lengthMm, ends = [] }: Canal, top: number, { x, theme }: Scale): SvgNode[] {
  const y = top + 12;
  const [label = name] = linesWithin(name, names, 12.5);
  const bar = { stroke: theme.course, "stroke-width": 3, fill: "none" };
  return [
    element("path", {
      "data-part": "canal",
      d: `M${numberText(x(0))} ${y}H${numberText(x(lengthMm))}M${numberText(x(lengthMm))} ${y - 7}v14`,
      ...bar,
    }),
    element("circle", { cx: x(0), cy: y, r: 4, fill: theme.course }),
    labelNode({ text: label, x: 0, y: y + 4, size: 12.5, fill: theme.course, weight: "medium" }),
    labelNode({ text: `${lengthMm.toFixed(1)} mm`, x: x(lengthMm) + 6, y: y + 4, size: 12.5, fill: theme.course }),
    // From the crown down: the line of a place farther to the left then passes before the words of those above it.
    ...[...ends]
      .sort((a, b) => b.atMm - a.atMm)
      .flatMap(({ atMm, words }, at) => {
        const foot = y + 18 + at * endLine;
        const width = textWidth(words, 11.5);
        const isLeft = x(atMm) + 5 + width > viewWidth - 2;
        return [
          element("path", {
            "data-part": "end",
            d: `M${numberText(x(atMm))} ${y - 5}V${foot}`,
            ...{ stroke: theme.accent, "stroke-width": 1.2, fill: "none" },
          }),
          labelNode({
            ...{ text: words, y: foot + 1, size: 11.5, fill: theme.accent },
            ...(isLeft ? { x: x(atMm) - 5, anchor: "end" } : { x: x(atMm) + 5 }),
          }),
        ];
      }),
  ];
}

function alternativeOf(given: InstrumentToScale): string {
  const lines = given.instruments.map((one) => {
    const [first, last] = [one.profile[0], one.profile.at(-1)];
    const diameters =
      first === undefined || last === undefined
        ? ""
        : `, ${first.diameterMm.toFixed(2)} mm (${first.low.toFixed(2)} to ${first.high.toFixed(2)}) at ${numberText(first.atMm)} mm, ${last.diameterMm.toFixed(2)} mm (${last.low.toFixed(2)} to ${last.high.toFixed(2)}) at ${numberText(last.atMm)} mm`;
    const length = one.lengthMm === undefined ? "length not known" : `${numberText(one.lengthMm)} mm to the handle`;
    const short = (one.shortMm ?? 0) > 0 ? `, ${(one.shortMm ?? 0).toFixed(1)} mm short of the canal's end` : "";
    const says = one.says === undefined || one.says === "" ? "" : `, ${one.says}`;
    return `${one.name}, ${colourWords(one)}${says}${diameters}, ${length}${short}.`;
  });
  const { canal } = given;
  const ends = (canal?.ends ?? []).map(({ atMm, words }) => `; ${words} at ${atMm.toFixed(1)} mm`).join("");
  const beside = canal === undefined ? "" : ` Canal ${canal.name}, ${canal.lengthMm.toFixed(1)} mm long${ends}.`;
  return `Instruments to scale. ${lines.join(" ")}${beside} In ${scaleWords(given)}.`;
}
