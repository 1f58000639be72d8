import { roundedDown } from "./dose-amounts.ts";
import type { DoseLimit } from "./limit-sets.ts";

/** What an agent's limit comes to for one person. */
export interface AgentLimit {
  /** Whole micrograms, rounded down. */
  readonly micrograms: number;
  readonly rule: string;
}

/**
 * The limit of an agent for a mass: the lower of mg/kg and the maximum, where both are printed.
 * @source docs/methods/anaesthetic.md C5
 */
export function agentLimit({ mgPerKg, maxMg }: Pick<DoseLimit, "mgPerKg" | "maxMg">, massKg: number): AgentLimit {
  const byMass = mgPerKg === undefined ? undefined : roundedDown(mgPerKg * massKg * 1_000);
  const inAll = maxMg === undefined ? undefined : roundedDown(maxMg * 1_000);
  const sum = `${mgPerKg} mg/kg x ${massKg} kg = ${(byMass ?? 0) / 1_000} mg`;
  if (byMass === undefined) return { micrograms: inAll ?? 0, rule: `${maxMg} mg in all; no mg/kg is printed` };
  if (inAll === undefined) return { micrograms: byMass, rule: `${sum}; no maximum is printed` };
  if (byMass <= inAll) return { micrograms: byMass, rule: `${sum}, not above the maximum of ${maxMg} mg` };
  return { micrograms: inAll, rule: `${maxMg} mg in all; ${sum} is above it` };
}
