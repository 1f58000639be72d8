import { useMemo } from "react";
import type { BodyOf, Part } from "../../../record/parts.ts";
import { thePart } from "../../../record/parts.ts";
import { EditPart } from "../../parts/fields/editing.tsx";
import type { DraftBook } from "../../record/draft-book.ts";
import { useTeeth } from "../../record/readings.ts";
import { useCaseNow } from "./case-now.ts";
import { AnatomyForm } from "./forms/anatomy-form.tsx";
import { faultsAtPlaces } from "./ledger/faults-at-places.ts";
import { MomentEmblem } from "./moment-emblem.tsx";
import { CanalEditor } from "./roots/canal-editor.tsx";

interface AnatomyPageOptions {
  readonly parts: readonly Part[];
  readonly day: string;
  readonly book: DraftBook | undefined;
  readonly noteAnatomy: (body: BodyOf<"anatomy">) => void;
}

/** The roots and canals of the tooth: drawn and edited on the drawing, which every moment then carries. */
export function AnatomyPage({ parts, day, book, noteAnatomy }: AnatomyPageOptions) {
  const anatomy = thePart(parts, "anatomy");
  const { ledger } = useCaseNow();
  const told = useMemo(() => (anatomy ? faultsAtPlaces(ledger, anatomy.id) : []), [ledger, anatomy]);
  const teeth = useTeeth();
  const number = thePart(parts, "case")?.body.tooth ?? "";
  const tooth = teeth.data?.find(({ twoDigit }) => twoDigit === number);
  return (
    <article className="moment" aria-labelledby="moment-title">
      <header className="moment-head">
        <h2 id="moment-title" tabIndex={-1}>
          Roots and canals
        </h2>
        <span className="quiet">what the emblem is drawn from</span>
      </header>
      {anatomy === undefined && <MomentEmblem {...{ parts, day }} {...(book ? { note: noteAnatomy } : {})} />}
      {anatomy && tooth && (
        <EditPart part={anatomy} title="Roots and canals" draft={book?.of(anatomy.id)} book={book} told={told}>
          <CanalEditor {...{ part: anatomy, tooth, book }} />
          <AnatomyForm tooth={number} />
        </EditPart>
      )}
    </article>
  );
}
