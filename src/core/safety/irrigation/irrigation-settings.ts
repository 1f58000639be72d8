import lee from "../../../../data/lee-2018/source.json" with { type: "json" };
import type { IrrigationInput } from "./irrigation-input.ts";
import type { IrrigationOutput, Setting } from "./irrigation-output.ts";

/** See the output. */
export type IrrigationSettings = IrrigationOutput["settings"];

/** No source that was read has one figure for a rinse, nor for a side-vented needle: common practice, to be set. */
const usual = { rinseVolumeMl: 2, rinseMinutes: 1, sideVentedMm: 2 };

/**
 * The settings that count, each with where it is from.
 * @source Lee 2018 (seen) for open needles and flow, else common practice; docs/methods/irrigation.md C3
 */
export function irrigationSettings(asked: IrrigationInput["settings"] = {}): IrrigationSettings {
  return {
    rinseVolumeMl: setting(asked.rinse?.volumeMl, usual.rinseVolumeMl),
    rinseMinutes: setting(asked.rinse?.minutes, usual.rinseMinutes),
    openEndedMm: setting(asked.openEndedMm, lee.depthMm),
    sideVentedMm: setting(asked.sideVentedMm, usual.sideVentedMm),
    flowMlPerMin: setting(asked.flowMlPerMin, lee.mlPerMin),
  };
}

const setting = (asked: number | undefined, otherwise: number): Setting =>
  asked === undefined ? { value: otherwise, from: "default" } : { value: asked, from: "input" };
