import { z } from "zod";
import { largestToLength } from "../record/cabinet/largest-to-length.ts";
import { instrumentsByName } from "../record/instrument-name.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import type { BodyOf, PartOf } from "../record/parts.ts";
import { alloyWords, movementWords } from "../record/words/visit-words.ts";
import { instrumentSubject } from "./bend-told.ts";

const station = z.object({ atMm: z.number(), diameterMm: z.number(), low: z.number(), high: z.number() });
const told = z.looseObject({ profile: z.array(station).min(2), colour: z.string().optional() });

/** One instrument that was in a canal, as it is drawn. */
export interface InstrumentInCanal {
  /** As `25/.06`. */
  readonly name: string;
  /** Its alloy and movement. */
  readonly says: string;
  readonly profile: z.infer<typeof told>["profile"];
  readonly lengthMm?: number | undefined;
  readonly colour?: string | undefined;
  /** How far its tip stayed short of the working length at its deepest; absent where length or depth is unknown. */
  readonly shortMm?: number | undefined;
  /** It is the largest that went to the working length. */
  readonly isMarked: boolean;
}

/** The instruments of one canal at one visit. */
export interface CanalToScale {
  readonly canal: string;
  /** Working length in mm; absent where the visit's table has none. */
  readonly lengthMm?: number | undefined;
  readonly instruments: readonly InstrumentInCanal[];
  /** The largest that went to length, as `25/.06`; absent where the length or every depth is unknown. */
  readonly largest?: string | undefined;
}

type Use = BodyOf<"visit">["instruments"][number];

/**
 * The instruments of a visit canal by canal, in the order in which canals were entered, each distinct one once.
 * Takes the visit and the entries of the ledger; an instrument whose entry does not stand or refused is left out.
 */
export function instrumentsToScale(visit: PartOf<"visit">, ledger: readonly LedgerEntry[]): readonly CanalToScale[] {
  const { instruments: uses, canals } = visit.body;
  const entered = [...new Set(uses.flatMap(({ canal }) => canal ?? []))];
  return entered.map((canal) => {
    const own = uses.filter((use) => use.canal === canal);
    const lengthMm = canals.find((row) => row.canal === canal)?.workingLengthMm;
    const largest = largestToLength(own, lengthMm);
    const instruments = inOrderOfUse(uses, canal).flatMap(({ name, here }) => {
      const drawn = drawnUse(here, lengthMm, ledger.find(isOf(instrumentSubject(visit.id, name))));
      return drawn === undefined ? [] : [{ name, isMarked: here.some((use) => use === largest), ...drawn }];
    });
    return { canal, lengthMm, instruments, largest: instruments.find(({ isMarked }) => isMarked)?.name };
  });
}

/** The instruments of a canal as it met them, called as the whole visit calls them. */
function inOrderOfUse(uses: readonly Use[], canal: string): readonly { readonly name: string; readonly here: Use[] }[] {
  const named = instrumentsByName(uses).map(({ name, rows }) => {
    const own = rows.filter((row) => uses[row]?.canal === canal);
    return { name, first: own[0] ?? uses.length, here: own.flatMap((row) => uses[row] ?? []) };
  });
  return named.filter(({ here }) => here.length > 0).sort((a, b) => a.first - b.first);
}

const isOf =
  (subject: string) =>
  (entry: LedgerEntry): boolean =>
    entry.topic === "instrument" && entry.subject === subject;

/** One instrument from all its rows in the canal: as deep as it ever went. */
function drawnUse(
  rows: readonly Use[],
  workingLengthMm: number | undefined,
  entry: LedgerEntry | undefined,
): Omit<InstrumentInCanal, "name" | "isMarked"> | undefined {
  const [first] = rows;
  const shape = told.safeParse(entry?.output).data;
  if (first === undefined || shape === undefined) return undefined;
  const depths = rows.flatMap(({ depthMm, depthFrom }) => (depthFrom === "orifice" ? [] : (depthMm ?? [])));
  const shortMm =
    workingLengthMm === undefined || depths.length === 0 ? undefined : workingLengthMm - Math.max(...depths);
  return {
    says: `${alloyWords[first.alloy]}, ${movementWords[first.movement]}`,
    ...{ profile: shape.profile, colour: shape.colour, lengthMm: first.lengthMm },
    shortMm: shortMm === undefined ? undefined : Math.max(0, shortMm),
  };
}
