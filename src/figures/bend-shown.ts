import { filmDashes } from "./film-dashes.ts";
import { type Axes, axesOf, plotted } from "./graph-axes.ts";
import { element, type Figure, figureOf, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode, type TextLabel, textWidth } from "./text-label.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** All turning of a course from its orifice to a distance along it. */
export interface TurnSample {
  readonly sMm: number;
  readonly turnDeg: number;
}

/** How a canal turns along its way: in space with its interval of 95 %, and as each film shows it. */
export interface BendShown {
  readonly turn: readonly (TurnSample & { readonly lowDeg: number; readonly highDeg: number })[];
  readonly films: readonly { readonly name: string; readonly profile: readonly TurnSample[] }[];
  /** How many times larger than usual the letters are against the drawing, for one that is shown small. */
  readonly letters?: number | undefined;
  readonly theme: ThemeName;
  readonly widthPx: number;
}

/** The drawing's size, and the plot in it, for letters of a size. */
function placesFor(letters = 1) {
  const view = { width: 400 / letters, height: 216 / letters };
  return { view, plot: { left: 38, top: 28, bottom: view.height - 40 } };
}

/** A graph of true against apparent bend: how far the canal has turned by each place, in space and on each film. */
export function bendShown(given: BendShown): Figure {
  const theme = themes[given.theme];
  const { view, plot } = placesFor(given.letters);
  const axes = axesOf({
    plot: { ...plot, right: view.width - widestName(given) - 10 },
    most: { across: largest(given.turn.map(({ sMm }) => sMm)), up: largest(heightsOf(given)) },
    words: { up: "turned from the orifice, °", across: "mm from the orifice, in space" },
  });
  const nodes = [
    ...plotted(axes, theme),
    band(given, axes, theme),
    ...given.films.map(({ profile }, at) =>
      curve(profile, axes, { stroke: theme.ink, "stroke-width": 1.7, "stroke-dasharray": filmDashes[at % 3] }),
    ),
    curve(given.turn, axes, { "data-part": "curve", stroke: theme.course, "stroke-width": 2.8 }),
    ...endLabels(given, axes, theme).map(labelNode),
  ];
  return figureOf(view, given.widthPx, alternativeOf(given), nodes);
}

/** The names stand to the right of their curves. */
const widestName = ({ turn, films }: BendShown): number =>
  Math.max(
    textWidth(`in space ${endOf(turn)}`, size, "semibold"),
    ...films.map(({ name, profile }) => textWidth(`${name} ${endOf(profile)}`, size)),
  );

const largest = (values: readonly number[]): number => Math.max(0, ...values);

const heightsOf = ({ turn, films }: BendShown): number[] => [
  10,
  ...turn.map(({ highDeg, turnDeg }) => Math.max(highDeg, turnDeg)),
  ...films.flatMap(({ profile }) => profile.map(({ turnDeg }) => turnDeg)),
];

function curve(
  samples: readonly TurnSample[],
  { x, y }: Axes,
  pen: Readonly<Record<string, string | number | undefined>>,
): SvgNode {
  return element("path", {
    d: pathThrough(samples.map(({ sMm, turnDeg }) => ({ x: x(sMm), y: y(turnDeg) }))),
    fill: "none",
    "stroke-linejoin": "round",
    ...pen,
  });
}

function band({ turn }: BendShown, { x, y }: Axes, theme: Theme): SvgNode {
  const upper = turn.map(({ sMm, highDeg }) => ({ x: x(sMm), y: y(highDeg) }));
  const lower = turn.map(({ sMm, lowDeg }) => ({ x: x(sMm), y: y(lowDeg) })).reverse();
  return element("path", {
    "data-part": "band",
    d: pathThrough([...upper, ...lower], true),
    fill: theme.course,
    "fill-opacity": 0.18,
  });
}

const size = 12;
const apart = 15;

/** Each curve is named where it ends; names that would meet are moved apart, in the order of their curves. */
function endLabels({ turn, films }: BendShown, { x, y, plot }: Axes, theme: Theme): readonly TextLabel[] {
  const ends = [
    { text: `in space ${endOf(turn)}`, at: turn.at(-1), fill: theme.course, weight: "semibold" as const },
    ...films.map(({ name, profile }) => ({
      text: `${name} ${endOf(profile)}`,
      at: profile.at(-1),
      fill: theme.ink,
      weight: "regular" as const,
    })),
  ].flatMap(({ at, ...label }) => (at === undefined ? [] : [{ ...label, x: x(at.sMm) + 7, y: y(at.turnDeg) + 4 }]));
  const sorted = ends.sort((a, b) => a.y - b.y);
  let above = 0;
  const down = sorted.map((label) => {
    above = Math.max(label.y, above + apart);
    return { ...label, y: above };
  });
  const over = Math.max(0, (down.at(-1)?.y ?? 0) - (plot.bottom + 2));
  return down.map((label) => ({ ...label, size, y: Math.max(plot.top, label.y - over) }));
}

const endOf = (samples: readonly TurnSample[]): string => `${(samples.at(-1)?.turnDeg ?? 0).toFixed(0)}°`;

function alternativeOf({ turn, films }: BendShown): string {
  const last = turn.at(-1);
  const interval = last === undefined ? "" : ` (${last.lowDeg.toFixed(0)} to ${last.highDeg.toFixed(0)})`;
  const seen = films.map(({ name, profile }) => `${endOf(profile)} on ${name}`).join(", ");
  return `True against apparent bend along the canal. All turning from orifice to foramen: ${endOf(turn)}${interval} in space, ${seen}.`;
}
