import type { PartOf } from "../../../../record/parts.ts";
import { claimStateWords, designWords, speaksWords } from "../../../../record/words/later-words.ts";
import { SelectField } from "../../../parts/fields/choice-field.tsx";
import { NumberField } from "../../../parts/fields/number-field.tsx";
import { TextField } from "../../../parts/fields/text-field.tsx";
import { TicksField } from "../../../parts/fields/tick-field.tsx";
import type { Moment } from "../spine/spine-moments.ts";
import { ListCell } from "./list-cell.tsx";

interface ClaimFormOptions {
  readonly decisions: readonly Moment[];
  readonly references: readonly PartOf<"reference">[];
}

/** A sentence for or against a decision, with what it stands on. */
export const ClaimForm = ({ decisions, references }: ClaimFormOptions) => (
  <div className="fields">
    <TextField at="says" label="Claim" prose />
    <SelectField at="speaks" label="Speaks" words={speaksWords} />
    <SelectField
      at="about"
      label="The decision"
      words={Object.fromEntries(decisions.flatMap(({ part, title }) => (part ? [[part.id, title]] : [])))}
    />
    <SelectField at="state" label="It is" words={claimStateWords} />
    {references.length > 0 && (
      <TicksField
        at="references"
        label="Stands on"
        words={Object.fromEntries(references.map(({ id, body }) => [id, shortName(body)]))}
      />
    )}
    <TextField at="verdict" label="Verdict" prose />
  </div>
);

/** A published source, in the fields of a reference list. */
export const ReferenceForm = () => (
  <div className="fields">
    <TextField at="title" label="Title" prose />
    <div className="field" data-wide="true">
      <span className="field-label" aria-hidden="true">
        Authors, parted by semicolons
      </span>
      <ListCell at="authors" label="Authors" />
    </div>
    <TextField at="journal" label="Journal" />
    <NumberField at="year" label="Year" />
    <TextField at="volume" label="Volume" />
    <TextField at="pages" label="Pages" />
    <TextField at="doi" label="DOI" />
    <SelectField at="design" label="Design" words={designWords} />
    <TextField at="takeaway" label="What it gives to this case" prose />
  </div>
);

function shortName({ authors, year, title }: PartOf<"reference">["body"]): string {
  const [first] = authors;
  return first === undefined
    ? title.slice(0, 60)
    : `${first}${authors.length > 1 ? " et al." : ""} ${year ?? ""}`.trim();
}
