import { type KeyboardEvent, useState } from "react";
import type { BodyOf } from "../../../../record/parts.ts";
import { type ProbingStanding, probingStanding, standingInWords } from "../../../../record/probing-standing.ts";
import { probingInWords, probingSites } from "../../../../record/words/test-words.ts";
import { useField } from "../../../parts/fields/editing.tsx";
import { faultProps } from "../../../parts/fields/labelled.tsx";
import type { BodyPath } from "../../../record/body-path.ts";
import { sideOfTooth } from "../../../words/two-view-words.ts";
import { depthOfKey, placeOfArrow } from "./depth-of-key.ts";
import { readDepths } from "./read-depths.ts";
import "./probing-strip.css";

type Depths = BodyOf<"findings">["teeth"][number]["probingMm"];

interface StripOptions {
  readonly at: BodyPath;
  readonly label: string;
  readonly tooth: string;
}

/** Six depths round a tooth: buccal three over inner three, mesial to distal. A digit is written and the next place is there. */
export function ProbingStrip({ at, label, tooth }: StripOptions) {
  const field = useField(at, label);
  const depths = isDepths(field.value) ? field.value : {};
  const standing = probingStanding(depths);
  const fill = (from: number, taken: readonly (number | undefined)[]) => {
    const named = Object.fromEntries(taken.flatMap((depth, by) => pairOf(probingSites[from + by], depth)));
    const next = Object.entries({ ...depths, ...named }).filter(([, depth]) => depth !== undefined);
    const whole: Depths = Object.fromEntries(next);
    field.write(whole, probingInWords(whole) || "emptied", "typing");
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would end the gesture of the form at each place
    <div
      className="probing-strip"
      role="group"
      aria-label={field.fullLabel}
      onBlur={(event) => event.currentTarget.contains(event.relatedTarget) && event.stopPropagation()}
    >
      {probingSites.map((site, index) => (
        <Site
          key={site}
          at={`${at}.${site}`}
          index={index}
          label={`${label} ${sideOfTooth(site, tooth)}`}
          stands={standing[site]}
          fill={(taken) => fill(index, taken)}
        />
      ))}
      {standingInWords(depths).map((words) => (
        <p key={words} className="probing-says">
          {sideOfTooth(words, tooth)}
        </p>
      ))}
    </div>
  );
}

const pairOf = (site: string | undefined, depth: number | undefined) => (site === undefined ? [] : [[site, depth]]);

const isDepths = (value: unknown): value is Depths => typeof value === "object" && value !== null;

interface SiteOptions {
  readonly at: BodyPath;
  readonly label: string;
  readonly index: number;
  readonly stands: ProbingStanding | undefined;
  /** Writes depths from this place on. */
  readonly fill: (taken: readonly (number | undefined)[]) => void;
}

function Site({ at, label, index, stands, fill }: SiteOptions) {
  const field = useField(at, label);
  const [typed, setTyped] = useState<string>();
  const fault = (typed === undefined || typed === ten ? undefined : readDepths(typed).fault) ?? field.fault;
  const type = (text: string) => {
    const { depths } = readDepths(text);
    setTyped(depths === undefined ? text : undefined);
    if (depths !== undefined) fill(depths.length === 0 ? [undefined] : depths);
  };
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.ctrlKey || event.altKey || event.metaKey || (typed !== undefined && typed !== ten)) return;
    const to = placeOfArrow(event.key, index);
    const means = depthOfKey(event.key, typed === ten);
    if (to === undefined && means === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    setTyped(means !== undefined && "waits" in means ? ten : undefined);
    if (to !== undefined) goTo(event.currentTarget, to - index);
    else if (means !== undefined && "writes" in means) {
      fill([means.writes]);
      goTo(event.currentTarget, 1);
    }
  };
  return (
    <span className="probing-site" data-stands={stands}>
      <input
        id={field.id}
        className="field-line"
        inputMode="decimal"
        autoComplete="off"
        aria-label={field.fullLabel}
        placeholder="·"
        value={typed ?? (field.value === undefined ? "" : String(field.value))}
        readOnly={field.readOnly}
        {...faultProps({ id: field.id, fault })}
        onKeyDown={press}
        onChange={(event) => type(event.target.value)}
        onFocus={(event) => event.target.select()}
      />
      {fault !== undefined && (
        <span className="field-fault" id={`${field.id}-fault`}>
          {fault}
        </span>
      )}
    </span>
  );
}

/** Ten and more is written with a plus before its second digit; what stands until then. */
const ten = "1…";

/** Gives the focus to a place further on among those of all teeth in the row. */
function goTo(from: HTMLInputElement, by: number): void {
  const places = [...(from.closest("tr")?.querySelectorAll<HTMLInputElement>(".probing-site input") ?? [])];
  places[places.indexOf(from) + by]?.focus();
}
