import type { BodyOf, Part } from "../../../record/parts.ts";
import { thePart } from "../../../record/parts.ts";
import { EditPart } from "../../parts/fields/editing.tsx";
import type { DraftBook } from "../../record/draft-book.ts";
import { AnatomyForm } from "./forms/anatomy-form.tsx";
import { MomentEmblem } from "./moment-emblem.tsx";

interface AnatomyPageOptions {
  readonly parts: readonly Part[];
  readonly day: string;
  readonly book: DraftBook | undefined;
  readonly noteAnatomy: (body: BodyOf<"anatomy">) => void;
}

/** The roots and canals of the tooth, with the drawing that every moment carries. */
export function AnatomyPage({ parts, day, book, noteAnatomy }: AnatomyPageOptions) {
  const anatomy = thePart(parts, "anatomy");
  return (
    <article className="moment" aria-labelledby="moment-title">
      <header className="moment-head">
        <h2 id="moment-title" tabIndex={-1}>
          Roots and canals
        </h2>
        <span className="quiet">what the emblem is drawn from</span>
      </header>
      <MomentEmblem {...{ parts, day }} {...(book ? { note: noteAnatomy } : {})} />
      {anatomy && (
        <EditPart part={anatomy} title="Roots and canals" draft={book?.of(anatomy.id)} book={book}>
          <AnatomyForm tooth={thePart(parts, "case")?.body.tooth ?? ""} />
        </EditPart>
      )}
    </article>
  );
}
