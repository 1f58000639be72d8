import { percentText } from "../../../../figures/chance-text.ts";
import { type AnaestheticTold, anaestheticIfTold } from "../../../../ledger/anaesthetic-told.ts";
import { heatIfTold } from "../../../../ledger/heat-told.ts";
import { irrigationIfTold } from "../../../../ledger/irrigation-told.ts";
import { limitInWords, nearestLimit, zoneInWords } from "../../../../ledger/solvent-in-words.ts";
import { type SolventTold, solventIfTold } from "../../../../ledger/solvent-told.ts";
import { countOf, quantityInWords, withUnit } from "../../../parts/figures-in-words.ts";
import { capital } from "../../../words/capital.ts";
import type { LedgerLine } from "./ledger-line.ts";

/** A share of a limit goes on above all of it, and never reads as all of it where it is more. */
const percent = (share: number): string =>
  withUnit(share > 1 ? (100 * share).toFixed(share < 1.005 ? 3 : 0) : percentText(share), "%");
const figure = (value: number): number => Number(value.toPrecision(3));
const amount = (value: number, unit: string): string => quantityInWords(figure(value), unit);

/** What was given of each agent against its limit, what is left, and what stops. */
export function anaestheticLines(output: unknown): readonly LedgerLine[] {
  const told = anaestheticIfTold({ topic: "anaesthetic", subject: "", output })?.output;
  if (told === undefined) return [];
  const { agents, vasoconstrictors, planned, stops, limitSet, dosingMass, fractionSum } = told;
  const given = [...agents.map(agentText), ...vasoconstrictors.map(vasoconstrictorText)];
  return [
    { at: "agents", name: "Anaesthetic", value: given.length === 0 ? "none given yet" : given.join("; ") },
    ...stops.map(({ by, says }) => ({ at: `stop ${by}`, name: "Stop", value: says })),
    ...(agents.length < 2
      ? []
      : [{ at: "fractionSum", name: "Agents together, of their limits", value: percent(fractionSum) }]),
    ...agents.map(({ agent, limitMg, limitRule }) => ({
      ...{ at: `limit ${agent}`, name: `Limit of ${agent}` },
      value: `${amount(limitMg, "mg")}: ${limitRule}`,
    })),
    ...(planned === undefined
      ? []
      : [{ at: "planned.cartridgesLeft", name: "Left before a limit", value: leftText(planned) }]),
    { at: "limitSet.name", name: "Whose limits", value: limitSet.says },
    { at: "dosingMass.kg", name: "Reckoned by", value: `${amount(dosingMass.kg, "kg")}, ${dosingMass.says}` },
  ];
}

const agentText = ({ agent, givenMg, fraction }: AnaestheticTold["agents"][number]): string =>
  `${agent} ${amount(givenMg, "mg")}, ${percent(fraction)} of its limit`;

const unitWords = { micrograms: "µg", IU: "IU" } as const;

function vasoconstrictorText({ name, given, unit, fraction }: AnaestheticTold["vasoconstrictors"][number]): string {
  const of = fraction === undefined ? ", no limit known" : `, ${percent(fraction)}`;
  return `${name} ${amount(given, unitWords[unit])}${of}`;
}

const boundWords = { agent: "the agent", vasoconstrictor: "the vasoconstrictor", sum: "all agents together" } as const;

const leftText = ({ cartridgesLeft, mg, boundBy }: NonNullable<AnaestheticTold["planned"]>): string =>
  `${countOf(cartridgesLeft, "cartridge")}, ${amount(mg, "mg")}; bound by ${boundWords[boundBy]}`;

/** The limit that a solvent comes closest to, what is breathed where, and what passed the foramen. */
export function solventLines(output: unknown): readonly LedgerLine[] {
  const told = solventIfTold({ topic: "solvent", subject: "", output })?.output;
  if (told === undefined) return [];
  const { volumeAtFirstLimitMl, extrusion, massBalance } = told;
  return [
    { at: "limits", name: "Solvent in the air", value: nearestText(told) },
    ...zoneLines(told, "near"),
    ...zoneLines(told, "far"),
    ...(volumeAtFirstLimitMl === undefined
      ? []
      : [
          {
            ...{ at: "volumeAtFirstLimitMl", name: "Volume at the first limit" },
            value: amount(volumeAtFirstLimitMl, "ml"),
          },
        ]),
    { at: "massBalance.dispensedMg", name: "Dispensed", value: amount(massBalance.dispensedMg, "mg") },
    ...(extrusion === undefined
      ? []
      : [
          {
            ...{ at: "extrusion.doseMgPerKg", name: "Past the foramen" },
            value: amount(extrusion.doseMgPerKg, "mg/kg"),
          },
          ...extrusion.margins.map(({ mgPerKg, margin }, index) => ({
            ...{ at: `extrusion.margins[${index}].margin`, name: `Against ${figure(mgPerKg)} mg/kg` },
            value: margin < 1 ? `${figure(1 / margin)} times above` : `${figure(margin)} times below`,
          })),
        ]),
  ];
}

