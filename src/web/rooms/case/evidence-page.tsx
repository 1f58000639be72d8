import { type FormEvent, useState } from "react";
import type { Operation } from "../../../record/change.ts";
import { type Part, type PartOf, partsOf } from "../../../record/parts.ts";
import { Button } from "../../parts/button.tsx";
import { EditPart } from "../../parts/fields/editing.tsx";
import type { DraftBook } from "../../record/draft-book.ts";
import { newPartId } from "../../record/new-part-id.ts";
import "./evidence-page.css";
import { ClaimForm, ReferenceForm } from "./forms/evidence-forms.tsx";
import type { Moment } from "./spine/spine-moments.ts";

interface EvidencePageOptions {
  readonly parts: readonly Part[];
  readonly moments: readonly Moment[];
  readonly book: DraftBook | undefined;
  readonly record: (words: string, operations: readonly Operation[]) => void;
}

/** What the case rests on: claims for and against its decisions, and the references behind them. */
export function EvidencePage({ parts, moments, book, record }: EvidencePageOptions) {
  const claims = partsOf(parts, "claim");
  const references = partsOf(parts, "reference");
  const decisions = moments.filter(({ part }) => part !== undefined && part.kind !== "case");
  const about = decisions.find(({ part }) => part?.kind === "plan") ?? decisions[0] ?? moments[0];
  const addClaim = (says: string) =>
    about?.part &&
    record("Claim added", [
      put("claim", { about: about.part.id, says, speaks: "for", references: [], state: "unsupported", verdict: "" }),
    ]);
  const addReference = (title: string) =>
    record("Reference added", [
      put("reference", {
        ...{ title, authors: [], journal: "", volume: "", pages: "", doi: "" },
        ...{ design: "notRecorded", takeaway: "" },
      }),
    ]);
  return (
    <article className="moment" aria-labelledby="moment-title">
      <header className="moment-head">
        <h2 id="moment-title" tabIndex={-1}>
          References and claims
        </h2>
        <span className="quiet">what speaks for and against each decision</span>
      </header>
      <section className="form-part">
        <h2>Claims</h2>
        <ul className="evidence-list">
          {claims.map((claim, index) => (
            <Item key={claim.id} part={claim} title={`Claim ${index + 1}`} book={book} record={record}>
              <ClaimForm decisions={decisions} references={references} />
            </Item>
          ))}
        </ul>
        {book && <AddLine label="A claim, in one sentence" button="Add the claim" add={addClaim} />}
      </section>
      <section className="form-part">
        <h2>References</h2>
        <ul className="evidence-list">
          {references.map((reference, index) => (
            <Item key={reference.id} part={reference} title={`Reference ${index + 1}`} book={book} record={record}>
              <ReferenceForm />
            </Item>
          ))}
        </ul>
        {book && <AddLine label="Title of a reference" button="Add the reference" add={addReference} />}
      </section>
    </article>
  );
}

const put = (kind: "claim" | "reference", body: unknown): Operation => ({
  ...{ op: "put", id: newPartId(kind), kind, baseRevision: 0, body },
});

interface ItemOptions {
  readonly part: PartOf<"claim" | "reference">;
  readonly title: string;
  readonly book: DraftBook | undefined;
  readonly record: EvidencePageOptions["record"];
  readonly children: React.ReactNode;
}

const Item = ({ part, title, book, record, children }: ItemOptions) => (
  <li>
    <EditPart part={part} title={title} draft={book?.of(part.id)} book={book}>
      {children}
    </EditPart>
    {book && (
      <Button
        weight="bare"
        onClick={() =>
          record(`${title} taken out`, [{ op: "remove", id: part.id, kind: part.kind, baseRevision: part.revision }])
        }
      >
        Take out<span className="unseen"> {title}</span>
      </Button>
    )}
  </li>
);

interface AddLineOptions {
  readonly label: string;
  readonly button: string;
  readonly add: (text: string) => void;
}

function AddLine({ label, button, add }: AddLineOptions) {
  const [text, setText] = useState("");
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (text.trim() === "") return;
    add(text.trim());
    setText("");
  };
  return (
    <form className="add-line" onSubmit={submit}>
      <input
        className="field-line"
        aria-label={label}
        placeholder={label}
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      <Button type="submit" disabled={text.trim() === ""}>
        {button}
      </Button>
    </form>
  );
}
