import type { Basis } from "../../basis.ts";
import { assumedRatePerMin, type RatesAsked } from "./rates-asked.ts";
import type { SolventInput } from "./solvent-input.ts";
import { solventSources } from "./solvent-sources.ts";

/** How vapour and extrusion came about, and what was assumed. */
export function solventBasis(input: SolventInput, rates: RatesAsked): Basis {
  const { temperatureC = 25, pressureKPa = 101.325, nearField, solvent } = input;
  return {
    formula:
      nearField === undefined
        ? "V dC/dt = G - Q C, solved exactly; ppm = mg/m3 x molar volume / molar mass"
        : "V_N dC_N/dt = G + b (C_F - C_N); V_F dC_F/dt = b (C_N - C_F) - Q C_F, solved exactly; ppm = mg/m3 x molar volume / molar mass",
    assumptions: [
      nearField === undefined
        ? "The room is mixed throughout: beside the mouth there is more than that."
        : "Two zones, each mixed: a half sphere round the mouth, in which dentist, assistant and patient breathe, and the rest of the room.",
      ...evaporationAssumed(rates),
      `The room is at ${temperatureC} C and ${pressureKPa} kPa${input.temperatureC === undefined || input.pressureKPa === undefined ? "; taken where not told" : ""}.`,
      "What suction recovers is gone before it evaporates; all else evaporates, what passes the foramen and what stays in the tooth as well.",
      "Once the air is saturated only as much evaporates as leaves; the rest counts as not evaporated until then.",
      "Nothing is in the air before the first dose, nobody leaves the room, and no mask holds vapour back.",
      ...(solvent === "xylene"
        ? [
            "Xylene is a mixture: the density of its densest and the vapour pressure of its most volatile isomer are taken.",
          ]
        : []),
    ],
    sources: solventSources.map(({ id }) => id),
  };
}

function evaporationAssumed({ kind, origin, ratePerMin = 0, within }: RatesAsked): string[] {
  if (kind === "instant") return ["Each dose evaporates at once: as much as can be in the air, as early as it can be."];
  const law = kind === "constant" ? "evenly, in 1 / rate minutes" : "by a constant share of what is left";
  if (origin === "given" && within === undefined)
    return [`Each dose evaporates ${law}; the rate, ${short(ratePerMin)} a minute, is as given.`];
  const { low, high } = within ?? assumedRatePerMin;
  const range = `between ${short(low)} and ${short(high)} a minute`;
  return [
    origin === "given"
      ? `Each dose evaporates ${law}; the rate lies ${range}, as given.`
      : `Each dose evaporates ${law}; the rate lies ${range}. That range is an assumption: none is published for a pulp chamber, and its lower end is of watery spills.`,
    `Single numbers are told for ${short(ratePerMin)} a minute, the middle of that range by proportion; within is the least and the most of nine rates along it.`,
  ];
}

const short = (value: number): string => String(Number(value.toPrecision(3)));
