import { randomUUID } from "node:crypto";
import { join } from "node:path";
import { topicList } from "../ledger/topic-list.ts";
import type { CaseSource } from "../pages/case-source.ts";
import { consentSheet } from "../pages/consent-sheet.ts";
import { deck } from "../pages/deck.ts";
import { handout } from "../pages/handout.ts";
import { letter } from "../pages/letter.ts";
import { comparedPicture, numbersIn, type PageModel } from "../pages/page-model.ts";
import { pieceSheet } from "../pages/piece-sheet.ts";
import { decidedOn } from "../record/decided-on.ts";
import type { DocumentKind } from "../record/document-kind.ts";
import type { LedgerEntry } from "../record/ledger-entry.ts";
import { guideSources } from "../record/mishap-guide/guide-sources.ts";
import type { DocumentRow } from "../store/document-row.ts";
import type { Store } from "../store/store.ts";
import type { Comparisons } from "./comparing/comparisons.ts";
import type { Documents } from "./documents/documents-aside.ts";
import type { Progress } from "./jobs.ts";

const models: Readonly<Record<DocumentKind, (source: CaseSource) => PageModel>> = {
  deck,
  handout,
  consent: consentSheet,
  piece: pieceSheet,
  letter,
};

/** Where a document is made from and kept. */
export interface DocumentPlace {
  readonly store: Store;
  readonly shipped: string;
  readonly now: () => string;
  readonly documents: Pick<Documents, "make">;
  /** Pictures of two films compared. */
  readonly comparisons: Pick<Comparisons, "picture">;
}

/** Makes a document of a case as it stands now and keeps it with the numbers that it carries. */
export async function writeDocument(
  place: DocumentPlace,
  asked: { caseId: string; as: DocumentKind },
  progress: Progress,
): Promise<DocumentRow> {
  const { store, shipped } = place;
  const state = await store.readCase(asked.caseId);
  const settings = await store.settings();
  const topics = topicList();
  const ledger = await store.ledger(asked.caseId);
  const source: CaseSource = {
    ...{
      caseId: asked.caseId,
      parts: state.parts,
      ...{ ledger, kept: await keptEntries(store, decidedOn(state.parts), ledger) },
      notation: settings.notation,
    },
    references: new Map([...guideSources, ...topics.flatMap((topic) => topic.sources)].map((one) => [one.id, one])),
    methods: new Map(topics.map((topic) => [topic.name, topic.summary])),
    theme: "paper",
    firstCall: settings.emergency?.calls[0],
  };
  const model = models[asked.as](source);
  const bytes = await place.documents.make(
    model,
    { readFilm: (name) => readPicture(place, name), fontsFolder: join(shipped, "data", "fonts") },
    progress,
  );
  const at = place.now();
  const row = {
    id: `document-${randomUUID().slice(0, 13)}`,
    caseId: asked.caseId,
    as: asked.as,
    fileName: fileName(model, at),
    at,
    who: settings.who,
    sequence: state.sequence,
  };
  return store.keepDocument({ ...row, numbers: numbersIn(model) }, bytes);
}

/** Entries that decisions name and that no longer hold; one that this record never kept is left out. */
async function keptEntries(
  store: Store,
  ids: readonly string[],
  ledger: readonly LedgerEntry[],
): Promise<LedgerEntry[]> {
  const past = ids.filter((id) => !ledger.some((entry) => entry.id === id));
  const read = await Promise.allSettled(past.map((id) => store.ledgerEntry(id)));
  return read.flatMap((one) => (one.status === "fulfilled" ? [one.value] : []));
}

/** A kept film, or a picture that a comparison made. */
function readPicture({ store, comparisons }: DocumentPlace, name: string): Promise<Uint8Array> {
  const compared = comparedPicture(name);
  return compared === undefined ? store.readFilm(name) : comparisons.picture(compared.ledgerEntry, compared.picture);
}

/** A name that says the tooth and the moment, and nothing about the person. */
function fileName(model: PageModel, at: string): string {
  const stem = model.title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return `${stem}-${at.slice(0, 16).replace(/[:T]/g, "-")}.${model.as === "deck" ? "pptx" : "pdf"}`;
}
