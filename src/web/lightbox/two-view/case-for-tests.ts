import { partId } from "../../../core/ids.ts";
import type { LedgerEntry } from "../../../record/ledger-entry.ts";
import { type BodyOf, type Part, type PartKind, partTypes } from "../../../record/parts.ts";
import type { Film } from "../kernels/film-name.ts";
import type { Trace } from "./traced-films.ts";

/** A part as it stands after its first change. */
export const part = <Kind extends PartKind>(kind: Kind, id: string, body: BodyOf<Kind>): Part =>
  ({ id: partId(id), kind, revision: 1, body: partTypes[kind].body.parse(body) }) as Part;

/** A film under an angle. */
export const film = (id: string, change: Partial<BodyOf<"film">> = {}): Film =>
  part("film", id, {
    ...{
      hash: "ab".repeat(32),
      columns: 1000,
      rows: 760,
      bitsStored: 12,
      takenOn: "2025-09-02",
      purpose: "diagnostic",
    },
    ...{ receptor: "turnsWithBeam", uRunsTo: "mesial", horizontalAngleDeg: 0, caption: id },
    technical: { sourceFormat: "png", sourceSha256: "cd".repeat(32), wasColour: false, lossy: false, inverted: false },
    ...change,
  }) as Film;

/** A canal that runs straight down a film from row 100 to row 500. */
export const trace = (id: string, on: string, canal = "DL"): Trace =>
  part("mark", id, {
    ...{ shape: "trace", film: on, canal, polarity: "dark" },
    anchors: [
      [300, 100],
      [300, 500],
    ],
    points: [100, 200, 300, 400, 500].map((row): [number, number] => [300, row]),
  }) as Trace;

/** A named spot on a film. */
export const spot = (id: string, on: string, what: string): Part =>
  part("mark", id, { shape: "spot", film: on, what, at: [10, 20] });

/** An entry of the ledger about a course in space. */
export const entry = (
  about: string,
  more: Partial<Pick<LedgerEntry, "output" | "refused" | "inputPaths">>,
): LedgerEntry =>
  ({
    ...{ id: "entry", caseId: "case", subject: `twoView of ${about}`, topic: "twoView", topicVersion: 2, input: {} },
    ...{ inputPaths: [], at: "2025-09-02T13:00:00Z", ...more },
  }) as unknown as LedgerEntry;
