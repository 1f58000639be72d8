import { type FormEvent, useState } from "react";
import type { Settings } from "../../../record/settings.ts";
import { notationWords, roleWords } from "../../../record/words/case-words.ts";
import { Button } from "../../parts/button.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useKeepSettings } from "../../record/readings.ts";
import "../../parts/fields/fields.css";
import "./first-start.css";

/** The one page of the first start: who writes, in which part, and how they write a tooth. */
export function FirstStart({ settings }: { readonly settings: Settings }) {
  useTitle("Who writes here?");
  const [draft, setDraft] = useState(settings);
  const keep = useKeepSettings();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    keep.mutate({ ...draft, who: draft.who.trim() });
  };
  return (
    <main className="first-start">
      <form onSubmit={submit}>
        <h1>Who writes here?</h1>
        <p className="first-start-lead">
          Every change of a case carries the name of who made it. The name stays on this machine, like everything else.
        </p>
        <label className="first-start-name">
          <span className="field-label">Your name</span>
          <input
            className="field-line"
            autoComplete="name"
            // biome-ignore lint/a11y/noAutofocus: the page asks one question, and nothing stands before it
            autoFocus
            maxLength={80}
            value={draft.who}
            onChange={(event) => setDraft({ ...draft, who: event.target.value })}
          />
        </label>
        <Choice
          label="You are the"
          words={roleWords}
          value={draft.role}
          choose={(role) => setDraft({ ...draft, role })}
        />
        <Choice
          label="You write a tooth as"
          words={notationWords}
          value={draft.notation}
          choose={(notation) => setDraft({ ...draft, notation })}
        />
        {keep.error && <SayRefusal of={keep.error} />}
        <Button type="submit" weight="strong" disabled={draft.who.trim() === "" || keep.isPending}>
          Open the logbook
        </Button>
        <p className="quiet">
          Canalog supports, and never replaces, licensed judgement, product labelling and local rules. Patients are
          never named in it.
        </p>
      </form>
    </main>
  );
}

interface ChoiceOptions<Value extends string> {
  readonly label: string;
  readonly words: Readonly<Record<Value, string>>;
  readonly value: Value;
  readonly choose: (value: Value) => void;
}

/** One of a few answers outside of a case. */
function Choice<Value extends string>({ label, words, value, choose }: ChoiceOptions<Value>) {
  return (
    <fieldset className="field">
      <legend className="field-label">{label}</legend>
      <div className="field-choices">
        {(Object.keys(words) as Value[]).map((answer) => (
          <label key={answer} className="field-choice">
            <input type="radio" name={label} checked={value === answer} onChange={() => choose(answer)} />
            <span>{words[answer]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
