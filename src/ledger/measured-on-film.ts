import { pointsInPlane } from "../core/radiograph/points-in-plane.ts";
import { px } from "../core/units.ts";
import type { InputPath } from "../record/ledger-entry.ts";
import type { BindingContext } from "./binding.ts";
import { filmScale } from "./film-scale.ts";

/** Why nothing on a film has a length. */
export const noScaleWhy = "the film has no scale; mark a known length on it";

/** A mark as far as measuring goes. */
interface MeasuredMark {
  readonly id: string;
  readonly body: { readonly film: string; readonly sigmaPx?: number | undefined };
}
type OnFilm = readonly [number, number];

/** How places of a film become mm, how unsure they are, and where both come from. */
export interface MeasuredOnFilm {
  readonly inMm: (places: readonly OnFilm[]) => [number, number][];
  readonly placeInMm: (place: OnFilm) => [number, number];
  readonly errors: { readonly sigmaMm: number; readonly scaleRelativeSigma?: number };
  /** Where the values of `errors` come from. */
  readonly errorPaths: readonly InputPath[];
  /** Where the scale of an input comes from. */
  readonly scalePath: (input: string) => InputPath;
}

/** The click error of a mark in px: its own, or the person's. */
export const clickSigmaPx = ({ body }: MeasuredMark, { settings }: BindingContext): number =>
  body.sigmaPx ?? settings.clickSigmaPx;

/** Where the click error of a mark comes from. */
export const clickSigmaRecord = ({ id, body }: MeasuredMark): string =>
  body.sigmaPx === undefined ? "settings/clickSigmaPx" : `${id}/sigmaPx`;

/** See {@link MeasuredOnFilm}; undefined where the film of the mark has no scale. */
export function measuredOnFilm(mark: MeasuredMark, context: BindingContext): MeasuredOnFilm | undefined {
  const scale = filmScale(context, mark.body.film);
  if (scale === undefined) return undefined;
  const { mmPerPx, relativeSigma, entryId } = scale;
  const inMm = (places: readonly OnFilm[]): [number, number][] =>
    pointsInPlane(
      places.map(([u, v]) => ({ column: px(u), row: px(v) })),
      mmPerPx,
    ).map(({ x, y }) => [x, y]);
  const placeInMm = (place: OnFilm): [number, number] => inMm([place])[0] ?? [0, 0];
  return {
    ...{ inMm, placeInMm },
    errors: {
      sigmaMm: clickSigmaPx(mark, context) * Math.sqrt(mmPerPx.column * mmPerPx.row),
      ...(relativeSigma === undefined ? {} : { scaleRelativeSigma: relativeSigma }),
    },
    errorPaths: [
      { input: "sigmaMm", record: clickSigmaRecord(mark) },
      ...(relativeSigma === undefined
        ? []
        : [{ input: "scaleRelativeSigma", record: `ledger/${entryId}/relativeSigma` }]),
    ],
    scalePath: (input) => ({ input, record: `ledger/${entryId}/mmPerPx` }),
  };
}
