import type { InputPath } from "../../../../record/ledger-entry.ts";
import type { Settings } from "../../../../record/settings.ts";
import { clickSigmaOrigin } from "../../../words/click-sigma-words.ts";

/** Where a click error came from: in words, and the address of the place. */
export interface ClickOrigin {
  readonly from: string;
  readonly href: string;
}

const setting = "settings/clickSigmaPx";
const exerciseOf = ({ record }: InputPath): string | undefined => /^(exercise-[^/]+)\//.exec(record)?.[1];

/**
 * Where an input that is a click error came from; undefined for any other. An error that an exercise measured is named
 * once, by its exercise: the setting that carried it gives nothing (an empty list).
 */
export function clickOrigins(
  path: InputPath,
  paths: readonly InputPath[],
  settings: Settings | undefined,
): readonly ClickOrigin[] | undefined {
  const exercise = exerciseOf(path);
  if (exercise !== undefined)
    return [{ from: ofExercise(exercise, settings), href: `/calibration/clicks/${exercise}` }];
  if (path.record !== setting) return undefined;
  if (paths.some((other) => other.input === path.input && exerciseOf(other) !== undefined)) return [];
  if (settings === undefined || settings.clickSigmaFrom !== undefined)
    return [{ from: "the settings of then, not measured", href: "/settings" }];
  return [{ from: clickSigmaOrigin(settings), href: "/calibration" }];
}

const ofExercise = (id: string, settings: Settings | undefined): string =>
  settings?.clickSigmaFrom?.exerciseId === id
    ? clickSigmaOrigin(settings)
    : "your own, measured by another exercise than the one in use";
