import { useState } from "react";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import { type BodyOf, type Part, type PartOf, partsOf, thePart } from "../../../../record/parts.ts";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import type { DraftBook } from "../../../record/draft-book.ts";
import { useHidden } from "../../../record/readings.ts";
import { MomentEmblem } from "../moment-emblem.tsx";
import { BeginSearch } from "./begin-search.tsx";
import "./hidden-page.css";
import { SearchSection } from "./search-section.tsx";

/** What the page of hidden canals shows and does. */
export interface HiddenPageOptions {
  readonly caseId: string;
  readonly parts: readonly Part[];
  readonly ledger: readonly LedgerEntry[];
  readonly day: string;
  /** Absent where the case is only looked at. */
  readonly book: DraftBook | undefined;
  readonly noteAnatomy: (body: BodyOf<"anatomy">) => void;
  readonly begin: (feature: BodyOf<"search">["feature"]) => void;
  readonly takeOut: (search: PartOf<"search">) => void;
}

/** Canals and roots that may be there and that nobody has seen: how likely, after which looks, and what to look at next. */
export function HiddenPage({ parts, ledger, day, book, noteAnatomy, ...does }: HiddenPageOptions) {
  const tooth = thePart(parts, "case")?.body.tooth ?? "";
  const known = useHidden(tooth);
  const searches = partsOf(parts, "search");
  const [named, name] = useState("");
  const active = searches.find(({ id }) => id === named)?.id ?? searches[0]?.id;
  const features = known.data?.features ?? [];
  const open = features.filter(({ feature }) => !searches.some(({ body }) => body.feature === feature));
  return (
    <article className="moment" aria-labelledby="moment-title">
      <header className="moment-head">
        <h2 id="moment-title" tabIndex={-1}>
          Hidden canals
        </h2>
        <span className="quiet">what may be there and nobody has seen</span>
      </header>
      <MomentEmblem {...{ parts, day }} {...(book ? { note: noteAnatomy } : {})} />
      {known.error && <SayRefusal of={known.error} retry={() => void known.refetch()} />}
      {searches.map((search) => (
        <SearchSection
          key={search.id}
          {...{ caseId: does.caseId, search, day, book }}
          entry={ledger.find(({ subject }) => subject === `missedCanal of ${search.id}`)}
          feature={features.find(({ feature }) => feature === search.body.feature)}
          films={parts.some(({ kind }) => kind === "film")}
          keys={search.id === active}
          enter={() => name(search.id)}
          takeOut={does.takeOut}
        />
      ))}
      {known.data && features.length === 0 && <NothingPublished tooth={tooth} />}
      {open.length > 0 && (
        <BeginSearch features={open} isFirst={searches.length === 0} {...(book ? { begin: does.begin } : {})} />
      )}
    </article>
  );
}

const NothingPublished = ({ tooth }: { readonly tooth: string }) => (
  <p>
    No published series counts a canal or root that tooth {tooth} may have beside its usual ones, so no chance is given
    here. A root with a lesion of its own, an instrument off a root's centre on an angled film, or a line on the
    chamber's floor still asks for a look.
  </p>
);