const standsWords = {
  ...{ below: "below", at: "at", above: "above" },
  dependsOnRate: "below or above by the rate of evaporation:",
} as const;

function nearestText(told: SolventTold): string {
  const nearest = nearestLimit(told);
  if (nearest === undefined) return "no limit is set in any list that was read";
  const { value, ratio, zone, stands } = nearest;
  return `${amount(value.ppm, "ppm")} in ${zoneInWords(told, zone)}, ${standsWords[stands]} ${limitInWords(nearest)}, ${percent(ratio)} of it`;
}

function zoneLines(told: SolventTold, name: "near" | "far"): LedgerLine[] {
  const zone = told[name];
  if (zone === undefined) return [];
  const where = capital(zoneInWords(told, name));
  const line = (at: "peak" | "mean15" | "mean60" | "mean480", says: string): LedgerLine => {
    const { ppm, within } = zone[at];
    const interval =
      within === undefined ? {} : { interval: `${figure(within.low.ppm)}\u2013${figure(within.high.ppm)}` };
    return { at: `${name}.${at}.ppm`, name: `${where}, ${says}`, value: amount(ppm, "ppm"), ...interval };
  };
  return [line("peak", "at most"), ...([15, 60, 480] as const).map((over) => line(`mean${over}`, `worst ${over} min`))];
}

/** What was used in all, and what met that must not. */
export function irrigationLines(output: unknown): readonly LedgerLine[] {
  const told = irrigationIfTold({ topic: "irrigation", subject: "", output })?.output;
  if (told === undefined) return [];
  const { totals, clashes, protocol = [] } = told;
  const used = totals.map(({ solution, volumeMl }) => `${solution} ${amount(volumeMl, "ml")}`);
  const met = clashes.length === 0 ? [] : [countOf(clashes.length, "clash", "clashes")];
  return [
    { at: "totals", name: "Irrigants", value: [...met, ...used].join(", ") },
    ...clashes.map(({ first, second, what, remedy, steps: [one, other] }) => ({
      ...{ at: `clash ${one} ${other}`, name: `${capital(first)} met ${second}` },
      value: `${what} ${remedy}`,
    })),
    ...totals.map(({ solution, minutes, activatedMinutes }) => ({
      ...{ at: `minutes ${solution}`, name: `${capital(solution)}, time` },
      value:
        activatedMinutes > 0
          ? `${amount(minutes, "min")}, ${amount(activatedMinutes, "min")} of it activated`
          : amount(minutes, "min"),
    })),
    ...protocol.map(({ solution, what, wanted, found, stands }) => ({
      ...{ at: `protocol ${solution} ${what}`, name: `${capital(solution)}, ${protocolWords[what].says}` },
      value: `${amount(found, protocolWords[what].unit)}, ${stands} ${amount(wanted, protocolWords[what].unit)}`,
    })),
  ];
}

const protocolWords = {
  minutesAtLeast: { says: "wanted at least", unit: "min" },
  minutesAtMost: { says: "wanted at most", unit: "min" },
  volumeMlAtLeast: { says: "wanted at least", unit: "ml" },
} as const;

/** How long ultrasound worked, with and without a coolant; never a temperature of this tooth. */
export function heatLines(output: unknown): readonly LedgerLine[] {
  const told = heatIfTold({ topic: "ultrasonicHeat", subject: "", output })?.output;
  if (told === undefined) return [];
  const { totals, longestBurst, longestDryBurst } = told;
  const dry = totals.drySeconds === 0 ? "none of it dry" : `${amount(totals.drySeconds, "s")} of it dry`;
  return [
    {
      ...{ at: "totals.activeSeconds", name: "Ultrasound" },
      value: `${amount(totals.activeSeconds, "s")} in ${countOf(totals.bursts, "burst")}, ${dry}`,
    },
    ...runLine("longestBurst.seconds", "Longest without a rest", longestBurst),
    ...runLine("longestDryBurst.seconds", "Longest dry without a rest", longestDryBurst),
    { at: "totals.restSeconds", name: "Rests between", value: amount(totals.restSeconds, "s") },
  ];
}

const runLine = (at: string, name: string, run: { readonly seconds: number } | undefined): LedgerLine[] =>
  run === undefined ? [] : [{ at, name, value: amount(run.seconds, "s") }];
