import wright from "../../../../data/wright-2017/source.json" with { type: "json" };
import { molarVolume } from "../solvent/molar-volume.ts";
import { clashRule, isKnownToClash } from "./clash-rules.ts";
import type { Step } from "./irrigation-input.ts";
import type { Clash } from "./irrigation-output.ts";
import type { IrrigationSettings } from "./irrigation-settings.ts";
import { isAcid, isRinse, nameOf } from "./solution-kinds.ts";

const litresPerMol = molarVolume(25, 101.325);

/**
 * Solutions that met: one after the other, with nothing between, or too little of a rinse or of a solution nothing is known of.
 * Takes the sequence in the order of use.
 * @source docs/methods/irrigation.md C1 to C4
 */
export const clashesOf = (sequence: readonly Step[], settings: IrrigationSettings): Clash[] =>
  sequence.flatMap((_, second) => clashesWith(second, sequence, settings));

/** Goes back from one step to the first that is known to clash, over rinses and over what nothing is known of. */
function clashesWith(second: number, sequence: readonly Step[], settings: IrrigationSettings): Clash[] {
  const found: Clash[] = [];
  const between: Step[] = [];
  for (let first = second - 1; first >= 0; first -= 1) {
    const one = sequence[first];
    if (one === undefined || isEnough(between, settings)) break;
    found.unshift(...clashBetween(first, second, sequence, between));
    // A step of no volume, as one that is not filled in yet, neither rinses nor keeps apart.
    if (isRinse(one.solution) || !isKnownToClash(nameOf(one.solution))) between.push(one);
    else if (one.volumeMl > 0) break;
  }
  return found;
}

const isEnough = (between: readonly Step[], { rinseVolumeMl, rinseMinutes }: IrrigationSettings): boolean => {
  const { volumeMl, minutes } = amountOf(between);
  return between.length > 0 && volumeMl >= rinseVolumeMl.value && minutes >= rinseMinutes.value;
};

/** To a millionth: sums of decimals carry noise that must not decide. */
const amountOf = (steps: readonly Step[]): Clash["rinse"] => ({
  volumeMl: withoutNoise(steps.reduce((sum, { volumeMl }) => sum + volumeMl, 0)),
  minutes: withoutNoise(steps.reduce((sum, { minutes }) => sum + minutes, 0)),
});

/** A sum of decimals without the noise of their binary form. */
export const withoutNoise = (value: number): number => Math.round(value * 1e6) / 1e6;

function clashBetween(
  first: number,
  second: number,
  sequence: readonly Step[],
  between: readonly Step[],
): readonly Clash[] {
  const [one, other] = [sequence[first], sequence[second]];
  if (one === undefined || other === undefined) return [];
  if (typeof one.solution !== "string" || typeof other.solution !== "string") return [];
  const rule = clashRule(one.solution, other.solution);
  if (rule === undefined) return [];
  const { what, remedy, source, mark } = rule;
  return [
    {
      ...{ first: nameOf(one.solution), second: nameOf(other.solution) },
      steps: [first, second],
      rinse: amountOf(between),
      ...{ what, remedy, source, mark },
      ...chlorineOf(one, other),
    },
  ];
}

/** Were all of the hypochlorite to react with the acid: NaOCl gives Cl2, mass for mass of their moles. */
function chlorineOf(one: Step, other: Step): Pick<Clash, "worstCase"> {
  const steps = [one, other];
  const hypochlorite = steps.find(({ solution }) => solution === "sodium hypochlorite");
  if (hypochlorite?.percent === undefined || !steps.some(({ solution }) => isAcid(nameOf(solution)))) return {};
  const hypochloriteMg = hypochlorite.percent * 10 * hypochlorite.volumeMl;
  const chlorineMg = (hypochloriteMg / wright.hypochloriteGMol) * wright.chlorineGMol;
  return { worstCase: { chlorineMg, chlorineMl: (chlorineMg / wright.chlorineGMol) * litresPerMol } };
}
