import { apicalWords, pulpalWords, treatmentWords } from "../../../record/words/case-words.ts";
import { Button } from "../../parts/button.tsx";
import "./filter-line.css";
import { everyCase, type LogbookFilter } from "./logbook-filter.ts";

interface FilterLineOptions {
  readonly filter: LogbookFilter;
  readonly change: (filter: LogbookFilter) => void;
}

type Answers = Readonly<Record<string, string>>;

const lists: readonly {
  readonly field: Exclude<keyof LogbookFilter, "text">;
  readonly label: string;
  readonly answers: Answers;
}[] = [
  {
    field: "type",
    label: "Kind of tooth",
    answers: { "": "all teeth", incisor: "incisors", canine: "canines", premolar: "premolars", molar: "molars" },
  },
  { field: "arch", label: "Jaw", answers: { "": "both jaws", upper: "upper jaw", lower: "lower jaw" } },
  { field: "treatment", label: "Treatment", answers: { "": "any treatment", ...treatmentWords } },
  { field: "pulpal", label: "Pulpal diagnosis", answers: { "": "any pulp", ...pulpalWords } },
  { field: "apical", label: "Apical diagnosis", answers: { "": "any apical tissues", ...apicalWords } },
  {
    field: "mishap",
    label: "Mishap",
    answers: { "": "with or without mishap", yes: "with a mishap", no: "without mishap" },
  },
  {
    field: "recall",
    label: "Next visit or recall",
    answers: {
      "": "any next day",
      due: "next visit or recall within two months",
      overdue: "next visit or recall overdue",
      none: "none planned",
    },
  },
  { field: "origin", label: "Origin", answers: { "": "demo and own", own: "own", demo: "demo" } },
];

/** Narrows the table; every choice composes with the others, and what is chosen stands out. */
export function FilterLine({ filter, change }: FilterLineOptions) {
  const narrowed = Object.values(filter).some((value) => value !== "");
  return (
    <search className="filter-line">
      <input
        id="logbook-find"
        type="search"
        className="filter-find"
        aria-label="Find by pseudonym or tooth"
        placeholder="Pseudonym or tooth"
        aria-keyshortcuts="/"
        value={filter.text}
        onChange={(event) => change({ ...filter, text: event.target.value })}
      />
      {lists.map(({ field, label, answers }) => (
        <select
          key={field}
          aria-label={label}
          className="filter-choice"
          data-set={filter[field] !== ""}
          value={filter[field]}
          onChange={(event) => change({ ...filter, [field]: event.target.value })}
        >
          {Object.entries(answers).map(([value, words]) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      ))}
      {narrowed && (
        <Button weight="bare" onClick={() => change(everyCase)}>
          Show all
        </Button>
      )}
    </search>
  );
}
