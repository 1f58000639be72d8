import { fractureInput } from "../core/instrument/fracture-input.ts";
import { intervalAround } from "../core/radiograph/interval-around.ts";
import { breakInCanal } from "../figures/break-in-canal.ts";
import { type BreakExplanation, breakPlaces } from "../figures/break-places.ts";
import { fragmentAmongPublished } from "../figures/fragment-among-published.ts";
import type { Figure } from "../figures/svg-tree.ts";
import type { ThemeName } from "../figures/theme.ts";
import type { FractureTold } from "../ledger/fracture-told.ts";
import { instrumentTold } from "../ledger/instrument-told.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { explanationWords } from "../record/words/mishap-words.ts";
import { sentence } from "./sentence.ts";
import { sourceName } from "./source-name.ts";

/** How a drawing of a break is shown. */
interface Shown {
  readonly theme: ThemeName;
  readonly widthPx: number;
}
type Entry = Pick<LedgerEntry, "input" | "output">;

/** The file with its piece, and where each explanation expects the break; undefined where its shape is not known. */
export function breakPlacesFigure(
  told: FractureTold,
  { entry, shape }: { readonly entry: Entry | undefined; readonly shape: Entry | undefined },
  shown: Shown,
): Figure | undefined {
  const profile = instrumentTold(shape)?.profile;
  const working = profile?.at(-1);
  if (profile === undefined || working === undefined) return undefined;
  return breakPlaces({
    profile,
    workingMm: working.atMm,
    lengthMm: fractureInput.safeParse(entry?.input).data?.instrument.lengthMm,
    fragment: pieceOf(told),
    explanations: told.explanations.map(explanationOf),
    ...shown,
  });
}

/** The canal with the piece in it; undefined where its course or the tip's depth is not known. */
export function breakInCanalFigure(told: FractureTold, entry: Entry | undefined, shown: Shown): Figure | undefined {
  const asked = fractureInput.safeParse(entry?.input).data;
  const course = asked?.course;
  const points = course !== undefined && "points" in course ? course.points : undefined;
  if (points === undefined || asked?.tipDepthMm === undefined) return undefined;
  return breakInCanal({
    ...{ course: points, tipDepthMm: asked.tipDepthMm, fragment: pieceOf(told) },
    explanations: told.explanations.map(explanationOf),
    ...shown,
  });
}

/** The piece among published lengths; undefined where nothing was measured. */
export function amongPublishedFigure({ fragmentLength }: FractureTold, shown: Shown): Figure | undefined {
  if (fragmentLength === undefined) return undefined;
  const { mm, percentile, series } = fragmentLength;
  return fragmentAmongPublished({
    ...{ mm, percentile },
    series: series.map(({ meanMm, sdMm, n, source }) => ({ mean: meanMm, sd: sdMm, n, source: sourceName(source) })),
    ...shown,
  });
}

const explanationOf = ({
  name,
  places,
  predictedFromTipMm: at,
  posterior,
}: FractureTold["explanations"][number]): BreakExplanation => ({
  ...{ name, words: sentence(explanationWords[name]), mean: at?.mean, sd: at?.sd, places, posterior },
});

function pieceOf({ fragmentLength }: FractureTold) {
  if (fragmentLength === undefined) return undefined;
  const { mm, sigmaMm } = fragmentLength;
  const { low, high } = intervalAround(mm, sigmaMm);
  return { mm, low: Math.max(0, low), high };
}
