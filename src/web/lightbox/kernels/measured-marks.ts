import { type FilmMeasure, labelPlace } from "../../../figures/film-measure.ts";
import type { LedgerReader } from "../../../pages/ledger-reader.ts";
import { measuresOfMark } from "../../../pages/on-film/measures-on-film.ts";
import { pointOf } from "./film-point.ts";
import type { Mark } from "./mark-shape.ts";

/** Something that the ledger measured of a mark, in the film's pixels, with its value in words. */
export interface MeasuredMark {
  readonly markId: string;
  readonly measure: FilmMeasure;
}

/** Measures that draw more than their mark does. */
const more: readonly FilmMeasure["kind"][] = ["construction", "gap", "level"];
/** Measures whose words stand in the place of their mark's name. */
const named: readonly FilmMeasure["kind"][] = [...more, "fragment", "wall", "crownRoot"];

/** What was measured of marks beyond their own lines and names. */
export const measuredMarks = (marks: readonly Mark[], read: LedgerReader): MeasuredMark[] =>
  marks.flatMap((mark) =>
    measuresOfMark(mark, read)
      .filter(({ kind }) => named.includes(kind))
      .map((measure) => ({ markId: mark.id, measure })),
  );

/** Whether a measure draws something over its mark. */
export const isOverMark = ({ kind }: FilmMeasure): boolean => more.includes(kind);

/** Whether a mark is named by its measure, and not by itself as well. */
export const isNamedByMeasure = (mark: Mark, measured: readonly MeasuredMark[]): boolean =>
  mark.body.shape !== "trace" && measured.some(({ markId }) => markId === mark.id);

/** The words of a measure and the place of the film that they belong to. */
export const measureWords = ({ measure }: MeasuredMark) => ({
  text: measure.label ?? "",
  at: pointOf(labelPlace(measure)),
});
