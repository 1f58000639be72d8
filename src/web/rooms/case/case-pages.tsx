import { type ReactNode, useMemo, useRef, useState } from "react";
import { useLocation } from "wouter";
import { isReasonOpen } from "../../../ledger/canals-read.ts";
import { type CanalStanding, canalStatesOn } from "../../../record/canal-states.ts";
import type { Operation } from "../../../record/change.ts";
import type { BodyOf, Part, PartOf } from "../../../record/parts.ts";
import type { CaseView } from "../../../server/api.ts";
import { useShortcut } from "../../parts/shortcuts.ts";
import { useDraftBook } from "../../record/case-access.tsx";
import { newPartId } from "../../record/new-part-id.ts";
import { useSettingsAnew } from "../../record/readings.ts";
import { useRecording } from "../../record/use-recording.ts";
import { AnatomyPage } from "./anatomy-page.tsx";
import { Canals } from "./canals.ts";
import { CaseNow } from "./case-now.ts";
import { EvidencePage } from "./evidence-page.tsx";
import { HiddenPage, type HiddenPageOptions } from "./hidden/hidden-page.tsx";
import { nameOfFeature } from "./hidden/search-in-words.ts";
import { InstrumentsPage } from "./instruments/instruments-page.tsx";
import { LedgerPanel } from "./ledger/ledger-panel.tsx";
import { LookedAt } from "./looked-at.tsx";
import { MomentPage } from "./moment-page.tsx";
import { newBodies } from "./new-bodies.ts";
import { isHere, NoSuchMoment } from "./no-such-moment.tsx";
import { RemovalPage } from "./removal/removal-page.tsx";
import { pieceAt, removalStandingPages } from "./removal/removal-pages.ts";
import type { Addable } from "./spine/addable.ts";
import { Spine, type StandingPage } from "./spine/spine.tsx";
import { type Moment, spineMoments, titles } from "./spine/spine-moments.ts";
import { statesAlong } from "./spine/states-along.ts";

interface CasePagesOptions {
  readonly caseId: string;
  readonly view: CaseView;
  readonly moment: string;
  readonly today: string;
  readonly readOnly: boolean;
}

/** Spine, page and ledger of a case as it stands or stood. */
export function CasePages({ caseId, view, moment, today, readOnly }: CasePagesOptions) {
  const { parts, ledger, facts } = view;
  const named = pageOf(moment, parts);
  const moments = useMemo(() => spineMoments(parts, facts.nextOn, today), [parts, facts.nextOn, today]);
  const piece = pieceAt(named, parts);
  const isStanding = piece !== undefined || standingPages.some(({ id }) => id === named);
  const shown = isStanding ? undefined : shownMoment(moments, named);
  const canals = useMemo(() => canalStatesOn(parts), [parts]);
  const states = useMemo(() => statesAlong(parts, moments), [parts, moments]);
  const [looked, look] = useState<string>();
  const lookedAt = moments.find(({ id }) => id === looked);
  const book = useDraftBook(caseId);
  const { tell, add, added, remove, noteAnatomy, searches, takeOutRemoval } = useGestures(caseId, view, today, canals);
  useNeighbourKeys(caseId, moments, shown);
  const shared = { caseId, parts, book: readOnly ? undefined : book, noteAnatomy };
  const isOpen = isReasonOpen(ledger, parts);
  const now = { caseId, parts, ledger, add: readOnly ? undefined : add, added };
  const always = standingPages.map((one) => (one.id === "anatomy" && isOpen ? openAnatomy : one));
  const standing = [...always, ...removalStandingPages(parts)];
  const titleShown = shown?.title ?? standing.find(({ id }) => id === named)?.title ?? "";
  let page: ReactNode = null;
  if (named === "anatomy") page = <AnatomyPage {...{ parts, noteAnatomy }} book={shared.book} day={today} />;
  else if (named === "hidden")
    page = <HiddenPage {...{ caseId, parts, ledger, noteAnatomy, ...searches }} book={shared.book} day={today} />;
  else if (named === "instruments")
    page = <InstrumentsPage {...{ caseId, parts, ledger }} addVisit={readOnly ? undefined : () => add("visit")} />;
  else if (named === "evidence") page = <EvidencePage {...{ parts, moments }} book={shared.book} record={tell} />;
  else if (piece)
    page = (
      <RemovalPage
        {...{ caseId, piece, parts, ledger, noteAnatomy }}
        book={shared.book}
        day={today}
        takeOut={takeOutRemoval}
      />
    );
  else if (shown) page = <MomentPage key={shown.id} {...shared} moment={shown} remove={remove} recordDue={add} />;
  return (
    <CaseNow.Provider value={now}>
      <Canals.Provider value={canals}>
        <div className="case-columns">
          <Spine
            {...{ caseId, moments, states, looked, look }}
            standing={standing}
            shown={shown?.id ?? named}
            {...(readOnly ? {} : { add })}
          />
          <main className="case-page" id="page">
            {lookedAt && <LookedAt moment={lookedAt} parts={parts} stays={titleShown} />}
            {shown && !isHere(moment, shown, parts) && <NoSuchMoment shown={shown} stood={readOnly} />}
            {page}
          </main>
          <LedgerPanel {...{ caseId, ledger, parts, readOnly }} moment={shown} />
        </div>
      </Canals.Provider>
    </CaseNow.Provider>
  );
}

