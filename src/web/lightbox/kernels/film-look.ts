import type { FilmLook } from "../../../imaging/looked-at.ts";
import { decimalsFor, numberInWords } from "../../parts/figures-in-words.ts";
import type { Film } from "./film-name.ts";

type View = NonNullable<Film["body"]["view"]>;

/** A film shown as its window has it, with nothing done to it for the eye. */
export const plainLook: FilmLook = { gamma: 1, localContrast: 0, sharpening: { amount: 0, radiusPx: 1.5 } };

/** How a film is looked at, as recorded with it. */
export function lookOf(view: Film["body"]["view"]): FilmLook {
  const { gamma, localContrast, sharpening } = plainLook;
  return {
    gamma: view?.gamma ?? gamma,
    localContrast: view?.localContrast ?? localContrast,
    sharpening: view?.sharpening ?? sharpening,
  };
}

/** A look as the record keeps it: only what is not plain. */
export function recordedLook({ gamma, localContrast, sharpening }: FilmLook): Pick<View, (typeof lookNames)[number]> {
  return {
    ...(gamma === plainLook.gamma ? {} : { gamma }),
    ...(localContrast === plainLook.localContrast ? {} : { localContrast }),
    ...(sharpening.amount === 0 ? {} : { sharpening }),
  };
}
const lookNames = ["gamma", "localContrast", "sharpening"] as const;

/** Whether nothing is done to the film for the eye. */
export const isPlainLook = (look: FilmLook): boolean => Object.keys(recordedLook(look)).length === 0;

/** One thing about a look that can be set: its limits, its steps, and its value in a look. */
export interface LookSetting {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly of: (look: FilmLook) => number;
  readonly set: (look: FilmLook, value: number) => FilmLook;
  readonly inWords: (look: FilmLook) => string;
}

const times = (value: number) => numberInWords(value, decimalsFor(value));

/** The settings of a look in the order of their panel. */
export const lookSettings: readonly LookSetting[] = [
  {
    name: "Gamma",
    ...{ least: 0.4, most: 2.5, step: 0.05 },
    of: ({ gamma }) => gamma,
    set: (look, gamma) => ({ ...look, gamma }),
    inWords: ({ gamma }) => times(gamma),
  },
  {
    name: "Local contrast",
    ...{ least: 0, most: 1, step: 0.05 },
    of: ({ localContrast }) => localContrast,
    set: (look, localContrast) => ({ ...look, localContrast }),
    inWords: ({ localContrast }) => `${Math.round(100 * localContrast)} %`,
  },
  {
    name: "Sharpening",
    ...{ least: 0, most: 3, step: 0.1 },
    of: ({ sharpening }) => sharpening.amount,
    set: (look, amount) => ({ ...look, sharpening: { ...look.sharpening, amount } }),
    inWords: ({ sharpening }) => `${times(sharpening.amount)} times`,
  },
  {
    name: "Sharpening radius",
    ...{ least: 0.5, most: 5, step: 0.5 },
    of: ({ sharpening }) => sharpening.radiusPx,
    set: (look, radiusPx) => ({ ...look, sharpening: { ...look.sharpening, radiusPx } }),
    inWords: ({ sharpening }) => `${times(sharpening.radiusPx)} px`,
  },
];

/** What was done when a setting was changed, in words: "Gamma 1.4". */
export const settingInWords = (setting: LookSetting, look: FilmLook): string =>
  `${setting.name} ${setting.inWords(look)}`;

/** The look with a setting one step further, stopped at its limits. */
export function stepped(setting: LookSetting, look: FilmLook, steps: number): FilmLook {
  const value = setting.of(look) + steps * setting.step;
  return setting.set(look, onStep(setting, value));
}

/** A value on the nearest step of a setting, within its limits. */
export function onStep({ least, most, step }: LookSetting, value: number): number {
  const near = least + Math.round((value - least) / step) * step;
  // A sum of steps carries the dust of binary fractions; two digits are finer than any step.
  return Math.round(100 * Math.min(most, Math.max(least, near))) / 100;
}

/** A look in words, for those who can't see it: "gamma 1.4, local contrast 40 %". */
export function lookInWords(look: FilmLook): string {
  const kept = recordedLook(look);
  const [gamma, contrast, amount, radius] = lookSettings.map(({ inWords }) => inWords(look));
  const parts = [
    ...(kept.gamma === undefined ? [] : [`gamma ${gamma}`]),
    ...(kept.localContrast === undefined ? [] : [`local contrast ${contrast}`]),
    ...(kept.sharpening === undefined ? [] : [`sharpened ${amount} at ${radius}`]),
  ];
  return parts.join(", ");
}
