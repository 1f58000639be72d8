import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { Link } from "wouter";
import { instrumentsOf, sequencesOf } from "../../../../record/cabinet/items-of-cabinet.ts";
import { nextCanal } from "../../../../record/cabinet/next-canal.ts";
import { stepsOf } from "../../../../record/cabinet/steps-into-canal.ts";
import { useOfStep as rowOfStep } from "../../../../record/cabinet/use-of-step.ts";
import type { BodyOf } from "../../../../record/parts.ts";
import type { CabinetView } from "../../../../server/api.ts";
import { useAnnounce } from "../../../parts/announcer.tsx";
import { Dialog } from "../../../parts/dialog.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { countOf } from "../../../parts/figures-in-words.ts";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useCabinet } from "../../../record/cabinet.ts";
import { nameOfItem } from "../../instruments/item-names.ts";
import { useCanals } from "../canals.ts";
import { canalsToEnter } from "./canals-to-enter.ts";
import { choicesAtOneLook, choicesMatching } from "./choices-matching.ts";
import { CanalChoice, ItemChoice } from "./entry-choices.tsx";
import { EntryFeet } from "./entry-feet.tsx";
import { afterKeys, type EntryPlace, entryAct } from "./entry-keys.ts";
import { type FilesChosen, fileTakenAt } from "./file-of-step.ts";
import { useKeysAhead } from "./keys-ahead.ts";
import "./quick-entry.css";
import { StepsPreview } from "./steps-preview.tsx";

/** Which choice was recorded last; the next canal begins with it. */
const remembered = { choice: "" };

/** What instruments go into which canal, in a few keys: the canal, a sequence or an instrument, and Enter. */
export function QuickEntry({ close }: { readonly close: () => void }) {
  const { view, error, again } = useCabinet();
  const ahead = useKeysAhead(view === undefined && !error);
  return (
    <Dialog title="Instruments into a canal" close={close} wide>
      {view !== undefined && <Entry view={view} ahead={ahead} close={close} />}
      {view === undefined && error && <SayRefusal of={error} retry={again} />}
      {view === undefined && !error && <p className="quiet">Opening the cabinet</p>}
    </Dialog>
  );
}

interface EntryOptions {
  readonly view: CabinetView;
  /** Keys that were pressed before the cabinet was there. */
  readonly ahead: readonly string[];
  readonly close: () => void;
}

function Entry({ view, ahead, close }: EntryOptions) {
  const all = [...sequencesOf(view.items), ...instrumentsOf(view.items)];
  const [typed, type] = useState("");
  const choices = choicesMatching(all, typed);
  const sequences = choices.filter(({ kind }) => kind === "sequence");
  const { canals, record, uses } = useRows();
  const lists = { canals: canals.length, sequences: sequences.length, choices: choices.length };
  const [start] = useState(() => {
    const canal = Math.max(0, canals.indexOf(nextCanal(canals, uses) ?? {}));
    const last = choices.findIndex(({ id }) => id === remembered.choice);
    return afterKeys(ahead, { canal, choice: Math.max(0, last) }, lists);
  });
  const [at, go] = useState<EntryPlace>(start.at);
  const announce = useAnnounce();
  const [files, setFiles] = useState<FilesChosen>({});
  const chosen = choices[at.choice];
  const canal = canals[at.canal] ?? {};
  const steps = stepsOf(chosen, view.items);
  const enter = () => {
    if (chosen === undefined) return;
    remembered.choice = chosen.id;
    const rows = steps.map((step, index) => rowOfStep(step, canal, fileTakenAt(files, { step, index }, view)));
    const says = `${canal.canal ?? "no canal"} by ${nameOfItem(chosen)}, ${countOf(rows.length, "instrument")}`;
    record(rows, says);
    announce(`Recorded: ${says}`);
    close();
  };
  const move = (to: EntryPlace) => {
    if (to.choice !== at.choice) setFiles({});
    go(to);
  };
  /** What stands chosen stays so while it matches. */
  const narrow = (text: string) => {
    type(text);
    const place = choicesMatching(all, text).findIndex(({ id }) => id === chosen?.id);
    move({ ...at, choice: Math.max(0, place) });
    if (place < 0) setFiles({});
  };
  useOnce(start.records, enter);
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey || isOwn(event)) return;
    if (event.key === "/" && findFilter(event)) return event.preventDefault();
    const act = entryAct(event.key, at, lists);
    if (act === undefined) return;
    event.preventDefault();
    if (act === "record") enter();
    else move(act.to);
  };
  if (all.length === 0) return <EmptyCabinet />;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys are those of the choices inside
    <div className="entry" onKeyDown={press}>
      <CanalChoice canals={canals} at={at.canal} choose={(place) => move({ ...at, canal: place })} />
      <ItemChoice
        {...{ choices, typed }}
        at={at.choice}
        choose={(choice) => move({ ...at, choice })}
        narrow={all.length > choicesAtOneLook ? narrow : undefined}
      />
      <StepsPreview
        {...{ view, canal, steps, files }}
        choose={(index, file) => setFiles({ ...files, [index]: file })}
      />
      <EntryFeet record={chosen && enter} close={close}>
        Record {countOf(steps.length, "instrument")} in {canal.canal ?? "no named canal"}
      </EntryFeet>
    </div>
  );
}

/** Does once what was asked for before the entry was drawn. */
function useOnce(wanted: boolean, act: () => void): void {
  const done = useRef(!wanted);
  useEffect(() => {
    if (done.current) return;
    done.current = true;
    act();
  });
}

/** Puts the focus where the choices are narrowed; false where there are too few to be. */
function findFilter({ currentTarget }: KeyboardEvent): boolean {
  const filter = currentTarget.querySelector<HTMLElement>("input[type=search]");
  filter?.focus();
  return filter !== null;
}

/** What is typed to narrow the choices; up, down and Enter are the entry's there as well. */
const isTyped = ({ target, key }: KeyboardEvent): boolean =>
  target instanceof HTMLInputElement && target.type === "search" && !/^(ArrowUp|ArrowDown|Enter)$/.test(key);

/** Enter on another button, and every key of a list that drops down or of a text, are theirs. */
const isOwn = (event: KeyboardEvent): boolean => isTyped(event) || isOfControl(event);
const isOfControl = ({ target, key }: KeyboardEvent): boolean =>
  target instanceof HTMLSelectElement ||
  (key === "Enter" && (target instanceof HTMLButtonElement || target instanceof HTMLAnchorElement));

/** The rows that the visit has, the canals that more can go into, and how they are recorded. */
function useRows() {
  const known = Object.keys(useCanals());
  const body = useField("", "Visit").value as BodyOf<"visit">;
  const field = useField("instruments", "Instruments");
  const canals = canalsToEnter(body.canals, known);
  const record = (rows: BodyOf<"visit">["instruments"], says: string) =>
    field.write([...body.instruments, ...rows], says, "now");
  return { canals, uses: body.instruments, record };
}

const EmptyCabinet = () => (
  <p>
    The cabinet holds no instrument yet. <Link href="/instruments">Open the cabinet</Link> and add the clinic's own, or
    the standard's hand files in one press.
  </p>
);
