import { type ReactNode, useEffect, useRef, useState } from "react";
import type { CabinetItem } from "../../../record/cabinet/cabinet-item.ts";
import { cabinetKindWords } from "../../../record/words/cabinet-words.ts";
import { Button } from "../../parts/button.tsx";
import { DemoMark } from "../../parts/demo-mark.tsx";
import { EditPart } from "../../parts/fields/editing.tsx";
import type { Draft } from "../../record/draft-book.ts";
import { useCabinetNow } from "./cabinet-now.ts";
import { FilePage } from "./file-page.tsx";
import { InstrumentPage } from "./instrument-page.tsx";
import { nameOfItem, titleOfItem } from "./item-names.ts";
import { SequencePage } from "./sequence-page.tsx";
import { StockPage } from "./stock-page.tsx";
import { templatesNaming } from "./stock-state.ts";
import { TemplatePage } from "./template-page.tsx";

interface CabinetItemPageOptions {
  readonly item: CabinetItem;
  readonly draft: Draft | undefined;
}

/** The page of one item: what it is, edited in place, and what is known of it. */
export function CabinetItemPage({ item, draft }: CabinetItemPageOptions) {
  const { book } = useCabinetNow();
  return (
    <article className="cabinet-item" ref={useFirstFieldWhenAdded(item.id)} aria-labelledby="cabinet-item">
      <header className="cabinet-item-head">
        <h2 id="cabinet-item" tabIndex={-1}>
          {nameOfItem(item)}
        </h2>
        <span className="quiet">{cabinetKindWords[item.kind].toLowerCase()}</span>
        {item.body.demo === true && <DemoMark />}
      </header>
      <EditPart part={item} title={titleOfItem(item)} draft={draft} book={book}>
        {pageOf(item)}
      </EditPart>
      <TakeOut item={item} />
    </article>
  );
}

/** An item that was just added is written at once: its first field is gone to, what stands there is written over. */
function useFirstFieldWhenAdded(id: string) {
  const { added } = useCabinetNow();
  const article = useRef<HTMLElement>(null);
  useEffect(() => {
    if (added.current !== id) return;
    added.current = undefined;
    const field = article.current?.querySelector("input");
    field?.focus();
    field?.select();
  }, [added, id]);
  return article;
}

function pageOf(item: CabinetItem): ReactNode {
  if (item.kind === "instrument") return <InstrumentPage item={item} />;
  if (item.kind === "file") return <FilePage item={item} />;
  if (item.kind === "stock") return <StockPage item={item} />;
  return item.kind === "template" ? <TemplatePage /> : <SequencePage />;
}

/** Asks once more before an item is taken out; one that something else names, or that was used, stays and says why. */
function TakeOut({ item }: { readonly item: CabinetItem }) {
  const [sure, setSure] = useState(false);
  const { view, takeOut } = useCabinetNow();
  const why = whyItStays(item, view);
  if (why !== undefined)
    return (
      <footer className="cabinet-item-foot">
        <p className="quiet">{why}</p>
      </footer>
    );
  return (
    <footer className="cabinet-item-foot">
      {sure ? (
        <>
          <span>Take out “{nameOfItem(item)}”? It stays in the history and can be undone.</span>
          <Button weight="look" onClick={() => takeOut(item)}>
            Take it out
          </Button>
          <Button onClick={() => setSure(false)}>Keep it</Button>
        </>
      ) : (
        <Button weight="bare" onClick={() => setSure(true)}>
          Take out this {cabinetKindWords[item.kind].toLowerCase()}
        </Button>
      )}
    </footer>
  );
}

function whyItStays(item: CabinetItem, view: ReturnType<typeof useCabinetNow>["view"]): string | undefined {
  if (item.kind === "file") {
    const used = (view.files[item.id]?.uses ?? 0) > 0 || item.body.sterilisedOn.length > 0;
    return used
      ? "This file was counted: it stays. One that is not used any more is discarded, with the reason."
      : undefined;
  }
  const names = namesOf(item, view.items);
  return names.length === 0 ? undefined : `It stays while it is named by: ${names.join(", ")}.`;
}

/** What names an item, so that it can't be taken out. */
function namesOf({ id, kind }: CabinetItem, items: readonly CabinetItem[]): readonly string[] {
  if (kind === "stock") return templatesNaming(items, id);
  return kind === "instrument" ? items.filter((one) => isOf(one, id)).map(nameOfItem) : [];
}

const isOf = (one: CabinetItem, instrument: string): boolean =>
  one.kind === "file"
    ? one.body.instrument === instrument
    : one.kind === "sequence" && one.body.steps.some((step) => step.instrument === instrument);
