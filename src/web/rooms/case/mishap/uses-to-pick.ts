import { geometryOf, instrumentName } from "../../../../record/instrument-name.ts";
import { type BodyOf, type Part, partsOf } from "../../../../record/parts.ts";
import { alloyWords, movementWords } from "../../../../record/words/visit-words.ts";
import { dayInWords } from "../../../parts/days-in-words.ts";
import { quantityInWords } from "../../../parts/figures-in-words.ts";
import { type Mishap, starts } from "./with-kind.ts";

type Use = BodyOf<"visit">["instruments"][number];

/** An instrument as a visit used it, to be taken for the one that broke. */
export interface UseToPick {
  /** The visit's id and the row, so that each is one. */
  readonly id: string;
  readonly visit: string;
  readonly use: Use;
  /** `25/.06, nickel-titanium, continuous, 19 mm deep in MB1, 2 Jan 2026`. */
  readonly says: string;
}

/** Instruments used up to the day of a mishap, those of its canal where it names one, the last use first. */
export function usesToPick({ on, canal }: Pick<Mishap, "on" | "canal">, parts: readonly Part[]): readonly UseToPick[] {
  const visits = partsOf(parts, "visit")
    .filter(({ body }) => body.on <= on)
    .sort((a, b) => (a.body.on < b.body.on ? 1 : -1));
  const uses = visits.flatMap(({ id, body }) =>
    body.instruments
      .map((use, row): UseToPick => ({ id: `${id}-${row}`, visit: id, use, says: saysOf(use, body.on) }))
      .reverse(),
  );
  const ofCanal = uses.filter(({ use }) => canal !== undefined && use.canal === canal);
  return ofCanal.length > 0 ? ofCanal : uses;
}

function saysOf(use: Use, on: string): string {
  const depth = use.depthMm === undefined ? undefined : `${quantityInWords(use.depthMm, "mm")} deep`;
  const where = [depth, use.canal === undefined ? undefined : `in ${use.canal}`].filter((one) => one !== undefined);
  const name = [instrumentName(use), use.file && `“${use.file.label}”`].filter((one) => one !== undefined).join(" ");
  return [name, alloyWords[use.alloy], movementWords[use.movement], where.join(" "), dayInWords(on)]
    .filter((one) => one !== "")
    .join(", ");
}

/** The mishap with one use taken for the instrument that broke: its geometry, speed, file, depth and visit. */
export function withUse(mishap: Mishap, { visit, use }: Pick<UseToPick, "visit" | "use">): Mishap {
  const begun: NonNullable<Mishap["separated"]> = mishap.separated ?? { ...starts.separated, signs: [] };
  const { file: _file, tipDepthMm: _depth, depthFrom: _from, ...separated } = begun;
  return {
    ...mishap,
    visit,
    ...(use.canal === undefined ? {} : { canal: use.canal }),
    instrument: { ...geometryOf(use), ...(use.rpm === undefined ? {} : { rpm: use.rpm }) },
    separated: {
      ...separated,
      ...(use.depthMm === undefined ? {} : { tipDepthMm: use.depthMm }),
      ...(use.depthFrom === undefined ? {} : { depthFrom: use.depthFrom }),
      ...(use.file === undefined ? {} : { file: use.file }),
    },
  };
}
