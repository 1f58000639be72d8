import { instrumentGeometry } from "../instrument-geometry.ts";
import type { BodyOf } from "../parts.ts";
import type { CabinetItemOf } from "./cabinet-item.ts";
import type { UseStep } from "./steps-into-canal.ts";

/** One instrument in one canal, as a visit records it. */
export type InstrumentUse = BodyOf<"visit">["instruments"][number];
/** A canal as far as instruments go into it; without a name where the visit names none. */
export interface CanalEntered {
  readonly canal?: string | undefined;
  readonly workingLengthMm?: number | undefined;
}

/** What stands against a counted file before it is used. */
export interface FileStanding {
  readonly uses: number;
  readonly sterilisations: number;
  readonly turnsNet: number;
}

/** A file that is taken, with what stood against it before; the standing is absent while nothing is known of it. */
export interface FileTaken {
  readonly file: CabinetItemOf<"file">;
  readonly standing: FileStanding | undefined;
}

/**
 * The row that a visit records for a step: geometry and motor copied, so that the row stays true whatever becomes of the
 * cabinet. Gives no depth where the canal's working length is not known or the step ends before the canal begins.
 */
export function useOfStep(step: UseStep, canal: CanalEntered, taken?: FileTaken): InstrumentUse {
  const { id, body } = step.instrument;
  const { rpm, reciprocation, torqueLimitNmm } = body;
  const depthMm = depthOf(canal.workingLengthMm, step.shortByMm);
  const geometry = Object.fromEntries(
    Object.keys(instrumentGeometry).map((name): [string, unknown] => [name, Reflect.get(body, name)]),
  ) as Pick<InstrumentUse, keyof typeof instrumentGeometry>;
  return withoutAbsent({
    canal: canal.canal,
    ...geometry,
    ...{ rpm, reciprocation, torqueLimitNmm, seconds: step.seconds, depthMm, instrument: id },
    file: taken && countedFileOf(taken),
  });
}

function depthOf(workingLengthMm: number | undefined, shortByMm = 0): number | undefined {
  if (workingLengthMm === undefined) return undefined;
  // A hundredth of a mm: lengths are read to a half, and 19.5 - 0.3 must not end in a tail of digits.
  const depthMm = Math.round((workingLengthMm - shortByMm) * 100) / 100;
  return depthMm > 0 ? depthMm : undefined;
}

/** A counted file as a row of a visit names it, with what stood against it before as far as that is known. */
export function countedFileOf({ file, standing }: FileTaken): NonNullable<InstrumentUse["file"]> {
  const { id, body } = file;
  if (standing === undefined) return { id, label: body.label };
  const { uses, turnsNet, sterilisations } = standing;
  return { id, label: body.label, usesBefore: uses, turnsBefore: turnsNet, sterilisationsBefore: sterilisations };
}

/** The same without the fields that hold nothing: the record keeps no empty ones. */
const withoutAbsent = (row: { readonly [Name in keyof InstrumentUse]: InstrumentUse[Name] | undefined }) =>
  Object.fromEntries(Object.entries(row).filter(([, value]) => value !== undefined)) as InstrumentUse;
