import { useEffect, useId, useRef } from "react";
import type { CabinetItem } from "../../../../record/cabinet/cabinet-item.ts";
import type { CanalEntered } from "../../../../record/cabinet/use-of-step.ts";
import { countOf } from "../../../parts/figures-in-words.ts";
import { KeyHint } from "../../../parts/key-hint.tsx";
import { nameOfItem, sizeNotTold } from "../../instruments/item-names.ts";

interface CanalChoiceOptions {
  readonly canals: readonly CanalEntered[];
  readonly at: number;
  readonly choose: (place: number) => void;
}

/** Which canal; targets large enough for a gloved finger. */
export function CanalChoice({ canals, at, choose }: CanalChoiceOptions) {
  const name = useId();
  const list = useChosenInFocus(at, true);
  return (
    <fieldset className="entry-choice">
      <legend className="field-label">
        Canal <KeyHint keys="ArrowLeft" />
      </legend>
      <div className="entry-targets" ref={list}>
        {canals.map(({ canal, workingLengthMm }, place) => (
          <label key={canal ?? ""} className="entry-target">
            <input type="radio" name={name} checked={place === at} onChange={() => choose(place)} />
            <span>
              <strong>{canal ?? "none named"}</strong>
              <span className="quiet">
                {workingLengthMm === undefined ? "length not noted" : `${workingLengthMm} mm`}
              </span>
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** Lets the focus follow what is chosen; at first only where the entry begins. */
function useChosenInFocus(at: number, atFirst: boolean) {
  const list = useRef<HTMLDivElement>(null);
  const last = useRef(atFirst ? -1 : at);
  useEffect(() => {
    if (last.current === at) return;
    last.current = at;
    const chosen = list.current?.querySelector<HTMLElement>("input:checked");
    // Who types to narrow the list goes on typing.
    if (document.activeElement?.matches("input[type=search]")) chosen?.scrollIntoView({ block: "nearest" });
    else chosen?.focus();
  }, [at]);
  return list;
}

interface ItemChoiceOptions {
  readonly choices: readonly CabinetItem[];
  /** What the choices are narrowed by. */
  readonly typed: string;
  /** Narrows them; absent where all are seen at one look. */
  readonly narrow: ((typed: string) => void) | undefined;
  readonly at: number;
  readonly choose: (place: number) => void;
}

/** Which sequence, by its digit, or which single instrument. */
export function ItemChoice({ choices, at, choose, typed, narrow }: ItemChoiceOptions) {
  const name = useId();
  const list = useChosenInFocus(at, false);
  return (
    <fieldset className="entry-choice">
      <legend className="field-label">Sequence, or one instrument</legend>
      {narrow && (
        <label className="entry-narrow">
          <span className="field-label">
            Only those with <KeyHint keys="/" />
          </span>
          <input
            type="search"
            className="field-line"
            value={typed}
            autoComplete="off"
            placeholder="name or size"
            onChange={({ target }) => narrow(target.value)}
          />
          <span className="quiet" role="status">
            {choices.length === 0 ? "none has all of that" : countOf(choices.length, "choice")}
          </span>
        </label>
      )}
      <div className="entry-targets entry-items" ref={list}>
        {choices.map((item, place) => (
          <label key={item.id} className="entry-target">
            <input type="radio" name={name} checked={place === at} onChange={() => choose(place)} />
            <span>
              <strong>{nameOfItem(item)}</strong>
              <span className="quiet">{saysOf(item)}</span>
              {item.kind === "sequence" && place < 9 && <KeyHint keys={String(place + 1)} />}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** How many instruments a sequence holds, or the geometry of one that its name does not tell; and that it is invented. */
const saysOf = (item: CabinetItem): string =>
  [holdsOf(item), item.body.demo === true ? "demo" : ""].filter((text) => text !== "").join(", ");

function holdsOf(item: CabinetItem): string {
  if (item.kind === "sequence") return countOf(item.body.steps.length, "instrument");
  return item.kind === "instrument" ? sizeNotTold(item).join("") : "";
}
