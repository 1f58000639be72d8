import ingle from "../../../data/ingle-bakland-2002/source.json" with { type: "json" };
import kal from "../../../data/kal-2007/source.json" with { type: "json" };
import kazzi from "../../../data/kazzi-2007/source.json" with { type: "json" };
import kuttler from "../../../data/kuttler-1955/source.json" with { type: "json" };
import size08 from "../../../data/size-08-length-2013/source.json" with { type: "json" };
import { type Interval, sourcesOf } from "../basis.ts";
import { percent } from "../percent.ts";
import { faultAt } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { type Mm, mm } from "../units.ts";
import { intervalAround } from "./interval-around.ts";
import { apexState, cautionsOfWorkingLength } from "./working-length-cautions.ts";
import {
  type WorkingLengthInput,
  type WorkingLengthOutput,
  workingLengthInput,
  workingLengthOutput,
} from "./working-length-input.ts";

const sources = sourcesOf([ingle, kuttler, kazzi, kal, size08]);
/** Common practice; no source. */
const usualStopShortMm = 0.5;

/**
 * The length of a canal to its radiographic apex, and where to stop.
 * @throws Refusal `input.impossible` for a stop that leaves no length.
 * @source Ingle JI, Bakland LK, Endodontics, 5th ed., 2002, chapter on working length (memory); docs/methods/working-length
 */
export const workingLengthTopic = defineTopic({
  name: "workingLength",
  version: 1,
  summary: "The length of a canal from a film and an instrument of known length, and where to stop.",
  input: workingLengthInput,
  output: workingLengthOutput,
  sources,
  compute: workingLength,
});

function workingLength(input: WorkingLengthInput): WorkingLengthOutput {
  const radiographic = lengthByRatio(input);
  const interval = intervalAround(radiographic.mm, radiographic.sigmaMm);
  const locatorDifferenceMm = input.locatorMm === undefined ? undefined : input.locatorMm - radiographic.mm;
  const stop = stopOf(input);
  return {
    radiographicMm: radiographic.mm,
    ...(stop === undefined ? {} : stopAt(stop, radiographic.mm, interval)),
    sigmaMm: radiographic.sigmaMm,
    interval,
    ...(locatorDifferenceMm === undefined ? {} : { locatorDifferenceMm }),
    basis: basisOf(input),
    cautions: cautionsOfWorkingLength(input, locatorDifferenceMm),
    notComputed: notComputedOf(input, stop),
  };
}

interface LengthByRatio {
  readonly mm: Mm;
  readonly sigmaMm: Mm;
}

function lengthByRatio({ canalOnFilmMm, known, sigmaMm }: WorkingLengthInput): LengthByRatio {
  if (known === undefined) return { mm: mm(canalOnFilmMm), sigmaMm: mm(sigmaMm) };
  const length = (known.lengthMm * canalOnFilmMm) / known.onFilmMm;
  return { mm: mm(length), sigmaMm: mm(length * Math.hypot(sigmaMm / canalOnFilmMm, sigmaMm / known.onFilmMm)) };
}

function stopOf({ stopShortMm, openApex, apicalResorption }: WorkingLengthInput): number | undefined {
  if (stopShortMm !== undefined) return stopShortMm;
  return apexState(openApex, apicalResorption) === undefined ? usualStopShortMm : undefined;
}

function stopAt(stop: number, radiographicMm: number, { low, high, level }: Interval): Partial<WorkingLengthOutput> {
  if (stop >= radiographicMm)
    throw faultAt("stopShortMm", `${stop} leaves nothing of a canal of ${radiographicMm.toFixed(1)} mm`);
  return {
    recommendedMm: radiographicMm - stop,
    stopShortMm: stop,
    recommendedInterval: { low: low - stop, high: high - stop, level },
  };
}

function basisOf(input: WorkingLengthInput): WorkingLengthOutput["basis"] {
  const readings = `Each reading on the film errs by ${input.sigmaMm} mm (standard deviation), independently.`;
  if (input.known === undefined)
    return {
      formula: "Length on the calibrated film",
      assumptions: [
        readings,
        "The film's scale holds in the plane of the canal.",
        `No constant is taken off: published biases have both signs (${kal.signOfBias} ${kal.id}, ${size08.signOfBias} ${size08.id}).`,
        `${percent(kazzi.unacceptableShare.bisecting)} of bisecting and ${percent(kazzi.unacceptableShare.paralleling)} of paralleling films for length were unacceptable (${kazzi.id}).`,
        ...assumptionsOfStop(input),
      ],
      sources: [kazzi.id, kal.id, size08.id, ...sourcesOfStop(input)],
    };
  return {
    formula: "Known instrument length x canal length on film / instrument length on film",
    assumptions: [
      readings,
      "The instrument is straight and lies in the plane of the canal.",
      "The instrument's length itself is exact.",
      ...assumptionsOfStop(input),
    ],
    sources: [ingle.id, ...sourcesOfStop(input)],
  };
}

/** What is known about the place that the usual stop aims at. */
function assumptionsOfStop(input: WorkingLengthInput): string[] {
  if (stopOf(input) === undefined || input.stopShortMm !== undefined) return [];
  const { rootTipToForamenMm: toForamen, foramenToConstrictionMm: toConstriction } = kuttler;
  const young = (toForamen.young + toConstriction.young).toFixed(2);
  const old = (toForamen.old + toConstriction.old).toFixed(2);
  return [
    `The stop, ${usualStopShortMm} mm short of the radiographic apex, is common practice without a source; the constriction lay ` +
      `${young} mm (18-25 years) and ${old} mm (over 55) from the root tip on average (partly from memory).`,
  ];
}

const sourcesOfStop = (input: WorkingLengthInput): string[] =>
  assumptionsOfStop(input).length === 0 ? [] : [kuttler.id];

function notComputedOf(input: WorkingLengthInput, stop: number | undefined): WorkingLengthOutput["notComputed"] {
  const missing: WorkingLengthOutput["notComputed"] = [];
  if (stop === undefined) {
    const why = `no default stop applies with ${apexState(input.openApex, input.apicalResorption)}; give stopShortMm`;
    for (const name of ["recommendedMm", "stopShortMm", "recommendedInterval"]) missing.push({ name, why });
  }
  if (input.locatorMm === undefined)
    missing.push({ name: "locatorDifferenceMm", why: "no apex locator reading is given" });
  return missing;
}
