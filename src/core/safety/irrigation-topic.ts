import boutsioukis from "../../../data/boutsioukis-2022/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { defineTopic } from "../topic.ts";
import { clashFiles } from "./irrigation/clash-rules.ts";
import { clashesOf, withoutNoise } from "./irrigation/clashes.ts";
import { refuseFaults } from "./irrigation/irrigation-faults.ts";
import { type IrrigationInput, irrigationInput, type Step } from "./irrigation/irrigation-input.ts";
import { type Clash, type IrrigationOutput, irrigationOutput, type Total } from "./irrigation/irrigation-output.ts";
import { type IrrigationSettings, irrigationSettings } from "./irrigation/irrigation-settings.ts";
import { needleCautions, needleFiles } from "./irrigation/needle-cautions.ts";
import { orderCautions } from "./irrigation/order-cautions.ts";
import { protocolRows } from "./irrigation/protocol-rows.ts";
import { nameOf } from "./irrigation/solution-kinds.ts";
import { standingCaution } from "./standing-caution.ts";

const sources = sourcesOf([...clashFiles, ...needleFiles, boutsioukis]);

/**
 * Irrigants that met though they must not, totals, needles and the clinic's contact times.
 * @throws Refusal `input.impossible` for a strength that no such solution has, or a protocol that can't be met.
 * @source the folders of data/ that it names; docs/methods/irrigation.md
 */
export const irrigationTopic = defineTopic({
  name: "irrigation",
  version: 1,
  summary: "Irrigants that met though they must not, with the remedy; totals, needles, the clinic's contact times.",
  input: irrigationInput,
  output: irrigationOutput,
  sources,
  compute: irrigation,
});

function irrigation(input: IrrigationInput): IrrigationOutput {
  refuseFaults(input);
  const { sequence } = input;
  const settings = irrigationSettings(input.settings);
  const totals = totalsOf(sequence);
  const clashes = clashesOf(sequence, settings);
  const protocol = input.settings?.protocol;
  return {
    ...{ totals, clashes, settings },
    ...(protocol === undefined ? {} : { protocol: protocolRows(protocol, totals) }),
    basis: basisOf(input, settings, clashes),
    cautions: [
      ...clashes.map(
        ({ first, second, steps: [one, other] }) => `Steps ${one + 1} and ${other + 1}: ${first} and ${second} met.`,
      ),
      ...needleCautions(input, settings),
      ...orderCautions(input),
      standingCaution,
    ],
    notComputed: missing(input, clashes),
  };
}

/** All of each solution, in the order of first use. */
function totalsOf(sequence: readonly Step[]): Total[] {
  const names = [...new Set(sequence.map(({ solution }) => nameOf(solution)))];
  return names.map((name) => {
    const steps = sequence.filter(({ solution }) => nameOf(solution) === name);
    const sum = (value: (step: Step) => number): number =>
      withoutNoise(steps.reduce((all, one) => all + value(one), 0));
    return {
      solution: name,
      volumeMl: sum(({ volumeMl }) => volumeMl),
      minutes: sum(({ minutes }) => minutes),
      activatedMinutes: sum(({ activated, minutes }) => (activated === true ? minutes : 0)),
    };
  });
}

function missing({ sequence, settings }: IrrigationInput, clashes: readonly Clash[]): IrrigationOutput["notComputed"] {
  const own = new Set(sequence.flatMap(({ solution }) => (typeof solution === "string" ? [] : [solution.own])));
  return [
    ...[...own].map((name) => ({ name: `clashes of ${name}`, why: "what it must not meet is not known here" })),
    ...clashes.flatMap(({ source, worstCase }, index) =>
      source.includes("niosh-chlorine") && worstCase === undefined
        ? [{ name: `clashes[${index}].worstCase`, why: "the strength of the hypochlorite is not given" }]
        : [],
    ),
    ...(settings?.protocol === undefined ? [{ name: "protocol", why: "no protocol of the clinic is given" }] : []),
  ];
}

function basisOf({ sequence }: IrrigationInput, settings: IrrigationSettings, clashes: readonly Clash[]) {
  const { rinseVolumeMl, rinseMinutes } = settings;
  const used = clashes.flatMap(({ source }) => source.split(", "));
  const needles = sequence.some(({ needle }) => needle !== undefined) ? needleFiles.map(({ id }) => id) : [];
  const from = rinseVolumeMl.from === "default" ? "common practice, no published figure" : "set by the clinic";
  return {
    formula: "each solution against the one before it, over rinses and unknown ones; sums of volumes and minutes",
    assumptions: [
      `A rinse keeps two solutions apart from ${rinseVolumeMl.value} ml and ${rinseMinutes.value} min on (${from}).`,
      "Saline, sterile water and ethanol count as rinses; several in a row are added.",
      "A solution whose clashes are not known keeps two others apart from the same volume and time on.",
      "Solutions were used in the order given, none mixed beforehand.",
      "No guideline that was read gives one volume or time: totals are recorded, not scored.",
    ],
    sources: [...new Set([...used, ...needles, boutsioukis.id])].filter((id) => sources.some((one) => one.id === id)),
  };
}
