import { type KeyboardEvent, useEffect, useRef } from "react";
import { lookResultsOf } from "../../../../record/look-results.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import { lookWords, resultWords } from "../../../../record/words/search-words.ts";
import { Button } from "../../../parts/button.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";

type Look = BodyOf<"search">["looks"][number];
/** A kind of look. */
export type LookKind = Look["kind"];

interface AddLookOptions {
  /** The look whose result is asked for. */
  readonly kind: LookKind | undefined;
  readonly setKind: (kind: LookKind | undefined) => void;
  readonly day: string;
  /** The page's keys are for this search. */
  readonly keys: boolean;
}

const kinds = Object.keys(lookWords) as LookKind[];
/** Whether a name is that of a kind of look. */
export const isLookKind = (name: string): name is LookKind => Object.hasOwn(lookWords, name);
const digitOf = (index: number): string => String((index + 1) % 10);

/** A look by two keys: which, and what came of it. */
export function AddLook({ kind, setKind, day, keys }: AddLookOptions) {
  const field = useField("looks", "Look");
  const rows: readonly unknown[] = Array.isArray(field.value) ? field.value : [];
  const group = useRef<HTMLFieldSetElement>(null);
  useEffect(() => {
    if (kind !== undefined) group.current?.querySelector("button")?.focus();
  }, [kind]);
  if (field.readOnly) return null;
  const add = (result: Look["result"]) => {
    if (kind === undefined) return;
    const look: Look = { on: day, kind, result, note: "" };
    field.write([...rows, look], `${lookWords[kind]}, ${resultWords[result]}`, "now");
    setKind(undefined);
  };
  return (
    <fieldset className="add-look" ref={group}>
      <legend className="field-label">Add a look</legend>
      {keys && kinds.map((one, index) => <LookKey key={one} digit={digitOf(index)} kind={one} take={setKind} />)}
      {kind === undefined ? (
        <div className="add-look-kinds">
          {kinds.map((one, index) => (
            <Button key={one} onClick={() => setKind(one)} {...(keys ? { hint: digitOf(index) } : {})}>
              {lookWords[one]}
            </Button>
          ))}
        </div>
      ) : (
        <ResultOf kind={kind} add={add} leave={() => setKind(undefined)} />
      )}
    </fieldset>
  );
}

interface LookKeyOptions {
  readonly digit: string;
  readonly kind: LookKind;
  readonly take: (kind: LookKind) => void;
}

function LookKey({ digit, kind, take }: LookKeyOptions) {
  useShortcut(digit, "Hidden canals", `Look: ${lookWords[kind]}`, () => take(kind));
  return null;
}

interface ResultOfOptions {
  readonly kind: LookKind;
  readonly add: (result: Look["result"]) => void;
  readonly leave: () => void;
}

function ResultOf({ kind, add, leave }: ResultOfOptions) {
  const [yes, no] = lookResultsOf(kind);
  const press = (event: KeyboardEvent) => {
    const act = { y: () => add(yes), n: () => add(no), Escape: leave }[event.key];
    if (act === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    act();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the buttons inside
    <div className="add-look-kinds" onKeyDown={press}>
      <strong>{lookWords[kind]}</strong>
      <Button hint="y" onClick={() => add(yes)}>
        {resultWords[yes]}
      </Button>
      <Button hint="n" onClick={() => add(no)}>
        {resultWords[no]}
      </Button>
      <Button weight="bare" hint="Escape" onClick={leave}>
        Another look
      </Button>
    </div>
  );
}
