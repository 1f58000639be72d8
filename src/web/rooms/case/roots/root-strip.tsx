import { useId } from "react";
import { shapeHere, shapesAt } from "../../../../record/roots/level-steps.ts";
import { levelInWords } from "../../../../record/roots/root-step.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { Within } from "../../../parts/fields/editing.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { namesInWords, readNames } from "../forms/levels.ts";
import { TypedCell } from "../forms/typed-cell.tsx";
import { sideName } from "./root-acts.ts";
import type { RootSteps } from "./use-root-steps.ts";

type Form = ReturnType<typeof shapesAt>[number];

/** The chosen root in fields: its name, its side, its canals' names, and the form of the chosen level. */
export function RootStrip({ steps }: { readonly steps: RootSteps }) {
  const { hand } = steps;
  const root = hand.roots[hand.at.root];
  if (root === undefined) return null;
  return (
    <div className="fields root-strip">
      <Within key={hand.at.root} at={`roots.${hand.at.root}`} of={root.name}>
        <TextField at="name" label="Root" />
        <SelectField
          at="side"
          label="Lies"
          words={{ buccal: "buccal", lingual: sideName(hand, "lingual") }}
          unset="in line"
        />
        <TypedCell
          at="orifices"
          label="Canals at the orifice"
          inWords={namesInWords}
          read={readNames}
          placeholder="named as the root"
          bare={false}
        />
      </Within>
      <FormChoice steps={steps} />
    </div>
  );
}

/** What the section at the chosen level looks like. */
function FormChoice({ steps: { hand, act } }: { readonly steps: RootSteps }) {
  const name = useId();
  const { levels = [], name: root = "" } = hand.roots[hand.at.root] ?? {};
  const level = levels[hand.at.level];
  const now = typeof level === "object" ? level.cShape : undefined;
  const offered: readonly (Form | undefined)[] = [undefined, ...shapesAt(hand.at.level)];
  return (
    <fieldset className="field" data-wide="true">
      <legend className="field-label">
        Section of {root} {levelInWords(hand.at.level, levels.length)}
      </legend>
      <div className="field-choices">
        {offered.map((form) => (
          <label key={form ?? ""} className="field-choice">
            <input type="radio" name={name} checked={now === form} onChange={() => act(shapeHere(hand, form))} />
            <span>{form === undefined ? "not C-shaped" : `${form} ${formWords[form]}`}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

const formWords: Readonly<Record<Form, string>> = {
  C1: "an unbroken C",
  C2: "a broken C",
  C3: "separate canals",
  C4: "one round canal",
  C5: "no lumen",
};
