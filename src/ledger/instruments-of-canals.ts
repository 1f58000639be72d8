import { turnsOf } from "../record/file-uses.ts";
import { type SizedInstrument, sizedInstrument } from "../record/instrument-as-told.ts";
import { instrumentName, instrumentsByName } from "../record/instrument-name.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { type Part, type PartOf, partsOf } from "../record/parts.ts";
import { alloyWords, movementWords } from "../record/words/visit-words.ts";
import { bendAtBreakSubject, bendSubject, bendTold, instrumentSubject } from "./bend-told.ts";
import { brokenInstrumentSubject, instrumentTold } from "./instrument-told.ts";
import { type InstrumentInCanal, instrumentsToScale } from "./instruments-to-scale.ts";
import { lifeOfFileSubject, lifeSubject, lifeUntilBreakSubject } from "./life-told.ts";

/** One use of an instrument, as its row of the visit says it. */
export interface UseInCanal {
  /** As `visit-1/instruments/3`. */
  readonly record: string;
  readonly depthMm?: number | undefined;
  readonly depthFrom: "referencePoint" | "orifice";
  readonly seconds?: number | undefined;
  /** All turning added up; absent where time or speed is not recorded. */
  readonly turns?: number | undefined;
  /** Label of the counted file. */
  readonly file?: string | undefined;
}

/** One instrument in one canal with what the ledger says of it. */
export interface InstrumentUsed {
  /** Unlike that of any other of the case. */
  readonly key: string;
  /** As `25/.06`. */
  readonly name: string;
  /** Its alloy and movement. */
  readonly says: string;
  /** Its turns are in no record. */
  readonly byHand: boolean;
  /** It broke here. */
  readonly broke: boolean;
  readonly uses: readonly UseInCanal[];
  /** Absent where its measures could not be told. */
  readonly drawn?: InstrumentInCanal | undefined;
  /** Diameters from its tip on, mm; empty where its measures could not be told. */
  readonly diameters: readonly { readonly atMm: number; readonly diameterMm: number }[];
  readonly bend?: LedgerEntry | undefined;
  readonly life?: LedgerEntry | undefined;
}

/** What was in one canal at one visit. */
export interface CanalAtVisit {
  readonly visit: PartOf<"visit">;
  /** Working length in mm, where the visit's table of canals has it. */
  readonly lengthMm?: number | undefined;
  readonly instruments: readonly InstrumentUsed[];
}

/** One canal through the visits. */
export interface InstrumentsOfCanal {
  readonly canal: string;
  readonly visits: readonly CanalAtVisit[];
}

type Visit = PartOf<"visit">;

/**
 * What went into each canal, visit by visit, with the entries about it; one that broke is told once more as it broke.
 * Takes the parts and the ledger. Gives canals in the order in which they were entered; rows without a canal are in none.
 */
export function instrumentsOfCanals(parts: readonly Part[], ledger: readonly LedgerEntry[]): InstrumentsOfCanal[] {
  const visits = partsOf(parts, "visit").toSorted((a, b) => a.body.on.localeCompare(b.body.on));
  const canals = [...new Set(visits.flatMap(({ body }) => body.instruments.flatMap(({ canal }) => canal ?? [])))];
  return canals.map((canal) => ({
    canal,
    visits: visits.flatMap((visit): CanalAtVisit[] => {
      const instruments = [...usedAt(visit, canal, ledger), ...brokenAt(visit, canal, { parts, ledger })];
      if (instruments.length === 0) return [];
      const lengthMm = visit.body.canals.find((row) => row.canal === canal)?.workingLengthMm;
      return [{ visit, lengthMm, instruments }];
    }),
  }));
}

function usedAt(visit: Visit, canal: string, ledger: readonly LedgerEntry[]): InstrumentUsed[] {
  const rows = visit.body.instruments;
  const toScale = instrumentsToScale(visit, ledger).find((one) => one.canal === canal)?.instruments ?? [];
  return instrumentsByName(rows).flatMap(({ name, geometry, rows: places }): InstrumentUsed[] => {
    const own = places.filter((place) => rows[place]?.canal === canal);
    if (own.length === 0) return [];
    const file = own.flatMap((place) => rows[place]?.file?.id ?? [])[0];
    return [
      {
        ...{ key: `${visit.id} ${canal} ${name}`, name, says: saysOf(geometry), broke: false },
        byHand: geometry.movement === "hand",
        uses: own.flatMap((place) => useOf(visit, place)),
        diameters: diametersIn(entryAbout(ledger, instrumentSubject(visit.id, name))),
        drawn: toScale.find((one) => one.name === name),
        bend: entryAbout(ledger, bendSubject(visit.id, canal, name)),
        life: entryAbout(ledger, file === undefined ? lifeSubject(visit.id, name) : lifeOfFileSubject(file)),
      },
    ];
  });
}

interface CaseRead {
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
}

function brokenAt(visit: Visit, canal: string, { parts, ledger }: CaseRead): InstrumentUsed[] {
  return partsOf(parts, "mishap").flatMap(({ id, body }): InstrumentUsed[] => {
    const { what } = body;
    const instrument = sizedInstrument(body.instrument);
    const isHere = body.visit === undefined ? body.on === visit.body.on : body.visit === visit.id;
    if (what !== "separatedInstrument" || instrument === undefined || body.canal !== canal || !isHere) return [];
    const { tipDepthMm, depthFrom = "referencePoint" } = body.separated ?? {};
    return [
      {
        ...{ key: id, name: instrumentName(instrument), says: saysOf(instrument), broke: true },
        byHand: instrument.movement === "hand",
        uses: [{ record: id, depthMm: tipDepthMm, depthFrom }],
        diameters: diametersIn(entryAbout(ledger, brokenInstrumentSubject(id))),
        bend: entryAbout(ledger, bendAtBreakSubject(id)),
        life: entryAbout(ledger, lifeUntilBreakSubject(id)),
      },
    ];
  });
}

const saysOf = ({ alloy, movement }: Pick<SizedInstrument, "alloy" | "movement">): string =>
  [
    alloy === undefined ? "alloy not told" : alloyWords[alloy],
    movement === undefined ? "movement not told" : movementWords[movement],
  ].join(", ");

function useOf({ id, body }: Visit, place: number): UseInCanal[] {
  const row = body.instruments[place];
  if (row === undefined) return [];
  const { depthMm, depthFrom = "referencePoint", seconds, file } = row;
  const turns = turnsOf(row)?.swept;
  return [{ record: `${id}/instruments/${place}`, depthMm, depthFrom, seconds, turns, file: file?.label }];
}

const diametersIn = (entry: LedgerEntry | undefined): InstrumentUsed["diameters"] =>
  instrumentTold(entry)?.profile ?? [];

const entryAbout = (ledger: readonly LedgerEntry[], subject: string): LedgerEntry | undefined =>
  ledger.find((entry) => entry.subject === subject);

/** The instrument that a canal is shown with at first: the one that it bent most, else the last one in it. */
export function mostBent({ visits }: InstrumentsOfCanal): InstrumentUsed | undefined {
  const all = visits.flatMap(({ instruments }) => instruments);
  const bent = all.flatMap((used) => {
    const told = bendTold(used.bend);
    return told === undefined ? [] : [{ used, strain: told.peakStrain }];
  });
  return bent.sort((a, b) => b.strain - a.strain)[0]?.used ?? all.at(-1);
}
