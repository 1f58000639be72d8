import type { KeyboardEvent, ReactNode } from "react";
import { Link } from "wouter";
import type { CabinetItem, CabinetKind } from "../../../record/cabinet/cabinet-item.ts";
import { filesOf, sequencesOf, stockOf, templatesOf } from "../../../record/cabinet/items-of-cabinet.ts";
import { stockKindWords } from "../../../record/words/stock-words.ts";
import { movementWords } from "../../../record/words/visit-words.ts";
import { Button } from "../../parts/button.tsx";
import { today } from "../../parts/days-in-words.ts";
import { countOf } from "../../parts/figures-in-words.ts";
import { capital } from "../../words/capital.ts";
import "./cabinet-list.css";
import { useCabinetNow } from "./cabinet-now.ts";
import { fileState, fileStateWords } from "./file-state.ts";
import { nameOfInstrument, nameOfItem, sizeNotTold } from "./item-names.ts";
import { listedInstruments } from "./listed-instruments.ts";
import { measuresOf } from "./measures-of.ts";
import { SizeMark } from "./size-mark.tsx";
import { isPast } from "./stock-state.ts";

/** So many lines of one movement stand open at first. */
const manyInstruments = 12;

/** All that the cabinet holds; arrow keys walk along it. */
export function CabinetList({ shown }: { readonly shown: string }) {
  const { view } = useCabinetNow();
  const moved = listedInstruments(view.items);
  return (
    <nav className="cabinet-list" aria-label="What the cabinet holds" onKeyDown={walk}>
      <Link
        href="/instruments"
        className="cabinet-line"
        aria-current={shown === "" ? "page" : undefined}
        aria-keyshortcuts="o"
      >
        <strong>Overview</strong>
        <span className="quiet">counted files, all drawn to scale</span>
      </Link>
      <Kind kind="template" title="Templates of visits" add="Add a template">
        {templatesOf(view.items).map((item) => (
          <Line key={item.id} item={item} shown={shown}>
            <span className="quiet">{countOf(item.body.steps.length, "step")}</span>
          </Line>
        ))}
      </Kind>
      <Kind kind="stock" title="Materials" add="Add a material">
        {stockOf(view.items).map((item) => (
          <Line key={item.id} item={item} shown={shown}>
            <span className="quiet">{stockKindWords[item.body.holds.kind]}</span>
            {isPast(item, today()) && (
              <span className="file-flag" data-is="over">
                expired
              </span>
            )}
          </Line>
        ))}
      </Kind>
      <Kind kind="sequence" title="Sequences" add="Add a sequence">
        {sequencesOf(view.items).map((item) => (
          <Line key={item.id} item={item} shown={shown}>
            <span className="quiet">{countOf(item.body.steps.length, "step")}</span>
          </Line>
        ))}
      </Kind>
      <Kind kind="file" title="Counted files" add="Add a counted file">
        {filesOf(view.items).map((item) => {
          const { is } = fileState(item, view);
          return (
            <Line key={item.id} item={item} shown={shown}>
              <span className="quiet">{nameOfInstrument(view.items, item.body.instrument)}</span>
              {is !== "open" && (
                <span className="file-flag" data-is={is}>
                  {fileStateWords[is]}
                </span>
              )}
            </Line>
          );
        })}
      </Kind>
      <Kind kind="instrument" title="Instruments" add="Add an instrument">
        {moved.map(({ movement, instruments }) => (
          <li key={movement} className="cabinet-moved">
            <details open={instruments.length <= manyInstruments || instruments.some(({ id }) => id === shown)}>
              <summary>
                {capital(movementWords[movement])}, {instruments.length}
              </summary>
              <ul>
                {instruments.map((item) => (
                  <Line key={item.id} item={item} shown={shown}>
                    {sizeNotTold(item).map((size) => (
                      <span key={size} className="quiet">
                        {size}
                      </span>
                    ))}
                    <SizeMark colour={measuresOf(view.shown[item.id])?.colour} />
                  </Line>
                ))}
              </ul>
            </details>
          </li>
        ))}
      </Kind>
    </nav>
  );
}

interface KindOptions {
  readonly kind: CabinetKind;
  readonly title: string;
  readonly add: string;
  readonly children: readonly ReactNode[];
}

const keysOfKinds: Readonly<Record<CabinetKind, string>> = {
  instrument: "i",
  sequence: "s",
  file: "f",
  stock: "m",
  template: "t",
};

function Kind({ kind, title, add, children }: KindOptions) {
  const now = useCabinetNow();
  return (
    <section className="cabinet-kind">
      <h2>{title}</h2>
      {children.length > 0 ? <ul>{children}</ul> : <p className="quiet">none yet</p>}
      <Button weight="bare" hint={keysOfKinds[kind]} onClick={() => now.add(kind)}>
        {add}
      </Button>
    </section>
  );
}

interface LineOptions {
  readonly item: CabinetItem;
  readonly shown: string;
  readonly children: ReactNode;
}

const Line = ({ item, shown, children }: LineOptions) => (
  <li>
    <Link
      href={`/instruments/${item.id}`}
      className="cabinet-line"
      data-over={item.kind === "file" && item.body.discarded !== undefined}
      aria-current={shown === item.id ? "page" : undefined}
    >
      <strong>{nameOfItem(item)}</strong>
      {item.body.demo === true && <span className="quiet">demo</span>}
      {children}
    </Link>
  </li>
);

/** Arrow keys go from line to line. */
function walk(event: KeyboardEvent<HTMLElement>): void {
  const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
  const lines = [...event.currentTarget.querySelectorAll<HTMLElement>("a, summary")].filter((line) =>
    line.checkVisibility(),
  );
  const at = document.activeElement instanceof HTMLElement ? lines.indexOf(document.activeElement) : -1;
  const next = lines[at + by];
  if (at < 0 || next === undefined) return;
  event.preventDefault();
  next.focus();
}
