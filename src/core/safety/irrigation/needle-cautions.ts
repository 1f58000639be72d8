import boutsioukis from "../../../../data/boutsioukis-2007/source.json" with { type: "json" };
import thirty from "../../../../data/flow-against-30-mmhg/source.json" with { type: "json" };
import khan from "../../../../data/khan-2013/source.json" with { type: "json" };
import lee from "../../../../data/lee-2018/source.json" with { type: "json" };
import park from "../../../../data/park-shen-2013/source.json" with { type: "json" };
import type { IrrigationInput, Needle, Step } from "./irrigation-input.ts";
import type { IrrigationSettings } from "./irrigation-settings.ts";
import { nameOf } from "./solution-kinds.ts";

/** The sources that needles are judged by. */
export const needleFiles = [lee, khan, park, thirty, boutsioukis];

/**
 * What speaks for care with a needle: its depth, its flow, a locked tip, a root that does not end closed.
 * @source Lee 2018, Khan 2013 and others (seen); docs/methods/irrigation.md C5, C6
 */
export function needleCautions({ sequence, root = {} }: IrrigationInput, settings: IrrigationSettings): string[] {
  const steps = sequence.flatMap((step, index) =>
    step.needle === undefined ? [] : [{ step, index, needle: step.needle }],
  );
  if (steps.length === 0) return [];
  const open = openings(root);
  return [
    ...steps.flatMap(({ step, index, needle }) =>
      [...depth(needle, settings), ...flow(step, needle, settings), ...locked(needle), ...atAnyDepth(open)].map(
        (says) => `Step ${index + 1}, ${nameOf(step.solution)}${gaugeText(needle)}: ${says}`,
      ),
    ),
    `Needles: apical pressure above ${khan.mmHg} mmHg was read above ${khan.mlPerMin} ml/min; ${lee.depthMm} mm short and under ${lee.mlPerMin} ml/min are recommended; other models name ${park.mlPerMin} ml/min, and no extrusion up to ${thirty.mlPerMin} ml/min against ${thirty.mmHg} mmHg. They disagree, and no published figure settles it.`,
  ];
}

function openings(root: NonNullable<IrrigationInput["root"]>): string {
  const names = [
    ...(root.openApex === true ? ["open apex"] : []),
    ...(root.resorption === true ? ["resorption"] : []),
    ...(root.perforation === true ? ["perforation"] : []),
  ];
  return names.join(", ");
}

const gaugeText = ({ gauge }: Needle): string => (gauge === undefined ? "" : `, gauge ${gauge}`);

function depth({ sideVented, depthFromStopMm }: Needle, { openEndedMm, sideVentedMm }: IrrigationSettings): string[] {
  const least = (sideVented ? sideVentedMm : openEndedMm).value;
  if (depthFromStopMm >= least) return [];
  const kind = sideVented ? "a closed, side-vented needle" : "an open needle";
  return [`${kind} ${depthFromStopMm} mm from the stop is nearer than the ${least} mm that are set.`];
}

function flow({ volumeMl, minutes }: Step, { flowMlPerMin }: Needle, settings: IrrigationSettings): string[] {
  const most = settings.flowMlPerMin.value;
  if (flowMlPerMin !== undefined)
    return flowMlPerMin > most ? [`${flowMlPerMin} ml/min are above the ${most} ml/min that are set.`] : [];
  if (minutes === 0 || volumeMl / minutes <= most) return [];
  return [
    `${volumeMl} ml in ${minutes} min are at least ${(volumeMl / minutes).toFixed(1)} ml/min, above the ${most} ml/min that are set.`,
  ];
}

const locked = ({ freeMovement }: Needle): string[] =>
  freeMovement === false
    ? [
        `the needle was locked: nothing flows back beside it. The barrel's pressure reached ${boutsioukis.kPa.low} to ${boutsioukis.kPa.high} kPa with fine needles.`,
      ]
    : [];

const atAnyDepth = (open: string): string[] =>
  open === "" ? [] : [`${open}: no depth of a needle keeps the solution inside; press least, and watch.`];
