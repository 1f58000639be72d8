import { useQuery, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { Link } from "wouter";
import type { Part } from "../../../record/parts.ts";
import { piecesOf } from "../../../record/pieces.ts";
import type { DocumentView, Job } from "../../../server/api.ts";
import { Button } from "../../parts/button.tsx";
import { Opening } from "../../parts/opening.tsx";
import { PageHead } from "../../parts/page-head.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useShortcut } from "../../parts/shortcuts.ts";
import { useTitle } from "../../parts/use-title.ts";
import { ask, Refused } from "../../record/api.ts";
import { useCase } from "../../record/case-access.tsx";
import { useDocuments } from "../../record/readings.ts";
import { AboutCase } from "../case/case-head.tsx";
import { DocumentEntry } from "./document-entry.tsx";
import "./documents-room.css";

/** The documents of a case: made, listed, given out. */
export function DocumentsRoom({ caseId }: { readonly caseId: string }) {
  const { view, error } = useCase(caseId);
  useTitle(view && `Documents of ${view.facts.tooth}, ${view.facts.pseudonym}`);
  const documents = useDocuments(caseId);
  const making = useMaking(caseId);
  useShortcut("1", "Documents", "Make a deck", () => making.start("deck"));
  useShortcut("2", "Documents", "Make a hand-out", () => making.start("handout"));
  useShortcut("3", "Documents", "Make a consent page", () => view && isPlanned(view.parts) && making.start("consent"));
  useShortcut(
    "4",
    "Documents",
    "Make a page about a piece",
    () => view && isWeighed(view.parts) && making.start("piece"),
  );
  useShortcut("5", "Documents", "Make a letter of hand-back", () => making.start("letter"));
  if (view === undefined && error) return <SayRefusal of={error} whole />;
  if (view === undefined) return <Opening says="Opening the documents" />;
  const list = [...(documents.data ?? [])].sort((a, b) => (a.at < b.at ? 1 : -1));
  return (
    <>
      <PageHead
        end={
          <Link href={`/case/${caseId}`} className="button">
            Back to the case
          </Link>
        }
      >
        <AboutCase facts={view.facts} />
      </PageHead>
      <main className="documents">
        <section className="documents-make" aria-labelledby="documents-make">
          <h2 id="documents-make">Make a document</h2>
          <p>
            It tells the case as it stands now, after change {view.sequence}, without a name or a calendar date. Every
            number in it leads back to the ledger.
          </p>
          <div className="documents-ways">
            <Way
              name="Deck"
              says="one page a moment, for the projector (PPTX)"
              hint="1"
              make={() => making.start("deck")}
              busy={making.busy}
            />
            <Way
              name="Hand-out"
              says="a sheet or two to read (PDF)"
              hint="2"
              make={() => making.start("handout")}
              busy={making.busy}
            />
            <Way
              name="Consent page"
              says={
                isPlanned(view.parts)
                  ? "for the patient, in plain words and large print, to be signed by hand (PDF)"
                  : "for the patient; add a plan to the case first, it is made from it"
              }
              hint="3"
              make={() => making.start("consent")}
              busy={making.busy || !isPlanned(view.parts)}
            />
            {hasPiece(view.parts) && (
              <Way
                name="Page about a piece"
                says={
                  isWeighed(view.parts)
                    ? "for the patient, about the piece of an instrument in the tooth, in plain words and large print (PDF)"
                    : "for the patient; weigh the piece's removal in the case first, it is made from it"
                }
                hint="4"
                make={() => making.start("piece")}
                busy={making.busy || !isWeighed(view.parts)}
              />
            )}
            <Way
              name="Letter of hand-back"
              says={
                view.parts.some(({ kind }) => kind === "handback")
                  ? "for the dentist who restores the tooth: what must be done by when, warnings, what was done, outlook (PDF)"
                  : "for the dentist who restores the tooth; no hand-back is recorded yet, so it says what is missing (PDF)"
              }
              hint="5"
              make={() => making.start("letter")}
              busy={making.busy}
            />
          </div>
          <Progress job={making.job} error={making.error} />
        </section>
        <section className="documents-made" aria-labelledby="documents-made">
          <h2 id="documents-made">Made so far</h2>
          {documents.error && <SayRefusal of={documents.error} retry={() => void documents.refetch()} />}
          {documents.data && list.length === 0 && <p className="quiet">None yet.</p>}
          <ol>
            {list.map((made: DocumentView) => (
              <DocumentEntry
                key={made.id}
                caseId={caseId}
                made={made}
                sequence={view.sequence}
                isFresh={made.id === making.job?.documentId}
              />
            ))}
          </ol>
        </section>
      </main>
    </>
  );
}

/** A consent page tells of a choice. */
const isPlanned = (parts: readonly Part[]): boolean => parts.some(({ kind }) => kind === "plan");

/** There is a piece of an instrument that a page can tell of. */
const hasPiece = (parts: readonly Part[]): boolean => piecesOf(parts).length > 0;

/** Such a page tells what each way came to elsewhere. */
const isWeighed = (parts: readonly Part[]): boolean => parts.some(({ kind }) => kind === "removal");

interface WayOptions {
  readonly name: string;
  readonly says: string;
  readonly hint: string;
  readonly busy: boolean;
  readonly make: () => void;
}

const Way = ({ name, says, hint, busy, make }: WayOptions) => (
  <div className="documents-way">
    <Button weight="strong" hint={hint} disabled={busy} onClick={make}>
      {name}
    </Button>
    <span className="quiet">{says}</span>
  </div>
);

/** Starts a document and follows it until it is made. */
function useMaking(caseId: string) {
  const client = useQueryClient();
  const [jobId, setJobId] = useState<string>();
  const [refused, setRefused] = useState<Refused>();
  const job = useQuery<Job, Refused>({
    queryKey: ["job", jobId],
    queryFn: async () => {
      const now = await ask<Job>(`/jobs/${jobId}`);
      if (now.state !== "running") void client.invalidateQueries({ queryKey: ["documents", caseId] });
      return now;
    },
    enabled: jobId !== undefined,
    refetchInterval: ({ state }) => (state.data === undefined || state.data.state === "running" ? 350 : false),
  });
  const busy = jobId !== undefined && !job.error && (job.data === undefined || job.data.state === "running");
  const start = (as: DocumentView["as"]) => {
    if (busy) return;
    setRefused(undefined);
    ask<Job>(`/cases/${caseId}/documents`, { method: "POST", body: { as } }).then(
      ({ id }) => setJobId(id),
      (error: unknown) => error instanceof Refused && setRefused(error),
    );
  };
  return { start, busy, job: job.data, error: refused ?? job.error ?? undefined };
}

function Progress({ job, error }: { readonly job: Job | undefined; readonly error: Refused | undefined }) {
  if (error) return <SayRefusal of={error} />;
  if (job?.refusal) {
    const { code, message, facts, faults } = job.refusal;
    return <SayRefusal of={new Refused(code, message, facts, faults)} />;
  }
  return (
    <div className="documents-progress" role="status">
      {job?.state === "running" && (
        <>
          <progress max={1} value={job.fraction} aria-label="Progress" />
          <span>{job.says}</span>
        </>
      )}
      {job?.state === "done" && <span>Made. It stands first in the list.</span>}
    </div>
  );
}
