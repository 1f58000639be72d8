import type { ImagePoint } from "../../../core/units.ts";
import type { LabelWish } from "../../../figures/film-labels.ts";
import { type FilmPlacement, type PaneSize, toScreen } from "./film-placement.ts";
import { lineOf, type Mark, markName } from "./mark-shape.ts";
import { isOverMark, type MeasuredMark, measureWords } from "./measured-marks.ts";

/** The colours of names on the film. */
export interface NameColours {
  readonly chosen: string;
  readonly course: string;
  readonly length: string;
}

/** Courses come first: they get the place beside them, the others what is left. */
const order: readonly Mark["body"]["shape"][] = [
  ...(["trace", "fragment", "knownLength", "outline"] as const),
  ...(["crownRoot", "wall", "distance", "spot"] as const),
];

/**
 * The names that want a place on the screen, the most wanted first: the chosen mark's, then courses, lengths, the rest.
 * A mark without a name and one whose place is outside the pane want none.
 */
export function nameWishes(
  marks: readonly Mark[],
  lying: { readonly placement: FilmPlacement; readonly pane: PaneSize },
  chosen: string | undefined,
  colours: NameColours,
): LabelWish[] {
  const wanted = marks.filter(({ body }) => hasName(body)).sort((a, b) => rank(a, chosen) - rank(b, chosen));
  return wanted.flatMap((mark) => {
    const at = placeOfName(mark);
    const near = at && toScreen(lying.placement, lying.pane, at);
    if (near === undefined || !isInside(near, lying.pane)) return [];
    return [{ text: textOf(mark), near, fill: colourOf(mark, chosen, colours) }];
  });
}

/** The words of what was measured, each at its place; those outside the pane want none. */
export function measureWishes(
  measured: readonly MeasuredMark[],
  lying: { readonly placement: FilmPlacement; readonly pane: PaneSize },
  chosen: string | undefined,
  colours: NameColours,
): LabelWish[] {
  return measured.flatMap((one): LabelWish[] => {
    const { text, at } = measureWords(one);
    const near = toScreen(lying.placement, lying.pane, at);
    if (text === "" || !isInside(near, lying.pane)) return [];
    const fill = one.markId === chosen ? colours.chosen : isOverMark(one.measure) ? colours.course : colours.length;
    return [{ text, near, fill }];
  });
}

/** One place in so many of a line is enough to keep a name off it; more would cost time at every step of the hand. */
const everyNth = 8;

/** Places on the screen that names had better not cover: along the lines of all marks. */
export function drawnSpots(
  marks: readonly Mark[],
  lying: { readonly placement: FilmPlacement; readonly pane: PaneSize },
): { readonly x: number; readonly y: number }[] {
  const places = marks.flatMap(({ body }) => lineOf(body).filter((_, index) => index % everyNth === 0));
  return places.map((at) => toScreen(lying.placement, lying.pane, at)).filter((at) => isInside(at, lying.pane));
}

const rank = ({ id, body }: Mark, chosen: string | undefined): number =>
  id === chosen ? -1 : order.indexOf(body.shape);

function hasName(body: Mark["body"]): boolean {
  if (body.shape === "trace") return body.canal !== undefined;
  if (body.shape === "distance" || body.shape === "outline") return body.what !== "";
  return body.shape !== "spot" || body.is !== undefined || body.what !== "";
}

/** A course is named at its apex, an outline at its highest point, anything else where it begins. */
function placeOfName({ body }: Mark): ImagePoint | undefined {
  const line = lineOf(body);
  if (body.shape === "outline") return [...line].sort((a, b) => a.row - b.row)[0];
  return line.at(body.shape === "trace" ? -1 : 0);
}

const textOf = ({ body }: Mark): string => (body.shape === "knownLength" ? `${body.lengthMm} mm` : markName(body));

function colourOf({ id, body }: Mark, chosen: string | undefined, colours: NameColours): string {
  if (id === chosen) return colours.chosen;
  return lengths.includes(body.shape) ? colours.length : colours.course;
}

const lengths: readonly Mark["body"]["shape"][] = ["knownLength", "distance", "crownRoot", "wall"];

const isInside = ({ x, y }: { x: number; y: number }, { width, height }: PaneSize): boolean =>
  x >= 0 && y >= 0 && x <= width && y <= height;
