import type { Receptor } from "./camera.ts";
import { parallelInverse } from "./parallel-inverse.ts";
import { placeOfViews, placesOfViews } from "./places-of-views.ts";
import type { TwoViewInput } from "./two-view-input.ts";
import type { Views } from "./view.ts";

const other = { turnsWithBeam: "fixed", fixed: "turnsWithBeam" } as const;
const words: Record<Receptor, string> = {
  turnsWithBeam: "a receptor that turns with the beam",
  fixed: "a receptor that stays in place",
};
/** By how much in units of the noise the other kind must explain more before a word is said. */
const muchBetter = 16;

/**
 * A caution where the films speak for the other kind of receptor: by two landmarks of known separation, or by a third film,
 * because what two films show can be explained by either kind.
 * @source docs/methods/two-view.md C14
 */
export function receptorCautions(films: Views, input: TwoViewInput, sigmaMm: number): string[] {
  const swapped: Views = { ...films, receptor: other[films.receptor] };
  const known = separationMisfit(films, input, sigmaMm);
  const knownOther = separationMisfit(swapped, input, sigmaMm);
  if (known !== undefined && knownOther !== undefined && known - knownOther > muchBetter)
    return [
      `The known separation of the landmarks speaks for ${words[swapped.receptor]}, not for ${words[films.receptor]}: check how the films were held.`,
    ];
  if (films.views.length < 3) return [];
  const [stated, swap] = [films, swapped].map((one) => squaresOf(one) / sigmaMm ** 2);
  if (stated === undefined || swap === undefined || stated - swap < muchBetter || swap > stated / 2) return [];
  return [
    `The films agree better for ${words[swapped.receptor]} than for ${words[films.receptor]}: check how they were held.`,
  ];
}

function separationMisfit(films: Views, { knownSeparation, views }: TwoViewInput, sigmaMm: number): number | undefined {
  if (knownSeparation === undefined || views.some(({ horizontalAngleDeg }) => horizontalAngleDeg === undefined))
    return undefined;
  const order = [...films.views].sort((a, b) => a.angle - b.angle);
  const sights = [order[0], order.at(-1)].map((view) => {
    const [a, b] = knownSeparation.landmarks.map((name) => view?.landmarks[name]?.u ?? 0);
    return { angle: view?.angle ?? 0, u: (b ?? 0) - (a ?? 0) };
  });
  const [one, two] = sights;
  if (one === undefined || two === undefined) return undefined;
  const { y } = parallelInverse(one, two, films.receptor);
  const noise = Math.hypot(knownSeparation.sigmaMm, (2 * sigmaMm) / Math.sin(two.angle - one.angle));
  return ((y - knownSeparation.buccolingualMm) / noise) ** 2;
}

/** What the paired points and the common landmarks leave on the films. */
function squaresOf(films: Views): number {
  const names = Object.keys(films.views[0]?.landmarks ?? {});
  const marks = names.flatMap((name) => {
    const seen = films.views.flatMap(({ landmarks }) => landmarks[name] ?? []);
    return seen.length === films.views.length ? [placeOfViews(films, seen)] : [];
  });
  return [...placesOfViews(films), ...marks].reduce((sum, { squares }) => sum + squares, 0);
}
