import type { Fault } from "../refusal.ts";
import type { Instrument, Station } from "./instrument-fields.ts";
import { standardWorkingMm, tipOfSize } from "./iso-series.ts";

/** No root canal instrument is thicker than this, mm. */
const thickestMm = 2;

/**
 * Everything about an instrument that can't be, each with its path.
 * Takes the instrument and the path at which it stands in the input; empty where it is the whole.
 * Gives no fault where a shape can be made of it.
 */
export function instrumentFaults(instrument: Instrument, path = ""): Fault[] {
  const at = (field: string): string => (path === "" ? field : `${path}.${field}`);
  const faults = [...choiceFaults(instrument), ...lengthFaults(instrument), ...tipFaults(instrument)];
  const shape = instrument.profile === undefined ? taperFaults(instrument) : profileFaults(instrument.profile);
  return [...faults, ...shape].map((fault) => ({ ...fault, path: at(fault.path) }));
}

/** The tip's diameter that an instrument states, or undefined. */
export function statedTipMm({ size, tipMm, profile }: Instrument): number | undefined {
  if (tipMm !== undefined) return tipMm;
  if (size !== undefined) return tipOfSize(size);
  const [first] = profile ?? [];
  return first?.atMm === 0 ? first.diameterMm : undefined;
}

/** The end of its working part, mm from the tip. */
export function workingEndMm({ workingMm, profile }: Instrument): number {
  return workingMm ?? Math.min(standardWorkingMm, profile?.at(-1)?.atMm ?? standardWorkingMm);
}

function choiceFaults({ size, tipMm, taper, profile }: Instrument): Fault[] {
  const twice = (one: unknown, other: unknown, path: string, says: string): Fault[] =>
    one !== undefined && other !== undefined ? [{ path, says }] : [];
  return [
    ...twice(size, tipMm, "tipMm", `${tipMm} stands beside size ${size}; one of the two is accepted`),
    ...twice(taper, profile, "profile", `stands beside taper ${taper}; one of the two is accepted`),
    ...(taper === undefined && profile === undefined
      ? [{ path: "taper", says: "is absent; taper or profile is needed" }]
      : []),
  ];
}

function tipFaults(instrument: Instrument): Fault[] {
  const { size, profile, maxDiameterMm } = instrument;
  const tip = statedTipMm(instrument);
  if (tip === undefined)
    return [{ path: "size", says: "is absent; size, tipMm or a profile that begins at 0 mm is needed" }];
  const [first] = profile ?? [];
  const other = first?.atMm === 0 && Math.abs(first.diameterMm - tip) > 1e-9;
  return [
    ...(other && size !== undefined
      ? [{ path: "profile[0].diameterMm", says: `${first.diameterMm} is not the tip of size ${size}, ${tip} mm` }]
      : []),
    ...(other && size === undefined
      ? [{ path: "profile[0].diameterMm", says: `${first.diameterMm} is not the tipMm ${tip}` }]
      : []),
    ...(maxDiameterMm !== undefined && maxDiameterMm < tip
      ? [{ path: "maxDiameterMm", says: `${maxDiameterMm} is less than the tip's ${tip} mm` }]
      : []),
  ];
}

function lengthFaults(instrument: Instrument): Fault[] {
  const { workingMm, lengthMm, profile } = instrument;
  const working = workingEndMm(instrument);
  const last = profile?.at(-1)?.atMm;
  const short: Fault[] =
    workingMm !== undefined && last !== undefined && last < workingMm
      ? [{ path: "profile", says: `ends at ${last} mm, before the working end at ${workingMm} mm` }]
      : [];
  if (lengthMm === undefined || Math.max(working, last ?? 0) <= lengthMm) return short;
  if (workingMm !== undefined && workingMm > lengthMm)
    return [...short, { path: "workingMm", says: `${workingMm} is longer than the instrument, lengthMm ${lengthMm}` }];
  if (last !== undefined)
    return [...short, { path: "profile", says: `ends at ${last} mm, beyond the instrument, lengthMm ${lengthMm}` }];
  return [{ path: "lengthMm", says: `${lengthMm} is shorter than the working part, ${working} mm; give workingMm` }];
}

function taperFaults(instrument: Instrument): Fault[] {
  const { taper } = instrument;
  const tip = statedTipMm(instrument);
  if (taper === undefined || tip === undefined) return [];
  const end = tip + taper * workingEndMm(instrument);
  const widest = Math.min(end, instrument.maxDiameterMm ?? end);
  if (end > 0 && widest <= thickestMm) return [];
  return [{ path: "taper", says: `${taper} gives a diameter of ${end.toFixed(2)} mm at the working end; ${accepted}` }];
}

const accepted = `more than 0 and at most ${thickestMm} mm is accepted`;

function profileFaults(profile: readonly Station[]): Fault[] {
  return profile.flatMap(({ atMm, diameterMm }, index) => {
    const before = profile[index - 1]?.atMm ?? -1;
    return [
      ...(atMm <= before ? [{ path: `profile[${index}].atMm`, says: `${atMm} does not follow on ${before}` }] : []),
      ...(diameterMm <= 0 || diameterMm > thickestMm
        ? [{ path: `profile[${index}].diameterMm`, says: `${diameterMm} is outside; ${accepted}` }]
        : []),
    ];
  });
}