const standingPages: readonly StandingPage[] = [
  { id: "anatomy", title: "Roots and canals", line: "what the emblem is drawn from" },
  { id: "hidden", title: "Hidden canals", line: "what may be there, unseen" },
  { id: "instruments", title: "Instruments used", line: "what went where, and how it was bent" },
  { id: "evidence", title: "References and claims", line: "for and against each decision" },
];

/** The page of the roots while an unusual form stands there without a reason. */
const openAnatomy: StandingPage = {
  ...{ id: "anatomy", title: "Roots and canals", line: "? unusual, without a reason", look: true },
};

/** The page on which a part stands that has no moment of its own. */
function pageOf(named: string, parts: readonly Part[]): string {
  const kind = parts.find(({ id }) => id === named)?.kind;
  if (kind === "anatomy") return "anatomy";
  if (kind === "search") return "hidden";
  return kind === "reference" || kind === "claim" ? "evidence" : named;
}

/** The moment that the address names, else the last that has happened. */
function shownMoment(moments: readonly Moment[], named: string): Moment | undefined {
  const found = moments.find(({ id }) => id === named);
  return found ?? moments.filter(({ shape }) => shape !== "due").at(-1) ?? moments[0];
}

function useGestures(caseId: string, view: CaseView, today: string, canals: Readonly<Record<string, CanalStanding>>) {
  const record = useRecording(caseId);
  const [, go] = useLocation();
  const settingsAnew = useSettingsAnew();
  const tell = (words: string, operations: readonly Operation[]) => record({ words, operations: [...operations] });
  const put = (kind: Addable | "anatomy" | "search", words: string, body: unknown): string => {
    const id = newPartId(kind);
    tell(words, [{ op: "put", id, kind, baseRevision: 0, body }]);
    return id;
  };
  const added = useRef<string>(undefined);
  const open = (kind: Addable, body: unknown) => {
    added.current = put(kind, `${titles[kind]} added`, body);
    go(`/case/${caseId}/${added.current}`);
  };
  const isAddingVisit = useRef(false);
  /** A visit begins with the clinic's settings of this moment; where they can't be read it begins without, and asks for them. */
  const addVisit = async () => {
    if (isAddingVisit.current) return;
    isAddingVisit.current = true;
    const settings = await settingsAnew().catch(() => undefined);
    isAddingVisit.current = false;
    open("visit", newBodies.visit(today, canals, settings?.clinic));
  };
  const add = (kind: Addable) => {
    if (kind === "visit") void addVisit();
    else open(kind, kind === "findings" ? newBodies.findings(today, view.facts.tooth) : newBodies[kind](today));
  };
  const remove: Parameters<typeof MomentPage>[0]["remove"] = (part, title) => {
    tell(`${title} taken out`, [{ op: "remove", id: part.id, kind: part.kind, baseRevision: part.revision }]);
    go(`/case/${caseId}`);
  };
  const noteAnatomy = (body: BodyOf<"anatomy">) => {
    put("anatomy", "Roots and canals noted in the usual form", body);
    go(`/case/${caseId}/anatomy`);
  };
  const searches: Pick<HiddenPageOptions, "begin" | "takeOut"> = {
    begin: (feature) => void put("search", `${nameOfFeature(feature)}: search begun`, { feature, looks: [] }),
    takeOut: ({ id, revision, body }) =>
      tell(`${nameOfFeature(body.feature)}: search taken out`, [
        { op: "remove", id, kind: "search", baseRevision: revision },
      ]),
  };
  const takeOutRemoval = ({ id, revision, body }: PartOf<"removal">) => {
    tell("Removal weighed: taken out", [{ op: "remove", id, kind: "removal", baseRevision: revision }]);
    go(`/case/${caseId}/${body.mishap}`);
  };
  return { tell, add, added, remove, noteAnatomy, searches, takeOutRemoval };
}

function useNeighbourKeys(caseId: string, moments: readonly Moment[], shown: Moment | undefined): void {
  const [, go] = useLocation();
  const step = (by: number) => () => {
    const at = moments.findIndex(({ id }) => id === shown?.id);
    const next = moments[at + by];
    if (next) go(`/case/${caseId}/${next.id}`);
  };
  useShortcut("[", "Case", "The moment before", step(-1));
  useShortcut("]", "Case", "The moment after", step(1));
}
