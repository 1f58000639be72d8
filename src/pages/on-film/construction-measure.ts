import { z } from "zod";
import type { FilmMeasure, FilmPoint } from "../../figures/film-measure.ts";
import type { constructionNames } from "../../record/parts/mark.ts";

/** A measure whose construction can be drawn. */
export type ConstructionName = (typeof constructionNames)[number];

const place = z.array(z.number());
const line = z.tuple([place, place]);
const circle = { centre: place, radius: z.number() };
const form = z.object({
  orifice: place,
  departure: place,
  bendEnd: place,
  foramen: place,
  schneider: z.object({ axis: line, line }),
  weine: z.object({ axis: line, apical: line, chord: line }).optional(),
  pruett: z.object({ tangents: z.tuple([line, line]), crossing: place, ...circle }).optional(),
  access: z.object({ axis: line, line }),
  height: z.object({ line, fromDeparture: line, largest: line }),
  tightest: z.object({ at: place, ...circle }).optional(),
});
/** How a curvature entry says that its measures were built. */
export type Built = z.infer<typeof form>;

/** The construction in the output of a curvature entry; undefined where it has none. */
export const builtIn = (output: unknown): Built | undefined =>
  z.object({ construction: form }).safeParse(output).data?.construction;

/** Whether the construction of a measure is there to be drawn. */
export function canDraw(built: Built | undefined, name: ConstructionName): boolean {
  if (built === undefined) return false;
  return !["weine", "pruett", "tightest"].includes(name) || Reflect.get(built, name) !== undefined;
}

type Line = Built["schneider"]["axis"];
/** How a place of a construction lies in the film's pixels. */
type ToFilm = (at: readonly number[]) => FilmPoint;

/**
 * The construction of one measure as lines on a film: what it is built of, and the arc, circle or height that is read.
 * Takes the construction, the measure, how its places lie on the film, and the label. Curves are bent before they are
 * brought to the film, so that they are right where its pixels are not square.
 */
export function constructionMeasure(
  built: Built,
  name: ConstructionName,
  toFilm: ToFilm,
  label: string,
): FilmMeasure | undefined {
  const found = drawn[name](built);
  if (found === undefined) return undefined;
  return {
    kind: "construction",
    lines: found.lines.map((chain) => chain.map(toFilm)),
    read: found.read.map((chain) => chain.map(toFilm)),
    at: toFilm(found.at),
    label,
  };
}

interface Chains {
  readonly lines: readonly (readonly (readonly number[])[])[];
  readonly read: readonly (readonly (readonly number[])[])[];
  readonly at: readonly number[];
}

const drawn: Readonly<Record<ConstructionName, (built: Built) => Chains | undefined>> = {
  schneider: ({ schneider: { axis, line: to }, departure }) => angle(departure, [axis, to]),
  weine: ({ weine }) => weine && angle(weine.apical[0], [beyond(weine.axis), weine.apical], [weine.chord]),
  pruett: ({ pruett, departure, bendEnd }) => {
    if (pruett === undefined) return undefined;
    const { centre, radius, tangents } = pruett;
    const spokes: Line[] = [
      [centre, departure],
      [centre, bendEnd],
    ];
    return { lines: [...tangents, ...spokes], read: [circleOf(centre, radius)], at: centre };
  },
  access: ({ access: { axis, line: to }, orifice }) => angle(orifice, [axis, to]),
  height: ({ height: { line: to, fromDeparture, largest } }) => ({
    lines: [to],
    read: [fromDeparture, largest],
    at: fromDeparture[0],
  }),
  tightest: ({ tightest }) =>
    tightest && {
      lines: [[tightest.centre, tightest.at]],
      read: [circleOf(tightest.centre, tightest.radius)],
      at: tightest.at,
    },
};

/** An angle at a place between two lines, its arc a third of the shorter one's length from the place. */
function angle(at: readonly number[], between: readonly [Line, Line], more: readonly Line[] = []): Chains {
  const [from, to] = between.map(([start, end]) => Math.atan2(down(end) - down(start), across(end) - across(start)));
  const radius = Math.min(...between.map(([, end]) => Math.hypot(across(end) - across(at), down(end) - down(at)))) / 3;
  const arc = from === undefined || to === undefined ? [] : arcOf(at, radius, { from, turn: shortTurn(to - from) });
  return { lines: [...between, ...more], read: [arc], at: arc[Math.floor(arc.length / 2)] ?? at };
}

/** A line drawn half as far again, so that an angle at its end opens. */
const beyond = ([from, to]: Line): Line => [
  from,
  [across(to) + (across(to) - across(from)) / 2, down(to) + (down(to) - down(from)) / 2],
];

const across = (at: readonly number[]): number => at[0] ?? 0;
const down = (at: readonly number[]): number => at[1] ?? 0;

/** The same turn by less than half a circle. */
const shortTurn = (turn: number): number => Math.atan2(Math.sin(turn), Math.cos(turn));

const steps = 96;
const circleOf = (centre: readonly number[], radius: number): number[][] =>
  arcOf(centre, radius, { from: 0, turn: 2 * Math.PI });

function arcOf(
  centre: readonly number[],
  radius: number,
  { from, turn }: { readonly from: number; readonly turn: number },
): number[][] {
  return Array.from({ length: steps + 1 }, (_, step) => {
    const at = from + (turn * step) / steps;
    return [across(centre) + radius * Math.cos(at), down(centre) + radius * Math.sin(at)];
  });
}
