import type { AnaestheticInput, PlannedDose } from "./anaesthetic-input.ts";
import type { PlannedRow } from "./anaesthetic-output.ts";
import { cartridgesLeft } from "./cartridges-left.ts";
import { agentMicrograms } from "./dose-amounts.ts";
import { limitTold } from "./dose-rows.ts";
import { agentState, doseState, type Measure, vasoconstrictorState } from "./dose-state.ts";
import { isTooYoung, overLimits, tooYoung } from "./dose-stops.ts";
import { numberOf } from "./exact-ratio.ts";

/**
 * What is left of a planned solution, and what the wanted cartridges would come to.
 * @source docs/methods/anaesthetic.md C8
 */
export function plannedRow(input: AnaestheticInput, planned: PlannedDose, measure: Measure): PlannedRow {
  const { given, ageYears } = input;
  const agent = agentState(planned.agent, given, measure);
  const name = planned.vasoconstrictor?.name;
  const vasoconstrictor = name === undefined ? undefined : vasoconstrictorState(name, given, measure);
  const left = cartridgesLeft(planned, doseState(given, measure), agent, vasoconstrictor);
  const stopped = isTooYoung(planned.agent, ageYears);
  const whole = stopped ? 0 : left.whole;
  return {
    cartridgesLeft: whole,
    mg: agentMicrograms(planned, whole) / 1_000,
    boundBy: stopped ? "agent" : left.boundBy,
    mgPerCartridge: agentMicrograms(planned) / 1_000,
    ...limitTold(agent),
    bounds: [...left.bounds],
    ...(planned.cartridges === undefined ? {} : { wanted: wantedRow(input, planned, measure) }),
  };
}

function wantedRow({ given, ageYears }: AnaestheticInput, planned: PlannedDose, measure: Measure) {
  const { cartridges = 0, ...solution } = planned;
  const state = doseState([...given, { ...solution, cartridges }], measure);
  const stops = overLimits(state).map(({ says }) => `With these cartridges: ${says}`);
  return {
    cartridges,
    mg: agentMicrograms(planned, cartridges) / 1_000,
    fractionSum: numberOf(state.sum),
    overLimit: state.sumIsOver || state.over.length > 0,
    asks: isTooYoung(planned.agent, ageYears) ? [...stops, `${tooYoung}.`] : stops,
  };
}
