import { sizedInstrument } from "../record/instrument-as-told.ts";
import { instrumentName } from "../record/instrument-name.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf } from "../record/parts.ts";
import { type BendTold, bendTold } from "./bend-told.ts";
import { tracesOf } from "./course-in-space.ts";
import { type MarkOf, marksOn } from "./marks-on.ts";
import { lengthOfCourse } from "./place-on-instrument.ts";

type FilmPlace = readonly [number, number];

/** The strain of a seated instrument on a film that its canal was traced on, in the film's pixels. */
export interface StrainedOnFilm {
  readonly film: PartOf<"film">;
  readonly trace: string;
  /** The seated part, tip first. */
  readonly seated: readonly { readonly at: FilmPlace; readonly strain: number }[];
  readonly tightest?: FilmPlace;
  /** Where a place of the instrument lies, mm from its tip. */
  readonly at: (fromTipMm: number) => FilmPlace;
  /** The course is one in space: places stand by their share of the way along the canal. */
  readonly byShare: boolean;
}

/**
 * Where a bend lies on each film that gave its course, the film nearest the day first.
 * Takes the bend as it was read, its day, the parts and the ledger; none where the traces are no longer there.
 */
export function strainOnFilms(told: BendTold, on: string, { parts, ledger }: CaseRead): readonly StrainedOnFilm[] {
  const inSpace = ledger.find(({ id }) => id === told.courseEntry);
  const traces = told.trace === undefined ? (inSpace === undefined ? [] : tracesOf(inSpace)) : [told.trace];
  const days = ({ body }: PartOf<"film">): number => Math.abs(Date.parse(body.takenOn) - Date.parse(on));
  return partsOf(parts, "film")
    .flatMap((film) => marksOn(parts, film.id, "trace").map((mark) => ({ film, mark })))
    .filter(({ mark }) => traces.includes(mark.id))
    .sort((a, b) => days(a.film) - days(b.film))
    .flatMap(({ film, mark }) => onTrace(told, film, mark));
}

/** A case as it is read here. */
export interface CaseRead {
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
}

function onTrace(told: BendTold, film: PartOf<"film">, mark: MarkOf<"trace">): StrainedOnFilm[] {
  const length = lengthOfCourse(told);
  if (length <= 0) return [];
  const place = placesAlong(mark, told);
  const at = (fromTipMm: number): FilmPlace => place((told.tipDepthMm - fromTipMm) / length);
  return [
    {
      ...{ film, trace: mark.id, at, byShare: told.trace === undefined },
      seated: told.profile
        .filter(({ fromTipMm }) => fromTipMm <= told.tipDepthMm)
        .map(({ fromTipMm, strain }) => ({ at: at(fromTipMm), strain })),
      ...(told.fromTipMm === undefined ? {} : { tightest: at(told.fromTipMm) }),
    },
  ];
}

/** Places of a trace by the share of its way, measured in mm where the course is that trace's own. */
function placesAlong({ body: { points } }: MarkOf<"trace">, told: BendTold): (share: number) => FilmPlace {
  const isOwn = told.trace !== undefined && told.course.length === points.length;
  const along = lengthsAlong(isOwn ? told.course : points);
  return (share) => {
    const wanted = Math.min(1, Math.max(0, share)) * (along.at(-1) ?? 0);
    const found = along.findIndex((one) => one >= wanted - 1e-9);
    const next = Math.max(1, found < 0 ? points.length - 1 : found);
    const before = along[next - 1] ?? 0;
    const span = (along[next] ?? 0) - before;
    return between(points[next - 1], points[next], span <= 0 ? 0 : (wanted - before) / span);
  };
}

function lengthsAlong(points: readonly (readonly number[])[]): readonly number[] {
  return points.map((_, index) => lengthOfCourse({ course: points.slice(0, index + 1) }));
}

const between = (from: FilmPlace = [0, 0], to: FilmPlace = from, share = 0): FilmPlace => [
  from[0] + (to[0] - from[0]) * share,
  from[1] + (to[1] - from[1]) * share,
];

/** A bend that can be drawn on a film. */
export interface BendOnFilm {
  readonly entry: LedgerEntry;
  readonly told: BendTold;
  readonly on: StrainedOnFilm;
}

/** Every bend of the case whose course was traced on a film, in the order of the ledger. */
export const bendsOnFilm = (film: string, { parts, ledger }: CaseRead): BendOnFilm[] =>
  ledger
    .filter(({ topic }) => topic === "bend")
    .flatMap((entry) => {
      const told = bendTold(entry);
      const seen = told === undefined ? [] : strainOnFilms(told, bendAbout(entry, parts)?.on ?? "", { parts, ledger });
      const on = seen.find((one) => one.film.id === film);
      return told === undefined || on === undefined ? [] : [{ entry, told, on }];
    });

/** What a bend is about: the instrument, its canal, the day, and whether it broke then. */
export interface BendAbout {
  readonly name: string;
  readonly canal: string;
  readonly on: string;
  readonly broke: boolean;
}

/** See {@link BendAbout}; undefined where its visit or mishap is no longer there. */
export function bendAbout({ subject }: Pick<LedgerEntry, "subject">, parts: readonly Part[]): BendAbout | undefined {
  const [id = "", canal = "", ...name] = subject.replace("bend of ", "").split(" ");
  const visit = partsOf(parts, "visit").find((one) => one.id === id);
  if (visit !== undefined) return { name: name.join(" "), canal, on: visit.body.on, broke: false };
  const mishap = partsOf(parts, "mishap").find((one) => one.id === id);
  const instrument = sizedInstrument(mishap?.body.instrument);
  if (mishap === undefined || instrument === undefined) return undefined;
  return { name: instrumentName(instrument), canal: mishap.body.canal ?? "", on: mishap.body.on, broke: true };
}
