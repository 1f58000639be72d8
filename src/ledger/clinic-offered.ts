import lee from "../../data/lee-2018/source.json" with { type: "json" };
import { publishedSets } from "../core/safety/anaesthetic/limit-sets.ts";
import { type VasoconstrictorLimit, vasoconstrictorLimit } from "../core/safety/anaesthetic/vasoconstrictor-limits.ts";
import { irrigationSettings } from "../core/safety/irrigation/irrigation-settings.ts";
import { assumedRatePerMin } from "../core/safety/solvent/rates-asked.ts";

/** A published set of dose limits: whose it is, and what it says of each agent. */
export interface DoseSetOffered {
  readonly name: (typeof publishedSets)[number]["name"];
  readonly says: string;
  readonly rows: readonly {
    readonly agent: string;
    readonly mgPerKg?: number | undefined;
    readonly maxMg?: number | undefined;
    readonly source: string;
  }[];
}

/** The published sets of dose limits that a clinic may choose from. */
export const doseSetsOffered: readonly DoseSetOffered[] = publishedSets.map(({ name, says, limits }) => ({
  ...{ name, says },
  rows: [...limits].map(([agent, { mgPerKg, maxMg, source }]) => ({ agent, mgPerKg, maxMg, source })),
}));

/** What counts of a vasoconstrictor where the clinic gives no limit; of felypressin none was found. */
export const vasoconstrictorTaken: Readonly<
  Record<"epinephrine" | "epinephrineCardiac" | "levonordefrin" | "felypressin", VasoconstrictorLimit | undefined>
> = {
  epinephrine: vasoconstrictorLimit("epinephrine", {}),
  epinephrineCardiac: vasoconstrictorLimit("epinephrine", { cardiacRisk: true }),
  levonordefrin: vasoconstrictorLimit("levonordefrin", {}),
  felypressin: vasoconstrictorLimit("felypressin", {}),
};

const { rinseVolumeMl, rinseMinutes, openEndedMm, sideVentedMm, flowMlPerMin } = irrigationSettings();

/** What sums of irrigation take where the clinic sets nothing, and the source of those that have one; the rest are common practice. */
export const irrigationTaken = {
  rinse: { volumeMl: rinseVolumeMl.value, minutes: rinseMinutes.value },
  openEndedMm: { value: openEndedMm.value, source: lee.id },
  sideVentedMm: { value: sideVentedMm.value },
  flowMlPerMin: { value: flowMlPerMin.value, source: lee.id },
} as const;

/** The share of a dose that goes into the air in a minute where the clinic sets nothing: the lower end published, the upper assumed. */
export const evaporationTaken: { readonly low: number; readonly high: number } = assumedRatePerMin;
