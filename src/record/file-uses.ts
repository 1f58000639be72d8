import { turnsOfUse } from "../core/instrument/turns-of-use.ts";
import { type Part, partsOf } from "./parts.ts";

/** One use of a counted file in one canal of a visit, as tallies read it. */
export interface FileUse {
  readonly visitId: string;
  /** Its row among the instruments of the visit, 0 for the first. */
  readonly row: number;
  readonly fileId: string;
  readonly on: string;
  readonly canal: string | null;
  readonly seconds: number | null;
  /** Turns that are left of both directions, and all turning added up; null where time or speed is not recorded. */
  readonly turnsNet: number | null;
  readonly turnsSwept: number | null;
}

/** A use with the case that it was in. */
export interface FileUseOfCase extends FileUse {
  readonly caseId: string;
  /** Whether the case is one of the demo's. */
  readonly demo: boolean;
}

/** The uses of counted files that the visits of a case record, in the order of the visits and their rows. */
export function fileUsesOf(parts: readonly Part[]): FileUse[] {
  return partsOf(parts, "visit").flatMap(({ id, body }) =>
    body.instruments.flatMap((instrument, row): FileUse[] => {
      const { file, canal = null, seconds = null } = instrument;
      if (file === undefined) return [];
      const turns = turnsOf(instrument);
      return [
        {
          ...{ visitId: id, row, fileId: file.id, on: body.on, canal, seconds },
          ...{ turnsNet: turns?.net ?? null, turnsSwept: turns?.swept ?? null },
        },
      ];
    }),
  );
}

type Turning = Omit<Parameters<typeof turnsOfUse>[0], "seconds"> & { readonly seconds?: number | undefined };

/**
 * The turns of one row: those that are left of both directions, and all turning added up.
 * Gives undefined where time or speed is not recorded, or is 0. Turning to and fro rules over turns a minute.
 */
export function turnsOf({ rpm = 0, reciprocation, seconds = 0 }: Turning) {
  if (seconds === 0 || (rpm === 0 && reciprocation === undefined)) return undefined;
  return turnsOfUse({ rpm, reciprocation, seconds });
}
